import { formula } from '../core/formula.js';
import { DEFINITION, handbook } from './sources.js';
import { KNOT } from './water.js';

const TURNING = [
  {
    condition: 'the shaft turns and the pitch is above zero',
    met: ({ shaftSpeed, pitch }: { readonly shaftSpeed: number; readonly pitch: number }) =>
      shaftSpeed > 0 && pitch > 0,
  },
] as const;

/** Slip reckoned from the vessel's speed, as the trade does. */
export const apparentSlip = /* @__PURE__ */ formula({
  name: 'apparent slip',
  symbol: 's',
  dimension: 'ratio',
  inputs: { vesselSpeed: 'speed', pitch: 'length', shaftSpeed: 'rotational speed' },
  text: 's = 1 - 2π V / (P ω)',
  symbols: { vesselSpeed: 'V', pitch: 'P', shaftSpeed: 'ω' },
  source: DEFINITION,
  range: TURNING,
  compute: ({ vesselSpeed, pitch, shaftSpeed }) => 1 - (2 * Math.PI * vesselSpeed) / (pitch * shaftSpeed),
});

/** Slip reckoned from the water that meets the propeller. */
export const realSlip = /* @__PURE__ */ formula({
  name: 'real slip',
  symbol: 's0',
  dimension: 'ratio',
  inputs: { speedOfAdvance: 'speed', pitch: 'length', shaftSpeed: 'rotational speed' },
  text: 's0 = 1 - 2π VA / (P ω)',
  symbols: { speedOfAdvance: 'VA', pitch: 'P', shaftSpeed: 'ω' },
  source: DEFINITION,
  range: TURNING,
  compute: ({ speedOfAdvance, pitch, shaftSpeed }) =>
    1 - (2 * Math.PI * speedOfAdvance) / (pitch * shaftSpeed),
});

/** Speed from pitch, shaft speed and an assumed slip: the estimate of idle speed. */
export const speedFromSlip = /* @__PURE__ */ formula({
  name: 'vessel speed from pitch and slip',
  symbol: 'V',
  dimension: 'speed',
  inputs: { pitch: 'length', shaftSpeed: 'rotational speed', slip: 'ratio' },
  text: 'V = P ω (1 - s) / 2π',
  symbols: { pitch: 'P', shaftSpeed: 'ω', slip: 's' },
  source: DEFINITION,
  range: [{ condition: 'slip from 0 to 1', met: ({ slip }) => slip >= 0 && slip <= 1 }],
  compute: ({ pitch, shaftSpeed, slip }) => (pitch * shaftSpeed * (1 - slip)) / (2 * Math.PI),
});

/** Pitch that gives a speed at a shaft speed with an assumed slip. */
export const pitchFromSlip = /* @__PURE__ */ formula({
  name: 'pitch from speed and slip',
  symbol: 'P',
  dimension: 'length',
  inputs: { vesselSpeed: 'speed', shaftSpeed: 'rotational speed', slip: 'ratio' },
  text: 'P = 2π V / (ω (1 - s))',
  symbols: { vesselSpeed: 'V', shaftSpeed: 'ω', slip: 's' },
  source: DEFINITION,
  range: [
    { condition: 'slip from 0 to less than 1', met: ({ slip }) => slip >= 0 && slip < 1 },
    { condition: 'shaft speed above zero', met: ({ shaftSpeed }) => shaftSpeed > 0 },
  ],
  compute: ({ vesselSpeed, shaftSpeed, slip }) => (2 * Math.PI * vesselSpeed) / (shaftSpeed * (1 - slip)),
});

/** Slip to be expected at a speed, by the handbook's line through many boats. */
export const expectedSlip = /* @__PURE__ */ formula({
  name: 'expected slip, handbook',
  symbol: 's',
  dimension: 'ratio',
  inputs: { vesselSpeed: 'speed' },
  units: { vesselSpeed: 'kn' },
  text: 's = 1.4 / V^0.57 (kn)',
  symbols: { vesselSpeed: 'V' },
  source: handbook('5-1, slip against speed'),
  range: [
    {
      condition: 'speed 4 to 45 knots',
      met: ({ vesselSpeed }) => vesselSpeed >= 4 * KNOT && vesselSpeed <= 45 * KNOT,
    },
  ],
  compute: ({ vesselSpeed }) => 1.4 / (vesselSpeed / KNOT) ** 0.57,
});
