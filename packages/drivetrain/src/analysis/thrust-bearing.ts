import {
  basicRatingLife,
  equivalentBearingLoad,
  given,
  lifeExponent,
  ratingLifeTime,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Shaft } from '../model/shafting.js';
import type { RollingThrustBearing } from '../model/torsion.js';
import type { LineAnalysis } from './line.js';
import { ratedShaftLoad } from './shaft-strength.js';
import { bollardThrust, type ThrustTaker, thrustPath } from './thrust.js';

/** A rolling bearing that takes the thrust, with where its facts are written. */
export interface RatedThrustBearing {
  readonly taker: ThrustTaker;
  readonly rating: RollingThrustBearing;
  readonly host: object;
}

/** Life of the thrust bearing at full power all the time. */
export interface ThrustBearingLife {
  readonly life: Value<'time'>;
  readonly thrust: Value<'force'>;
  readonly speed: Value<'rotational speed'>;
  /** Where the thrust comes from, in words. */
  readonly basis: string;
}

/** The bearing in the path of the thrust, where the spec says anything of its rating. */
export function ratedThrustBearing(analysis: LineAnalysis): RatedThrustBearing | undefined {
  const { line } = analysis;
  const { taker } = thrustPath(line);
  if (!taker) return undefined;
  if (taker.bearing) {
    const { dynamicRating, rollingElements } = taker.bearing;
    return dynamicRating || rollingElements
      ? { taker, rating: taker.bearing, host: taker.bearing.origin }
      : undefined;
  }
  const own =
    taker.part === line.gear
      ? line.gear.thrustBearing
      : taker.part === line.motor
        ? line.motor.thrustBearing
        : undefined;
  return own && { taker, rating: own, host: own.origin };
}

/** ISO 281 life under the thrust at full power: that of the vessel under way where it is worked out, else at the bollard. */
export function thrustBearingLife(
  analysis: LineAnalysis,
  { taker, rating, host }: RatedThrustBearing,
  needs: Needs,
): ThrustBearingLife | undefined {
  const dynamicRating = needs.fact(rating.dynamicRating, {
    what: `dynamic load rating of the thrust bearing of ${taker.name}`,
    host,
    property: 'dynamic rating',
  });
  const elements = needs.fact(rating.rollingElements, {
    what: `whether the thrust bearing of ${taker.name} rolls on balls or rollers`,
    host,
    property: 'rolling elements',
  });
  const push = thrustAtFullPower(analysis, needs);
  if (!dynamicRating || !elements || !push) return undefined;
  const exponent = given('exponent of life', 'p', 'number', lifeExponent[elements], {
    assumed: `${elements} bearing`,
  });
  const axialLoad = renamed(push.thrust, 'thrust', 'F_a');
  const nothing = given('radial load', 'F_r', 'force', 0, {
    assumed: 'the thrust bearing takes thrust only',
  });
  const one = (label: string, symbol: string) =>
    given(label, symbol, 'number', 1, { assumed: 'axial rating of a thrust bearing under thrust only' });
  const equivalentLoad = equivalentBearingLoad({
    radialLoad: nothing,
    axialLoad,
    radialFactor: one('radial factor', 'X'),
    axialFactor: one('axial factor', 'Y'),
    ringFactor: one('ring factor', 'V'),
  });
  const revolutions = basicRatingLife({
    dynamicRating: renamed(dynamicRating, 'dynamic rating', 'C'),
    equivalentLoad,
    exponent,
  });
  return { ...push, life: ratingLifeTime({ revolutions, speed: push.speed }) };
}

function thrustAtFullPower(
  analysis: LineAnalysis,
  needs: Needs,
): Omit<ThrustBearingLife, 'life'> | undefined {
  const full = analysis.propulsion?.value?.full;
  if (full?.applies) {
    return {
      thrust: full.shaftThrust,
      speed: full.shaftSpeed,
      basis: 'under way at full power, as predicted',
    };
  }
  const thrust = bollardThrust(analysis, needs);
  const shaft: Shaft | undefined = analysis.line.shafts.at(-1);
  const load = shaft && ratedShaftLoad(analysis, shaft, needs);
  if (!thrust || !load) return undefined;
  return { thrust, speed: load.speed, basis: 'at the bollard, which is more than under way' };
}
