import type { Dimension } from '../core/dimension.js';
import type { Source } from '../core/source.js';
import { given, type RangeResult, type Value } from '../core/value.js';
import { computed, doesNotApply, type Method, type Outcome } from '../propeller/outcome.js';
import { STANDARD_GRAVITY } from '../units/constants.js';
import { monotoneCurve } from './monotone-curve.js';
import type { ResistanceCurve } from './resistance-curve.js';
import { type PlaningNumbers, type PlaningState, planingEquilibrium } from './savitsky.js';

const SAVITSKY: Source = {
  author: 'Savitsky',
  title: 'Hydrodynamic design of planing hulls, Marine Technology 1(1), 71-95',
  year: 1964,
  confidence: 'published',
};

const METHOD: Method = {
  name: 'Savitsky planing equilibrium',
  text: 'trim τ at which W {[1 - sin τ sin(τ+ε)] c / cos τ - f sin τ} + Df (a - f) = 0; R = W tan τ + Df / cos τ',
  source: SAVITSKY,
};

const PLANING_HULL = {
  displacement: 'mass',
  gravityForward: 'length',
  gravityHeight: 'length',
  chineBeam: 'length',
  deadrise: 'angle',
  shaftAngle: 'angle',
  thrustArm: 'length',
  roughness: 'ratio',
  density: 'density',
  viscosity: 'kinematic viscosity',
} as const satisfies Record<string, Dimension>;

/** A planing hull as declared; centre of gravity from the transom and the keel. */
export type PlaningHull = { readonly [K in keyof typeof PLANING_HULL]: Value<(typeof PLANING_HULL)[K]> };

type Assumable = 'shaftAngle' | 'thrustArm' | 'roughness' | 'density' | 'viscosity';

/** A complete planing hull from what is known; what is not is assumed, and says so. */
export function planingHull(
  known: Omit<PlaningHull, Assumable> & Partial<Pick<PlaningHull, Assumable>>,
): PlaningHull {
  const assume = <D extends Dimension>(
    label: string,
    symbol: string,
    dimension: D,
    si: number,
    why: string,
  ) => given(label, symbol, dimension, si, { assumed: why });
  return {
    shaftAngle: assume('thrust line to keel', 'ε', 'angle', 0, 'thrust parallel to the keel'),
    thrustArm: assume(
      'thrust line to centre of gravity',
      'f',
      'length',
      0,
      'thrust through the centre of gravity',
    ),
    roughness: assume('roughness allowance', 'ΔCF', 'ratio', 0.0004, 'usual allowance of the method, 0.0004'),
    density: assume('water density', 'ρ', 'density', 1025, 'sea water at 15 °C, 1025 kg/m³'),
    viscosity: assume(
      'kinematic viscosity of water',
      'ν',
      'kinematic viscosity',
      1.18831e-6,
      'sea water at 15 °C, 1.18831e-6 m²/s',
    ),
    ...known,
  };
}

/** A planing hull in equilibrium at a speed, with its working. */
export interface PlaningResult {
  readonly trim: Value<'angle'>;
  readonly resistance: Value<'force'>;
  readonly wettedRatio: Value<'ratio'>;
  readonly state: PlaningState;
}

/** Trim and resistance at a speed, or why the method has none. */
export function planingAt(hull: PlaningHull, vesselSpeed: Value<'speed'>): Outcome<PlaningResult> {
  const numbers = numbersOf(hull);
  const refusal = refuse(numbers, vesselSpeed.si);
  if (refusal) return refusal;
  const state = equilibriumAt(numbers, vesselSpeed.si);
  if (!state)
    return doesNotApply(
      `No planing trim balances this hull at ${vesselSpeed.si.toFixed(2)} m/s. Check the longitudinal centre of gravity (${hull.gravityForward.si.toFixed(2)} m from the transom); the hull may simply not plane at this speed.`,
    );
  const inputs = [vesselSpeed, ...Object.values(hull)];
  const range = planingRange(state);
  return {
    applies: true,
    trim: computed('planing trim', 'τ', 'angle', (state.trim * Math.PI) / 180, METHOD, inputs, range),
    resistance: computed('planing resistance', 'R', 'force', state.resistance, METHOD, inputs, range),
    wettedRatio: computed(
      'mean wetted length over beam',
      'λ',
      'ratio',
      state.wettedRatio,
      METHOD,
      inputs,
      range,
    ),
    state,
  };
}

/** Limits of the method as published, judged on a state. */
function planingRange(state: PlaningState): RangeResult[] {
  const { speedCoefficient: cv, trim, wettedRatio } = state;
  return [
    { condition: 'speed coefficient 0.6 to 13', met: cv >= 0.6 && cv <= 13 },
    { condition: 'trim 2 to 15 degrees', met: trim >= 2 && trim <= 15 },
    { condition: 'wetted length at most 4 beams', met: wettedRatio <= 4 },
  ];
}

