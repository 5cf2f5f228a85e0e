import { Needs } from '../judge/needs.js';
import { barredRanges, isForbidden } from './barred-range.js';
import type { LineAnalysis } from './line.js';
import { hasTorsionalData, torsionalSystem } from './torsional.js';
import { hasStressData, torsionalStressOf } from './torsional-stress.js';

/** How far the firing order stays out of the running range, as a share; negative inside it. Undefined where it cannot be told. */
export function firingClearance(analysis: LineAnalysis): number | undefined {
  const system = torsionalSystem(analysis, new Needs());
  const margins = (system?.criticals ?? [])
    .filter(one => one.order.kind === 'engine firing')
    .map(one => one.place?.margin ?? Number.NaN);
  const least = Math.min(...margins);
  return Number.isFinite(least) ? least : undefined;
}

/**
 * Least margin of vibratory stress under the limit for continuous running, along the whole running range. Undefined
 * where it cannot be told.
 */
export function continuousMargin(analysis: LineAnalysis): number | undefined {
  const stress = torsionalStressOf(analysis).value;
  if (!stress || stress.open.length > 0 || stress.points.length === 0) return undefined;
  return Math.min(...stress.points.map(one => one.continuous / one.stress)) - 1;
}

/** Whether a change of the line makes torsional vibration worse than it was found: a way out must not. */
export function torsionGetsWorse(before: LineAnalysis, after: LineAnalysis): boolean {
  if (!hasTorsionalData(before.line)) return false;
  const clear = (one: LineAnalysis) => (firingClearance(one) ?? -1) >= 0;
  if (clear(before) && !clear(after)) return true;
  if (!hasStressData(before)) return false;
  const [was, is] = [torsionalStressOf(before).value, torsionalStressOf(after).value];
  if (!was || was.open.length > 0) return false;
  return (
    !is ||
    is.open.length > 0 ||
    (is.points.some(isForbidden) && !was.points.some(isForbidden)) ||
    barredRanges(is).length > barredRanges(was).length
  );
}
