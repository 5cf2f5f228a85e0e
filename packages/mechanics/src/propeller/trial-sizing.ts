import { formula } from '../core/formula.js';

/*
 * What a trial says of the propeller and ratio that would have brought rated speed: the laws of demand solved for the size.
 */

/** Exponent of power against pitch at one shaft speed and one speed of the water: blade elements take torque as H (H - V/n). */
export const pitchExponent = /* @__PURE__ */ formula({
  name: 'exponent of the pitch at a slip',
  symbol: 'k',
  dimension: 'ratio',
  inputs: { slip: 'ratio' },
  text: 'k = 1 + 1 / s',
  symbols: { slip: 's' },
  source: {
    title: 'blade elements: torque in proportion to H (H - V/n), its logarithm by that of H',
    confidence: 'derived',
  },
  range: [{ condition: 'slip above 0, at most 1', met: ({ slip }) => slip > 0 && slip <= 1 }],
  compute: ({ slip }) => 1 + 1 / slip,
});

/** Pitch at which a propeller asks another power at the same shaft speed. */
export const pitchForPower = /* @__PURE__ */ formula({
  name: 'pitch for another power',
  symbol: 'H',
  dimension: 'length',
  inputs: { referencePitch: 'length', referencePower: 'power', power: 'power', exponent: 'ratio' },
  text: 'H = Hr (P / Pr)^(1/k)',
  symbols: { referencePitch: 'Hr', referencePower: 'Pr', power: 'P', exponent: 'k' },
  source: {
    title: 'power in proportion to the pitch to the power k, solved for the pitch',
    confidence: 'derived',
  },
  range: [
    { condition: 'exponent at least 2', met: ({ exponent: k }) => k >= 2 },
    {
      condition: 'powers within a third of each other',
      met: si => Math.abs(si.power / si.referencePower - 1) <= 1 / 3,
    },
  ],
  compute: ({ referencePitch, referencePower, power, exponent }) =>
    referencePitch * (power / referencePower) ** (1 / exponent),
});

/** Diameter at which a propeller asks another power at the same shaft speed. */
export const diameterForPower = /* @__PURE__ */ formula({
  name: 'diameter for another power',
  symbol: 'D',
  dimension: 'length',
  inputs: { referenceDiameter: 'length', referencePower: 'power', power: 'power', exponent: 'ratio' },
  text: 'D = Dr (P / Pr)^(1/m)',
  symbols: { referenceDiameter: 'Dr', referencePower: 'Pr', power: 'P', exponent: 'm' },
  source: {
    title:
      'power in proportion to the diameter to the power m, 3 to 5 with the pitch kept, solved for the diameter',
    confidence: 'derived',
  },
  range: [
    { condition: 'exponent 3 to 5', met: ({ exponent: m }) => m >= 3 && m <= 5 },
    {
      condition: 'powers within a third of each other',
      met: si => Math.abs(si.power / si.referencePower - 1) <= 1 / 3,
    },
  ],
  compute: ({ referenceDiameter, referencePower, power, exponent }) =>
    referenceDiameter * (power / referencePower) ** (1 / exponent),
});

/** Resistance that the thrust of a trial run met, over that of the prediction at the speed that was read. */
export const trialResistanceCorrelation = /* @__PURE__ */ formula({
  name: 'resistance correlation of a trial',
  symbol: 'kR',
  dimension: 'ratio',
  inputs: { thrust: 'force', screws: 'number', thrustDeduction: 'ratio', resistance: 'force' },
  text: 'kR = Ns (1 - t) T / R',
  symbols: { thrust: 'T', screws: 'Ns', thrustDeduction: 't', resistance: 'R' },
  source: {
    title: 'balance of thrust and resistance, solved for the share of the resistance',
    confidence: 'derived',
  },
  range: [{ condition: 'resistance above zero', met: ({ resistance }) => resistance > 0 }],
  compute: ({ thrust, screws, thrustDeduction, resistance }) =>
    (screws * (1 - thrustDeduction) * thrust) / resistance,
});

/** Resistance with the correlation of a trial. */
export const correlatedResistance = /* @__PURE__ */ formula({
  name: 'resistance with correlation',
  symbol: 'R',
  dimension: 'force',
  inputs: { predicted: 'force', correlation: 'ratio' },
  text: 'R = kR R0',
  symbols: { predicted: 'R0', correlation: 'kR' },
  source: { title: 'the share that a trial of this vessel gave', confidence: 'derived' },
  range: [{ condition: 'correlation 0.5 to 2', met: ({ correlation: k }) => k >= 0.5 && k <= 2 }],
  compute: ({ predicted, correlation }) => correlation * predicted,
});
