import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atLeast, atMost } from '../geometry/rounding-slack.js';
import { hollowShare } from './torsion.js';

const M68: Source = { title: 'IACS UR M68', clause: 'shaft diameters', year: 2015, confidence: 'published' };

const strengthRange = {
  condition: 'tensile strength is 400 to 800 MPa',
  met: (si: { readonly tensileStrength: number }) =>
    atLeast(si.tensileStrength, 400e6) && atMost(si.tensileStrength, 800e6),
};

const boreLeavesShaft = {
  condition: 'the bore ratio is at least 0 and below 1',
  met: (si: { readonly boreRatio: number }) => si.boreRatio >= 0 && si.boreRatio < 1,
};

/** Tensile strength that the class formula may count: steel stronger than the cap gains nothing. Pa. */
export const countedTensileStrength = /* @__PURE__ */ formula({
  name: 'tensile strength counted by class',
  symbol: 'R_m',
  dimension: 'pressure',
  inputs: { tensileStrength: 'pressure', cap: 'pressure' },
  text: 'R_m = min(R_m, cap)',
  symbols: { tensileStrength: 'R_m', cap: 'cap' },
  source: M68,
  range: 'A cap, whatever the strength.',
  compute: ({ tensileStrength, cap }) => Math.min(tensileStrength, cap),
});

/** Least shaft diameter by the class formula. d m; P W; ω rad/s; Rm Pa; F, k –; bore ratio d_i/d_o. */
export const classShaftDiameter = /* @__PURE__ */ formula({
  name: 'class shaft diameter',
  symbol: 'd',
  dimension: 'length',
  inputs: {
    power: 'power',
    speed: 'rotational speed',
    tensileStrength: 'pressure',
    plantFactor: 'number',
    featureFactor: 'number',
    boreRatio: 'ratio',
  },
  units: { power: 'kW', speed: 'rpm', tensileStrength: 'MPa' },
  unit: 'mm',
  text: 'd = F k (P/n · 560/(R_m + 160) / (1 − (d_i/d_o)⁴))^(1/3), mm, kW, rpm, MPa; bores up to 0.4 d ignored',
  symbols: {
    power: 'P',
    speed: 'n',
    tensileStrength: 'R_m',
    plantFactor: 'F',
    featureFactor: 'k',
    boreRatio: 'd_i/d_o',
  },
  source: M68,
  range: [strengthRange, boreLeavesShaft],
  compute: ({ power, speed, tensileStrength, plantFactor, featureFactor, boreRatio }) =>
    1e-3 *
    plantFactor *
    featureFactor *
    Math.cbrt((kilowattPerRpm(power / speed) * strengthTerm(tensileStrength)) / countedShare(boreRatio)),
});

/** Power per speed the fitted shaft takes by the class formula. K N·m; d_o m; Rm Pa; F, k –; bore ratio. */
export const classPowerPerSpeed = /* @__PURE__ */ formula({
  name: 'power per speed of the fitted shaft, class formula',
  symbol: 'K',
  dimension: 'power per speed',
  inputs: {
    outsideDiameter: 'length',
    tensileStrength: 'pressure',
    plantFactor: 'number',
    featureFactor: 'number',
    boreRatio: 'ratio',
  },
  units: { outsideDiameter: 'mm', tensileStrength: 'MPa' },
  unit: 'kW/rpm',
  text: 'K = (d/(F k))³ (R_m + 160)/560 (1 − (d_i/d_o)⁴), kW/rpm, mm, MPa; bores up to 0.4 d ignored',
  symbols: {
    outsideDiameter: 'd',
    tensileStrength: 'R_m',
    plantFactor: 'F',
    featureFactor: 'k',
    boreRatio: 'd_i/d_o',
  },
  source: { ...M68, clause: 'shaft diameter formula turned round', confidence: 'derived' },
  range: [strengthRange, boreLeavesShaft],
  compute: ({ outsideDiameter, tensileStrength, plantFactor, featureFactor, boreRatio }) =>
    (((1e3 * outsideDiameter) / (plantFactor * featureFactor)) ** 3 * countedShare(boreRatio)) /
    strengthTerm(tensileStrength) /
    kilowattPerRpm(1),
});

const kilowattPerRpm = (newtonMetres: number): number => (newtonMetres * Math.PI) / 30e3;

const strengthTerm = (tensileStrength: number): number => 560 / (tensileStrength / 1e6 + 160);

/** The rule lets a bore of up to 0.4 d go uncounted. */
const countedShare = (boreRatio: number): number => (atMost(boreRatio, 0.4) ? 1 : hollowShare(boreRatio));
