import { ratedDemand, renamed, shaftSpeedThroughGear, type Value } from '@tailshaft/mechanics';
import { type MotorLimits, motorLimits } from '../motor-limits.js';
import { scaledDemand } from '../propeller-law.js';
import type { Case } from './case.js';

/** A motor by itself with this propeller, at the ends of the speeds at which it can give its power. */
export interface MotorRun extends MotorLimits {
  /** Share of its torque that the propeller takes at the lowest of them. */
  readonly torqueShare: Value<'ratio'>;
  /** Share of its power that the propeller takes at its top speed; absent where nobody says how fast it may turn. */
  readonly powerShare: Value<'ratio'> | undefined;
  /** Power absorbed at the lowest of them. */
  readonly absorbed: Value<'power'>;
}

/** `absorbedAt` is what the balance with the hull says of a shaft speed; where it says nothing, the propeller law scales from rated speed. */
export function motorRun(
  { line, vessel, rated, ratio, available }: Case,
  asked: Value<'power'>,
  absorbedAt?: (shaftSpeed: Value<'rotational speed'>) => Value<'power'> | undefined,
): MotorRun | undefined {
  const limits = motorLimits(line, rated);
  if (!limits) return undefined;
  const at = (engineSpeed: Value<'rotational speed'>) => {
    if (engineSpeed.si === rated.speed.si) return asked;
    const shaftSpeed = shaftSpeedThroughGear({ engineSpeed, ratio });
    const ratedShaft = shaftSpeedThroughGear({ engineSpeed: rated.speed, ratio });
    const absorbed = absorbedAt?.(shaftSpeed) ?? scaledDemand(asked, ratedShaft, shaftSpeed, vessel);
    return renamed(absorbed, 'power absorbed', 'PD');
  };
  const share = (power: Value<'power'>) => ratedDemand({ absorbed: power, delivered: available });
  const absorbed = at(limits.from);
  // It never turns slower at full power than where it is rated, whatever its top speed is said to be.
  const fastest = limits.top && (limits.top.si > rated.speed.si ? limits.top : rated.speed);
  return {
    ...limits,
    absorbed,
    torqueShare: share(absorbed),
    powerShare: fastest && share(at(fastest)),
  };
}
