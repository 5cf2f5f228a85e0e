export * from './assumable.js';
export * from './facts/index.js';
export * from './header.js';
export * from './kinds.js';
export * from './lookup.js';
export * from './range.js';
export * from './statements.js';
export * from './units.js';
export { AHEAD_CLUTCH, CRITERIA, PROPELLER, RATED_AT };

import { ENGINE, ENGINE_PLACE, MOTOR, MOTOR_PLACE, RATED_AT } from './engine.js';
import { AHEAD_CLUTCH, GEAR, GEAR_PLACE, TRANSFER } from './gear.js';
import type { Vocabulary } from './kinds.js';
import { COUPLING, PROPELLER, PROPELLER_PLACE, SHAFT, SHAFT_MATERIAL } from './shafting.js';
import { TRIAL } from './trial.js';
import { CERTIFICATE, CRITERIA, DUTY, HULL } from './vessel.js';

/** What a catalogue entry of each kind may say. */
export const ENTRY_VOCABULARY: Readonly<Record<string, Vocabulary>> = {
  engine: ENGINE,
  motor: MOTOR,
  gear: GEAR,
  transfer: TRANSFER,
  coupling: COUPLING,
  'shaft material': SHAFT_MATERIAL,
  propeller: PROPELLER,
};

/** What a part may say at its place in a line: everything of its entry, and how it stands there. */
export const PLACE_VOCABULARY: Readonly<Record<string, Vocabulary>> = {
  engine: ENGINE_PLACE,
  motor: MOTOR_PLACE,
  gear: GEAR_PLACE,
  transfer: TRANSFER,
  coupling: COUPLING,
  shaft: SHAFT,
  propeller: PROPELLER_PLACE,
};

/** What the blocks of a vessel may say. */
export const VESSEL_VOCABULARY: Readonly<Record<string, Vocabulary>> = {
  duty: DUTY,
  hull: HULL,
  criteria: CRITERIA,
  certificate: CERTIFICATE,
  trial: TRIAL,
};
