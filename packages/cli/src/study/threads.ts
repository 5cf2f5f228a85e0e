import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Found } from '@tailshaft/drivetrain';
import type { Answer, Share } from './share.js';

/** Below so many candidates for each thread, starting it takes longer than it saves. */
const WORTH_A_THREAD = 1500;
const MOST_THREADS = 8;
/** Megabytes of its own memory that a thread may take; one that needs more gives up, and the search goes on in one thread. */
const MEMORY = 256;

/** How many threads would search so many combinations; 1 where threads do not pay. */
export function threadsFor(combinations: number, processors = availableParallelism()): number {
  return Math.max(1, Math.min(processors, MOST_THREADS, Math.floor(combinations / WORTH_A_THREAD)));
}

/** What marks the data of a thread that searches a share. */
export const SHARE = 'share of a study';

/** A search in threads that is under way. */
export interface Threads {
  /** What all of them found together; undefined where one of them could not, so that all must be searched anew. */
  readonly found: Promise<readonly Found[] | undefined>;
}

/** Starts the threads; none where the program does not stand in files of its own. */
export function searchInThreads(count: number, share: Share): Threads | undefined {
  const program = join(__dirname, 'tailshaft.cjs');
  if (count < 2 || !existsSync(program)) return undefined;
  const threads = Array.from({ length: count }, () => answerOf(program, share));
  const found = Promise.all(threads).then(all =>
    all.every(one => one !== undefined) ? (all as readonly Found[]) : undefined,
  );
  return { found };
}

function answerOf(program: string, share: Share): Promise<Found | undefined> {
  return new Promise(done => {
    const thread = new Worker(program, {
      workerData: { [SHARE]: share },
      resourceLimits: { maxOldGenerationSizeMb: MEMORY, maxYoungGenerationSizeMb: 32 },
    });
    thread.once('message', ({ found }: Answer) => done(found));
    thread.once('error', () => done(undefined));
    thread.once('exit', () => done(undefined));
  });
}
