import { INTERFACE_MISTAKES } from './interface.js';
import type { Mistake } from './mistake.js';
import { PAPERS_MISTAKES } from './papers.js';
import { PROPELLER_MISTAKES } from './propeller.js';
import { RATIO_MISTAKES } from './ratio.js';
import { REPOWER_MISTAKES } from './repower.js';
import { ROTATION_MISTAKES } from './rotation.js';
import { SHAFT_MISTAKES } from './shaft.js';
import { TRIALS_MISTAKES } from './trials.js';

/** Mistakes of the catalogue, as somebody would make them in a spec. */
export const MADE: readonly Mistake[] = [
  ...ROTATION_MISTAKES,
  ...RATIO_MISTAKES,
  ...PROPELLER_MISTAKES,
  ...SHAFT_MISTAKES,
  ...INTERFACE_MISTAKES,
  ...PAPERS_MISTAKES,
  ...TRIALS_MISTAKES,
  ...REPOWER_MISTAKES,
];
