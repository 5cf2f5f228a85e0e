import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const CARDAN: Source = { title: 'kinematics of the universal (Cardan) joint', confidence: 'derived' };

const acute = {
  condition: 'the joint angle is below 90 degrees',
  met: (si: { readonly angle: number }) => Math.abs(si.angle) < Math.PI / 2,
};

/** Greatest output speed over input speed of one joint, twice a revolution. –; β rad. */
export const jointHighestSpeed = /* @__PURE__ */ formula({
  name: 'highest speed ratio of a universal joint',
  symbol: 'r_max',
  dimension: 'ratio',
  inputs: { angle: 'angle' },
  text: 'r_max = 1 / cos β',
  symbols: { angle: 'β' },
  source: CARDAN,
  range: [acute],
  compute: ({ angle }) => 1 / Math.cos(angle),
});

const pair = { firstAngle: 'angle', secondAngle: 'angle' } as const;

const onePlane = [
  {
    condition: 'both joint angles are below 90 degrees and lie in one plane',
    met: (si: { readonly firstAngle: number; readonly secondAngle: number }) =>
      Math.max(Math.abs(si.firstAngle), Math.abs(si.secondAngle)) < Math.PI / 2,
  },
];

/** Angle of the single joint that would be as uneven as a pair in phase; 0 when the two angles are equal. rad. */
export const residualAngleInPhase = /* @__PURE__ */ formula({
  name: 'residual angle of two universal joints in phase',
  symbol: 'β_r',
  dimension: 'angle',
  inputs: pair,
  text: 'β_r = arccos min(cos β₁/cos β₂, cos β₂/cos β₁)',
  symbols: { firstAngle: 'β₁', secondAngle: 'β₂' },
  source: CARDAN,
  range: onePlane,
  compute: ({ firstAngle, secondAngle }) => {
    const share = Math.cos(firstAngle) / Math.cos(secondAngle);
    return Math.acos(Math.min(share, 1 / share));
  },
});

/** The same with the yokes of the shaft between them a quarter turn out of phase: the errors add. rad. */
export const residualAngleOutOfPhase = /* @__PURE__ */ formula({
  name: 'residual angle of two universal joints out of phase',
  symbol: 'β_r',
  dimension: 'angle',
  inputs: pair,
  text: 'β_r = arccos(cos β₁ cos β₂)',
  symbols: { firstAngle: 'β₁', secondAngle: 'β₂' },
  source: CARDAN,
  range: onePlane,
  compute: ({ firstAngle, secondAngle }) => Math.acos(Math.cos(firstAngle) * Math.cos(secondAngle)),
});
