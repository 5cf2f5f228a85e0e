import {
  basicRatingLife,
  type DutyStep,
  equivalentBearingLoad,
  equivalentDutyLoad,
  given,
  lifeExponent,
  modifiedRatingLife,
  ratingLifeTime,
  reliabilityFactors,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Shaft } from '../model/shafting.js';
import type { RollingThrustBearing } from '../model/torsion.js';
import type { Vessel } from '../model/vessel.js';
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
  const fullLoad = equivalentBearingLoad({
    radialLoad: nothing,
    axialLoad,
    radialFactor: one('radial factor', 'X'),
    axialFactor: one('axial factor', 'Y'),
    ringFactor: one('ring factor', 'V'),
  });
  const steps = dutySteps(analysis.vessel, fullLoad, push.speed, needs);
  if (!steps) return undefined;
  const basicLife = basicRatingLife({
    dynamicRating: renamed(dynamicRating, 'dynamic rating', 'C'),
    equivalentLoad: steps.length > 0 ? equivalentDutyLoad(steps, exponent) : fullLoad,
    exponent,
  });
  const a1 = reliabilityOf(analysis.vessel, needs);
  if (a1 === undefined) return undefined;
  const revolutions = a1.si === 1 ? basicLife : modifiedRatingLife({ basicLife, reliabilityFactor: a1 });
  const speed = steps.length > 0 ? meanSpeed(steps) : push.speed;
  return { ...push, life: ratingLifeTime({ revolutions, speed }) };
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

/** The steps of the duty that the criteria choose, with the rest of the time at full power; none where they choose none. */
function dutySteps(
  { criteria, ...vessel }: Vessel,
  fullLoad: Value<'force'>,
  fullSpeed: Value<'rotational speed'>,
  needs: Needs,
): DutyStep[] | undefined {
  const said = criteria?.thrustBearingDuty ?? [];
  if (said.length === 0) return [];
  const host = criteria?.origin ?? vessel.origin;
  const shares = said.map(fact =>
    needs.fact(fact, { what: 'duty of the thrust bearing', host, property: 'thrust bearing duty' }),
  );
  if (shares.some(one => !one)) return undefined;
  const told = shares.reduce((sum, one) => sum + one!.y.si, 0);
  if (told > 1 + 1e-9)
    return needs.miss(
      {
        what: 'a duty of the thrust bearing whose shares of time come to no more than 100 %',
        host,
        property: 'thrust bearing duty',
      },
      said[0]!.origin,
    );
  const step = (time: number, share: number, assumed: string): DutyStep => ({
    load: given('thrust of the step', 'P_i', 'force', fullLoad.si * share ** 2, { assumed }),
    speed: given('shaft speed of the step', 'n_i', 'rotational speed', fullSpeed.si * share, { assumed }),
    time: given('share of the time', 't_i', 'time', time, { assumed }),
  });
  const steps = shares.map(one =>
    step(one!.y.si, one!.x.si, 'share of full shaft speed by the criteria, thrust as its square'),
  );
  return told < 1 - 1e-9 ? [...steps, step(1 - told, 1, 'the rest of the time at full power')] : steps;
}

/** Revolutions of all steps over their time. */
function meanSpeed(steps: readonly DutyStep[]): Value<'rotational speed'> {
  const time = steps.reduce((sum, one) => sum + one.time.si, 0);
  const turned = steps.reduce((sum, one) => sum + one.time.si * one.speed.si, 0);
  return given('mean shaft speed', 'n', 'rotational speed', turned / time, {
    assumed: 'revolutions of all steps over their time',
  });
}

const SHARES = [90, 95, 96, 97, 98, 99] as const;

/** a₁ of the reliability that the criteria choose: of the next share that ISO 281 tabulates, never a lesser one. */
function reliabilityOf({ criteria, ...vessel }: Vessel, needs: Needs): Value<'number'> | undefined {
  const fact = criteria?.thrustBearingReliability;
  if (!fact) return given('reliability factor', 'a₁', 'number', 1, { assumed: '90 % reach the basic life' });
  const wanted = {
    what: 'reliability required of the thrust bearing',
    host: criteria?.origin ?? vessel.origin,
    property: 'thrust bearing reliability at least',
  };
  const share = needs.fact(fact, wanted);
  const row = share && SHARES.find(one => one >= share.si * 100 - 1e-9);
  if (share && row === undefined)
    return needs.miss({ ...wanted, what: `${wanted.what}, at most 99 %` }, fact.origin);
  return (
    row &&
    given('reliability factor', 'a₁', 'number', reliabilityFactors[row], {
      assumed: `${row} % of bearings reach it (ISO 281, ${reliabilityFactors.source.confidence})`,
    })
  );
}
