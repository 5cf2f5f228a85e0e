import type { Spelling } from '@tailshaft/vocabulary';

/** Words that at the start of a line can only stand at this depth: what is open deeper was left open. */
export const DEPTH_OF: Readonly<Record<string, number>> = {
  import: 0,
  vessel: 0,
  arrangement: 1,
  shaftline: 2,
} satisfies Partial<Record<Spelling, number>>;
