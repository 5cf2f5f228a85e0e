import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import { gearsThatTurn } from '../../analysis/gear-choice.js';
import { clutchesOf } from '../../analysis/gear-data.js';
import { ratioConsequence } from '../../analysis/propeller-law.js';
import { ratioWords } from '../../analysis/telling.js';
import { type Pair, pairOf } from '../../analysis/twin.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import type { Balance } from '../../judge/needed.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { ratioTolerance } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { TOOTH_COUNTS } from './sources.js';
import { writtenRatio } from './written-ratio.js';

const INFO: RuleInfo = {
  id: 'ratio/unequal-sides',
  title: 'Port and starboard have the same ratio, or a reason is given',
  mistakes: ['T03'],
  severity: 'warning',
  criterion:
    'exact ratios ahead of port and starboard; difference at most 0.5 % unless the criteria set another limit',
  source: TOOTH_COUNTS,
  manual:
    'Two equal engines at equal speed turn unequal shafts when the ratios of the sides differ. With equal ' +
    'pitches one propeller then absorbs much more power than the other, the slower side never loads its engine, ' +
    'and the two cannot be synchronised: that is an error. Different pitches may compensate; then write "reason ' +
    'for unequal ratios" in the arrangement. A gear whose clutches differ in ratio causes this unnoticed when ' +
    'each side runs ahead on another clutch.',
  caution: 'The power difference is the propeller law at equal engine speed: a scaling, not a prediction.',
  limitOf: 'the rounding of the ratio as it is written',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(TWIN_LINES, [
      'gear Alder-63 ratio 2.04:1 ahead clutch B',
      'gear Alder-63 ratio 2.1:1 ahead clutch B',
    ]),
    passing: TWIN_LINES,
    cannotTell: changed(TWIN_LINES, [
      'gear Alder-63 ratio 2.04:1 ahead clutch B',
      'gear Alder-63 ratio unknown ahead clutch B',
    ]),
  })),
};

export const unequalSides: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement, vessel, analysisOf } = context;
  const pair = pairOf(arrangement);
  if (!pair?.port.gear || !pair.starboard.gear) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const needs = new Needs();
  const port = needs.take(analysisOf(pair.port).overallRatio('ahead'));
  const starboard = needs.take(analysisOf(pair.starboard).overallRatio('ahead'));
  const place = pair.starboard.gear.ratioUsed?.origin ?? pair.starboard.gear.origin;
  if (!port || !starboard) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(`whether both sides have one ratio`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const { share, criterion } = ratioTolerance(vessel);
  const workings = [port, starboard];
  const both = `Port ${ratioWords(port.si)}, starboard ${ratioWords(starboard.si)}`;
  if (Math.max(port.si / starboard.si, starboard.si / port.si) - 1 <= share) {
    return say.holds({ place, criterion, workings, message: `${both}: both shafts turn alike.` });
  }
  if (shaftsTurnAlike(context, pair, port, starboard, share)) {
    return say.holds({
      place,
      criterion,
      workings,
      message: `${both}, and the rated speeds of the engines make up for it: both shafts turn alike at rated speed.`,
    });
  }
  const balance: Balance = { same: [port, starboard], within: share * Math.min(port.si, starboard.si) };
  return judgePitches(context, pair, { port, starboard, both, criterion, balance });
}

