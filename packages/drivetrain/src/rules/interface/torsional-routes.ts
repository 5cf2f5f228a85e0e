import type { LineAnalysis } from '../../analysis/line.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { carries, gearRoutes } from '../capacity/gear-routes.js';
import { couplingRoutes, type Outlook } from '../coupling-routes.js';
import { wantedDuty } from '../planned.js';

/** Ways out of torsional trouble: another coupling in any place that gives, or another ratio; each ranked by its margin. */
export function softerRoutes(
  context: LineContext,
  judge: (after: LineAnalysis) => Outlook | undefined,
): Route[] {
  const { line, vessel } = context;
  const soft = line.couplings.filter(one => one.kind?.value !== 'rigid');
  const duty = wantedDuty(vessel, new Needs());
  const wanted = vessel.criteria?.gearTorqueMargin?.value?.si ?? 0;
  const ratios =
    duty === undefined
      ? []
      : gearRoutes(context, after =>
          carries(after, duty, 'ahead', wanted) === undefined ? undefined : judge(after),
        );
  return [...soft.flatMap(one => couplingRoutes(context, one, judge)), ...ratios];
}
