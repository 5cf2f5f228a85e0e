import {
  advanceOfTrial,
  advanceRatioAtTorque,
  type Balance,
  balanceAtShaftSpeed,
  CROUCH_CONVERSION,
  crouchSpeed,
  type DrivenVessel,
  displacementSpeed,
  given,
  type OpenWaterCurve,
  type OperatingPoint,
  type Outcome,
  outsideRange,
  type PropellerLoad,
  predictAt,
  predictTopSpeed,
  propellerLoad,
  ratedDemand,
  renamed,
  shaftSpeedThroughGear,
  speedOfAdvance,
  torqueCoefficientRead,
  trialResistanceCorrelation,
  type Value,
  wakeOfTrial,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import type { SpeedMethod } from '../../model/hull.js';
import { aside } from '../../model/reads.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { assumedOf } from '../efficiencies.js';
import { type Case, gather, noMethod, type Refusal } from './case.js';
import { fullThrottleTable } from './engine-table.js';
import type { HullFlow } from './hull-flow.js';
import { hullFacts, waterDensity } from './hull-forms.js';
import { ESTIMATES } from './hull-method.js';
import { type ResistanceMethod, resistanceBy } from './hull-resistance.js';
import { type MotorRun, motorRun } from './motor-run.js';
import { settled } from './settled.js';

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
  /** Without what a nozzle hands to the hull. */
  readonly shaftThrust: Value<'force'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly speedOfAdvance: Value<'speed'>;
  readonly torque: Value<'torque'>;
  readonly loadFraction: Value<'ratio'> | undefined;
}

