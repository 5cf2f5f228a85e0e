import type { Rule } from '../rule.js';
import { absorbedPower } from './absorbed-power.js';

/** Rules on the propeller: its place, its size against the power, its bore, and how it is ordered. */
export const PROPELLER_RULES: readonly Rule[] = [absorbedPower];
