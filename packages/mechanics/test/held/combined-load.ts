import type { Source } from '../../src/core/source.js';
import { formula } from './held-formula.js';

const ASME: Source = {
  author: 'Sadhu Singh',
  title: 'Design of machine elements',
  clause: 'shafts, ASME code for transmission shafting',
  confidence: 'published',
};

/** Diameter of a solid shaft under bending and torsion. d m; M, T N·m; τ_a Pa; C_m, C_t shock factors. */
export const asmeShaftDiameter = /* @__PURE__ */ formula({
  name: 'shaft diameter for bending and torsion, ASME form',
  symbol: 'd',
  dimension: 'length',
  inputs: {
    bendingMoment: 'torque',
    torque: 'torque',
    bendingFactor: 'number',
    torsionFactor: 'number',
    allowedShear: 'pressure',
  },
  text: 'd = (16/(π τ_a) √((C_m M)² + (C_t T)²))^(1/3)',
  symbols: {
    bendingMoment: 'M',
    torque: 'T',
    bendingFactor: 'C_m',
    torsionFactor: 'C_t',
    allowedShear: 'τ_a',
  },
  source: ASME,
  range: [
    {
      condition: 'shock factors are 1 to 3: 1.5 and 1 steady, up to 2 and 1.5 with shock',
      met: si =>
        si.bendingFactor >= 1 && si.bendingFactor <= 3 && si.torsionFactor >= 1 && si.torsionFactor <= 3,
    },
  ],
  compute: ({ bendingMoment, torque, bendingFactor, torsionFactor, allowedShear }) =>
    Math.cbrt(
      (16 * Math.hypot(bendingFactor * bendingMoment, torsionFactor * torque)) / (Math.PI * allowedShear),
    ),
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

const FATIGUE_RANGE =
  'The endurance limit must already hold size, finish, notch and corrosion: in sea water there may be none.';

/** Diameter of a solid shaft in fatigue; shear ratio taken equal to S_y/S_e. d m; M, T N·m; S Pa; n –. */
export const fatigueShaftDiameter = /* @__PURE__ */ formula({
  name: 'shaft diameter in fatigue',
  symbol: 'd',
  dimension: 'length',
  inputs: { ...fatigueInputs, factor: 'number' },
  text: 'd = (32 n/(π S_y) √((M_m + M_a S_y/S_e)² + 3/4 (T_m + T_a S_y/S_e)²))^(1/3)',
  symbols: {
    meanBending: 'M_m',
    alternatingBending: 'M_a',
    meanTorque: 'T_m',
    alternatingTorque: 'T_a',
    tensileYield: 'S_y',
    enduranceLimit: 'S_e',
    factor: 'n',
  },
  source: SODERBERG,
  range: FATIGUE_RANGE,
  compute: si => Math.cbrt((32 * si.factor * fatigueMoment(si)) / (Math.PI * si.tensileYield)),
});

/** Steady moment that is as severe as the mean and alternating moments together. */
function fatigueMoment(si: Readonly<Record<keyof typeof fatigueInputs, number>>): number {
  const severity = si.tensileYield / si.enduranceLimit;
  const bending = si.meanBending + si.alternatingBending * severity;
  const torsion = si.meanTorque + si.alternatingTorque * severity;
  return Math.sqrt(bending ** 2 + 0.75 * torsion ** 2);
}
