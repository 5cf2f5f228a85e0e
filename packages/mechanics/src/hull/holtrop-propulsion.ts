import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { HOLTROP_1982, HOLTROP_1984 } from './holtrop-resistance.js';
import { type Edition, holtropComponents, holtropHull } from './holtrop-terms.js';
import { HULL_FORM, type HullNumbers } from './hull-form.js';

type Case = HullNumbers & { readonly vesselSpeed: number; readonly diameter: number };

/** Thrust deduction's constants were recalled for the 1984 edition beside one copy. */
const FROM_MEMORY_1984: Source = { ...HOLTROP_1984, confidence: 'from memory' };

/** So is all that the 1982 edition has for an open stern. */
const FROM_MEMORY_1982: Source = { ...HOLTROP_1982, clause: 'open stern', confidence: 'from memory' };

const PRISMATIC = [
  {
    condition: 'prismatic coefficient 0.55 to 0.85 (from memory)',
    met: (h: Case) => {
      const { CP } = holtropHull(h, '1982');
      return CP >= 0.55 && CP <= 0.85;
    },
  },
] as const;

/** Viscous resistance coefficient of hull and appendages together, on their wetted area. */
export function viscousCoefficient(h: HullNumbers, vesselSpeed: number, edition: Edition): number {
  const hull = holtropHull(h, edition);
  const { friction, appendages, correlation } = holtropComponents(h, vesselSpeed, edition);
  const dynamic = 0.5 * h.density * vesselSpeed * vesselSpeed;
  return (friction * hull.formFactor + appendages + correlation) / (dynamic * (hull.S + h.appendageArea));
}

const WAKE_INPUTS = { vesselSpeed: 'speed', diameter: 'length', ...HULL_FORM } as const;

export const holtropWakeSingle1982 = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen 1982 wake fraction, single screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: WAKE_INPUTS,
  text: 'w = c9 CV (L/TA) (0.0661875 + 1.21756 c11 CV/(1-CP1)) + 0.24558 √(B/(L(1-CP1))) - 0.09726/(0.95-CP) + 0.11434/(0.95-CB) + 0.75 Cstern CV + 0.002 Cstern',
  terms: 'the coefficients are those of the paper, worked out from the form of the hull',
  source: HOLTROP_1982,
  range: PRISMATIC,
  compute: h => {
    const { waterlineLength: L, beam: B, draughtAft: TA } = h;
    const { CP, CB } = holtropHull(h, '1982');
    const CV = viscousCoefficient(h, h.vesselSpeed, '1982');
    const { c9, c11, CP1 } = wakeTerms(h, '1982');
    return (
      c9 * CV * (L / TA) * (0.0661875 + (1.21756 * c11 * CV) / (1 - CP1)) +
      0.24558 * Math.sqrt(B / (L * (1 - CP1))) -
      0.09726 / (0.95 - CP) +
      0.11434 / (0.95 - CB) +
      0.75 * h.sternShape * CV +
      0.002 * h.sternShape
    );
  },
});

export const holtropWakeSingle1984 = /* @__PURE__ */ formula({
  name: 'Holtrop 1984 wake fraction, single screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: WAKE_INPUTS,
  text: 'w = c9 c20 CV (L/TA) (0.050776 + 0.93405 c11 CV/(1-CP1)) + 0.27915 c20 √(B/(L(1-CP1))) + c19 c20',
  terms: 'the coefficients are those of the paper, worked out from the form of the hull',
  source: HOLTROP_1984,
  range: PRISMATIC,
  compute: h => {
    const { waterlineLength: L, beam: B, draughtAft: TA } = h;
    const { CP, CB } = holtropHull(h, '1984');
    const CV = viscousCoefficient(h, h.vesselSpeed, '1984');
    const { c9, c11, CP1 } = wakeTerms(h, '1984');
    const c19 =
      CP < 0.7
        ? 0.12997 / (0.95 - CB) - 0.11056 / (0.95 - CP)
        : 0.18567 / (1.3571 - h.midshipCoefficient) - 0.71276 + 0.38648 * CP;
    const c20 = 1 + 0.015 * h.sternShape;
    return (
      c9 * c20 * CV * (L / TA) * (0.050776 + (0.93405 * c11 * CV) / (1 - CP1)) +
      0.27915 * c20 * Math.sqrt(B / (L * (1 - CP1))) +
      c19 * c20
    );
  },
});

export const holtropThrustDeductionSingle1982 = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen 1982 thrust deduction, single screw',
  symbol: 't',
  dimension: 'ratio',
  inputs: WAKE_INPUTS,
  text: 't = 0.001979 L/(B - B CP1) + 1.0585 c10 - 0.00524 - 0.1418 D²/(B T) + 0.0015 Cstern',
  terms: 'the coefficients are those of the paper, worked out from the form of the hull',
  source: HOLTROP_1982,
  range: PRISMATIC,
  compute: h => {
    const { waterlineLength: L, beam: B } = h;
    const { T } = holtropHull(h, '1982');
    const { CP1 } = wakeTerms(h, '1982');
    const c10 = L / B > 5.2 ? B / L : 0.25 - 0.003328402 / (B / L - 0.134615385);
    return (
      (0.001979 * L) / (B - B * CP1) +
      1.0585 * c10 -
      0.00524 -
      (0.1418 * h.diameter ** 2) / (B * T) +
      0.0015 * h.sternShape
    );
  },
});

