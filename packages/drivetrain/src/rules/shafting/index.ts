import type { Rule } from '../rule.js';
import { afterBreak } from './after-break.js';
import { angleLimit } from './angle-limit.js';
import { angleStackRule } from './angle-stack.js';
import { bearingLength } from './bearing-length.js';
import { bearingSpan } from './bearing-span.js';
import { bearingWater } from './bearing-water.js';
import { combinedStressRule } from './combined-stress.js';
import { couplingBolts } from './coupling-bolts.js';
import { couplingBore } from './coupling-bore.js';
import { couplingFlange } from './coupling-flange.js';
import { damageMadeGood } from './damage-made-good.js';
import { diameter } from './diameter.js';
import { flexibleForMisalignment } from './flexible-for-misalignment.js';
import { jointAngles } from './joint-angles.js';
import { jointThrust } from './joint-thrust.js';
import { keyStrengthRule } from './key-strength.js';
import { lengthStack } from './length-stack.js';
import { materialChanged } from './material-changed.js';
import { materialNamed } from './material-named.js';
import { mountRating } from './mount-rating.js';
import { overhang } from './overhang.js';
import { propellerWhirlRule } from './propeller-whirl.js';
import { sectionPlaces } from './section-places.js';
import { serviceFactorChosen } from './service-factor.js';
import { softMounts } from './soft-mounts.js';
import { spanGuide } from './span-guide.js';
import { supportLost } from './support-lost.js';
import { tailshaftExam } from './tailshaft-exam.js';
import { thrustBearingLifeRule } from './thrust-bearing-life.js';
import { thrustCapacity } from './thrust-capacity.js';
import { thrustCollarRule } from './thrust-collar.js';
import { thrustPathRule } from './thrust-path.js';
import { tubeBore } from './tube-bore.js';

/** Rules on the shaft line, in the order of the catalogue of mistakes. */
export const SHAFTING_RULES: readonly Rule[] = [
  diameter,
  combinedStressRule,
  serviceFactorChosen,
  materialNamed,
  materialChanged,
  bearingSpan,
  spanGuide,
  propellerWhirlRule,
  supportLost,
  overhang,
  bearingLength,
  tubeBore,
  couplingFlange,
  couplingBore,
  couplingBolts,
  keyStrengthRule,
  flexibleForMisalignment,
  jointThrust,
  jointAngles,
  thrustPathRule,
  thrustCapacity,
  thrustBearingLifeRule,
  thrustCollarRule,
  angleLimit,
  angleStackRule,
  lengthStack,
  sectionPlaces,
  softMounts,
  mountRating,
  bearingWater,
  damageMadeGood,
  afterBreak,
  tailshaftExam,
];
