import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { boreInside, torsionalSectionModulusOf } from './torsion.js';

const ASME_AXIAL: Source = {
  author: 'R. S. Khurmi, J. K. Gupta',
  title: 'A Textbook of Machine Design',
  clause: 'shafts under axial load in addition to torsion and bending (ASME code)',
  year: 2005,
  confidence: 'published',
};

/**
 * Greatest shear stress of a round shaft, solid (bore 0) or hollow, under bending, torsion and thrust.
 * τ Pa; M, T N·m; F N; d_o, d_i m; C_m, C_t shock factors; α column factor, 1 where the thrust pulls.
 */
export const asmeCombinedShear = /* @__PURE__ */ formula({
  name: 'shear stress of bending, torsion and thrust, ASME form',
  symbol: 'τ',
  dimension: 'pressure',
  inputs: {
    bendingMoment: 'torque',
    torque: 'torque',
    thrust: 'force',
    outsideDiameter: 'length',
    bore: 'length',
    bendingFactor: 'number',
    torsionFactor: 'number',
    columnFactor: 'number',
  },
  text: 'τ = 16 d_o/(π (d_o⁴ − d_i⁴)) √((C_m M + α F (d_o² + d_i²)/(8 d_o))² + (C_t T)²)',
  symbols: {
    bendingMoment: 'M',
    torque: 'T',
    thrust: 'F',
    outsideDiameter: 'd_o',
    bore: 'd_i',
    bendingFactor: 'C_m',
    torsionFactor: 'C_t',
    columnFactor: 'α',
  },
  source: ASME_AXIAL,
  range: [
    boreInside,
    {
      condition: 'shock factors are 1 to 3: 1.5 and 1 steady, up to 2 and 1.5 with shock',
      met: si =>
        si.bendingFactor >= 1 && si.bendingFactor <= 3 && si.torsionFactor >= 1 && si.torsionFactor <= 3,
    },
  ],
  compute: si =>
    Math.hypot(
      si.bendingFactor * si.bendingMoment +
        (si.columnFactor * si.thrust * (si.outsideDiameter ** 2 + si.bore ** 2)) / (8 * si.outsideDiameter),
      si.torsionFactor * si.torque,
    ) / torsionalSectionModulusOf(si.outsideDiameter, si.bore),
});

/** Length between supports over the radius of gyration of a round shaft. λ –; L, d_o, d_i m. */
export const shaftSlenderness = /* @__PURE__ */ formula({
  name: 'slenderness of a shaft between supports',
  symbol: 'λ',
  dimension: 'number',
  inputs: { span: 'length', outsideDiameter: 'length', bore: 'length' },
  text: 'λ = 4 L/√(d_o² + d_i²)',
  symbols: { span: 'L', outsideDiameter: 'd_o', bore: 'd_i' },
  source: { title: 'radius of gyration of a ring, √(d_o² + d_i²)/4', confidence: 'derived' },
  range: [boreInside],
  compute: ({ span, outsideDiameter, bore }) => (4 * span) / Math.hypot(outsideDiameter, bore),
});

/** The slenderness up to which the straight-line form of the column factor counts. */
export const SHORT_COLUMN = 115;

/** How much more a pressing thrust counts because the shaft may bow. α –; λ –. */
export const columnFactorShort = /* @__PURE__ */ formula({
  name: 'column factor of a short shaft',
  symbol: 'α',
  dimension: 'number',
  inputs: { slenderness: 'number' },
  text: 'α = 1/(1 − 0.0044 λ)',
  symbols: { slenderness: 'λ' },
  source: ASME_AXIAL,
  range: [{ condition: 'slenderness is at most 115', met: si => si.slenderness <= SHORT_COLUMN }],
  compute: ({ slenderness }) => 1 / (1 - 0.0044 * slenderness),
});

/** The same of a slender shaft with hinged ends. α –; λ –; S_y, E Pa. */
export const columnFactorLong = /* @__PURE__ */ formula({
  name: 'column factor of a slender shaft',
  symbol: 'α',
  dimension: 'number',
  inputs: { slenderness: 'number', compressiveYield: 'pressure', youngsModulus: 'pressure' },
  text: 'α = S_y λ²/(π² E)',
  symbols: { slenderness: 'λ', compressiveYield: 'S_y', youngsModulus: 'E' },
  source: ASME_AXIAL,
  range: [{ condition: 'slenderness is over 115', met: si => si.slenderness > SHORT_COLUMN }],
  compute: ({ slenderness, compressiveYield, youngsModulus }) =>
    (compressiveYield * slenderness ** 2) / (Math.PI ** 2 * youngsModulus),
});

/** How many times the equivalent stress goes into the tensile yield. n –; S_y, σ_v Pa. */
export const yieldFactor = /* @__PURE__ */ formula({
  name: 'factor against yield',
  symbol: 'n',
  dimension: 'number',
  inputs: { tensileYield: 'pressure', equivalentStress: 'pressure' },
  text: 'n = S_y/σ_v',
  symbols: { tensileYield: 'S_y', equivalentStress: 'σ_v' },
  source: { title: 'distortion-energy criterion of yield (von Mises)', confidence: 'derived' },
  range: 'A definition.',
  compute: ({ tensileYield, equivalentStress }) => tensileYield / equivalentStress,
});