export const holtropThrustDeductionSingle1984 = /* @__PURE__ */ formula({
  name: 'Holtrop 1984 thrust deduction, single screw',
  symbol: 't',
  dimension: 'ratio',
  inputs: WAKE_INPUTS,
  text: 't = 0.25014 (B/L)^0.28956 (√(B T)/D)^0.2624 / (1 - CP + 0.0225 lcb)^0.01762 + 0.0015 Cstern',
  terms: 'the coefficients are those of the paper, worked out from the form of the hull',
  source: FROM_MEMORY_1984,
  range: PRISMATIC,
  compute: h => {
    const { CP, T } = holtropHull(h, '1984');
    return (
      (0.25014 * (h.beam / h.waterlineLength) ** 0.28956 * (Math.sqrt(h.beam * T) / h.diameter) ** 0.2624) /
        (1 - CP + 0.0225 * h.buoyancyForward) ** 0.01762 +
      0.0015 * h.sternShape
    );
  },
});

export const holtropRelativeRotativeSingle = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen relative rotative efficiency, single screw',
  symbol: 'ηR',
  dimension: 'ratio',
  inputs: { areaRatio: 'ratio', prismaticCoefficient: 'ratio', buoyancyForward: 'number' },
  text: 'ηR = 0.9922 - 0.05908 AE/A0 + 0.07424 (CP - 0.0225 lcb)',
  symbols: { areaRatio: 'AE/A0', prismaticCoefficient: 'CP', buoyancyForward: 'lcb' },
  source: HOLTROP_1982,
  range: [
    {
      condition: 'prismatic coefficient 0.55 to 0.85 (from memory)',
      met: ({ prismaticCoefficient: c }) => c >= 0.55 && c <= 0.85,
    },
  ],
  compute: si =>
    0.9922 - 0.05908 * si.areaRatio + 0.07424 * (si.prismaticCoefficient - 0.0225 * si.buoyancyForward),
});

const BLOCK = {
  condition: 'block coefficient 0.35 to 0.85 (our caution)',
  met: ({ blockCoefficient: c }: { readonly blockCoefficient: number }) => c >= 0.35 && c <= 0.85,
} as const;

export const holtropWakeTwin = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen wake fraction, twin screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: {
    blockCoefficient: 'ratio',
    viscousCoefficient: 'ratio',
    diameter: 'length',
    beam: 'length',
    draught: 'length',
  },
  text: 'w = 0.3095 CB + 10 CV CB - 0.23 D/√(B T)',
  symbols: { blockCoefficient: 'CB', viscousCoefficient: 'CV', diameter: 'D', beam: 'B', draught: 'T' },
  source: HOLTROP_1982,
  range: [BLOCK],
  compute: h =>
    0.3095 * h.blockCoefficient +
    10 * h.viscousCoefficient * h.blockCoefficient -
    (0.23 * h.diameter) / Math.sqrt(h.beam * h.draught),
});

export const holtropThrustDeductionTwin = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen thrust deduction, twin screw',
  symbol: 't',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio', diameter: 'length', beam: 'length', draught: 'length' },
  text: 't = 0.325 CB - 0.1885 D/√(B T)',
  symbols: { blockCoefficient: 'CB', diameter: 'D', beam: 'B', draught: 'T' },
  source: HOLTROP_1982,
  range: [BLOCK],
  compute: h => 0.325 * h.blockCoefficient - (0.1885 * h.diameter) / Math.sqrt(h.beam * h.draught),
});

export const holtropRelativeRotativeTwin = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen relative rotative efficiency, twin screw',
  symbol: 'ηR',
  dimension: 'ratio',
  inputs: { pitchRatio: 'ratio', prismaticCoefficient: 'ratio', buoyancyForward: 'number' },
  text: 'ηR = 0.9737 + 0.111 (CP - 0.0225 lcb) - 0.06325 P/D',
  symbols: { pitchRatio: 'P/D', prismaticCoefficient: 'CP', buoyancyForward: 'lcb' },
  source: HOLTROP_1982,
  range: [
    {
      condition: 'prismatic coefficient 0.55 to 0.85 (from memory)',
      met: ({ prismaticCoefficient: c }) => c >= 0.55 && c <= 0.85,
    },
  ],
  compute: si =>
    0.9737 + 0.111 * (si.prismaticCoefficient - 0.0225 * si.buoyancyForward) - 0.06325 * si.pitchRatio,
});

export const OPEN_STERN_SOURCE: Source = FROM_MEMORY_1982;

/** c9, c11 and CP1 of the wake formulas; the wetted area counts the appendages. */
export function wakeTerms(h: Case, edition: Edition): { c8: number; c9: number; c11: number; CP1: number } {
  const { waterlineLength: L, beam: B, draughtAft: TA, diameter: D } = h;
  const { CP, S: bare } = holtropHull(h, edition);
  const S = bare + h.appendageArea;
  const c8 = B / TA < 5 ? (B * S) / (L * D * TA) : (S * ((7 * B) / TA - 25)) / (L * D * (B / TA - 3));
  return {
    c8,
    c9: c8 < 28 ? c8 : 32 - 16 / (c8 - 24),
    c11: TA / D < 2 ? TA / D : 0.0833333 * (TA / D) ** 3 + 1.33333,
    CP1: 1.45 * CP - 0.315 - 0.0225 * h.buoyancyForward,
  };
}
