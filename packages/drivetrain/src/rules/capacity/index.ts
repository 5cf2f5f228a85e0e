import type { Rule } from '../rule.js';
import { certificate } from './certificate.js';
import { clutchHolding } from './clutch-holding.js';
import { couplingTorque } from './coupling-torque.js';
import { couplingVibratoryTorque } from './coupling-vibratory-torque.js';
import { engineDuty } from './engine-duty.js';
import { gearInputTorque } from './gear-input-torque.js';
import { modePower } from './mode-power.js';
import { motorEquivalent } from './motor-equivalent.js';
import { powerAndTorque } from './power-and-torque.js';
import { powerPoint } from './power-point.js';
import { ratingDuty } from './rating-duty.js';
import { ratingFuel } from './rating-fuel.js';
import { ratingSpeed } from './rating-speed.js';
import { ratingUndefined } from './rating-undefined.js';
import { retainedPropellerLight } from './retained-propeller-light.js';
import { retainedPropellerOverload } from './retained-propeller-overload.js';
import { retainedShaftTorque } from './retained-shaft-torque.js';
import { takeOff } from './take-off.js';
import { transferTorque } from './transfer-torque.js';

/** Rules on what parts may carry, in the order of the catalogue of mistakes. */
export const CAPACITY_RULES: readonly Rule[] = [
  retainedShaftTorque,
  gearInputTorque,
  ratingSpeed,
  ratingDuty,
  ratingFuel,
  ratingUndefined,
  engineDuty,
  powerPoint,
  powerAndTorque,
  takeOff,
  retainedPropellerOverload,
  retainedPropellerLight,
  certificate,
  motorEquivalent,
  clutchHolding,
  couplingTorque,
  couplingVibratoryTorque,
  transferTorque,
  modePower,
];
