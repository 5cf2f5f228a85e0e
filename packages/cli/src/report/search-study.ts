import { performance } from 'node:perf_hooks';
import { setImmediate, setTimeout } from 'node:timers/promises';
import {
  combinationsOf,
  type Found,
  resultOf,
  type StudyCase,
  search,
  withSetAside,
} from '@tailshaft/drivetrain';
import type { ReadyStudy } from '@tailshaft/language';
import { endAll, type Share } from '../study/share.js';
import { searchInThreads, threadsFor } from '../study/threads.js';
import type { Io } from '../terminal/io.js';
import type { SearchedStudy } from './study-words.js';

/** Where a study stands, for threads that read it themselves. */
export type Searched = Omit<Share, 'combinations' | 'next' | 'setAside'>;

/** Searches, telling how far it is, until the end or until somebody ends it; in several threads where that pays. */
export async function searchedBy(
  io: Io,
  vessel: string,
  ready: ReadyStudy,
  where?: Searched,
): Promise<SearchedStudy> {
  let ended = false;
  const listening = io.onInterrupt(() => {
    ended = true;
  });
  const began = performance.now();
  const watch: Watch = {
    isEnded: () => ended,
    tell: (looked, of) =>
      io.progress(
        `study ${ready.study.name}: ${looked.toLocaleString('en')} of ${of.toLocaleString('en')}; Ctrl-C ends it`,
      ),
  };
  const searched = async (of: StudyCase) =>
    resultOf(of, (where && (await inThreads(of, where, watch))) ?? [await inOneThread(of, watch)]);
  const result = await withSetAside(ready, await searched(ready), async of =>
    ended ? undefined : searched(of),
  );
  listening();
  io.progress('');
  return { vessel, result, seconds: (performance.now() - began) / 1000 };
}

interface Watch {
  readonly isEnded: () => boolean;
  readonly tell: (looked: number, of: number) => void;
}

async function inThreads(
  ready: StudyCase,
  where: Searched,
  { isEnded, tell }: Watch,
): Promise<readonly Found[] | undefined> {
  const combinations = combinationsOf(ready.dimensions);
  const next = new SharedArrayBuffer(4);
  const threads = searchInThreads(threadsFor(combinations), {
    ...where,
    combinations,
    next,
    ...(ready.setAside ? { setAside: ready.setAside } : {}),
  });
  if (!threads) return undefined;
  const counter = new Int32Array(next);
  let done = false;
  let stopped = false;
  const found = threads.found.finally(() => {
    done = true;
  });
  while (!done) {
    await Promise.race([found, setTimeout(RESTS, undefined, { ref: false })]);
    if (isEnded() && !stopped) {
      stopped = true;
      endAll(next, combinations);
    }
    // Ended, the counter says how many there are and no longer how far it is.
    if (!done && !stopped) tell(Math.min(Atomics.load(counter, 0), combinations), combinations);
  }
  const shares = await found;
  const looked = shares?.reduce((sum, one) => sum + one.looked, 0);
  return stopped && looked !== combinations ? shares?.map(one => ({ ...one, stopped: true })) : shares;
}

async function inOneThread(ready: StudyCase, { isEnded, tell }: Watch): Promise<Found> {
  let rested = performance.now();
  const steps = search(ready);
  let step = steps.next();
  while (!step.done) {
    if (performance.now() - rested > RESTS) {
      tell(step.value.looked, step.value.of);
      await setImmediate();
      rested = performance.now();
    }
    step = steps.next(isEnded());
  }
  return step.value;
}

/** Milliseconds between two looks at what the person does. */
const RESTS = 100;
