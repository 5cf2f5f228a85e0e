import { renamed, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import type { Needs } from '../../judge/needs.js';
import type { Part } from '../../model/part.js';

/** The greatest torque that enters a part ahead: at peak torque of the engine, which is never below that at rated power. */
export function greatestTorqueAt(
  analysis: LineAnalysis,
  part: Part,
  needs: Needs,
): Value<'torque'> | undefined {
  const peak = needs.take(analysis.peakTorque);
  needs.take(analysis.rated);
  if (!peak || !analysis.rated.value) return undefined;
  const loads = analysis.loads(peak);
  const entering = loads.entering.get(part);
  if (!entering) needs.take({ value: undefined, missing: loads.missing });
  return entering && renamed(entering.torque, `torque entering the ${part.role}`);
}
