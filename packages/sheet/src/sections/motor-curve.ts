import type { LineAnalysis, ShaftLine } from '@tailshaft/drivetrain';
import { given, motorTorque, powerFromTorque, type Value } from '@tailshaft/mechanics';

interface CurvePoint {
  readonly speed: Value<'rotational speed'>;
  readonly power: Value<'power'>;
  readonly torque: Value<'torque'>;
}

/** Steps between standstill and greatest speed. */
const STEPS = 24;

/** What a motor gives in continuous service: its torque up to base speed, its power from there to its greatest speed. */
export function motorCurve({ motor }: ShaftLine, analysis: LineAnalysis): CurvePoint[] {
  const rated = analysis.rated.value;
  const peak = analysis.peakTorque.value;
  const greatestSpeed = analysis.governedSpeed.value ?? rated?.speed;
  if (!motor || !rated || !peak || !greatestSpeed) return [];
  const baseSpeed = rated.power.si / peak.torque.si;
  const speeds = Array.from({ length: STEPS }, (_, index) => (greatestSpeed.si * (index + 1)) / STEPS);
  return [...speeds, Math.min(baseSpeed, greatestSpeed.si)]
    .sort((one, other) => one - other)
    .map(si => {
      const speed = given('motor speed', 'ω', 'rotational speed', si);
      const torque = motorTorque({ torqueLimit: peak.torque, powerLimit: rated.power, greatestSpeed, speed });
      return { speed, torque, power: powerFromTorque({ torque, speed }) };
    });
}