/** What a trial whose speed and power were read says of the hull. */
export interface Calibration {
  readonly correlation: Value<'ratio'>;
  readonly wakeFraction: Value<'ratio'>;
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
  /** Power asked at rated speed over power available; of a motor by itself, at the lowest speed at which it gives that power. */
  readonly demand: Value<'ratio'>;
  /** A motor by itself, which gives its power over a range of speeds. */
  readonly motor?: MotorRun;
  /** What the blades are set to, where their pitch is set under way. */
  readonly pitchSet?: Value<'length'>;
  readonly full: Outcome<FullThrottle>;
  /** Speed and engine load with the engine held at a speed; absent where resistance against speed is not known. */
  readonly atEngineSpeed?: (engineSpeed: Value<'rotational speed'>) => Outcome<OperatingPoint>;
  /** Resistance that the thrust of a trial run met over that of the method, at the speeds that were read. */
  readonly correlationAt?: (
    engineSpeed: Value<'rotational speed'>,
    vesselSpeed: Value<'speed'>,
  ) => Value<'ratio'> | undefined;
  /** The same from the power that was read at the shaft, with the wake that it gives: what the method takes for it is not used. */
  readonly calibrationAt?: (
    engineSpeed: Value<'rotational speed'>,
    vesselSpeed: Value<'speed'>,
    shaftPower: Value<'power'>,
  ) => Calibration | undefined;
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
  const arrangement = vessel.arrangements.find(each => each.name === line.arrangement);
  const screws = given('number of screws', 'Ns', 'number', one.screws, {
    origin: arrangement?.nameOrigin ?? line.origin,
  });
  const driven = (flow: HullFlow): DrivenVessel => ({
    resistance,
    curve,
    screws,
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
  const absorbedAt = (speed: Value<'rotational speed'>) => {
    const found = settled<Balance>(one, `shaft at ${speed.si}`, run.vesselSpeed.si, flow =>
      balanceAtShaftSpeed(driven(flow), speed),
    );
    return found.applies ? found.power : undefined;
  };
  const outside = [
    ...outsideRange(run.resistance),
    ...beyondTrial(vessel, full.applies ? full.vesselSpeed : run.vesselSpeed),
  ];
  const made = result(one, run, full, density, outside, absorbedAt);
  if (!table) return made;
  const atEngineSpeed = (engineSpeed: Value<'rotational speed'>) =>
    settled<OperatingPoint>(
      one,
      `at ${engineSpeed.si}`,
      (run.vesselSpeed.si * engineSpeed.si) / rated.speed.si,
      flow => predictAt(driven(flow), driveline, table, engineSpeed),
    );
  const correlationAt = (engineSpeed: Value<'rotational speed'>, vesselSpeed: Value<'speed'>) => {
    const flow = one.flow(vesselSpeed);
    const predicted = resistance.valueAt(vesselSpeed);
    if (!predicted || !flow.thrustDeduction) return undefined;
    const assumed = assumedOf(vessel, 'resistance correlation', 'ratio')?.si ?? 1;
    const load = propellerLoad(
      curve,
      shaftSpeedThroughGear({ engineSpeed, ratio }),
      speedOfAdvance({ vesselSpeed, wakeFraction: flow.wakeFraction }),
      density,
    );
    const met = trialResistanceCorrelation({
      thrust: load.thrust,
      screws,
      thrustDeduction: flow.thrustDeduction,
      // What an earlier trial gave is taken out again: the correlation is that of the method alone.
      resistance: { ...predicted, si: predicted.si / assumed },
    });
    return load.outside.length === 0 && Number.isFinite(met.si) && met.si > 0 ? met : undefined;
  };
  const calibrationAt: Propulsion['calibrationAt'] = (engineSpeed, vesselSpeed, shaftPower) => {
    const flow = one.flow(vesselSpeed);
    const predicted = resistance.valueAt(vesselSpeed);
    if (!predicted || !flow.thrustDeduction) return undefined;
    const read = shaftSpeedThroughGear({ engineSpeed, ratio });
    const { diameter } = curve.geometry;
    const advanceRatio = advanceRatioAtTorque(
      curve,
      torqueCoefficientRead({
        power: renamed(shaftPower, 'power read at the shaft', 'P'),
        shaftSpeed: read,
        density,
        diameter,
        relativeRotativeEfficiency:
          flow.relativeRotativeEfficiency ??
          given('relative rotative efficiency', 'ηR', 'ratio', 1, { assumed: 'none is given by the method' }),
      }),
    );
    if (!advanceRatio) return undefined;
    const advance = advanceOfTrial({ advanceRatio, shaftSpeed: read, diameter });
    const wakeFraction = wakeOfTrial({ speedOfAdvance: advance, vesselSpeed });
    const assumed = assumedOf(vessel, 'resistance correlation', 'ratio')?.si ?? 1;
    const correlation = trialResistanceCorrelation({
      thrust: propellerLoad(curve, read, advance, density).thrust,
      screws,
      thrustDeduction: flow.thrustDeduction,
      resistance: { ...predicted, si: predicted.si / assumed },
    });
    return Number.isFinite(correlation.si) && correlation.si > 0 ? { correlation, wakeFraction } : undefined;
  };
  return { ...made, atEngineSpeed, correlationAt, calibrationAt };
}

/** A correlation of a trial holds near the speeds that were read there: so far beyond them as a fifth. */
function beyondTrial(vessel: Vessel, speed: Value<'speed'>): string[] {
  if (!assumedOf(vessel, 'resistance correlation', 'ratio')) return [];
  // A remark beside the prediction, which does not rest on it.
  const read = aside(() =>
    (vessel.trials ?? []).flatMap(one => one.runs.flatMap(run => run.speed?.value?.si ?? [])),
  );
  if (read.length === 0) return [];
  const [low, high] = [Math.min(...read) * (1 - BEYOND), Math.max(...read) * (1 + BEYOND)];
  if (speed.si >= low && speed.si <= high) return [];
  const knots = (si: number) => ((si * 3600) / 1852).toFixed(1);
  return [
    `the resistance correlation was read at ${knots(Math.min(...read))} to ${knots(Math.max(...read))} kn on trial, and ${knots(speed.si)} kn is further off than a fifth`,
  ];
}

const BEYOND = 0.2;

/** Where a speed is given, or estimated from the power, the propeller is taken to run at it at rated shaft speed. */
function atGivenSpeed(one: Case, needs: Needs): Propulsion | Refusal | undefined {
  const { vessel, curve, shaftSpeed } = one;
  const vesselSpeed = speedOf(one, needs);
  if (!vesselSpeed) return undefined;
  const outside = outsideRange(vesselSpeed);
  if (outside.length > 0)
    return noMethod(one, `The ${one.method} estimate does not hold for this hull: ${outside.join('; ')}.`);
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
  const constant = one.method === 'Crouch' && crouchConstant(one.vessel, needs);
  if (!displacement || !waterlineLength) return undefined;
  if (one.method !== 'Crouch') return displacementSpeed({ power, displacement, waterlineLength });
  return constant ? crouchSpeed({ power, displacement, waterlineLength, constant }) : undefined;
}

function result(
  one: Case,
  rated: RatedRun,
  full: Outcome<FullThrottle>,
  density: Value<'density'>,
  outside: readonly string[] = [],
  absorbedAt?: (shaftSpeed: Value<'rotational speed'>) => Value<'power'> | undefined,
): Propulsion {
  const { available, method } = one;
  const asked = renamed(rated.power, 'power absorbed at rated speed', 'PD');
  const motor = motorRun(one, asked, absorbedAt);
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
    demand: motor?.torqueShare ?? ratedDemand({ absorbed: asked, delivered: available }),
    ...(motor ? { motor } : {}),
    full,
    outside: [...new Set([...rated.outside, ...outside, ...outsideRange(rated.speedOfAdvance)])],
  };
}

/** The constant as the formula takes it, in knots, horsepower and pounds. */
function crouchConstant(vessel: Vessel, needs: Needs): Value<'number'> | undefined {
  const { hull } = vessel;
  const constant = hullFacts(vessel, needs)(hull?.crouchConstant, 'Crouch constant');
  if (!constant || !hull?.crouchUnits) return constant;
  const units = needs.fact(hull.crouchUnits, {
    what: 'units of the Crouch constant',
    host: hull.origin,
    property: 'Crouch units',
  });
  if (!units || units === 'kn hp lb') return units && constant;
  const factor = CROUCH_CONVERSION[units === 'kn kW kg' ? 'knots, kW, kg' : 'miles per hour, hp, lb'];
  return given('Crouch constant in knots, horsepower and pounds', 'C', 'number', constant.si * factor, {
    assumed: `${constant.written ?? constant.si} is for ${units}`,
    ...(constant.origin ? { origin: constant.origin } : {}),
  });
}
