import type { Rule } from '../rule.js';
import { clutchRatio } from './clutch-ratio.js';
import { nominalForExact } from './nominal-for-exact.js';
import { notOffered } from './not-offered.js';
import { trainAgrees } from './train.js';
import { unequalSides } from './unequal-sides.js';

/** Rules on ratios, in the order of the catalogue of mistakes. */
export const RATIO_RULES: readonly Rule[] = [
  notOffered,
  nominalForExact,
  clutchRatio,
  unequalSides,
  trainAgrees,
];