/**
 * Resistance against speed. The curve speaks only where the published limits hold, so it starts where the hull
 * planes: a hull that is still displacing needs another method.
 */
export function planingCurve(hull: PlaningHull, upTo: Value<'speed'>): Outcome<ResistanceCurve> {
  const numbers = numbersOf(hull);
  const solved = solvedFor(numbers);
  const within = (V: number): number | undefined => resistanceWithin(numbers, V, solved);
  const steps = 60;
  const speeds = Array.from({ length: steps }, (_, index) => (upTo.si * (index + 1)) / steps);
  const first = speeds.findIndex(V => within(V) !== undefined);
  if (first < 0) {
    const fastest = planingAt(hull, upTo);
    return doesNotApply(
      fastest.applies
        ? `The planing method does not hold for this hull at any speed up to ${upTo.si.toFixed(1)} m/s: it needs a speed coefficient of 0.6 to 13, a trim of 2 to 15 degrees and a wetted length of at most 4 beams; at the highest speed the trim is ${fastest.state.trim.toFixed(1)} degrees and the wetted length ${fastest.state.wettedRatio.toFixed(1)} beams.`
        : fastest.reason,
    );
  }
  let last = first;
  while (last + 1 < steps && within(speeds[last + 1]!) !== undefined) last++;
  if (last === first)
    return doesNotApply(
      `The planing method holds for this hull at ${speeds[first]!.toFixed(1)} m/s only; that is no curve to work with.`,
    );
  // Solving the trim at every call would be slow in a loop; between 60 solved speeds a cubic is as good.
  const curve = monotoneCurve(speeds.slice(first, last + 1).map(V => [V, within(V)!] as const));
  return {
    applies: true,
    method: METHOD.name,
    lowest: speeds[first]!,
    highest: speeds[last]!,
    numberAt: curve,
    valueAt: V => {
      if (curve(V.si) === undefined) return undefined;
      const result = planingAt(hull, V);
      return result.applies ? result.resistance : undefined;
    },
  };
}

/** Equilibria already solved for, by hull and speed: a spec asks for the same hull at every keystroke. */
const SOLVED = new Map<string, Map<number, PlaningState | undefined>>();
const MOST_HULLS = 64;
const MOST_SPEEDS = 2000;

type Solved = Map<number, PlaningState | undefined>;

function solvedFor(numbers: PlaningNumbers): Solved {
  const hull = Object.values(numbers).join(' ');
  let solved = SOLVED.get(hull);
  if (!solved || solved.size >= MOST_SPEEDS) {
    if (SOLVED.size >= MOST_HULLS) SOLVED.delete(SOLVED.keys().next().value!);
    solved = new Map();
    SOLVED.set(hull, solved);
  }
  return solved;
}

function equilibriumAt(
  numbers: PlaningNumbers,
  V: number,
  solved: Solved = solvedFor(numbers),
): PlaningState | undefined {
  if (!solved.has(V)) solved.set(V, planingEquilibrium(numbers, V));
  return solved.get(V);
}

/** Resistance where the published limits hold. */
function resistanceWithin(numbers: PlaningNumbers, V: number, solved: Solved): number | undefined {
  const state = refuse(numbers, V) ? undefined : equilibriumAt(numbers, V, solved);
  return state && planingRange(state).every(one => one.met) ? state.resistance : undefined;
}

function refuse(numbers: PlaningNumbers, V: number) {
  if (!(Number.isFinite(V) && V > 0)) return doesNotApply('The planing method needs a speed above zero.');
  for (const [key, value] of Object.entries(numbers))
    if (!Number.isFinite(value)) return doesNotApply(`The planing method needs a finite ${key}.`);
  if (!(numbers.weight > 0 && numbers.chineBeam > 0 && numbers.density > 0 && numbers.viscosity > 0))
    return doesNotApply(
      'The planing method needs displacement, chine beam, density and viscosity above zero.',
    );
  if (!(numbers.deadrise >= 0 && numbers.deadrise < 45))
    return doesNotApply(
      `The planing method is for prismatic hulls with a deadrise below 45 degrees, not ${numbers.deadrise.toFixed(1)}.`,
    );
  return undefined;
}

function numbersOf(hull: PlaningHull): PlaningNumbers {
  const degrees = (value: Value<'angle'>): number => (value.si * 180) / Math.PI;
  return {
    weight: hull.displacement.si * STANDARD_GRAVITY,
    gravityForward: hull.gravityForward.si,
    gravityHeight: hull.gravityHeight.si,
    chineBeam: hull.chineBeam.si,
    deadrise: degrees(hull.deadrise),
    shaftAngle: degrees(hull.shaftAngle),
    thrustArm: hull.thrustArm.si,
    roughness: hull.roughness.si,
    density: hull.density.si,
    viscosity: hull.viscosity.si,
  };
}