function judgePitches(
  context: ArrangementContext,
  pair: Pair,
  {
    port,
    starboard,
    both,
    criterion,
    balance,
  }: {
    port: Value<'ratio'>;
    starboard: Value<'ratio'>;
    both: string;
    criterion: Criterion;
    balance: Balance;
  },
): Verdict {
  const { arrangement, vessel } = context;
  const say = sayFor(INFO, arrangement.path);
  const place = pair.starboard.gear!.ratioUsed?.origin ?? pair.starboard.gear!.origin;
  const [slow, quick] = port.si > starboard.si ? [port, starboard] : [starboard, port];
  const consequence = ratioConsequence(slow, quick, vessel);
  const workings = [port, starboard, consequence.speed, consequence.power];
  const pitches = [pair.port.propeller?.pitch?.value, pair.starboard.propeller?.pitch?.value];
  const known = pitches[0] !== undefined && pitches[1] !== undefined;
  const equal = known && Math.abs(pitches[0]!.si / pitches[1]!.si - 1) < 1e-6;
  const reason = arrangement.reasons.find(one => one.about === 'unequal ratios');
  if (reason && known && !equal) {
    return say.holds({
      place,
      criterion,
      workings,
      message: `${both}, with different pitches and a reason: ${reason.text}`,
      related: [{ at: reason.origin, message: 'the reason given' }],
    });
  }
  const more = percent(consequence.power.si);
  const fast = port.si < starboard.si ? 'port' : 'starboard';
  const ending = equal
    ? `with equal pitches: at equal engine speed the ${fast} propeller takes about ${more} more power. Use one ratio on both sides.`
    : `: at equal engine speed the ${fast} shaft turns ${percent(consequence.speed.si)} faster, about ${more} more power on equal propellers. ` +
      (known
        ? 'The pitches differ; if they are meant to make up for it, say so with "reason for unequal ratios".'
        : 'The pitches are not both written, so nothing shows that they make up for it.');
  return say.fails({
    place,
    criterion,
    workings,
    balance,
    severity: equal ? 'error' : 'warning',
    message: equal ? `${both} ${ending}` : `${both}${ending}`,
    related: [
      {
        at: pair.port.gear!.ratioUsed?.origin ?? pair.port.gear!.origin,
        message: `port ${ratioWords(port.si)}`,
      },
    ],
    routes: () => [
      ...takeRatioOf(pair.port, pair.starboard, 'starboard', context),
      ...takeRatioOf(pair.starboard, pair.port, 'port', context),
      ...takeGearOf(pair.port, pair.starboard, 'starboard', context),
      ...takeGearOf(pair.starboard, pair.port, 'port', context),
    ],
  });
}

/** Unequal engines may make up for unequal ratios. */
function shaftsTurnAlike(
  { analysisOf }: ArrangementContext,
  pair: Pair,
  port: Value<'ratio'>,
  starboard: Value<'ratio'>,
  share: number,
): boolean {
  const [a, b] = [analysisOf(pair.port).rated.value?.speed, analysisOf(pair.starboard).rated.value?.speed];
  if (!a || !b || Math.abs(a.si / b.si - 1) <= share) return false;
  return Math.abs(a.si / port.si / (b.si / starboard.si) - 1) <= share;
}

/** Gives one side the ratio of the other, where its gear offers it in the clutch that it runs ahead in. */
function takeRatioOf(
  from: ShaftLine,
  to: ShaftLine,
  side: string,
  { analysisOf, vessel }: ArrangementContext,
): Route[] {
  const [theirs, gear] = [from.gear!, to.gear!];
  const wanted = theirs.variant?.nominal;
  const offered = wanted && gear.ratios.find(one => Math.abs(one.nominal.si - wanted.si) < 1e-9);
  if (!offered || offered === gear.variant || !hasClutch(gear, offered)) return [];
  const [now, then] = [
    analysisOf(to).overallRatio('ahead').value,
    analysisOf(from).overallRatio('ahead').value,
  ];
  const change = now && then ? now.si / then.si - 1 : undefined;
  const how =
    change === undefined
      ? ''
      : `: its shaft turns ${percent(Math.abs(change))} ${change > 0 ? 'faster' : 'slower'}`;
  return [
    {
      title: `Give ${side} the ratio ${offered.nominalFact.written} of the other side${how}`,
      edits: gearEdits(gear, { ratio: writtenRatio(offered, analysisOf(to).aheadClutch.value, vessel) }),
    },
  ];
}

/** Gives one side the gear of the other, in each clutch that may run ahead and turns the shaft as it turns now. */
function takeGearOf(
  from: ShaftLine,
  to: ShaftLine,
  side: string,
  { analysisOf, catalogue, arrangement, vessel }: ArrangementContext,
): Route[] {
  const [theirs, gear] = [from.gear!, to.gear!];
  const entry = catalogue.gears.filter(one => one.name === theirs.entry?.name);
  const turns = analysisOf(to).rotation.ahead;
  if (!turns || !theirs.variant || theirs.entry?.name === gear.entry?.name) return [];
  return gearsThatTurn(to, turns, entry)
    .filter(one => one.variant.nominal.si === theirs.variant!.nominal.si)
    .map(({ variant, clutch, entry: { name } }) => ({
      title: `Fit gear ${name} at ${variant.nominalFact.written} to ${side} as on the other side, with clutch ${clutch.name} ahead`,
      edits: gearEdits(gear, {
        name,
        ratio: writtenRatio(variant, clutch, vessel),
        clutch: clutch.name,
        fitted: arrangement.revises === undefined ? 'here' : 'in its place',
      }),
    }));
}

function hasClutch(gear: Gear, variant: NonNullable<Gear['variant']>): boolean {
  const name = gear.aheadClutch?.value;
  return name === undefined || clutchesOf(gear, variant).some(one => one.name === name);
}
