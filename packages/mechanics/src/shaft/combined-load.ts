import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { boreInside, torsionalSectionModulusOf } from './torsion.js';

const ASME: Source = {
  author: 'Sadhu Singh',
  title: 'Design of machine elements',
  clause: 'shafts, ASME code for transmission shafting',
  confidence: 'published',
};

/** Allowed shear stress of the ASME shafting code; the keyway factor is 0.75 with a keyway, 1 without. Pa. */
export const asmeAllowedShear = /* @__PURE__ */ formula({
  name: 'allowed shear stress, ASME shafting code',
  symbol: 'τ_a',
  dimension: 'pressure',
  inputs: { tensileYield: 'pressure', tensileStrength: 'pressure', keywayFactor: 'number' },
  text: 'τ_a = k_w min(0.30 S_y, 0.18 S_u)',
  symbols: { tensileYield: 'S_y', tensileStrength: 'S_u', keywayFactor: 'k_w' },
  source: ASME,
  range: [
    {
      condition: 'the keyway factor is 0.75 or 1',
      met: si => si.keywayFactor === 0.75 || si.keywayFactor === 1,
    },
  ],
  compute: ({ tensileYield, tensileStrength, keywayFactor }) =>
    keywayFactor * Math.min(0.3 * tensileYield, 0.18 * tensileStrength),
});

/** Moment at the aft bearing from the weight of an overhung propeller. M N·m; m kg; a m (bearing to its centre). */
export const overhungPropellerMoment = /* @__PURE__ */ formula({
  name: 'bending moment of the overhung propeller',
  symbol: 'M',
  dimension: 'torque',
  inputs: { propellerMass: 'mass', overhang: 'length' },
  text: 'M = m g a',
  symbols: { propellerMass: 'm', overhang: 'a' },
  source: {
    title: 'statics of an overhung weight, standard gravity, at rest and in air',
    confidence: 'derived',
  },
  range: 'Statics; eccentric blade forces, buoyancy and grounding are not included.',
  compute: ({ propellerMass, overhang }) => propellerMass * 9.80665 * overhang,
});

const EQUIVALENT: Source = {
  title: 'distortion-energy criterion of yield (von Mises)',
  confidence: 'derived',
};

/** Greatest normal stress from bending and thrust. σ Pa; M N·m; F N; d_o, d_i m. */
export const bendingAndThrustStress = /* @__PURE__ */ formula({
  name: 'normal stress of bending and thrust',
  symbol: 'σ',
  dimension: 'pressure',
  inputs: { bendingMoment: 'torque', thrust: 'force', outsideDiameter: 'length', bore: 'length' },
  text: 'σ = 32 M d_o/(π (d_o⁴ − d_i⁴)) + 4 F/(π (d_o² − d_i²))',
  symbols: { bendingMoment: 'M', thrust: 'F', outsideDiameter: 'd_o', bore: 'd_i' },
  source: { title: 'bending and axial stress of a round bar', confidence: 'derived' },
  range: [boreInside],
  compute: ({ bendingMoment, thrust, outsideDiameter, bore }) =>
    bendingMoment / (torsionalSectionModulusOf(outsideDiameter, bore) / 2) +
    (4 * thrust) / (Math.PI * (outsideDiameter ** 2 - bore ** 2)),
});

/** Stress of simple tension that is as near to yield. Pa. */
export const equivalentStress = /* @__PURE__ */ formula({
  name: 'equivalent stress by distortion energy',
  symbol: 'σ_v',
  dimension: 'pressure',
  inputs: { normalStress: 'pressure', shearStress: 'pressure' },
  text: 'σ_v = √(σ² + 3 τ²)',
  symbols: { normalStress: 'σ', shearStress: 'τ' },
  source: EQUIVALENT,
  range: 'A definition; compare with tensile yield.',
  compute: ({ normalStress, shearStress }) => Math.sqrt(normalStress ** 2 + 3 * shearStress ** 2),
});

const fatigueInputs = {
  meanBending: 'torque',
  alternatingBending: 'torque',
  meanTorque: 'torque',
  alternatingTorque: 'torque',
  tensileYield: 'pressure',
  enduranceLimit: 'pressure',
} as const;

const SODERBERG: Source = { ...ASME, clause: 'shafts in fatigue, Soderberg line with distortion energy' };

/** Safety factor in fatigue of a fitted shaft, solid (bore 0) or hollow. n –; d_o, d_i m; M, T N·m; S Pa. */
export const fatigueSafetyFactor = /* @__PURE__ */ formula({
  name: 'safety factor in fatigue of the fitted shaft',
  symbol: 'n',
  dimension: 'number',
  inputs: { ...fatigueInputs, outsideDiameter: 'length', bore: 'length' },
  text: 'n = π S_y (d_o⁴ − d_i⁴)/d_o / (32 √((M_m + M_a S_y/S_e)² + 3/4 (T_m + T_a S_y/S_e)²))',
  symbols: {
    meanBending: 'M_m',
    alternatingBending: 'M_a',
    meanTorque: 'T_m',
    alternatingTorque: 'T_a',
    tensileYield: 'S_y',
    enduranceLimit: 'S_e',
    outsideDiameter: 'd_o',
    bore: 'd_i',
  },
  source: { ...SODERBERG, confidence: 'derived' },
  range: [
    boreInside,
    {
      condition: 'endurance limit above zero, already reduced for size, finish, notches and corrosion',
      met: ({ enduranceLimit }) => enduranceLimit > 0,
    },
  ],
  compute: si =>
    (si.tensileYield * torsionalSectionModulusOf(si.outsideDiameter, si.bore)) / (2 * fatigueMoment(si)),
});

/** Steady moment that is as severe as the mean and alternating moments together. */
function fatigueMoment(si: Readonly<Record<keyof typeof fatigueInputs, number>>): number {
  const severity = si.tensileYield / si.enduranceLimit;
  const bending = si.meanBending + si.alternatingBending * severity;
  const torsion = si.meanTorque + si.alternatingTorque * severity;
  return Math.sqrt(bending ** 2 + 0.75 * torsion ** 2);
}
