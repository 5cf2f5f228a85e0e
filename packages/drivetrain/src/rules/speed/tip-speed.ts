import { renamed, TIP_SPEED_ADVICE, TIP_SPEED_SOURCE, tipSpeed as tipSpeedOf } from '@tailshaft/mechanics';
import { greatestDiameter } from '../../analysis/pair.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { findOffered } from '../capacity/offered-ratios.js';
import { ratedShaftSpeed } from '../capacity/retained-propeller.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const WITH_LIMIT = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  criteria { tip speed at most 40 m/s }\n  arrangement proposed {',
]);

const ADVICE = TIP_SPEED_ADVICE.map(one => `${one.from} to ${one.to} m/s for ${one.craft}`).join(', ');

const INFO: RuleInfo = {
  id: 'speed/tip-speed',
  title: 'Tip speed is within the chosen limit',
  mistakes: ['P04'],
  severity: 'warning',
  criterion:
    'tip speed at rated shaft speed against the limit in the criteria; without a limit it is shown as advice only',
  source: TIP_SPEED_SOURCE,
  manual:
    'Tip speed is half the diameter times shaft speed. High tip speed causes cavitation, noise and pressure ' +
    `pulses on the hull. In common use are ${ADVICE}; no publication was found for them, so nothing is judged ` +
    'until the criteria set a limit. Fit a deeper ratio with more pitch, or a smaller diameter with more blade ' +
    'area.',
  caution: 'Tip speed alone does not decide cavitation: blade area and loading do, by a named method.',
  limitOf: 'the author’s criterion: there is no usual one',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_LIMIT, ['tip speed at most 40 m/s', 'tip speed at most 35 m/s']),
    passing: WITH_LIMIT,
    cannotTell: changed(WITH_LIMIT, ['  diameter 26 in', '']),
  })),
};

export const tipSpeed: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const { propeller } = line;
  const limit = vessel.criteria?.tipSpeed;
  if (!propeller || !(line.engine || line.motor)) return undefined;
  if (!limit && !propeller.diameter?.value) return undefined;
  const say = sayFor(INFO, line.path);
  const place = propeller.diameter?.origin ?? propeller.origin;
  const needs = new Needs();
  const shaftSpeed = ratedShaftSpeed(analysis, needs);
  const diameter = greatestDiameter(propeller, needs);
  const allowed =
    limit &&
    needs.fact(limit, {
      what: 'tip speed limit of the criteria',
      host: vessel.criteria!.origin,
      property: 'tip speed at most',
    });
  if (!shaftSpeed || !diameter || (limit && !allowed)) {
    if (!limit) return undefined;
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(`${line.name}: the tip speed`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const speed = tipSpeedOf({ shaftSpeed, diameter: renamed(diameter, 'diameter', 'D') });
  const numbers = `tip speed ${analysis.tell(speed)} (${diameter.written ?? analysis.tell(diameter)} at ${analysis.tell(shaftSpeed)})`;
  if (!allowed) {
    return say.doesNotApply({
      place,
      workings: [speed],
      message: `${line.name}: ${numbers}. The criteria set no limit; in common use: ${ADVICE}.`,
    });
  }
  return say.compare({
    place,
    capacity: allowed,
    demand: speed,
    workings: [speed],
    criterion: {
      said: `tip speed at most ${allowed.written ?? analysis.tell(allowed)}, chosen in the criteria`,
      chosenBy: 'author',
    },
    message: `${line.name}: ${numbers}, at most ${allowed.written ?? analysis.tell(allowed)} required.`,
    failMessage: `${line.name}: ${numbers}, at most ${allowed.written ?? analysis.tell(allowed)} required. A deeper ratio with more pitch, or less diameter with more blade area, lowers it.`,
    related: [{ at: limit!.origin, message: 'the limit chosen' }],
    routes: () =>
      findOffered(context, other => {
        const then = ratedShaftSpeed(other, new Needs());
        return then !== undefined && tipSpeedOf({ shaftSpeed: then, diameter }).si <= allowed.si;
      }).map(({ ratio, gear, change, other }) => ({
        title: `Use ${ratio}: ${change}, tip speed ${analysis.tell(tipSpeedOf({ shaftSpeed: ratedShaftSpeed(other, new Needs())!, diameter }))}`,
        edits: gearEdits(line.gear!, gear),
      })),
  });
}
