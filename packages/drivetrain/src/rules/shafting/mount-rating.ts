import { renamed, type Value } from '@tailshaft/mechanics';
import { bollardThrust, thrustPath } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, apart } from '../../model/reads.js';
import { atLeast, greatestKnownPoint } from '../capacity/greatest-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_MOUNTS } from './soft-mounts.js';
import { DEFER, PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/mount-rating',
  title: 'The mounts are rated for shaft torque and propeller thrust',
  mistakes: ['L21'],
  severity: 'warning',
  criterion:
    'greatest shaft torque, and thrust at the bollard where the gear takes it, against the ratings of the mounts',
  source: PART_SHEET,
  manual:
    'The torque reaction on the mounts of a bolted engine and gear is that of the propeller shaft, not of the ' +
    'engine: a deeper ratio raises it. Where the gear takes the thrust, the mounts pass it to the hull. Mount ' +
    'sheets mostly rate weight only. State the ratings of all mounts together, "thrust at most" and "torque at ' +
    'most", and fit stiffer mounts or more of them where they are not enough.',
  caution: `${DEFER} Load on a single mount depends on spacing; shock and slamming come on top.`,
  limitOf: 'the maker’s ratings',
  noCure: 'Mounts are chosen from the maker’s range by load; the message states it.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_MOUNTS, ['torque at most 3200 N.m', 'torque at most 2200 N.m']),
    passing: WITH_MOUNTS,
    cannotTell: changed(WITH_MOUNTS, ['  torque at most 3200 N.m', '']),
  })),
};

export const mountRating: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, analysis } = context;
  const prime = line.engine ?? line.motor;
  const mounts = prime?.mounts;
  if (!prime || !mounts) return undefined;
  const torque = () =>
    judge(context, 'torque', mounts.torque, mounts.origin, needs => {
      const point = greatestKnownPoint(analysis, needs);
      const loads = point && analysis.loads(point);
      if (loads && !loads.shaft) needs.take({ value: undefined, missing: loads.missing });
      return loads?.shaft && renamed(loads.shaft.torque, 'torque reaction on the mounts', 'T');
    });
  const thrust = () => {
    const taker = thrustPath(line).taker?.part;
    const onMounts = taker !== undefined && (taker === line.gear || taker === line.motor);
    if (!onMounts || !line.propeller) return undefined;
    return judge(context, 'thrust', mounts.thrust, mounts.origin, needs => bollardThrust(analysis, needs));
  };
  return apart(torque, thrust);
}

function judge(
  { line, analysis }: LineContext,
  what: 'torque' | 'thrust',
  fact: { value: Value | undefined; written: string; origin: object } | undefined,
  host: object,
  demandOf: (needs: Needs) => Value | undefined,
): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const allowed = needs.fact(fact, {
    what: `${what} rating of the mounts of ${nameOf((line.engine ?? line.motor)!)}`,
    host,
    property: `${what} at most`,
  });
  const half = demandOf(needs);
  const demand = half && needs.found(half);
  const place = fact?.origin ?? host;
  const whether = `${line.name}: whether the mounts carry the ${what}`;
  if (!allowed || !demand) {
    const known = demand
      ? `the ${what} is ${analysis.tell(demand, 3)}`
      : allowed && `they are rated for ${analysis.tell(allowed, 3)}`;
    return waits(say, needs, place, whether, known ? { known } : {});
  }
  const load =
    what === 'torque' ? 'torque reaction, that of the propeller shaft,' : 'propeller thrust at the bollard';
  const numbers = `${load} ${what === 'torque' ? `is ${atLeast(analysis)}` : 'is about '}${analysis.tell(demand, 3)}, the mounts are rated for ${analysis.tell(allowed, 3)}`;
  return judgeKnown(say, needs, {
    place,
    capacity: allowed,
    demand,
    workings: [demand],
    what: whether,
    numbers,
    remedy: `. Fit mounts rated for it${what === 'thrust' ? ', or a separate thrust bearing' : ', or less ratio'}.`,
  });
}
