import { parentPort, workerData } from 'node:worker_threads';
import { CannotRun } from '../cannot-run.js';
import type { Given } from '../command.js';
import { formOf, specsFor } from '../forms/form-of.js';
import type { Severity } from '../report/severity.js';
import { ioOf } from '../terminal/io.js';
import { pieceOf, type SpecPiece } from './piece.js';

/** What a thread is told when it starts: all that the words of the command say of how to judge and how to tell. */
export interface ThreadTask {
  readonly given: Given;
  readonly cwd: string;
  readonly width: number;
  readonly colours: boolean;
  readonly from: Severity;
}

/** A spec that was judged, or the sentence that says why it could not be. */
export type ThreadAnswer = SpecPiece | { readonly refused: string };

/** Judges the files that the first thread sends, a few at a time, and answers in their order. */
export function answerFirstThread(): void {
  const { given, cwd, width, colours, from } = workerData as ThreadTask;
  const silent = { write: () => true, columns: width };
  const io = ioOf({
    cwd,
    env: colours ? { FORCE_COLOR: '1' } : { NO_COLOR: '1' },
    stdin: (async function* () {})(),
    keyboard: false,
    stdout: silent,
    stderr: silent,
  });
  const specs = specsFor(cwd, given);
  const form = formOf(io, given, specs, undefined);
  const judged = async (path: string): Promise<ThreadAnswer> => {
    try {
      const spec = await specs.check(path);
      const piece = pieceOf(form, { spec }, from);
      specs.drop(spec);
      return piece;
    } catch (error) {
      if (error instanceof CannotRun) return { refused: error.message };
      throw error;
    }
  };
  parentPort!.on('message', async (paths: readonly string[]) => {
    const answers: ThreadAnswer[] = [];
    for (const path of paths) answers.push(await judged(path));
    parentPort!.postMessage(answers);
  });
}
