import { listed, plural } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import { ratingOf } from '../../analysis/engine-points.js';
import { hoursWords } from '../../analysis/hours-words.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/rating-undefined',
  title: 'The engine rating states its class, standard, hours and source',
  mistakes: ['T10'],
  severity: 'warning',
  criterion:
    'a rating names its duty class, the standard it is declared under, its hours a year and its source',
  source: {
    title: 'ISO 8665, Small craft: marine propulsion engines, power measurements and declarations',
    confidence: 'from memory',
  },
  manual:
    'One engine is sold at several powers: a peak rating for one hour in eight and a few hundred hours a year, ' +
    'and lower ratings for longer use. A power without its class, standard and hours may be the peak one, and a ' +
    'vessel specified with it loses its warranty or wears out. State the class, the standard and the hours of ' +
    'the rating, with the document that gives them.',
  caution: `${DEFER} Class names differ between makers; the hours and the time at full power define them.`,
  noFigure: 'no number is compared',
  curesRecord: true,
  noCure: 'Only the engine maker can state what the rating is for.',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['    standard ISO-8665\n    hours 3000 per year\n', '']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['standard ISO-8665', 'standard unknown']),
  })),
};

export const ratingUndefined: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const { engine } = line;
  if (!engine) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const rating = ratingOf(engine);
  if (!rating) {
    const duty = engine.ratedAt?.value;
    needs.miss(
      duty === undefined
        ? { what: `the duty at which ${nameOf(engine)} is used`, host: engine.origin, property: 'at' }
        : { what: `a rating ${duty} of ${nameOf(engine)}`, host: home(engine), property: `rating ${duty}` },
      engine.ratedAt?.origin,
    );
    return say.cannotTell(needs, {
      place: engine.ratedAt?.origin ?? engine.nameOrigin ?? engine.origin,
      message: `${line.name}: no rating of ${nameOf(engine)} is chosen. Its ratings: ${engine.ratings.map(one => one.duty).join(', ') || 'none declared'}.`,
      explains: WAITING.map(rule => ({ rule, subject: line.path })),
      routes: () => (duty === undefined ? stubRoutes(needs.missing) : []),
    });
  }
  const power = rating.power?.written ?? 'its power';
  const wanted = [
    ['standard', rating.standard, 'its standard', rating.origin],
    ['hours', rating.hours, 'its hours a year', rating.origin],
    ['source', rating.source ?? engine.source, 'its source', home(engine)],
  ] as const;
  const absent = wanted.filter(([, fact]) => fact === undefined);
  const place = rating.power?.origin ?? rating.origin;
  if (absent.length > 0) {
    const missing = listed(
      absent.map(([, , words]) => words),
      'or',
    );
    return say.fails({
      place,
      message: `${line.name}: the ${rating.duty} rating of ${nameOf(engine)}, ${power}, does not give ${missing}. Without ${plural(absent.length, 'it', 'them')} it may be a peak rating.`,
      related: [{ at: engine.nameOrigin ?? engine.origin, message: `used in ${line.path}` }],
      explains: [{ rule: 'capacity/engine-duty', subject: line.path }],
      routes: () =>
        absent.map(([property, , words, host]) => ({
          title: `Write ${words} as an open question: the sheet then lists it`,
          edits: [{ do: 'set' as const, host, property, value: OPEN }],
          stub: true,
        })),
    });
  }
  for (const [property, fact, words, host] of wanted) {
    if (fact?.value === undefined) {
      needs.miss(
        {
          what: `${words.replace(/^its /, '')} of the ${rating.duty} rating of ${nameOf(engine)}`,
          host,
          property,
        },
        fact?.origin,
      );
    }
  }
  if (needs.any) {
    return say.cannotTell(needs, {
      place: needs.missing[0]!.at ?? place,
      message: cannotTellWords(
        `${line.name}: what the ${rating.duty} rating of ${nameOf(engine)} is for`,
        needs.missing,
      ),
    });
  }
  return say.holds({
    place,
    message: `${line.name}: ${power}, ${rating.duty}, ${rating.standard!.written}, ${hoursWords(rating.hours!)}.`,
  });
}

/** Rules that need the power of the engine. */
const WAITING = [
  'capacity/gear-input-torque',
  'capacity/retained-shaft-torque',
  'capacity/retained-propeller-overload',
  'capacity/coupling-torque',
  'capacity/transfer-torque',
];
