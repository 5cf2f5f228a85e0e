import {
  type Balance,
  balanceAtShaftSpeed,
  crouchSpeed,
  type DrivenVessel,
  displacementSpeed,
  given,
  type OpenWaterCurve,
  type Outcome,
  outsideRange,
  type PropellerLoad,
  predictTopSpeed,
  propellerLoad,
  ratedDemand,
  renamed,
  shaftSpeedThroughGear,
  speedOfAdvance,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import type { SpeedMethod } from '../../model/hull.js';
import { nameOf } from '../../model/part.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { type FullLoadPoint, ratedPoint } from '../engine-points.js';
import { propellerPower } from '../propeller-power.js';
import { overallRatio } from '../speeds.js';
import { bladeGeometry, seriesCurve } from './blades.js';
import { fullThrottleTable } from './engine-table.js';
import { type HullFlow, hullFlow } from './hull-flow.js';
import { hullFacts, waterDensity } from './hull-forms.js';
import { ESTIMATES, methodOf } from './hull-method.js';
import { type ResistanceMethod, resistanceBy } from './hull-resistance.js';

/** The propeller at rated shaft speed, and the vessel with it. */
export interface RatedRun extends PropellerLoad {
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly vesselSpeed: Value<'speed'>;
  readonly speedOfAdvance: Value<'speed'>;
}

/** What happens with the levers right forward. */
export interface FullThrottle {
  readonly engineSpeed: Value<'rotational speed'>;
  readonly vesselSpeed: Value<'speed'>;
  readonly thrust: Value<'force'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly speedOfAdvance: Value<'speed'>;
  readonly torque: Value<'torque'>;
  readonly loadFraction: Value<'ratio'> | undefined;
}

/** How propeller, hull and engine of a line go together. */
export interface Propulsion {
  readonly method: SpeedMethod;
  readonly methodDeclared: boolean;
  /** The method is a handbook estimate, good for a first look only. */
  readonly estimate: boolean;
  readonly curve: OpenWaterCurve;
  readonly seriesDeclared: boolean;
  readonly screws: number;
  readonly rated: RatedRun;
  readonly ratedEngineSpeed: Value<'rotational speed'>;
  readonly density: Value<'density'>;
  /** Power that reaches the propeller at rated speed. */
  readonly available: Value<'power'>;
  /** Power asked at rated speed over power available. */
  readonly demand: Value<'ratio'>;
  readonly full: Outcome<FullThrottle>;
  /** Conditions of series and method that are not met, in words. */
  readonly outside: readonly string[];
}

/** The result; or what is missing for it; or why the methods do not apply to this vessel, with what would help. */
export interface PropulsionResult {
  readonly value: Propulsion | undefined;
  readonly missing: readonly Missing[];
  readonly refusal?: string;
}

/** Works the propulsion of a line out, as far as its text allows. */
export function propulsionOf(line: ShaftLine, vessel: Vessel): PropulsionResult {
  const needs = new Needs();
  const case_ = gather(line, vessel, needs);
  if (needs.any || !case_) return { value: undefined, missing: needs.missing };
  if ('refusal' in case_) return { value: undefined, missing: case_.remedy, refusal: case_.refusal };
  const solved = solve(case_, needs);
  if (!solved) return { value: undefined, missing: needs.missing };
  if ('refusal' in solved) return { value: undefined, missing: solved.remedy, refusal: solved.refusal };
  return { value: solved, missing: [] };
}

interface Refusal {
  readonly refusal: string;
  readonly remedy: readonly Missing[];
}

interface Case {
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

function gather(line: ShaftLine, vessel: Vessel, needs: Needs): Case | Refusal | undefined {
  const propeller = line.propeller!;
  const rated = needs.take(ratedPoint(line, vessel));
  const ratio = needs.take(overallRatio(line, 'ahead'));
  const available = needs.take(propellerPower(line, vessel));
  const geometry = bladeGeometry(propeller, needs);
  const chosen = methodOf(vessel);
  if (!chosen) missMethod(vessel, needs);
  if (!geometry || !chosen || !rated || !ratio || !available) return undefined;
  const blades = seriesCurve(propeller, geometry, vessel);
  if ('refusal' in blades) {
    return {
      refusal: blades.refusal,
      remedy: [
        {
          what: `a series that covers ${nameOf(propeller)}`,
          host: propeller.origin,
          property: 'series',
          example: 'unknown',
          ...(propeller.series ? { at: propeller.series.origin } : {}),
        },
      ],
    };
  }
  const arrangement = vessel.arrangements.find(one => one.name === line.arrangement);
  const screws = arrangement?.lines.filter(one => one.propeller).length || 1;
  const flow = hullFlow(vessel, chosen.method, blades.curve, screws, needs);
  if (!flow) return undefined;
  return {
    line,
    vessel,
    curve: blades.curve,
    seriesDeclared: blades.declared,
    method: chosen.method,
    methodDeclared: chosen.declared,
    flow,
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
      { what: 'how speed is to be worked out', host: criteria.origin, property: 'speed method' },
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

function solve(one: Case, needs: Needs): Propulsion | Refusal | undefined {
  const { method } = one;
  if (method === 'given speed' || method === 'Crouch' || method === 'handbook displacement')
    return atGivenSpeed(one, needs);
  return byResistance(one, method, needs);
}

function byResistance(one: Case, method: ResistanceMethod, needs: Needs): Propulsion | Refusal | undefined {
  const { curve, shaftSpeed, vessel, rated, ratio, line } = one;
  const table = fullThrottleTable(line, vessel, rated);
  const noThrust =
    ((curve.zeroThrust * curve.geometry.diameter.si) / (2 * Math.PI)) *
    Math.max(shaftSpeed.si, (table?.highest ?? 0) / ratio.si);
  // Whole steps, so that propellers of nearly one size share a curve.
  const fastest = given('speed of no thrust', 'V', 'speed', Math.ceil((1.2 * noThrust) / 5) * 5);
  const resistance = resistanceBy(method, vessel, fastest, needs);
  if (!resistance) return undefined;
  if (!resistance.applies) return noMethod(one, resistance.reason);
  const density = waterDensity(vessel);
  const driven = (flow: HullFlow): DrivenVessel => ({
    resistance,
    curve,
    screws: given('number of screws', 'Ns', 'number', one.screws),
    wakeFraction: flow.wakeFraction,
    thrustDeduction: flow.thrustDeduction!,
    density,
    ...(flow.relativeRotativeEfficiency
      ? { relativeRotativeEfficiency: flow.relativeRotativeEfficiency }
      : {}),
  });
  const first = 0.7 * (curve.geometry.pitch.si / (2 * Math.PI)) * shaftSpeed.si;
  const run = settled<Balance>(one, 'rated', first, flow => balanceAtShaftSpeed(driven(flow), shaftSpeed));
  if (!run.applies) return noMethod(one, run.reason);
  const driveline = {
    ratio,
    efficiency: given('driveline efficiency', 'η', 'ratio', one.available.si / rated.power.si, {
      assumed:
        'power at the propeller over rated power of the engine, all stages, ambient and take-off counted',
    }),
  };
  const full: Outcome<FullThrottle> = table
    ? settled<FullThrottle>(one, 'full', run.vesselSpeed.si, flow =>
        predictTopSpeed(driven(flow), driveline, table),
      )
    : { applies: false, reason: 'Nothing is declared of the engine below or above its rated speed.' };
  return result(one, run, full, density);
}

/** Wake and thrust deduction depend on the speed that they help to find: repeated until it stays. */
function settled<T extends { readonly vesselSpeed: Value<'speed'> }>(
  one: Case,
  what: string,
  first: number,
  find: (flow: HullFlow) => Outcome<T>,
): Outcome<T> {
  const key = `${what} ${inputsOf(one)}`;
  const at = (V: number) => find(one.flow(given('vessel speed', 'V', 'speed', V)));
  const known = SETTLED.get(key);
  if (known !== undefined) return at(known);
  let V = first;
  let found = at(V);
  for (let turn = 0; turn < 8 && found.applies; turn++) {
    const next = found.vesselSpeed.si;
    if (Math.abs(next - V) < 1e-4 * next) break;
    V = next;
    found = at(V);
  }
  if (SETTLED.size >= MOST_SETTLED) SETTLED.clear();
  SETTLED.set(key, V);
  return found;
}

/** Speed of the last turn for inputs already seen, so that a keystroke elsewhere does not repeat the others. */
const SETTLED = new Map<string, number>();
const MOST_SETTLED = 500;

/** Every number that a balance depends on. */
function inputsOf({ vessel, curve, rated, ratio, available, screws, method, line }: Case): string {
  const { diameter, pitch, blades, areaRatio } = curve.geometry;
  const numbers = [diameter, pitch, blades, areaRatio, rated.speed, rated.power, ratio, available].map(
    value => value.si,
  );
  const table = fullThrottleTable(line, vessel, rated);
  const engine = table?.speeds.map(speed => `${speed} ${table.torqueAt(speed)}`) ?? [];
  const hull = JSON.stringify(vessel.hull, (key, value) => (key === 'origin' ? undefined : value));
  return [method, curve.series.name, screws, ...numbers, ...engine, hull].join(' ');
}

/** Where a speed is given, or estimated from the power, the propeller is taken to run at it at rated shaft speed. */
function atGivenSpeed(one: Case, needs: Needs): Propulsion | Refusal | undefined {
  const { vessel, curve, shaftSpeed } = one;
  const vesselSpeed = speedOf(one, needs);
  if (!vesselSpeed) return undefined;
  const outside = outsideRange(vesselSpeed);
  if (outside.length > 0)
    return noMethod(one, `The ${one.method} estimate does not hold for her: ${outside.join('; ')}.`);
  const density = waterDensity(vessel);
  const advance = speedOfAdvance({ vesselSpeed, wakeFraction: one.flow(vesselSpeed).wakeFraction });
  const load = propellerLoad(curve, shaftSpeed, advance, density);
  const run = { ...load, shaftSpeed, vesselSpeed, speedOfAdvance: advance };
  return result(
    one,
    run,
    {
      applies: false,
      reason: 'Resistance against speed is not given, so only rated speed can be looked at.',
    },
    density,
  );
}

function speedOf(one: Case, needs: Needs): Value<'speed'> | undefined {
  const { hull } = one.vessel;
  const fact = hullFacts(one.vessel, needs);
  if (one.method === 'given speed') {
    const speed = fact(hull?.speedAtRatedPower, 'speed at rated power');
    return speed && renamed(speed, 'speed at rated power', 'V');
  }
  const power = given('power at all propellers', 'SHP', 'power', one.available.si * one.screws, {
    assumed: `${one.screws} times the power at one propeller`,
  });
  const displacement = fact(hull?.displacement, 'displacement');
  const waterlineLength = fact(hull?.waterlineLength, 'waterline length');
  const constant = one.method === 'Crouch' && fact(hull?.crouchConstant, 'Crouch constant');
  if (!displacement || !waterlineLength) return undefined;
  if (one.method !== 'Crouch') return displacementSpeed({ power, displacement, waterlineLength });
  return constant ? crouchSpeed({ power, displacement, waterlineLength, constant }) : undefined;
}

function result(
  one: Case,
  rated: RatedRun,
  full: Outcome<FullThrottle>,
  density: Value<'density'>,
): Propulsion {
  const { available, method } = one;
  const asked = renamed(rated.power, 'power asked at rated speed', 'PD');
  return {
    method,
    methodDeclared: one.methodDeclared,
    estimate: ESTIMATES.includes(method),
    curve: one.curve,
    seriesDeclared: one.seriesDeclared,
    screws: one.screws,
    rated: { ...rated, power: asked },
    ratedEngineSpeed: one.rated.speed,
    density,
    available,
    demand: ratedDemand({ absorbed: asked, delivered: available }),
    full,
    outside: [...new Set(rated.outside)],
  };
}

function noMethod(one: Case, reason: string): Refusal {
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
