import {
  bollardUpperBound,
  classSpanFactors,
  classSpanFast,
  classSpanSlow,
  given,
  handbookBollardThrust,
  handbookDiameter,
  handbookWakeSingle,
  handbookWakeTwin,
  motorBaseSpeed,
  nozzleBollardUpperBound,
  renamed,
  type Value,
  whirlingBearingSpan,
} from '@tailshaft/mechanics';
import type { LineAnalysis } from './line.js';
import { isDucted } from './propulsion/blades.js';
import { waterDensity } from './propulsion/hull-forms.js';
import { shaftingOf } from './shafting.js';

/*
 * What the usual formulas would choose: a propeller, pull or bearing span far from these wants a second look. No check judges by them.
 */

/** Diameter, wake and pull that a handbook would give for this power and speed, and the pull that momentum allows at most. */
export function propellerYardsticks(analysis: LineAnalysis): (Value | undefined)[] {
  const { line, vessel } = analysis;
  const { propeller } = line;
  const propulsion = analysis.propulsion?.value;
  if (!propeller || !propulsion) return [];
  const { rated, screws } = propulsion;
  const { shaftSpeed, power } = rated;
  const diameter = propeller.diameter?.value;
  const blockCoefficient = vessel.hull?.blockCoefficient?.value;
  const wake = screws === 1 ? handbookWakeSingle : screws === 2 ? handbookWakeTwin : undefined;
  const most = isDucted(propeller) ? nozzleBollardUpperBound : bollardUpperBound;
  return [
    renamed(handbookDiameter({ power, shaftSpeed }), 'diameter for that power and shaft speed, handbook'),
    blockCoefficient && wake && renamed(wake({ blockCoefficient }), 'wake fraction, handbook'),
    diameter &&
      renamed(
        most({ density: waterDensity(vessel), diameter, power }),
        'bollard thrust by momentum theory, upper bound',
      ),
    diameter && !isDucted(propeller)
      ? renamed(handbookBollardThrust({ diameter, power }), 'bollard thrust, handbook')
      : undefined,
  ];
}

/** The longest bearing span that whirls above the running range, and the longest by class, for the aftmost shaft. */
export function shaftYardsticks(analysis: LineAnalysis): (Value | undefined)[] {
  const shaft = analysis.line.shafts.at(-1);
  const speed = shaftingOf(analysis).greatestSpeed.value;
  const diameter = shaft?.diameter?.value;
  if (!shaft || !speed || !diameter) return [];
  const youngsModulus = shaft.grade?.youngsModulus?.value;
  const density = shaft.grade?.density?.value;
  const bore = shaft.boreDiameter
    ? shaft.boreDiameter.value
    : given('bore', 'd_i', 'length', 0, { assumed: 'solid, as no bore is stated' });
  const lubrication = shaft.bearings?.map(one => one.lubrication?.value).find(one => one !== undefined);
  const row = classSpanFactors.find(one => lubrication && one.bearing.startsWith(lubrication));
  const slow = speed.si <= (350 * Math.PI) / 30;
  const factor = (symbol: string, si: number) =>
    given('class factor of the bearing', symbol, 'number', si, { assumed: `${row!.bearing}, from memory` });
  return [
    youngsModulus && density && bore
      ? renamed(
          whirlingBearingSpan({ outsideDiameter: diameter, bore, speed, youngsModulus, density }),
          'bearing span that whirls at the greatest shaft speed',
        )
      : undefined,
    row &&
      renamed(
        slow
          ? classSpanSlow({ diameter, speed, slowFactor: factor('K₁', row.slow.low) })
          : classSpanFast({ diameter, speed, fastFactor: factor('K₂', row.fast) }),
        'longest bearing span by class, from memory',
      ),
  ];
}

/** Speed up to which a motor gives its torque, where its sheet states torque and power alone. */
export function motorYardsticks({ line: { motor } }: LineAnalysis): (Value | undefined)[] {
  const torqueLimit = motor?.torque?.value;
  const powerLimit = motor?.power?.value?.y;
  if (motor?.baseSpeed || !torqueLimit || !powerLimit) return [];
  return [motorBaseSpeed({ torqueLimit, powerLimit })];
}
