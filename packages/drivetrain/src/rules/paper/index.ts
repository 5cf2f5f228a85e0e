import type { Rule } from '../rule.js';
import { acceptance } from './acceptance.js';
import { placeAgainstEntry } from './place-against-entry.js';
import { sisterVessel } from './sister-vessel.js';
import { sourceAge } from './source-age.js';

/** Where figures come from, and who accepted what. */
export const PAPER_RULES: readonly Rule[] = [sourceAge, sisterVessel, placeAgainstEntry, acceptance];
