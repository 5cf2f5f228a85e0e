import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const TORSION: Source = {
  author: 'J. M. Gere, S. P. Timoshenko',
  title: 'Mechanics of Materials',
  clause: 'torsion of circular bars',
  confidence: 'published',
};

/** Rule of range that every formula of a hollow shaft shares. */
export const boreInside = {
  condition: 'the bore is smaller than the outside diameter',
  met: (si: { readonly outsideDiameter: number; readonly bore: number }) =>
    si.bore >= 0 && si.bore < si.outsideDiameter,
};

/** Greatest shear stress in a round shaft, solid (bore 0) or hollow. τ Pa; T N·m; d_o, d_i m. */
export const torsionalShearStress = /* @__PURE__ */ formula({
  name: 'torsional shear stress',
  symbol: 'τ',
  dimension: 'pressure',
  inputs: { torque: 'torque', outsideDiameter: 'length', bore: 'length' },
  text: 'τ = 16 T d_o / (π (d_o⁴ − d_i⁴))',
  symbols: { torque: 'T', outsideDiameter: 'd_o', bore: 'd_i' },
  source: TORSION,
  range: [boreInside],
  compute: ({ torque, outsideDiameter, bore }) => torque / torsionalSectionModulusOf(outsideDiameter, bore),
});

/** Torque that brings a round shaft to an allowed shear stress. T N·m; τ Pa; d_o, d_i m. */
export const torqueAtShearStress = /* @__PURE__ */ formula({
  name: 'torque at an allowed torsional stress',
  symbol: 'T',
  dimension: 'torque',
  inputs: { stress: 'pressure', outsideDiameter: 'length', bore: 'length' },
  text: 'T = τ π (d_o⁴ − d_i⁴) / (16 d_o)',
  symbols: { stress: 'τ', outsideDiameter: 'd_o', bore: 'd_i' },
  source: TORSION,
  range: [boreInside],
  compute: ({ stress, outsideDiameter, bore }) => stress * torsionalSectionModulusOf(outsideDiameter, bore),
});

/** Mass of a round shaft by length. m kg/m; ρ kg/m³; d_o, d_i m. */
export const massPerLength = /* @__PURE__ */ formula({
  name: 'mass per length of a round shaft',
  symbol: 'm′',
  dimension: 'mass per length',
  inputs: { density: 'density', outsideDiameter: 'length', bore: 'length' },
  text: 'm′ = ρ π (d_o² − d_i²) / 4',
  symbols: { density: 'ρ', outsideDiameter: 'd_o', bore: 'd_i' },
  source: { title: 'area of a circle', confidence: 'derived' },
  range: [boreInside],
  compute: ({ density, outsideDiameter, bore }) =>
    bore < outsideDiameter ? (density * Math.PI * (outsideDiameter ** 2 - bore ** 2)) / 4 : Number.NaN,
});

/** Shear modulus of an isotropic metal, where no table prints it. G, E Pa; ν –. */
export const shearModulus = /* @__PURE__ */ formula({
  name: "shear modulus from Young's modulus",
  symbol: 'G',
  dimension: 'pressure',
  inputs: { youngsModulus: 'pressure', poissonRatio: 'number' },
  text: 'G = E / (2 (1 + ν))',
  symbols: { youngsModulus: 'E', poissonRatio: 'ν' },
  source: { ...TORSION, clause: 'relation of E, G and ν' },
  range: [
    {
      condition: "Poisson's ratio is between 0 and 0.5",
      met: si => si.poissonRatio >= 0 && si.poissonRatio <= 0.5,
    },
  ],
  compute: ({ youngsModulus, poissonRatio }) => youngsModulus / (2 * (1 + poissonRatio)),
});

/** π (d_o⁴ − d_i⁴) / (16 d_o), m³; NaN when nothing is left between bore and outside. */
export function torsionalSectionModulusOf(outsideDiameter: number, bore: number): number {
  return (Math.PI * outsideDiameter ** 3 * hollowShare(bore / outsideDiameter)) / 16;
}

/** What a bore leaves of the solid section, 1 − (d_i/d_o)⁴. */
export function hollowShare(boreRatio: number): number {
  return boreRatio >= 0 && boreRatio < 1 ? 1 - boreRatio ** 4 : Number.NaN;
}
