import { formula } from '../core/formula.js';
import { evenPressureRadius, IS_RING, KHURMI_CLUTCH, WHOLE_FACES, wornInRadius } from './sources.js';

const PLATES = {
  faces: 'number',
  friction: 'ratio',
  clamp: 'force',
  outerRadius: 'length',
  innerRadius: 'length',
} as const;

const LETTERS = { faces: 'N_f', friction: 'μ', clamp: 'F', outerRadius: 'r_o', innerRadius: 'r_i' } as const;

const RANGE = [IS_RING, WHOLE_FACES] as const;

/** Torque a worn-in plate clutch holds (uniform wear): the safer of the two. T N·m, F N, radii m. */
export const clutchTorqueUniformWear = /* @__PURE__ */ formula({
  name: 'clutch holding torque, uniform wear',
  symbol: 'T',
  dimension: 'torque',
  inputs: PLATES,
  text: 'T = N_f μ F (r_o + r_i) / 2',
  symbols: LETTERS,
  source: KHURMI_CLUTCH,
  range: RANGE,
  compute: si => si.faces * si.friction * si.clamp * wornInRadius(si.outerRadius, si.innerRadius),
});

/** Torque a new plate clutch holds (uniform pressure); at most 3 % above uniform wear while r_i/r_o is over 0.6. */
export const clutchTorqueUniformPressure = /* @__PURE__ */ formula({
  name: 'clutch holding torque, uniform pressure',
  symbol: 'T',
  dimension: 'torque',
  inputs: PLATES,
  text: 'T = N_f μ F (2/3) (r_o³ − r_i³) / (r_o² − r_i²)',
  symbols: LETTERS,
  source: KHURMI_CLUTCH,
  range: RANGE,
  compute: si => si.faces * si.friction * si.clamp * evenPressureRadius(si.outerRadius, si.innerRadius),
});

const _NEED = {
  torque: 'torque',
  faces: 'number',
  friction: 'ratio',
  outerRadius: 'length',
  innerRadius: 'length',
} as const;

/** Friction faces of plates that alternate between driver and driven. */
export const clutchFaces = /* @__PURE__ */ formula({
  name: 'clutch faces of alternating plates',
  symbol: 'N_f',
  dimension: 'number',
  inputs: { driving: 'number', driven: 'number' },
  text: 'N_f = n_1 + n_2 − 1',
  symbols: { driving: 'n_1', driven: 'n_2' },
  source: KHURMI_CLUTCH,
  range: [
    {
      condition: 'plates alternate: the two counts are whole, above zero and differ by at most one',
      met: si =>
        Number.isInteger(si.driving) &&
        Number.isInteger(si.driven) &&
        Math.min(si.driving, si.driven) >= 1 &&
        Math.abs(si.driving - si.driven) <= 1,
    },
  ],
  compute: ({ driving, driven }) => driving + driven - 1,
});
