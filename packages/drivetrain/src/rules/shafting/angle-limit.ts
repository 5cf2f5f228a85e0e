import { angleInHand, renamed, type Value } from '@tailshaft/mechanics';
import { declaredShaftAngle, engineAngle, underWay } from '../../analysis/angles.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each, isSaid } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_ANGLES } from './angle-specs.js';
import { DEFER, PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/angle-limit',
  title: 'Engine, gear and shaft lie within their permitted angles',
  mistakes: ['L17'],
  severity: 'error',
  criterion: 'angle at rest, and with the trim under way, against the limit stated for each',
  source: PART_SHEET,
  manual:
    'An engine tilted too far starves its oil pump at one end and floods a seal at the other; so does a gear. ' +
    'Makers state a limit at rest and one under way, and the trim of the hull adds to the second. A shaft ' +
    'steeper than some 12 to 15 degrees wastes thrust and loads the propeller unevenly; the criteria may set a ' +
    'limit with "shaft angle at most". A down-angle gear levels the engine on a steep shaft.',
  caution: `${DEFER} Angles are measured at the load line; bow trim under way is not included.`,
  limitOf: 'the maker’s limit, or the author’s criterion',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_ANGLES, ['running trim 5 deg', 'running trim 10 deg']),
    passing: WITH_ANGLES,
    cannotTell: changed(WITH_ANGLES, ['running trim 5 deg', 'running trim unknown']),
  })),
};

export const angleLimit: Rule = { ...INFO, scope: 'line', check };

interface Limit {
  readonly subject: string;
  readonly name: string;
  readonly state: 'at rest' | 'under way';
  readonly fact: Quantity<'angle'>;
  readonly host: object;
  readonly property: string;
  readonly angle: (needs: Needs) => Value<'angle'> | undefined;
}

function check(context: LineContext): Apart<Verdict> {
  return each(limitsOf(context), limit => judge(context, limit));
}

function limitsOf({ line, vessel }: LineContext): Limit[] {
  const limits: Limit[] = [];
  for (const part of [line.engine ?? line.motor, line.gear]) {
    if (!part) continue;
    const common = {
      host: home(part),
      name: nameOf(part),
      angle: (needs: Needs) => engineAngle(line, needs),
    };
    // Whether there is a limit at all is no part of judging the other one.
    if (isSaid(() => part.installedAngleMax))
      limits.push({
        ...common,
        subject: `${part.path}.installed-angle`,
        state: 'at rest',
        fact: part.installedAngleMax!,
        property: 'installed angle at most',
      });
    if (isSaid(() => part.runningAngleMax))
      limits.push({
        ...common,
        subject: `${part.path}.running-angle`,
        state: 'under way',
        fact: part.runningAngleMax!,
        property: 'running angle at most',
      });
  }
  const own = vessel.criteria?.shaftAngle;
  if (own && line.shafts.length > 0) {
    limits.push({
      subject: `${line.path}.shaft-angle`,
      name: 'the shaft',
      state: 'at rest',
      fact: own,
      host: vessel.criteria!.origin,
      property: 'shaft angle at most',
      angle: needs => declaredShaftAngle(line, needs),
    });
  }
  return limits;
}

function judge({ line, vessel, analysis }: LineContext, limit: Limit): Verdict {
  const say = sayFor(INFO, limit.subject);
  const needs = new Needs();
  const most = needs.fact(limit.fact, {
    what: `${limit.property} of ${limit.name}`,
    host: limit.host,
    property: limit.property,
  });
  const still = limit.angle(needs);
  const lies = limit.state === 'at rest' ? still : still && underWay(still, vessel, needs);
  const angle = lies && needs.found(lies);
  const place = still?.origin ?? limit.fact.origin;
  if (!most || !angle) {
    return waits(
      say,
      needs,
      place,
      `${line.name}: whether ${limit.name} lies within its limit ${limit.state}`,
    );
  }
  const allowed = renamed(most, 'greatest angle allowed', 'α_max');
  const left = angleInHand({ limit: allowed, angle });
  const numbers = `${limit.name} is at ${analysis.tell(angle)} ${limit.state}; ${analysis.tell(allowed)} is allowed`;
  // Level or bows down: there is nothing to divide by, and nothing to ask.
  if (angle.si <= 0)
    return say.holds({
      place,
      capacity: allowed,
      workings: [angle, left],
      message: `${line.name}: ${numbers}.`,
    });
  return say.compare({
    place,
    capacity: allowed,
    demand: angle,
    workings: [angle, left],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. A down-angle gear levels the engine on a steep shaft; otherwise reduce the shaft angle.`,
    related: [{ at: limit.fact.origin, message: 'the limit' }],
  });
}
