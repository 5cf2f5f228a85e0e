import type { Value } from '@tailshaft/mechanics';
import { listed } from '@tailshaft/mechanics';
import { compareDuty } from '../../analysis/duty-class.js';
import { ratingsOf } from '../../analysis/gear-data.js';
import { ratingWords } from '../../analysis/rating-torque.js';
import { holdsAt, RATING_BELOW_SPEED } from '../../analysis/ratings.js';
import type { LineContext } from '../../judge/context.js';
import type { Balance } from '../../judge/needed.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { GearRating } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { gearsThatCarry } from './gear-routes.js';

const INFO: RuleInfo = {
  id: 'capacity/rating-speed',
  title: 'The gear rating applies at the rated speed of the engine',
  mistakes: ['T06'],
  severity: 'warning',
  criterion: 'input speeds that the rating is stated for against the rated speed of the engine',
  source: RATING_BELOW_SPEED,
  manual:
    'A rating given as power at one speed, or for a range of speeds, does not cover faster running: oil ' +
    'churning, bearings and clutch drag are not in it, and scaling it up in proportion is wrong. At lower speeds ' +
    'it is compared by torque. Where the rated speed of the engine lies outside, ask the maker for the rating ' +
    'there, and check the greatest input speed as well.',
  caution: 'Even below the greatest input speed, a rating is not extended beyond its stated speeds.',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [
      'rated medium 0.18 kW/rpm',
      'rated medium 0.18 kW/rpm from 800 .. 2100 rpm',
    ]),
    passing: changed(SINGLE_LINE, [
      'rated medium 0.18 kW/rpm',
      'rated medium 0.18 kW/rpm from 800 .. 2600 rpm',
    ]),
    cannotTell: changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.18 kW/rpm from unknown']),
  })),
};

export const ratingSpeed: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { gear } = line;
  const duty = vessel.duty?.class?.value;
  if (!gear || duty === undefined) return undefined;
  const speed = analysis.rated.value?.speed;
  const serving = ratingsOf(gear, gear.variant).filter(one =>
    ['same', 'heavier'].includes(compareDuty(one.duty, duty)),
  );
  const stated = serving.filter(one => one.speeds || (one.power && !one.torque && !one.powerPerSpeed));
  if (!speed || stated.length === 0) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.nameOrigin ?? gear.origin;
  const explains = [{ rule: 'capacity/gear-input-torque', subject: line.path }];
  const holding = serving.find(one => holdsAt(one, speed));
  if (holding) {
    return say.holds({
      place,
      message: `${line.name}: the rating ${ratingWords(holding)} is stated for ${analysis.tell(speed)}.`,
    });
  }
  const open = stated.find(one => one.speeds?.value === undefined && one.speeds !== undefined);
  if (open) {
    const needs = new Needs();
    needs.miss(
      { what: `speeds of the ${open.duty} rating of ${nameOf(gear)}`, host: open.origin, property: 'from' },
      open.speeds!.origin,
    );
    return say.cannotTell(needs, {
      place: open.speeds!.origin,
      message: `${line.name}: the speeds that the ${open.duty} rating of ${nameOf(gear)} is stated for are left open.`,
      explains,
      routes: () => stubRoutes(needs.missing),
    });
  }
  return say.fails({
    place,
    ...(stated.length === 1 ? balanceFor(stated[0]!, speed) : {}),
    message:
      `${line.name}: the rating of ${nameOf(gear)} is stated ${listed(stated.map(range))}; the rated speed is ${analysis.tell(speed)}. ` +
      'It does not extend to other speeds: ask the maker for the rating at this one.',
    related: stated.map(one => ({
      at: one.speeds?.origin ?? one.origin,
      message: `rated ${ratingWords(one)}`,
    })),
    explains,
    routes: () => gearsThatCarry(context, duty, 'ahead', vessel.criteria?.gearTorqueMargin?.value?.si ?? 0),
  });
}

/** Where there is one rating, how far its speeds are from that of the engine. */
function balanceFor(
  { speeds, power }: GearRating,
  speed: Value<'rotational speed'>,
): { readonly balance?: Balance } {
  const high = speeds ? speeds.value?.high : power?.value?.x;
  const low = speeds?.value?.low;
  if (high && speed.si > high.si) return { balance: { more: high, less: speed } };
  return low ? { balance: { more: speed, less: low } } : {};
}

function range(rating: GearRating): string {
  return rating.speeds
    ? `for ${rating.speeds.written}`
    : `at ${rating.power?.value?.x.written ?? 'one speed'}`;
}
