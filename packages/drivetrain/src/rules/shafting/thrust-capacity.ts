import { bollardByPowerAndDiameter, percent } from '@tailshaft/mechanics';
import { isDucted } from '../../analysis/propulsion/blades.js';
import { bollardThrust, thrustPath, wantRatedBoxes } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';
import { thrustBearingRoutes } from './thrust-routes.js';

const WITH_THRUST = changed(SINGLE_LINE, [
  '  slip device offered\n',
  '  slip device offered\n  thrust at most 36 kN\n',
]);

const INFO: RuleInfo = {
  id: 'shafting/thrust-capacity',
  title: 'Thrust at the bollard is within the thrust bearing rating',
  mistakes: ['L16'],
  severity: 'warning',
  // The rule of power and diameter is good within some 20 %.
  estimate: 0.2,
  criterion: 'estimated thrust at the bollard at rated power against the rating of gear or thrust bearing',
  source: bollardByPowerAndDiameter.spec.source,
  manual:
    'A propeller thrusts hardest when the vessel does not move: towing, aground, against a lock wall. The ' +
    'estimate is the rule of power and diameter for open propellers, which exceeds the thrust of a fast ' +
    'craft under way. In nozzle 19A only the propeller’s own share by the Ka series reaches the shaft, since ' +
    'the nozzle passes its share to the hull; for other nozzles there is no estimate. It is compared with ' +
    'the thrust that the gear, a thrust bearing, a transfer or a motor declares. Fit a gear or a separate ' +
    'bearing rated for it; for a vessel that never works at the bollard, accept the finding with a thrust ' +
    'figure for its own speeds.',
  caution:
    `${DEFER} An estimate within some 20 %. A fixed-pitch propeller ` +
    'for a fast craft may not absorb rated power at the bollard.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_THRUST, ['thrust at most 36 kN', 'thrust at most 24 kN']),
    passing: WITH_THRUST,
    cannotTell: changed(WITH_THRUST, ['thrust at most 36 kN', 'thrust at most unknown']),
  })),
};

export const thrustCapacity: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  if (!(line.engine || line.motor) || !line.propeller) return undefined;
  const path = thrustPath(line);
  const { taker } = path;
  if (!taker) return undefined;
  if (!taker.limit && !taker.bearing && !line.couplings.some(one => one.passesThrust)) return undefined;
  const say = sayFor(INFO, line.path);
  const place = taker.limit?.origin ?? taker.bearing?.origin ?? line.origin;
  const needs = new Needs();
  const limit = needs.fact(taker.limit, {
    what: `thrust rating of ${taker.name}`,
    host: taker.host,
    property: 'thrust at most',
  });
  const thrust = bollardThrust(analysis, needs);
  wantRatedBoxes(path, needs);
  if (!limit || !thrust || needs.any) {
    const known = thrust
      ? `thrust at the bollard is about ${analysis.tell(thrust, 3)}`
      : limit && `it is rated for ${analysis.tell(limit, 3)}`;
    const what = `${line.name}: whether ${taker.name} carries the thrust at the bollard`;
    return waits(say, needs, place, what, known ? { known } : {});
  }
  const inNozzle = isDucted(line.propeller)
    ? ' (without the thrust of its nozzle; by the Ka polynomials of digital copies, the print not at hand)'
    : '';
  const numbers = `thrust at the bollard is about ${analysis.tell(thrust, 3)}${inNozzle}; ${taker.name} is rated for ${analysis.tell(limit, 3)}`;
  return say.compare({
    place: line.gear && taker.part === line.gear ? (line.gear.nameOrigin ?? place) : place,
    capacity: limit,
    demand: thrust,
    workings: [thrust],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${percent(thrust.si / limit.si - 1)} too much by this estimate. Fit a separate thrust bearing or a gear rated for it, or give a thrust figure for the service of the vessel.`,
    related: [{ at: taker.limit!.origin, message: 'its thrust rating' }],
    routes: () => (taker.bearing ? [] : thrustBearingRoutes(context, taker.part)),
  });
}
