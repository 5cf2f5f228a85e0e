import type { Rule } from '../rule.js';
import { absorbedPower } from './absorbed-power.js';
import { bladeArea } from './blade-area.js';
import { boreLargeEnd } from './bore-large-end.js';
import { boreTaper } from './bore-taper.js';
import { clearanceByDiameter } from './clearance-by-diameter.js';
import { cup } from './cup.js';
import { hubLength } from './hub-length.js';
import { keyway } from './keyway.js';
import { materialPair } from './material-pair.js';
import { nozzleGap } from './nozzle-gap.js';
import { otherClearances } from './other-clearances.js';
import { pairPitch } from './pair-pitch.js';
import { pitchRuleOfThumb } from './pitch-rule-of-thumb.js';
import { stampedSize } from './stamped-size.js';
import { stampsAgree } from './stamps-agree.js';
import { tipClearance } from './tip-clearance.js';
import { toleranceClass } from './tolerance-class.js';

/** Rules on the propeller: its place, its size against the power, its bore, and how it is ordered. */
export const PROPELLER_RULES: readonly Rule[] = [
  absorbedPower,
  tipClearance,
  clearanceByDiameter,
  otherClearances,
  nozzleGap,
  bladeArea,
  stampedSize,
  stampsAgree,
  pairPitch,
  boreTaper,
  boreLargeEnd,
  keyway,
  hubLength,
  cup,
  pitchRuleOfThumb,
  toleranceClass,
  materialPair,
];
