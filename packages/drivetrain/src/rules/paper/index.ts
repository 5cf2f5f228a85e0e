import type { Rule } from '../rule.js';
import { sourceAge } from './source-age.js';

/** Where figures come from. */
export const PAPER_RULES: readonly Rule[] = [sourceAge];
