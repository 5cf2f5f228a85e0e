import { named } from '@tailshaft/vocabulary';
import { compareDuty } from '../../analysis/duty-class.js';
import { ratingOf } from '../../analysis/engine-points.js';
import { hoursWords } from '../../analysis/hours-words.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { serviceWithin } from './service-routes.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/engine-duty',
  title: 'The engine rating covers the hours and duty of the vessel',
  mistakes: [],
  severity: 'error',
  criterion: 'hours a year and duty class of the engine rating against those of the vessel',
  source: {
    title:
      'rating note of an engine maker, ISO 8665 basis: each class with its hours a year and time at full power',
    confidence: 'published',
  },
  manual:
    'Every engine rating is tied to hours a year and to the share of them at full power. A vessel that runs ' +
    'longer than the rating allows, or works at a heavier duty, wears the engine out early and without warranty. ' +
    'Choose a rating of the right class, which gives less power from the same engine, or change the duty of the ' +
    'vessel, with a reason.',
  caution: `${DEFER} Hours a year are the coarsest limit: load factor and time at full power count as much.`,
  limitOf: 'the maker’s hours',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['hours 3000 per year', 'hours 500 per year']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, [
      '{ hours 1500 per year  passengers none }',
      '{ hours unknown  passengers none }',
    ]),
  })),
};

export const engineDuty: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { engine } = line;
  const rating = engine && ratingOf(engine);
  const { duty } = vessel;
  if (!engine || !rating || !duty) return undefined;
  const say = sayFor(INFO, line.path);
  const place = engine.ratedAt?.origin ?? engine.nameOrigin ?? engine.origin;
  const others = engine.ratings.filter(one => one !== rating).map(one => one.duty);
  const instead = others.length > 0 ? `Its other ratings: ${others.join(', ')}.` : 'It has no other rating.';
  const wanted = duty.class?.value;
  const related = [{ at: duty.origin, message: 'duty of the vessel' }];
  if (wanted !== undefined && compareDuty(rating.duty, wanted) === 'lighter') {
    return say.fails({
      place,
      related,
      message: `${line.name}: ${nameOf(engine)} is used at its ${rating.duty} rating, the vessel is specified for ${wanted} duty. ${instead}`,
      routes: () => [...routesToOther(context), ...serviceWithin(vessel, rating, nameOf(engine))],
    });
  }
  if (!duty.hours && !rating.hours) return undefined;
  const needs = new Needs();
  const hours = needs.fact(duty.hours, {
    what: `hours a year of vessel ${vessel.name}`,
    host: duty.origin,
    property: 'hours',
  });
  const allowed = needs.fact(rating.hours, {
    what: `hours a year that the ${rating.duty} rating of ${nameOf(engine)} allows`,
    host: rating.origin,
    property: 'hours',
  });
  if (!hours || !allowed) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(
        `${line.name}: whether the ${rating.duty} rating covers the service`,
        needs.missing,
      ),
      routes: () => stubRoutes(needs.missing),
    });
  }
  return say.compare({
    place,
    related: [...related, { at: rating.hours!.origin, message: 'hours that the rating allows' }],
    capacity: allowed,
    demand: hours,
    workings: [],
    message: `${line.name}: the ${rating.duty} rating allows ${hoursWords(rating.hours!)}, the vessel runs ${hoursWords(duty.hours!)}.`,
    failMessage: `${line.name}: the vessel runs ${hoursWords(duty.hours!)}, the ${rating.duty} rating of ${nameOf(engine)} allows ${hoursWords(rating.hours!)}. ${instead}`,
    routes: () => [...routesToOther(context), ...serviceWithin(vessel, rating, nameOf(engine))],
  });
}

/** Other ratings of the engine that allow the duty and the hours. */
function routesToOther({ line, vessel, analysis }: LineContext) {
  const engine = line.engine!;
  const hours = vessel.duty?.hours?.value?.si ?? 0;
  const wanted = vessel.duty?.class?.value;
  if (!engine.ratedAt) return [];
  const now = ratingOf(engine)?.power?.value?.y;
  return engine.ratings
    .filter(one => (one.hours?.value?.si ?? 0) >= hours && one.power?.value)
    .filter(one => wanted === undefined || ['same', 'heavier'].includes(compareDuty(one.duty, wanted)))
    .map(one => {
      const power = one.power!.value!.y;
      const change = now ? `, ${analysis.tell(power)} instead of ${analysis.tell(now)}` : '';
      return {
        title: `Use the ${one.duty} rating: ${hoursWords(one.hours!)}${change}`,
        edits: [{ do: 'replace' as const, at: engine.ratedAt!.origin, value: named(one.duty) }],
      };
    });
}
