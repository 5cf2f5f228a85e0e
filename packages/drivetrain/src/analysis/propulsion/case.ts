import { type OpenWaterCurve, renamed, shaftSpeedThroughGear, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import type { SpeedMethod } from '../../model/hull.js';
import { nameOf } from '../../model/part.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import type { FullLoadPoint } from '../engine-points.js';
import { ratedTogether } from '../joined.js';
import { isPair } from '../pair.js';
import { propellerPower } from '../propeller-power.js';
import { overallRatio } from '../speeds.js';
import { bladeGeometry, seriesCurve } from './blades.js';
import { type HullFlow, hullFlow } from './hull-flow.js';
import { methodOf } from './hull-method.js';
import { missHull } from './hull-resistance.js';

/** Why no method applies, and what would help. */
export interface Refusal {
  readonly refusal: string;
  readonly remedy: readonly Missing[];
}

/** Everything that a propulsion computation of one line starts from. */
export interface Case {
  readonly line: ShaftLine;
  readonly vessel: Vessel;
  readonly curve: OpenWaterCurve;
  readonly seriesDeclared: boolean;
  readonly method: SpeedMethod;
  readonly methodDeclared: boolean;
  readonly flow: (vesselSpeed: Value<'speed'>) => HullFlow;
  readonly screws: number;
  readonly rated: FullLoadPoint;
  readonly ratio: Value<'ratio'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly available: Value<'power'>;
}

/** Collects it; what is missing is noted, all of it at once. */
export function gather(line: ShaftLine, vessel: Vessel, needs: Needs): Case | Refusal | undefined {
  const propeller = line.propeller!;
  const rated = needs.take(ratedTogether(line, vessel));
  const ratio = needs.take(overallRatio(line, 'ahead'));
  const available = needs.take(propellerPower(line, vessel));
  const geometry = bladeGeometry(propeller, needs);
  const chosen = methodOf(vessel);
  if (!chosen) missMethod(vessel, needs);
  const arrangement = vessel.arrangements.find(one => one.name === line.arrangement);
  const screws = arrangement?.lines.filter(one => one.propeller).length || 1;
  const flow = chosen && hullFlow(vessel, chosen.method, screws, needs);
  if (chosen) missHull(chosen.method, vessel, needs);
  if (!geometry || !chosen || !flow || !rated || !ratio || !available) return undefined;
  const blades = seriesCurve(propeller, geometry, vessel);
  if ('refusal' in blades) {
    return {
      refusal: blades.refusal,
      remedy: [
        {
          what: isPair(propeller)
            ? `power and thrust of the pair of ${nameOf(propeller)} against speed: no published series covers one`
            : `a series that covers ${nameOf(propeller)}`,
          host: propeller.origin,
          property: 'series',
          example: 'unknown',
          ...(propeller.series ? { at: propeller.series.origin } : {}),
        },
      ],
    };
  }
  return {
    line,
    vessel,
    curve: blades.curve,
    seriesDeclared: blades.declared,
    method: chosen.method,
    methodDeclared: chosen.declared,
    flow: vesselSpeed => flow(blades.curve, vesselSpeed),
    screws,
    rated,
    ratio,
    shaftSpeed: renamed(shaftSpeedThroughGear({ engineSpeed: rated.speed, ratio }), 'rated shaft speed'),
    available,
  };
}

function missMethod(vessel: Vessel, needs: Needs): void {
  const { criteria, hull } = vessel;
  if (criteria) {
    needs.miss(
      { what: 'speed method', host: criteria.origin, property: 'speed method' },
      criteria.speedMethod?.origin,
    );
  } else {
    const host = hull?.origin ?? vessel.origin;
    needs.miss({
      what: 'resistance of the hull at two speeds or more',
      host,
      property: hull ? 'resistance' : 'hull',
    });
  }
}

/** The refusal of a method that does not cover this vessel. */
export function noMethod(one: Case, reason: string): Refusal {
  const { vessel } = one;
  return {
    refusal: reason,
    remedy: [
      {
        what: 'resistance of the hull at speeds around this one, from a test, a trial or the designer',
        host: vessel.hull?.origin ?? vessel.origin,
        property: vessel.hull ? 'resistance' : 'hull',
        example: 'unknown',
      },
    ],
  };
}
