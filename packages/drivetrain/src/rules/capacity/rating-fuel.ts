import { listed } from '@tailshaft/mechanics';
import { compareDuty } from '../../analysis/duty-class.js';
import { ratingsOf } from '../../analysis/gear-data.js';
import { ratingWords } from '../../analysis/rating-torque.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { gearsThatCarry } from './gear-routes.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/rating-fuel',
  title: 'The gear rating applies to the fuel of the engine',
  mistakes: ['T08'],
  severity: 'warning',
  criterion: 'fuel that the ratings are stated for against the fuel of the engine',
  source: {
    title: 'gear sheets that give separate ratings behind petrol and diesel engines, for their torque pulses',
    confidence: 'common practice',
  },
  manual:
    'Some sheets rate a gear higher behind a petrol engine than behind a diesel, whose torque pulses are harder. ' +
    'Such a rating does not apply to the other fuel. Ask the maker for the rating behind this engine and write ' +
    'it beside the first; until then the torque cannot be judged.',
  caution: `${DEFER} The difference depends on damper, cylinders and gear; no factor is assumed here.`,
  noFigure: 'no number is compared',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.18 kW/rpm for petrol']),
    passing: changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.18 kW/rpm for diesel']),
    cannotTell: changed(
      SINGLE_LINE,
      ['rated medium 0.18 kW/rpm', 'rated medium 0.18 kW/rpm for diesel'],
      ['  fuel diesel\n', ''],
    ),
  })),
};

export const ratingFuel: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { gear, engine } = line;
  const duty = vessel.duty?.class?.value;
  if (!gear || !engine) return undefined;
  const ratings = ratingsOf(gear, gear.variant).filter(
    one => duty === undefined || ['same', 'heavier'].includes(compareDuty(one.duty, duty)),
  );
  if (!ratings.some(one => one.fuel)) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.nameOrigin ?? gear.origin;
  const explains = [{ rule: 'capacity/gear-input-torque', subject: line.path }];
  const needs = new Needs();
  const fuel = needs.fact(engine.fuel, {
    what: `fuel of ${nameOf(engine)}`,
    host: home(engine),
    property: 'fuel',
  });
  if (fuel === undefined) {
    return say.cannotTell(needs, {
      place: engine.fuel?.origin ?? place,
      message: `${line.name}: ${nameOf(gear)} is rated by fuel, and that of ${nameOf(engine)} is not stated.`,
      explains,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const serving = ratings.find(one => !one.fuel || one.fuel.value === fuel);
  if (serving)
    return say.holds({
      place,
      message: `${line.name}: the rating ${ratingWords(serving)} holds behind a ${fuel} engine.`,
    });
  const others = listed([...new Set(ratings.map(one => one.fuel?.value ?? 'unknown'))]);
  return say.fails({
    place,
    message:
      `${line.name}: the rating of ${nameOf(gear)} is for ${others} engines; ${nameOf(engine)} burns ${fuel}. ` +
      `Ask the maker for the rating behind a ${fuel} engine.`,
    related: ratings.map(one => ({
      at: one.fuel?.origin ?? one.origin,
      message: `rated ${ratingWords(one)} for ${one.fuel?.written}`,
    })),
    explains,
    routes: () =>
      duty === undefined
        ? []
        : gearsThatCarry(context, duty, 'ahead', vessel.criteria?.gearTorqueMargin?.value?.si ?? 0),
  });
}
