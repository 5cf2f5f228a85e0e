import { renamed, type Value } from '@tailshaft/mechanics';
import type { FullLoadPoint } from '../../analysis/engine-points.js';
import type { LineAnalysis } from '../../analysis/line.js';
import type { Needs } from '../../judge/needs.js';
import type { Part } from '../../model/part.js';

/**
 * The point of greatest torque: at peak torque of the engine, which is never below that at rated power. Where only one of
 * the two is known, that one, and the other is noted: the torque is then at least so much.
 */
export function greatestKnownPoint(analysis: LineAnalysis, needs: Needs): FullLoadPoint | undefined {
  const peak = needs.take(analysis.peakTorque);
  const rated = needs.take(analysis.rated);
  return peak ?? rated;
}

/** The greatest torque that enters a part ahead; at least so much where `needs` notes a gap. */
export function greatestTorqueAt(
  analysis: LineAnalysis,
  part: Part,
  needs: Needs,
): Value<'torque'> | undefined {
  const point = greatestKnownPoint(analysis, needs);
  if (!point) return undefined;
  const loads = analysis.loads(point);
  const entering = loads.entering.get(part);
  if (!entering) needs.take({ value: undefined, missing: loads.missing });
  return entering && needs.found(renamed(entering.torque, `torque entering the ${part.role}`));
}

/** `at least ` where the engine does not tell all that it puts out. */
export function atLeast(analysis: LineAnalysis): string {
  return analysis.peakTorque.value && analysis.rated.value ? '' : 'at least ';
}
