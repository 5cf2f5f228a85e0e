import { given, type Value } from '../core/value.js';

/** Speeds a shaft runs at, from the lowest (clutch-in at idle) to the highest (governed maximum). */
export interface RunningRange {
  readonly from: Value<'rotational speed'>;
  readonly to: Value<'rotational speed'>;
}

export interface CriticalPlace {
  readonly position: 'below' | 'inside' | 'above';
  /**
   * Distance from the range as a fraction, positive outside: critical ÷ highest − 1 above it, 1 − critical ÷ lowest below it.
   * Inside it is minus the distance to the nearer end, so that it has no jump at the ends.
   */
  readonly margin: number;
}

/** Lateral criticals are kept this far from the running range: ±20 %. */
export const LATERAL_SEPARATION = given('separation of a lateral critical', 's', 'number', 0.2, {
  assumed: '20 % outside the running range at shaft and blade order (from memory)',
});

/** Where a critical speed lies against a running range; undefined when a speed is not known or not usable. */
export function placeCritical(
  critical: Value<'rotational speed'>,
  range: RunningRange,
): CriticalPlace | undefined {
  const speed = critical.si;
  const [from, to] = [range.from.si, range.to.si];
  if (![speed, from, to].every(Number.isFinite) || speed < 0 || from < 0 || to <= 0 || from > to)
    return undefined;
  if (speed > to) return { position: 'above', margin: speed / to - 1 };
  if (speed < from) return { position: 'below', margin: 1 - speed / from };
  const toLowest = from === 0 ? Number.POSITIVE_INFINITY : speed / from - 1;
  return { position: 'inside', margin: -Math.min(toLowest, 1 - speed / to) };
}
