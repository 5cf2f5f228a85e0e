import { barredRangeEnd, barredRangeStart, given, type Value } from '@tailshaft/mechanics';
import type { Shaft } from '../model/shafting.js';
import type { StressPoint, TorsionalStress } from './torsional-stress.js';

/** Speeds of a shaft that may only be passed, by IACS UR M68. */
export interface BarredRange {
  readonly shaft: Shaft;
  readonly from: Value<'rotational speed'>;
  readonly to: Value<'rotational speed'>;
  /** Where the stress stands highest over what is allowed for continuous running. */
  readonly worst: StressPoint;
}

/** No barred range may lie at or above this share of rated speed (from memory). */
export const BARRED_BELOW = 0.8;

/** Stress that may not even be passed, or that no barred range may stand for. */
export function isForbidden(point: StressPoint): boolean {
  return point.stress > point.transient || (point.stress > point.continuous && point.share >= BARRED_BELOW);
}

/**
 * Ranges round the speeds at which the stress is over τ_C and not over τ_T: what M68 states for the critical, made
 * wider where the stress is over τ_C beyond it. Touching ones are one.
 */
export function barredRanges(stress: TorsionalStress): BarredRange[] {
  const ranges: BarredRange[] = [];
  for (const section of new Set(stress.points.map(one => one.section))) {
    const { shaft } = section;
    const rated = stress.rated(shaft);
    for (const over of stretches(stress.points.filter(one => one.section === section))) {
      const worst = over.reduce((a, b) => (b.stress / b.continuous > a.stress / a.continuous ? b : a));
      const criticalSpeed = speedValue('critical speed', 'n_c', worst.speed);
      const inputs = { criticalSpeed, ratedSpeed: rated };
      const from = barredRangeStart(inputs);
      const to = barredRangeEnd(inputs);
      const [first, last] = [over[0]!.speed, over.at(-1)!.speed];
      ranges.push({
        shaft,
        from: first < from.si ? speedValue('least speed over the limit', 'n₁', first) : from,
        to: last > to.si ? speedValue('greatest speed over the limit', 'n₂', last) : to,
        worst,
      });
    }
  }
  return joined(ranges);
}

/**
 * Neighbouring speeds of one section that are over the limit for continuous running, and may be barred. A declared
 * stress stands for a critical of its own.
 */
function stretches(points: readonly StressPoint[]): StressPoint[][] {
  const isOver = (one: StressPoint) => one.stress > one.continuous;
  const found = points.filter(one => one.declared && isOver(one)).map(one => [one]);
  let open: StressPoint[] | undefined;
  for (const point of points) {
    if (point.declared) continue;
    if (!isOver(point)) open = undefined;
    else if (open) open.push(point);
    else {
      open = [point];
      found.push(open);
    }
  }
  return found.filter(one => !one.some(isForbidden));
}

function joined(ranges: readonly BarredRange[]): BarredRange[] {
  const result: BarredRange[] = [];
  for (const range of [...ranges].sort((a, b) => a.from.si - b.from.si)) {
    const at = result.findIndex(one => one.shaft === range.shaft && one.to.si >= range.from.si);
    const before = result[at];
    if (!before) result.push(range);
    else {
      const higher = (one: BarredRange) => one.worst.stress / one.worst.continuous;
      result[at] = {
        ...before,
        to: before.to.si >= range.to.si ? before.to : range.to,
        worst: higher(before) >= higher(range) ? before.worst : range.worst,
      };
    }
  }
  return result;
}

function speedValue(label: string, symbol: string, si: number): Value<'rotational speed'> {
  return given(label, symbol, 'rotational speed', si, { assumed: 'from the stress along the running range' });
}
