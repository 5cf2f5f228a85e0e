import type { Rule } from '../rule.js';
import { barredRangeRule } from './barred-range.js';
import { bedCentres } from './bed-centres.js';
import { damperMatch } from './damper-match.js';
import { damperSpline } from './damper-spline.js';
import { engineSpace } from './engine-space.js';
import { flywheelHousingRule } from './flywheel-housing.js';
import { flywheelRecess } from './flywheel-recess.js';
import { freewheel } from './freewheel.js';
import { gearGauges } from './gear-gauges.js';
import { helmFittings } from './helm-fittings.js';
import { loadPath } from './load-path.js';
import { torsionalCritical } from './torsional-critical.js';
import { torsionalStatement } from './torsional-statement.js';
import { torsionalStressRule } from './torsional-stress.js';
import { weightChange } from './weight-change.js';

/** Rules on how engine, gear, shaft and hull fit each other, in the order of the catalogue of mistakes. */
export const INTERFACE_RULES: readonly Rule[] = [
  loadPath,
  flywheelHousingRule,
  flywheelRecess,
  damperMatch,
  damperSpline,
  torsionalStatement,
  torsionalCritical,
  torsionalStressRule,
  barredRangeRule,
  engineSpace,
  weightChange,
  bedCentres,
  gearGauges,
  helmFittings,
  freewheel,
];
