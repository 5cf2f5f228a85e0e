import { formula } from '../core/formula.js';
import { DEFINITION } from './sources.js';

/** Speed of the water that meets the propeller, from the vessel's speed. */
export const speedOfAdvance = /* @__PURE__ */ formula({
  name: 'speed of advance',
  symbol: 'VA',
  dimension: 'speed',
  inputs: { vesselSpeed: 'speed', wakeFraction: 'ratio' },
  text: 'VA = V (1 - w)',
  symbols: { vesselSpeed: 'V', wakeFraction: 'w' },
  source: DEFINITION,
  range: 'Definition of the wake fraction (Taylor).',
  compute: ({ vesselSpeed, wakeFraction }) => vesselSpeed * (1 - wakeFraction),
});

/** Advance of the propeller per turn, in diameters. */
export const advanceRatio = /* @__PURE__ */ formula({
  name: 'advance ratio',
  symbol: 'J',
  dimension: 'ratio',
  inputs: { speedOfAdvance: 'speed', shaftSpeed: 'rotational speed', diameter: 'length' },
  text: 'J = 2π VA / (ω D)',
  symbols: { speedOfAdvance: 'VA', shaftSpeed: 'ω', diameter: 'D' },
  source: DEFINITION,
  range: [{ condition: 'shaft speed above zero', met: ({ shaftSpeed }) => shaftSpeed > 0 }],
  compute: ({ speedOfAdvance, shaftSpeed, diameter }) =>
    (2 * Math.PI * speedOfAdvance) / (shaftSpeed * diameter),
});

export const propellerThrust = /* @__PURE__ */ formula({
  name: 'propeller thrust',
  symbol: 'T',
  dimension: 'force',
  inputs: {
    thrustCoefficient: 'ratio',
    density: 'density',
    shaftSpeed: 'rotational speed',
    diameter: 'length',
  },
  text: 'T = KT ρ (ω / 2π)² D⁴',
  symbols: { thrustCoefficient: 'KT', density: 'ρ', shaftSpeed: 'ω', diameter: 'D' },
  source: DEFINITION,
  range: 'Definition of the thrust coefficient.',
  compute: ({ thrustCoefficient, density, shaftSpeed, diameter }) =>
    thrustCoefficient * density * (shaftSpeed / (2 * Math.PI)) ** 2 * diameter ** 4,
});

/** Thrust of the blades alone, where a nozzle around them gives or takes the rest. */
export const shaftThrustInNozzle = /* @__PURE__ */ formula({
  name: 'thrust that the shaft gets in a nozzle',
  symbol: 'TP',
  dimension: 'force',
  inputs: {
    thrustCoefficient: 'ratio',
    nozzleThrustCoefficient: 'ratio',
    density: 'density',
    shaftSpeed: 'rotational speed',
    diameter: 'length',
  },
  text: 'TP = (KT - KTN) ρ (ω / 2π)² D⁴',
  symbols: {
    thrustCoefficient: 'KT',
    nozzleThrustCoefficient: 'KTN',
    density: 'ρ',
    shaftSpeed: 'ω',
    diameter: 'D',
  },
  source: DEFINITION,
  range: 'Definition of the coefficients: KT is of propeller and nozzle together, KTN of the nozzle alone.',
  compute: ({ thrustCoefficient, nozzleThrustCoefficient, density, shaftSpeed, diameter }) =>
    (thrustCoefficient - nozzleThrustCoefficient) *
    density *
    (shaftSpeed / (2 * Math.PI)) ** 2 *
    diameter ** 4,
});

export const propellerTorque = /* @__PURE__ */ formula({
  name: 'propeller torque',
  symbol: 'Q',
  dimension: 'torque',
  inputs: {
    torqueCoefficient: 'ratio',
    density: 'density',
    shaftSpeed: 'rotational speed',
    diameter: 'length',
  },
  text: 'Q = KQ ρ (ω / 2π)² D⁵',
  symbols: { torqueCoefficient: 'KQ', density: 'ρ', shaftSpeed: 'ω', diameter: 'D' },
  source: DEFINITION,
  range: 'Definition of the torque coefficient.',
  compute: ({ torqueCoefficient, density, shaftSpeed, diameter }) =>
    torqueCoefficient * density * (shaftSpeed / (2 * Math.PI)) ** 2 * diameter ** 5,
});

/** Power that the propeller takes from the shaft. */
export const propellerPower = /* @__PURE__ */ formula({
  name: 'power absorbed by the propeller',
  symbol: 'PD',
  dimension: 'power',
  inputs: { torque: 'torque', shaftSpeed: 'rotational speed' },
  text: 'PD = Q ω',
  symbols: { torque: 'Q', shaftSpeed: 'ω' },
  source: DEFINITION,
  range: 'Definition of power.',
  compute: ({ torque, shaftSpeed }) => torque * shaftSpeed,
});

export const openWaterEfficiency = /* @__PURE__ */ formula({
  name: 'open-water efficiency',
  symbol: 'η0',
  dimension: 'ratio',
  inputs: { advanceRatio: 'ratio', thrustCoefficient: 'ratio', torqueCoefficient: 'ratio' },
  text: 'η0 = J KT / (2π KQ)',
  symbols: { advanceRatio: 'J', thrustCoefficient: 'KT', torqueCoefficient: 'KQ' },
  source: DEFINITION,
  range: [
    {
      condition: 'the propeller drives: KT and KQ above zero',
      met: ({ thrustCoefficient, torqueCoefficient }) => thrustCoefficient > 0 && torqueCoefficient > 0,
    },
  ],
  compute: ({ advanceRatio: j, thrustCoefficient: kt, torqueCoefficient: kq }) =>
    kq === 0 ? 0 : (j * kt) / (2 * Math.PI * kq),
});
