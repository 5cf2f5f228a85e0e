import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atLeast, atMost, below } from '../geometry/rounding-slack.js';

/** Same terms in naval ship rules and in a published thesis calculation. The older 18 + Rm/36 form is another rule. */
const M68: Source = {
  title: 'IACS UR M68',
  clause: 'permissible torsional vibration stresses',
  year: 2015,
  confidence: 'published',
};

/** Size factor. c_D –; d m. */
export const torsionalSizeFactor = /* @__PURE__ */ formula({
  name: 'size factor of torsional vibration limits',
  symbol: 'c_D',
  dimension: 'number',
  inputs: { diameter: 'length' },
  units: { diameter: 'mm' },
  text: 'c_D = 0.35 + 0.93 d^(−0.2), d in mm',
  symbols: { diameter: 'd' },
  source: M68,
  range: 'The rule sets no limit of diameter.',
  compute: ({ diameter }) => 0.35 + 0.93 * (1e3 * diameter) ** -0.2,
});

/** Share of rated speed. λ –; ω rad/s. */
export const speedShare = /* @__PURE__ */ formula({
  name: 'speed over rated speed',
  symbol: 'λ',
  dimension: 'ratio',
  inputs: { speed: 'rotational speed', ratedSpeed: 'rotational speed' },
  text: 'λ = n / n₀',
  symbols: { speed: 'n', ratedSpeed: 'n₀' },
  source: { ...M68, clause: 'definition of λ' },
  range: 'A definition.',
  compute: ({ speed, ratedSpeed }) => speed / ratedSpeed,
});

/** Permissible stress for continuous running, nominal and half range. τ_C Pa; Rm Pa; c_K, c_D, λ –. */
export const continuousTorsionalLimit = /* @__PURE__ */ formula({
  name: 'permissible torsional vibration stress, continuous',
  symbol: 'τ_C',
  dimension: 'pressure',
  inputs: { tensileStrength: 'pressure', featureFactor: 'number', sizeFactor: 'number', speedShare: 'ratio' },
  units: { tensileStrength: 'MPa' },
  unit: 'MPa',
  text: 'τ_C = (R_m + 160)/18 c_K c_D (3 − 2 min(λ, 0.9)²), MPa',
  symbols: { tensileStrength: 'R_m', featureFactor: 'c_K', sizeFactor: 'c_D', speedShare: 'λ' },
  source: M68,
  range: [
    { condition: 'speed is below 1.05 of rated speed', met: si => below(si.speedShare, 1.05) },
    {
      condition: 'tensile strength is 400 to 800 MPa',
      met: si => atLeast(si.tensileStrength, 400e6) && atMost(si.tensileStrength, 800e6),
    },
  ],
  compute: ({ tensileStrength, featureFactor, sizeFactor, speedShare: lambda }) =>
    ((tensileStrength + 160e6) / 18) *
    featureFactor *
    sizeFactor *
    (lambda < 0.9 ? 3 - 2 * lambda ** 2 : 1.38),
});

/** Permissible stress for passing quickly through. τ_T, τ_C Pa; c_K –. */
export const transientTorsionalLimit = /* @__PURE__ */ formula({
  name: 'permissible torsional vibration stress, transient',
  symbol: 'τ_T',
  dimension: 'pressure',
  inputs: { continuousLimit: 'pressure', featureFactor: 'number' },
  text: 'τ_T = 1.7 τ_C / √c_K',
  symbols: { continuousLimit: 'τ_C', featureFactor: 'c_K' },
  source: M68,
  range: [
    { condition: 'c_K is above 0 and at most 1', met: si => si.featureFactor > 0 && si.featureFactor <= 1 },
  ],
  compute: ({ continuousLimit, featureFactor }) => (1.7 * continuousLimit) / Math.sqrt(featureFactor),
});

const barred: Source = { ...M68, clause: 'barred speed range' };
const barredInputs = { criticalSpeed: 'rotational speed', ratedSpeed: 'rotational speed' } as const;
/** That none may lie at or above 0.8 of rated speed is from memory; the bounds are published. */
const barredRange = [
  {
    condition:
      'the critical speed is below 0.8 of rated speed: no barred range is allowed above (from memory)',
    met: (si: { readonly criticalSpeed: number; readonly ratedSpeed: number }) =>
      below(si.criticalSpeed, 0.8 * si.ratedSpeed),
  },
];

/** Lower end of the barred speed range round a critical with τ_C < τ ≤ τ_T. ω rad/s. */
export const barredRangeStart = /* @__PURE__ */ formula({
  name: 'start of the barred speed range',
  symbol: 'n₁',
  dimension: 'rotational speed',
  inputs: barredInputs,
  text: 'n₁ = 16 n_c / (18 − n_c/n₀)',
  symbols: { criticalSpeed: 'n_c', ratedSpeed: 'n₀' },
  source: barred,
  range: barredRange,
  compute: ({ criticalSpeed, ratedSpeed }) => (16 * criticalSpeed) / (18 - criticalSpeed / ratedSpeed),
});

/** Upper end of the barred speed range. ω rad/s. */
export const barredRangeEnd = /* @__PURE__ */ formula({
  name: 'end of the barred speed range',
  symbol: 'n₂',
  dimension: 'rotational speed',
  inputs: barredInputs,
  text: 'n₂ = (18 − n_c/n₀) n_c / 16',
  symbols: { criticalSpeed: 'n_c', ratedSpeed: 'n₀' },
  source: barred,
  range: barredRange,
  compute: ({ criticalSpeed, ratedSpeed }) => ((18 - criticalSpeed / ratedSpeed) * criticalSpeed) / 16,
});
