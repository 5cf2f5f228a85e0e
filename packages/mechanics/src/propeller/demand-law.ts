import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

/** Exponents of power against speed for a fixed-pitch propeller, with where each comes from. */
export const DEMAND_EXPONENT: Readonly<
  Record<'propeller law' | 'average boat' | 'ducted', { readonly value: number; readonly source: Source }>
> = {
  'propeller law': {
    value: 3,
    source: { title: 'propeller law: constant advance ratio', confidence: 'published' },
  },
  'average boat': {
    value: 2.7,
    source: {
      author: 'Gerr',
      title: 'Propeller Handbook',
      clause: '1-2; one independent page agrees',
      year: 1989,
      confidence: 'published',
    },
  },
  ducted: { value: 2.2, source: { title: 'propeller in a nozzle', confidence: 'from memory' } },
};

/** Power a fixed-pitch propeller asks at one speed, scaled from another. A scaling, not a prediction. */
export const powerDemandByLaw = /* @__PURE__ */ formula({
  name: 'propeller power demand by the propeller law',
  symbol: 'P',
  dimension: 'power',
  inputs: {
    referencePower: 'power',
    referenceSpeed: 'rotational speed',
    speed: 'rotational speed',
    exponent: 'ratio',
  },
  text: 'P = Pr (ω / ωr)^n',
  symbols: { referencePower: 'Pr', referenceSpeed: 'ωr', speed: 'ω', exponent: 'n' },
  source: { title: 'propeller law for fixed pitch', confidence: 'published' },
  range: [
    { condition: 'exponent 2.2 to 3', met: ({ exponent: n }) => n >= 2.2 && n <= 3 },
    { condition: 'both speeds above zero', met: si => si.referenceSpeed > 0 && si.speed > 0 },
  ],
  compute: ({ referencePower, referenceSpeed, speed, exponent }) =>
    referencePower * (speed / referenceSpeed) ** exponent,
});

/** Speed at which a fixed-pitch propeller absorbs a power, scaled from a known point. */
export const speedForPowerByLaw = /* @__PURE__ */ formula({
  name: 'shaft speed for a power by the propeller law',
  symbol: 'ω',
  dimension: 'rotational speed',
  inputs: {
    referencePower: 'power',
    referenceSpeed: 'rotational speed',
    power: 'power',
    exponent: 'ratio',
  },
  text: 'ω = ωr (P / Pr)^(1/n)',
  symbols: { referencePower: 'Pr', referenceSpeed: 'ωr', power: 'P', exponent: 'n' },
  source: { title: 'propeller law for fixed pitch, solved for the speed', confidence: 'derived' },
  range: [
    { condition: 'exponent 2.2 to 3', met: ({ exponent: n }) => n >= 2.2 && n <= 3 },
    { condition: 'both powers above zero', met: si => si.referencePower > 0 && si.power > 0 },
  ],
  compute: ({ referencePower, referenceSpeed, power, exponent }) =>
    referenceSpeed * (power / referencePower) ** (1 / exponent),
});

/**
 * Exponents of power against diameter at one shaft speed. Similar propellers at one advance ratio have one torque
 * coefficient, so the power goes with the fifth power. With the pitch kept, a blade element that lifts takes torque in
 * proportion to chord times radius, which gives the third, and one that only drags the fifth: the truth lies between.
 */
export const DIAMETER_EXPONENT = { similar: 5, 'same pitch, least': 3, 'same pitch, most': 5 } as const;

/** Power at the same shaft speed of a propeller whose diameter is changed. */
export const demandAtDiameter = /* @__PURE__ */ formula({
  name: 'propeller power demand at another diameter',
  symbol: 'P',
  dimension: 'power',
  inputs: { referencePower: 'power', referenceDiameter: 'length', diameter: 'length', exponent: 'ratio' },
  text: 'P = Pr (D / Dr)^m',
  symbols: { referencePower: 'Pr', referenceDiameter: 'Dr', diameter: 'D', exponent: 'm' },
  source: {
    title: 'P = 2π ρ n³ D⁵ KQ with KQ unchanged; blade elements of unchanged pitch for the third power',
    confidence: 'derived',
  },
  range: [
    { condition: 'exponent 3 to 5', met: ({ exponent: m }) => m >= 3 && m <= 5 },
    { condition: 'both diameters above zero', met: si => si.referenceDiameter > 0 && si.diameter > 0 },
    {
      condition: 'diameters within a quarter of each other',
      met: si => Math.abs(si.diameter / si.referenceDiameter - 1) <= 0.25,
    },
  ],
  compute: ({ referencePower, referenceDiameter, diameter, exponent }) =>
    referencePower * (diameter / referenceDiameter) ** exponent,
});

/**
 * Power at the same shaft speed of a propeller whose pitch is changed: a bound. The lift of a blade element goes with
 * H - V/n and its torque with H times that, so the power changes by the square of the pitch or by more.
 */
export const demandAtPitch = /* @__PURE__ */ formula({
  name: 'propeller power demand at another pitch, least change',
  symbol: 'P',
  dimension: 'power',
  inputs: { referencePower: 'power', referencePitch: 'length', pitch: 'length' },
  text: 'P = Pr (H / Hr)^2',
  symbols: { referencePower: 'Pr', referencePitch: 'Hr', pitch: 'H' },
  source: { title: 'blade elements: torque in proportion to H (H - V/n)', confidence: 'derived' },
  range: [
    { condition: 'both pitches above zero', met: si => si.referencePitch > 0 && si.pitch > 0 },
    {
      condition: 'pitches within a quarter of each other',
      met: si => Math.abs(si.pitch / si.referencePitch - 1) <= 0.25,
    },
  ],
  compute: ({ referencePower, referencePitch, pitch }) => referencePower * (pitch / referencePitch) ** 2,
});

/** Sea and engine margins in common use. */
export const USUAL_SEA_MARGIN = { usual: 0.15, from: 0.1, to: 0.25 } as const;

export const USUAL_ENGINE_MARGIN = { from: 0.1, to: 0.15 } as const;
