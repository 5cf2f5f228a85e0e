import { percent } from '@tailshaft/mechanics';
import { clutchesOf, ratingsOf } from '../../analysis/gear-data.js';
import { type InputTorque, inputTorques } from '../../analysis/input-torque.js';
import { ratingWords } from '../../analysis/rating-torque.js';
import type { Direction } from '../../analysis/speeds.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import type { Balance } from '../../judge/needed.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { wantedDuty } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { gearsThatCarry } from './gear-routes.js';
import { DEFER, PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/gear-input-torque',
  title: 'Input torque is within the gear rating',
  mistakes: ['T05'],
  severity: 'error',
  criterion:
    'input torque at rated power and at peak torque against the gear rating at this ratio, duty, direction and ' +
    'fuel',
  source: PART_SHEET,
  manual:
    'A gear is rated at its input, for one ratio, one duty class and often one range of speeds, as torque or as ' +
    'power per speed, which is another way of stating torque. Engine torque is taken at rated power and at peak ' +
    'torque, with any power take-off off, because many diesels give a quarter more torque below rated speed. A ' +
    'rating for a heavier duty may stand in for the required one, a lighter one never, and none is used outside ' +
    'its stated speeds. Ratings usually fall as the ratio deepens. Choose another ratio, a larger gear, or an ' +
    'engine rating that gives less torque.',
  caution: `${DEFER} Class names differ between makers: check that the class on the sheet means the duty of the vessel.`,
  limitOf: 'the maker’s rating',
  severalMovers: 'each',
  oneInput: true,
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.14 kW/rpm']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['  peak torque 1480 N.m at 1500 rpm\n', '']),
  })),
};

export const gearInputTorque: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  const { gear } = line;
  if (!gear || !(line.engine || line.motor)) return undefined;
  const ratings = ratingsOf(gear, gear.variant);
  const reverses = gear.reversing?.value !== 'no' && clutchesOf(gear, gear.variant).length !== 1;
  const told = reverses && ratings.some(rating => rating.direction);
  return each(told ? (['ahead', 'astern'] as const) : (['ahead'] as const), direction =>
    judge(context, direction),
  );
}

function judge(context: LineContext, direction: Direction): Verdict {
  const { line, vessel, analysis } = context;
  const say = sayFor(INFO, line.path);
  const gear = line.gear!;
  const way = direction === 'astern' ? ' astern' : '';
  const needs = new Needs();
  const duty = wantedDuty(vessel, needs);
  const torques = duty === undefined ? undefined : inputTorques(analysis, duty, direction);
  if (torques) needs.take({ value: undefined, missing: torques.needs.missing });
  const { wanted, criterion } = wantedMargin(context);
  const worst = torques?.compared[0];
  const place = gear.nameOrigin ?? gear.ratioUsed?.origin ?? gear.origin;
  if (worst && worst.margin < wanted) {
    return say.fails({
      place,
      severity: direction === 'astern' ? 'warning' : 'error',
      criterion,
      capacity: worst.capacity,
      demand: worst.demand,
      balance: {
        ...balanceOf(worst, wanted),
        also: torques!.compared.slice(1).map(one => balanceOf(one, wanted)),
      },
      workings: torques!.compared.flatMap(one => [one.demand, one.capacity]),
      message: `${line.name}: ${failure(context, worst, way, wanted)}`,
      related: [
        { at: worst.rating.origin, message: `rated ${ratingWords(worst.rating)}` },
        {
          at: worst.point.torque.origin ?? worst.point.speed.origin ?? line.origin,
          message: `engine, ${worst.point.name}`,
        },
      ],
      routes: () => gearsThatCarry(context, duty!, direction, wanted),
    });
  }
  if (needs.any || !worst) {
    needs.found(analysis.rated.value);
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      criterion,
      message: `${cannotTellWords(`${line.name}: whether input torque is within the rating of ${nameOf(gear)}${way}`, needs.missing)}${worst && Number.isFinite(worst.margin) ? ` At ${worst.point.name} alone the margin is ${percent(worst.margin)}.` : ''}`,
      workings: worst ? [worst.demand, worst.capacity] : [],
      routes: () =>
        stubRoutes(
          needs.missing.filter(
            gap => !gap.property.startsWith('rated ') && !gap.property.startsWith('rating '),
          ),
        ),
    });
  }
  return say.holds({
    place,
    criterion,
    capacity: worst.capacity,
    demand: worst.demand,
    workings: torques!.compared.flatMap(one => [one.demand, one.capacity]),
    message:
      `${line.name}: ${nameOf(gear)} is rated for ${analysis.tell(worst.capacity)}${way} (${ratingWords(worst.rating)}${worst.heavier ? ', heavier than required' : ''}); ` +
      `input torque at ${worst.point.name} is ${analysis.tell(worst.demand)}, margin ${percent(worst.margin)}.`,
  });
}

function balanceOf({ capacity, demand }: InputTorque, wanted: number): Balance {
  return { more: capacity, less: demand, wanted };
}

function failure({ line, analysis }: LineContext, worst: InputTorque, way: string, wanted: number): string {
  const gear = line.gear!;
  const ratio = gear.variant?.nominalFact.written ?? gear.ratioUsed?.written;
  const numbers =
    `input ${analysis.tell(worst.demand)} at ${worst.point.name} (${analysis.tell(worst.point.speed)}) ` +
    `${worst.margin < 0 ? 'exceeds' : 'is too close to'} the ${analysis.tell(worst.capacity)} that ${nameOf(gear)} is rated for${way}` +
    `${ratio ? ` at ${ratio}` : ''} (${ratingWords(worst.rating)}): `;
  const left =
    worst.margin < 0
      ? `${percent(-worst.margin)} short`
      : `margin ${percent(worst.margin)}, ${percent(wanted)} required`;
  const rest =
    way === ''
      ? 'Clutch and teeth wear out early. Choose another ratio, a larger gear or a lower engine rating.'
      : 'Full throttle astern would overload it: limit the throttle astern, or fit a gear rated for it.';
  return `${numbers}${left}. ${rest}`;
}

/** Margin over the gear's rating that the vessel wants. */
function wantedMargin({ vessel }: LineContext): { wanted: number; criterion: Criterion } {
  const own = vessel.criteria?.gearTorqueMargin?.value;
  const wanted = own ? `margin at least ${own.written ?? percent(own.si)}` : 'no margin required';
  const said = `${INFO.criterion}; ${wanted}`;
  return { wanted: own?.si ?? 0, criterion: { said, chosenBy: own ? 'author' : 'default' } };
}
