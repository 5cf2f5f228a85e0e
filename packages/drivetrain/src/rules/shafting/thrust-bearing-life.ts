import { basicRatingLife, dutyTime, given, percent, renamed, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import { ratedThrustBearing, thrustBearingLife } from '../../analysis/thrust-bearing.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { carries, gearRoutes } from '../capacity/gear-routes.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { wantedDuty } from '../planned.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';

const RATING = '  thrust bearing { dynamic rating 280 kN  rolling elements roller }\n';

const WITH_BEARING = changed(
  SINGLE_LINE,
  ['  slip device offered\n', `  slip device offered\n  thrust at most 40 kN\n${RATING}`],
  [
    '\nshaft material high-strength-stainless {',
    `
gear Alder-66 "down-angle reduction gear, larger" {
  source "Alder 66 technical sheet, issue 1" dated 2025-02-10
  layout down-angle 8 deg
  input rotation standard viewed from flywheel
  input speed at most 2800 rpm
  input speed at least 600 rpm
  input housing SAE-3
  thrust at most 52 kN
  thrust bearing { dynamic rating 340 kN  rolling elements roller }
  ratio 2.04:1 exact 2.043:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.21 kW/rpm
  }
}

shaft material high-strength-stainless {`,
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/thrust-bearing-life',
  title: 'Thrust bearing life covers the service of the vessel',
  mistakes: ['L16'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'basic rating life of the thrust bearing at full power, ISO 281, against the required life or ten years of ' +
    'duty hours',
  source: basicRatingLife.spec.source,
  manual:
    'A rolling bearing that carries its greatest thrust when new still wears out: its life falls roughly as the ' +
    'cube of the load. Where the gear, a motor or the thrust bearing in the shaft declares its dynamic rating, the life ' +
    'that 90 % of such bearings reach is computed for the thrust and speed of full power throughout: write "thrust bearing ' +
    '{ dynamic rating 280 kN  rolling elements roller }". That life is compared with "thrust bearing ' +
    'life at least 20000 h" in the criteria, or with ten years of duty hours. Fit a larger bearing, another gear ' +
    'or a slower shaft.',
  caution:
    `${DEFER} Ten years is common practice, without a source. Oil, dirt, misalignment, shock and radial load on ` +
    'the same bearing are not in the basic life.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_BEARING, ['dynamic rating 280 kN', 'dynamic rating 150 kN']),
    passing: WITH_BEARING,
    cannotTell: changed(WITH_BEARING, [
      'dynamic rating 280 kN  rolling elements roller',
      'dynamic rating 280 kN',
    ]),
  })),
};

export const thrustBearingLifeRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  if (!(line.engine || line.motor) || !line.propeller) return undefined;
  const bearing = ratedThrustBearing(analysis);
  if (!bearing) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const { taker, rating, host } = bearing;
  const name = taker.bearing ? taker.name : `the thrust bearing of ${taker.name}`;
  const place =
    line.gear && taker.part === line.gear
      ? (line.gear.nameOrigin ?? host)
      : (rating.dynamicRating?.origin ?? rating.rollingElements?.origin ?? host);
  const found = thrustBearingLife(analysis, bearing, needs);
  if (found) needs.found(found.life);
  const wanted = wantedLife(context, needs);
  if (wanted) needs.found(wanted.life);
  if (!found || !wanted)
    return waits(say, needs, place, `${line.name}: whether ${name} lasts as long as required`);
  const { life, thrust, speed, basis } = found;
  const { thrustBearingDuty: duty, thrustBearingReliability: share } = context.vessel.criteria ?? {};
  const chosen = `${duty?.length ? ', the duty of the criteria' : ''}${share ? `, ${share.written} reach it` : ''}`;
  const load = `${analysis.tell(thrust, 3)} at ${analysis.tell(speed, 3)} (${basis}${chosen})`;
  const numbers = `${name} lasts ${hours(life)} under ${load}; required: ${hours(wanted.life)}, ${wanted.said}`;
  const rated = rating.dynamicRating!;
  return say.compare({
    place,
    criterion: {
      said: `${INFO.criterion}: ${wanted.said}${chosen}`,
      chosenBy: context.vessel.criteria?.thrustBearingLife || chosen ? 'author' : 'default',
    },
    capacity: life,
    demand: wanted.life,
    workings: [life],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${percent(1 - life.si / wanted.life.si)} short. Fit a bearing of more than ${rated.written}, another gear, or state a life that suits the service of the vessel.`,
    related: [{ at: rated.origin, message: 'dynamic load rating' }],
    routes: () => longerLived(context, wanted.life),
  });
}

/** Years that a thrust bearing is expected to last where the spec asks for no life: common practice. */
const USUAL_YEARS = given('years', 'a', 'number', 10, {
  assumed: '10 years between replacements (common practice, no source)',
  replaceWith: 'thrust bearing life at least',
});

function wantedLife(
  { vessel }: LineContext,
  needs: Needs,
): { life: Value<'time'>; said: string } | undefined {
  const own = vessel.criteria?.thrustBearingLife;
  if (own) {
    const life = needs.fact(own, {
      what: 'life required of the thrust bearing',
      host: vessel.criteria!.origin,
      property: 'thrust bearing life at least',
    });
    return (
      life && { life: renamed(life, 'life required', 'L_w'), said: `at least ${own.written} by the criteria` }
    );
  }
  const hoursPerYear = needs.fact(vessel.duty?.hours, {
    what: `hours a year of ${vessel.name}`,
    host: vessel.duty?.origin ?? vessel.origin,
    property: vessel.duty ? 'hours' : 'duty',
  });
  return (
    hoursPerYear && {
      life: dutyTime({ hoursPerYear: renamed(hoursPerYear, 'hours a year', 'h'), years: USUAL_YEARS }),
      said: 'ten years of duty (default)',
    }
  );
}

/** Catalogue gears whose bearing lasts long enough. */
function longerLived(context: LineContext, wanted: Value<'time'>) {
  const duty = wantedDuty(context.vessel, new Needs());
  const margin = context.vessel.criteria?.gearTorqueMargin?.value?.si ?? 0;
  if (duty === undefined) return [];
  return gearRoutes(context, (after: LineAnalysis) => {
    const bearing = ratedThrustBearing(after);
    const life = bearing && thrustBearingLife(after, bearing, new Needs())?.life;
    if (!life || !(life.si >= wanted.si) || carries(after, duty, 'ahead', margin) === undefined)
      return undefined;
    const over = life.si / wanted.si - 1;
    return {
      margin: over,
      words: `its thrust bearing lasts ${hours(life)}, ${percent(over)} more than required`,
    };
  });
}

/** A life is known to two or three figures at best. */
function hours({ si }: Value<'time'>): string {
  return `${Number((si / 3600).toPrecision(3)).toLocaleString('en', { useGrouping: false })} h`;
}
