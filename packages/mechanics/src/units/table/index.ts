import type { Unit } from '../unit.js';
import { GEOMETRY_UNITS } from './geometry.js';
import { MASS_AND_FORCE_UNITS, TORQUE_UNITS } from './mechanics.js';
import { MOTION_UNITS } from './motion.js';
import { POWER_UNITS } from './power.js';

/** Every unit, best known first within its dimension. */
export const UNITS: readonly Unit[] = [
  ...GEOMETRY_UNITS,
  ...MASS_AND_FORCE_UNITS,
  ...TORQUE_UNITS,
  ...POWER_UNITS,
  ...MOTION_UNITS,
];
