import { collarPressure, collarsNeeded, percent, renamed } from '@tailshaft/mechanics';
import { bollardThrust, thrustPath } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Bearing } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER } from './sources.js';

/** The forward bearing is a thrust block. */
const WITH_COLLAR = changed(WITH_BEARINGS, [
  `        bearing tube {
          kind stern tube
          at 1.45 m
          length 260 mm
          lubrication water
          water from own engine
        }`,
  `        bearing block {
          kind thrust
          at 1.45 m
          length 260 mm
          lubrication oil
          thrust at most 40 kN
          collars 1
          collar outside diameter 200 mm
          collar inside diameter 90 mm
          collar pressure at most 1.6 MPa
        }`,
]);

const INFO: RuleInfo = {
  id: 'shafting/thrust-collar',
  title: 'Collar pressure is within the limit of the plain thrust bearing',
  mistakes: ['L16'],
  severity: 'warning',
  estimate: 0.2,
  criterion:
    'mean pressure on the collars under the estimated thrust at the bollard, against the limit of the bearing ' +
    'maker',
  source: collarPressure.spec.source,
  manual:
    'A plain thrust block carries the propeller thrust on the faces of its collars. The estimated thrust at ' +
    'the bollard at rated power is spread over the faces and the mean pressure compared with "collar ' +
    'pressure at most" of its maker. Fit more collars, or larger ones. The rule applies where a thrust ' +
    'bearing declares collars.',
  caution:
    `${DEFER} Mean pressure only: speed, oil film and heat are for the maker; several collars seldom share ` +
    'evenly.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_COLLAR, ['collar outside diameter 200 mm', 'collar outside diameter 160 mm']),
    passing: WITH_COLLAR,
    cannotTell: changed(WITH_COLLAR, ['          collar pressure at most 1.6 MPa\n', '']),
  })),
};

export const thrustCollarRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  if (!(line.engine || line.motor) || !line.propeller) return undefined;
  const bearing = thrustPath(line).taker?.bearing;
  if (!bearing) return undefined;
  const { collars, collarOutside, collarInside, collarPressure: allowed } = bearing;
  return collars || collarOutside || collarInside || allowed ? judge(context, bearing) : undefined;
}

function judge({ line, analysis }: LineContext, bearing: Bearing): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = `thrust bearing ${bearing.name}`;
  const wanted = (property: string) => ({ what: `${property} of ${name}`, host: bearing.origin, property });
  const collars = needs.fact(bearing.collars, wanted('collars'));
  const outside = needs.fact(bearing.collarOutside, wanted('collar outside diameter'));
  const inside = needs.fact(bearing.collarInside, wanted('collar inside diameter'));
  const allowed = needs.fact(bearing.collarPressure, wanted('collar pressure at most'));
  const thrust = bollardThrust(analysis, needs);
  const place = bearing.collarPressure?.origin ?? bearing.origin;
  const rings = thrust &&
    outside &&
    inside && {
      thrust: renamed(thrust, 'thrust', 'F'),
      outsideDiameter: renamed(outside, 'collar outside diameter', 'D'),
      insideDiameter: renamed(inside, 'collar inside diameter', 'd'),
    };
  const pressure =
    rings && collars && needs.found(collarPressure({ ...rings, collars: renamed(collars, 'collars', 'n') }));
  const needed =
    rings &&
    allowed &&
    needs.found(collarsNeeded({ ...rings, pressure: renamed(allowed, 'pressure allowed', 'p') }));
  if (!allowed || !thrust || !pressure || !needed)
    return waits(say, needs, place, `${line.name}: whether the collars of ${name} are large enough`);
  const numbers = `bollard thrust of about ${analysis.tell(thrust, 3)} puts ${analysis.tell(pressure, 3)} on the collars of ${name}; the limit is ${analysis.tell(allowed, 3)}`;
  return say.compare({
    place,
    capacity: allowed,
    demand: pressure,
    workings: [pressure, needed],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${percent(pressure.si / allowed.si - 1)} too much. Fit ${needed.si} collars of this size, or larger ones.`,
    related: [{ at: bearing.collarOutside!.origin, message: 'size of the collar' }],
  });
}
