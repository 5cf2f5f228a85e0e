import type { AcceptancePolicy, Found } from '@tailshaft/drivetrain';

/** What a thread is told of the study of which it searches a share. */
export interface Share {
  readonly cwd: string;
  readonly path: string;
  readonly today: string;
  readonly policy?: AcceptancePolicy;
  readonly root?: string;
  /** Which vessel of the file, and which of its studies. */
  readonly vessel: number;
  readonly study: number;
  readonly combinations: number;
  /** Checks that rule nothing out. */
  readonly setAside?: readonly string[];
  /** The first combination that nobody looks at yet. */
  readonly next: SharedArrayBuffer;
}

/** What a thread answers; nothing found where the text has changed meanwhile. */
export type Answer = { readonly found?: Found };

/** So many candidates are taken at once: those beside each other share most of the work. */
const PIECE = 200;

/** Takes the pieces of a search that no other thread has taken. */
export function claiming(next: SharedArrayBuffer): { readonly claim: () => number; readonly piece: number } {
  const counter = new Int32Array(next);
  return { claim: () => Atomics.add(counter, 0, PIECE), piece: PIECE };
}

/** Ends a search in all threads, each behind the piece that it is at. */
export function endAll(next: SharedArrayBuffer, combinations: number): void {
  Atomics.store(new Int32Array(next), 0, combinations);
}
