import type { Rule } from '../rule.js';
import { acceptance } from './acceptance.js';
import { openMatters } from './open-matters.js';
import { placeAgainstEntry } from './place-against-entry.js';
import { practiceRelaxed } from './practice-relaxed.js';
import { recordStale } from './record-stale.js';
import { revisionOrder } from './revision-order.js';
import { revisionSigned } from './revision-signed.js';
import { sheetAge } from './sheet-age.js';
import { sisterVessel } from './sister-vessel.js';
import { sourceAge } from './source-age.js';

/** Where figures come from, and who accepted what. */
export const PAPER_RULES: readonly Rule[] = [
  sourceAge,
  sheetAge,
  sisterVessel,
  placeAgainstEntry,
  recordStale,
  acceptance,
  revisionOrder,
  revisionSigned,
  openMatters,
  practiceRelaxed,
];
