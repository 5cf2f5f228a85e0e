import { availableParallelism } from 'node:os';
import { basename } from 'node:path';
import { Worker } from 'node:worker_threads';
import { CannotRun } from '../cannot-run.js';
import type { ThreadAnswer, ThreadTask } from './check-thread.js';
import type { SpecPiece } from './piece.js';

/** A thread reads the program and the catalogue for itself: so many files pay for it. */
const WORTH_A_THREAD = 60;
/** Files that a thread is sent at a time: few, so that all end together. */
const AT_A_TIME = 8;

/** How many threads judge so many files: one is this one. Only the program that people install has a file to start them from. */
export function threadsFor(files: number): number {
  if (typeof __filename !== 'string' || basename(__filename) !== 'program.cjs') return 1;
  const wanted = Number(process.env.TAILSHAFT_THREADS);
  const most = Number.isInteger(wanted) && wanted > 0 ? wanted : availableParallelism();
  return Math.min(most, Math.floor(files / WORTH_A_THREAD));
}

/** Judges files in threads, and gives what they say in the order of the files: the answer is the one that one thread gives. */
export async function* inThreads(
  paths: readonly string[],
  task: ThreadTask,
  threads: number,
): AsyncGenerator<SpecPiece | CannotRun> {
  const shares = Array.from({ length: Math.ceil(paths.length / AT_A_TIME) }, (_, at) =>
    paths.slice(at * AT_A_TIME, (at + 1) * AT_A_TIME),
  );
  const waiting = shares.map(() => new Awaited<readonly ThreadAnswer[]>());
  let next = 0;
  const workers = Array.from({ length: threads }, () => {
    const worker = new Worker(__filename, { workerData: task });
    let at = 0;
    const send = () => {
      at = next;
      next += 1;
      if (at < shares.length) worker.postMessage(shares[at]);
    };
    worker.on('message', (answers: readonly ThreadAnswer[]) => {
      waiting[at]!.resolve(answers);
      send();
    });
    worker.on('error', error => {
      for (const one of waiting) one.reject(error);
    });
    send();
    return worker;
  });
  try {
    for (const { answer } of waiting)
      for (const one of await answer) yield 'refused' in one ? new CannotRun(one.refused) : one;
  } finally {
    await Promise.all(workers.map(one => one.terminate()));
  }
}

/** An answer that is still to come. */
class Awaited<T> {
  resolve!: (answer: T) => void;
  reject!: (error: unknown) => void;
  readonly answer = new Promise<T>((resolve, reject) => {
    this.resolve = resolve;
    this.reject = reject;
  });

  constructor() {
    // Whoever waits for it hears of the fault; until somebody does, it is no fault of the process.
    this.answer.catch(() => {});
  }
}
