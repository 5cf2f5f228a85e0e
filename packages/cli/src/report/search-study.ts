import { performance } from 'node:perf_hooks';
import { setImmediate } from 'node:timers/promises';
import { resultOf, search } from '@tailshaft/drivetrain';
import type { ReadyStudy } from '@tailshaft/language';
import type { Io } from '../terminal/io.js';
import type { SearchedStudy } from './study-words.js';

/** Searches, telling how far it is, until the end or until somebody ends it. */
export async function searchedBy(io: Io, vessel: string, ready: ReadyStudy): Promise<SearchedStudy> {
  let ended = false;
  const listening = io.onInterrupt(() => {
    ended = true;
  });
  const began = performance.now();
  let rested = began;
  const steps = search(ready);
  let step = steps.next();
  while (!step.done) {
    if (performance.now() - rested > RESTS) {
      const { looked, of } = step.value;
      io.progress(
        `study ${ready.study.name}: ${looked.toLocaleString('en')} of ${of.toLocaleString('en')}; Ctrl-C ends it`,
      );
      await setImmediate();
      rested = performance.now();
    }
    step = steps.next(ended);
  }
  listening();
  io.progress('');
  return { vessel, result: resultOf(ready, [step.value]), seconds: (performance.now() - began) / 1000 };
}

/** Milliseconds between two looks at what the person does. */
const RESTS = 100;
