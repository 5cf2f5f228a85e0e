import type { Source } from '../../src/core/source.js';
import { formula } from './held-formula.js';

const CARDAN: Source = { title: 'kinematics of the universal (Cardan) joint', confidence: 'derived' };

const acute = {
  condition: 'the joint angle is below 90 degrees',
  met: (si: { readonly angle: number }) => Math.abs(si.angle) < Math.PI / 2,
};

/** Least output speed over input speed of one joint. –; β rad. */
export const jointLowestSpeed = /* @__PURE__ */ formula({
  name: 'lowest speed ratio of a universal joint',
  symbol: 'r_min',
  dimension: 'ratio',
  inputs: { angle: 'angle' },
  text: 'r_min = cos β',
  symbols: { angle: 'β' },
  source: CARDAN,
  range: [acute],
  compute: ({ angle }) => Math.cos(angle),
});

/** Speed ratio at a turn of the driving yoke, 0 where its pin lies in the plane of the two shafts. –; β, θ rad. */
export const jointSpeedRatio = /* @__PURE__ */ formula({
  name: 'speed ratio of a universal joint at a turn',
  symbol: 'r',
  dimension: 'ratio',
  inputs: { angle: 'angle', turn: 'angle' },
  text: 'r = cos β / (1 − sin² β cos² θ)',
  symbols: { angle: 'β', turn: 'θ' },
  source: CARDAN,
  range: [acute],
  compute: ({ angle, turn }) => Math.cos(angle) / (1 - (Math.sin(angle) * Math.cos(turn)) ** 2),
});
