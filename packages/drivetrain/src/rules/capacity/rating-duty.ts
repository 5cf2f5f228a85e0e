import { listed } from '@tailshaft/mechanics';
import { compareDuty, DUTY_CLASS_SOURCE, lighterFirst } from '../../analysis/duty-class.js';
import { ratingsOf } from '../../analysis/gear-data.js';
import { ratingWords } from '../../analysis/rating-torque.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { wantedDuty } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { gearsThatCarry } from './gear-routes.js';
import { serviceWithin } from './service-routes.js';

const INFO: RuleInfo = {
  id: 'capacity/rating-duty',
  title: 'The gear has a rating for the duty of the vessel',
  mistakes: ['T07'],
  severity: 'error',
  criterion:
    'duty class of the ratings at this ratio against the duty of the vessel; a heavier class may stand in, a ' +
    'lighter one never',
  source: DUTY_CLASS_SOURCE,
  manual:
    'A gear sheet gives its capacity by duty class: the lighter the class, the higher the figure. Pleasure ' +
    'ratings assume a few per cent of the time at full throttle and exclude charter and work. Used for a working ' +
    'vessel, such a rating overloads the gear from the first day and voids the warranty. Use the rating of the ' +
    'class that the vessel works at, fit a larger gear, or change the duty of the vessel, with a reason.',
  caution:
    'Makers name their classes differently. Match them by hours, load and time at full power, not by name.',
  noFigure: 'no number is compared',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated light 0.18 kW/rpm']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['  duty medium { hours 1500 per year  passengers none }\n', '']),
  })),
};

export const ratingDuty: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { gear } = line;
  if (!gear || !(line.engine || line.motor)) return undefined;
  const ratings = ratingsOf(gear, gear.variant);
  if (ratings.length === 0) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.nameOrigin ?? gear.origin;
  const explains = [{ rule: 'capacity/gear-input-torque', subject: line.path }];
  const duties = [...new Set(ratings.map(one => one.duty))];
  const needs = new Needs();
  const duty = wantedDuty(vessel, needs);
  if (duty === undefined) {
    return say.cannotTell(needs, {
      place,
      message: `${line.name}: ${nameOf(gear)} is rated for ${duties.join(', ')} duty; the duty of the vessel is not stated.`,
      explains,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const compared = ratings.map(rating => ({ rating, is: compareDuty(rating.duty, duty) }));
  const serving = compared.find(one => one.is === 'same') ?? nextHeavier(compared);
  if (serving) {
    const instead = serving.is === 'heavier' ? `, heavier than the ${duty} duty of the vessel` : '';
    return say.holds({
      place,
      message: `${line.name}: ${nameOf(gear)} is rated ${ratingWords(serving.rating)}${instead}.`,
    });
  }
  const related = ratings.map(rating => ({ at: rating.origin, message: `rated ${ratingWords(rating)}` }));
  if (compared.some(one => one.is === 'not comparable')) {
    needs.miss({
      what: `${duty} rating of ${nameOf(gear)}`,
      host: gear.variant?.origin ?? home(gear),
      property: `rated ${duty}`,
    });
    return say.cannotTell(needs, {
      place,
      related,
      explains,
      message:
        `${line.name}: ${nameOf(gear)} is rated for ${duties.join(', ')} duty, the vessel is specified for ${duty}: nothing ` +
        'states how these classes compare. Ask the maker and write the rating under the word of the vessel.',
    });
  }
  return say.fails({
    place,
    related,
    explains,
    message:
      `${line.name}: the rating of ${nameOf(gear)} is for ${listed(duties)} duty, the vessel is specified for ${duty}. ` +
      'A lighter rating does not cover it: obtain the rating for this duty, or choose a larger gear.',
    routes: () => [
      ...gearsThatCarry(context, duty, 'ahead', vessel.criteria?.gearTorqueMargin?.value?.si ?? 0),
      ...serviceWithin(vessel, { duty: [...duties].sort((a, b) => lighterFirst(b, a))[0]! }, nameOf(gear)),
    ],
  });
}

/** Of the heavier ratings the lightest: the one that the torque is compared with. */
function nextHeavier<T extends { readonly rating: { readonly duty: string }; readonly is: string }>(
  compared: readonly T[],
): T | undefined {
  return compared
    .filter(one => one.is === 'heavier')
    .sort((one, other) => lighterFirst(one.rating.duty, other.rating.duty))[0];
}
