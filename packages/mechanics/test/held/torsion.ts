import type { Source } from '../../src/core/source.js';
import { hollowShare } from '../../src/shaft/torsion.js';
import { formula } from './held-formula.js';

const TORSION: Source = {
  author: 'J. M. Gere, S. P. Timoshenko',
  title: 'Mechanics of Materials',
  clause: 'torsion of circular bars',
  confidence: 'published',
};

/** Outside diameter for an allowed shear stress; bore ratio d_i/d_o, 0 for solid. d m; T N·m; τ Pa. */
export const diameterForTorsion = /* @__PURE__ */ formula({
  name: 'shaft diameter for an allowed torsional stress',
  symbol: 'd_o',
  dimension: 'length',
  inputs: { torque: 'torque', stress: 'pressure', boreRatio: 'ratio' },
  text: 'd_o = (16 T / (π τ (1 − (d_i/d_o)⁴)))^(1/3)',
  symbols: { torque: 'T', stress: 'τ', boreRatio: 'd_i/d_o' },
  source: TORSION,
  range: [
    {
      condition: 'the bore ratio is at least 0 and below 1',
      met: si => si.boreRatio >= 0 && si.boreRatio < 1,
    },
  ],
  compute: ({ torque, stress, boreRatio }) =>
    Math.cbrt((16 * torque) / (Math.PI * stress * hollowShare(boreRatio))),
});
