import type { Rule } from '../rule.js';
import { accessory } from './accessory.js';
import { aheadClutch } from './ahead-clutch.js';
import { clutchPermission } from './clutch-permission.js';
import { controllablePitch } from './controllable-pitch.js';
import { convertibleHand } from './convertible-hand.js';
import { engineChanged } from './engine-changed.js';
import { enginesExchanged } from './engines-exchanged.js';
import { gearsExchanged } from './gears-exchanged.js';
import { inputAccepted } from './input-accepted.js';
import { inwardTurning } from './inward-turning.js';
import { lineTurnsBack } from './line-turns-back.js';
import { moversAgree } from './movers-agree.js';
import { propellerHand } from './propeller-hand.js';
import { pumpIndex } from './pump-index.js';
import { ratioFlipsOutput } from './ratio-flips-output.js';
import { sameHand } from './same-hand.js';
import { sheetView } from './sheet-view.js';
import { shiftCable } from './shift-cable.js';
import { trainSense } from './train-sense.js';
import { turningRequirement } from './turning-requirement.js';
import { unprovenSource } from './unproven-source.js';
import { viewpoint } from './viewpoint.js';

/** Rules on which way things turn, in the order of the catalogue of mistakes, then those that the design implies. */
export const ROTATION_RULES: readonly Rule[] = [
  propellerHand,
  aheadClutch,
  clutchPermission,
  viewpoint,
  sheetView,
  engineChanged,
  enginesExchanged,
  gearsExchanged,
  sameHand,
  inwardTurning,
  ratioFlipsOutput,
  lineTurnsBack,
  pumpIndex,
  accessory,
  shiftCable,
  convertibleHand,
  unprovenSource,
  controllablePitch,
  trainSense,
  inputAccepted,
  turningRequirement,
  moversAgree,
];
