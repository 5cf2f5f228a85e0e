import type { Rule } from '../rule.js';
import { absorbedPower } from './absorbed-power.js';
import { clearanceByDiameter } from './clearance-by-diameter.js';
import { otherClearances } from './other-clearances.js';
import { tipClearance } from './tip-clearance.js';

/** Rules on the propeller: its place, its size against the power, its bore, and how it is ordered. */
export const PROPELLER_RULES: readonly Rule[] = [
  absorbedPower,
  tipClearance,
  clearanceByDiameter,
  otherClearances,
];
