import type { Rule } from '../rule.js';
import { trialConditions } from './conditions.js';
import { dockSteps } from './dock-steps.js';
import { drills } from './drills.js';
import { fullThrottle } from './full-throttle.js';
import { noLoad } from './no-load.js';
import { trialPair } from './pair.js';
import { trialPrediction } from './prediction.js';
import { trialRequirement } from './requirement.js';

export { possibleModes } from './in-modes.js';
export { differenceWords } from './prediction.js';
export { isOfLine, type PlacedRun, runsOf } from './trial-specs.js';

/** Rules on trial sheets: their state, and what they read against what was predicted and required. */
export const TRIAL_RULES: readonly Rule[] = [
  trialConditions,
  dockSteps,
  drills,
  noLoad,
  fullThrottle,
  trialPrediction,
  trialPair,
  trialRequirement,
];
