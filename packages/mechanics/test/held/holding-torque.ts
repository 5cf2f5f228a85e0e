import { IS_RING, KHURMI_CLUTCH, wornInRadius } from '../../src/clutch/sources.js';
import { formula } from './held-formula.js';

const LETTERS = { faces: 'N_f', friction: 'μ', clamp: 'F', outerRadius: 'r_o', innerRadius: 'r_i' } as const;

/** Friction faces a torque needs, uniform wear; take the next whole (for plates gripped on both sides: even) number. */
export const clutchFacesNeeded = /* @__PURE__ */ formula({
  name: 'clutch faces needed, uniform wear',
  symbol: 'N_f',
  dimension: 'number',
  inputs: {
    torque: 'torque',
    friction: 'ratio',
    clamp: 'force',
    outerRadius: 'length',
    innerRadius: 'length',
  },
  text: 'N_f = 2 T / (μ F (r_o + r_i))',
  symbols: { ...LETTERS, torque: 'T' },
  source: KHURMI_CLUTCH,
  range: [IS_RING],
  compute: si => si.torque / (si.friction * si.clamp * wornInRadius(si.outerRadius, si.innerRadius)),
});
