import { given, lengthLeftOver, percent, type Value } from '@tailshaft/mechanics';
import { tellLike } from '../../analysis/telling.js';
import { balanceChange, heavyChanges, massChange } from '../../analysis/weights.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { type Apart, apart } from '../../model/reads.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';

const WITH_WEIGHTS = changed(
  REPOWER,
  ['  rotation standard viewed from flywheel\n', '  rotation standard viewed from flywheel\n  mass 905 kg\n'],
  [
    'engine Kittiwake-9 "six-cylinder diesel" {\n',
    'engine Kittiwake-9 "six-cylinder diesel" {\n  mass 905 kg\n',
  ],
  [
    '  arrangement existing {',
    '  hull planing { waterline length 10.9 m  lightship 9.8 t  centre of gravity at 4.35 m }\n\n  arrangement existing {',
  ],
  [
    'engine Old-Eight at medium { flywheel aft }',
    'engine Old-Eight at medium { flywheel aft  position 3.85 m }',
  ],
  [
    'replace engine Kittiwake-9 at medium { flywheel aft',
    'replace engine Kittiwake-9 at medium { flywheel aft  position 3.85 m',
  ],
);

const INFO: RuleInfo = {
  id: 'interface/weight-change',
  title: 'Weight and balance stay within the stability record',
  mistakes: ['I07'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'weight change of machinery and stated weights against a share of lightship; shift of the centre of gravity ' +
    'against a share of length',
  source: {
    title: 'inspection practice for vessels with a running weight record: 2 % of lightship, 1 % of length',
    confidence: 'common practice',
  },
  manual:
    'A new engine is often some hundred kilograms lighter or heavier than the old one. The vessel trims, ballast ' +
    'is added or removed, and a stability record no longer describes the vessel. State the mass of engines and ' +
    'gears, lightship, centre of gravity and positions: the change is compared with 2 % of lightship and 1 % of ' +
    'waterline length, or with "weight change at most" and "balance change at most" in the criteria. Tanks, ' +
    'ballast and whatever else comes or goes under an arrangement is a "weight" of the hull. Put ballast or a ' +
    'stability review into the scope of the work.',
  caution:
    `${DEFER} Only engines, motors, gears, transfers and stated weights are counted; heights are not, nor is ` +
    'what is in the tanks.',
  noCure: 'The weights are those of the parts; whoever keeps the stability record must update it.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(WITH_WEIGHTS, [
      '"six-cylinder diesel" {\n  mass 905 kg',
      '"six-cylinder diesel" {\n  mass 1180 kg',
    ]),
    passing: WITH_WEIGHTS,
    cannotTell: changed(WITH_WEIGHTS, ['lightship 9.8 t', 'lightship unknown']),
  })),
};

export const weightChange: Rule = { ...INFO, scope: 'arrangement', check };

const WEIGHT = 0.02;
const BALANCE = 0.01;

function check(context: ArrangementContext): Apart<Verdict> | undefined {
  const { arrangement, vessel } = context;
  if (!arrangement.before) return undefined;
  const { hull, criteria } = vessel;
  const moved = heavyChanges(arrangement, vessel);
  if (moved.length === 0) return undefined;
  return apart(
    () => ((hull?.lightship ?? criteria?.weightChange) ? judgeWeight(context) : undefined),
    () => ((hull?.centreOfGravity ?? criteria?.balanceChange) ? judgeBalance(context) : undefined),
  );
}

function judgeWeight({ arrangement, vessel }: ArrangementContext): Verdict {
  const say = sayFor(INFO, `${arrangement.path}.weight`);
  const needs = new Needs();
  const lightship = needs.fact(vessel.hull?.lightship, {
    what: `lightship of ${vessel.name}`,
    host: vessel.hull?.origin ?? vessel.origin,
    property: vessel.hull ? 'lightship' : 'hull',
  });
  const change = massChange(arrangement, vessel, needs);
  if (change) needs.found(change);
  const place = arrangement.nameOrigin;
  if (!lightship || !change) {
    return waits(say, needs, place, `Whether the weight of ${arrangement.name} stays within the record`);
  }
  const own = vessel.criteria?.weightChange?.value;
  const share = own?.si ?? WEIGHT;
  const allowed = given('weight change allowed', 'm', 'mass', share * lightship.si, {
    assumed: `${percent(share)} of lightship`,
  });
  return verdict(say, {
    place,
    criterion: within('weight change of the machinery', `${percent(share)} of lightship`, own),
    change,
    allowed,
    numbers: `${(vessel.hull?.weights ?? []).length > 0 ? 'machinery and stated weights change' : 'machinery changes'} by ${signed(change)} (${percent(change.si / lightship.si)} of lightship); up to ${percent(share)} needs no review`,
    name: arrangement.name,
  });
}

function judgeBalance({ arrangement, vessel }: ArrangementContext): Verdict {
  const say = sayFor(INFO, `${arrangement.path}.balance`);
  const needs = new Needs();
  const length = needs.fact(vessel.hull?.waterlineLength, {
    what: `waterline length of ${vessel.name}`,
    host: vessel.hull?.origin ?? vessel.origin,
    property: vessel.hull ? 'waterline length' : 'hull',
  });
  const balance = balanceChange(arrangement, vessel, needs);
  if (balance) needs.found(lengthLeftOver({ stack: balance.after, room: balance.before }));
  const place = arrangement.nameOrigin;
  if (!length || !balance) {
    return waits(say, needs, place, `Whether the balance of ${arrangement.name} stays within the record`);
  }
  const own = vessel.criteria?.balanceChange?.value;
  const share = own?.si ?? BALANCE;
  const shift = lengthLeftOver({ stack: balance.after, room: balance.before });
  const allowed = given('shift allowed', 'Δx', 'length', share * length.si, {
    assumed: `${percent(share)} of waterline length`,
  });
  return verdict(say, {
    place,
    criterion: within('shift of the centre of gravity', `${percent(share)} of waterline length`, own),
    change: shift,
    allowed,
    numbers: `the centre of gravity moves ${signed(shift)} ${shift.si < 0 ? 'aft' : 'forward'} (${percent(shift.si / length.si)} of length); up to ${percent(share)} needs no review`,
    name: arrangement.name,
  });
}

function within(what: string, limit: string, own: Value | undefined): Criterion {
  return {
    said: `${what} at most ${limit}${own ? '' : ' (common practice)'}`,
    chosenBy: own ? 'author' : 'default',
  };
}

function verdict(
  say: ReturnType<typeof sayFor>,
  {
    place,
    criterion,
    change,
    allowed,
    numbers,
    name,
  }: { place: object; criterion: Criterion; change: Value; allowed: Value; numbers: string; name: string },
): Verdict {
  const said = { place, criterion, workings: [change] };
  if (Math.abs(change.si) <= allowed.si)
    return say.holds({ ...said, over: Math.abs(change.si) / allowed.si, message: `${name}: ${numbers}.` });
  return say.fails({
    ...said,
    capacity: allowed,
    demand: { ...change, si: Math.abs(change.si) },
    message: `${name}: ${numbers}. Trim changes and the stability record no longer describes the vessel: ballast, or a stability review.`,
  });
}

function signed(value: Value): string {
  const tell = tellLike(undefined);
  return `${value.si > 0 && value.dimension === 'mass' ? '+' : ''}${tell(value.dimension === 'length' ? { ...value, si: Math.abs(value.si) } : value, 3)}`;
}
