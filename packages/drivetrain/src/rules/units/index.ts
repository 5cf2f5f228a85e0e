import type { Rule } from '../rule.js';
import { gallons } from './gallons.js';
import { horsepowerKind } from './horsepower-kind.js';
import { miles } from './miles.js';
import { nearMiss } from './near-miss.js';
import { nominalRatio } from './nominal-ratio.js';
import { tons } from './tons.js';
import { torqueUnit } from './torque-unit.js';
import { torsionalYield } from './torsional-yield.js';
import { unitNeeded } from './unit-needed.js';

/** Units and what numbers claim to be. */
export const UNIT_RULES: readonly Rule[] = [
  horsepowerKind,
  miles,
  gallons,
  nearMiss,
  tons,
  torqueUnit,
  unitNeeded,
  torsionalYield,
  nominalRatio,
];
