import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const HOLTROP_1982 = {
  author: 'Keller, as given by Holtrop and Mennen',
  title: 'An approximate power prediction method, International Shipbuilding Progress 29',
  year: 1982,
  confidence: 'from memory',
} as const;

/** Additions to the area ratio in Keller's criterion; from memory of the 1982 paper and one copy. */
export const KELLER_ADDITION = {
  'fast twin screw with transom': 0,
  'twin screw': 0.1,
  'single screw': 0.2,
} as const;
export const KELLER_ADDITION_SOURCE: Source = { ...HOLTROP_1982, clause: 'addition k; one copy agrees' };

/** Atmospheric less vapour pressure at 15 °C, Pa; from memory, and the worked example is met with it. */
export const ATMOSPHERE_LESS_VAPOUR = 99047;
export const ATMOSPHERE_LESS_VAPOUR_SOURCE: Source = { ...HOLTROP_1982, clause: 'p0 - pv at 15 °C' };

/** Pressure at the shaft centre above that of water vapour. */
export const pressureAboveVapour = /* @__PURE__ */ formula({
  name: 'pressure above vapour at the shaft',
  symbol: 'p0 - pv',
  dimension: 'pressure',
  inputs: { atmosphereLessVapour: 'pressure', density: 'density', shaftDepth: 'length' },
  text: 'p0 - pv = (pa - pv) + ρ g h',
  symbols: { atmosphereLessVapour: 'pa - pv', density: 'ρ', shaftDepth: 'h' },
  source: { title: 'hydrostatics', confidence: 'derived' },
  range: [{ condition: 'shaft centre at or below the surface', met: ({ shaftDepth }) => shaftDepth >= 0 }],
  compute: ({ atmosphereLessVapour, density, shaftDepth }) =>
    atmosphereLessVapour + density * 9.81 * shaftDepth,
});

/** Least expanded area ratio that keeps thrust cavitation off, by Keller. */
export const kellerAreaRatio = /* @__PURE__ */ formula({
  name: 'least expanded area ratio by Keller',
  symbol: 'AE/A0 min',
  dimension: 'ratio',
  inputs: {
    blades: 'number',
    thrust: 'force',
    pressureAboveVapour: 'pressure',
    diameter: 'length',
    addition: 'ratio',
  },
  text: 'AE/A0 = (1.3 + 0.3 Z) T / ((p0 - pv) D²) + k',
  symbols: { blades: 'Z', thrust: 'T', pressureAboveVapour: 'p0 - pv', diameter: 'D', addition: 'k' },
  source: HOLTROP_1982,
  range: [
    { condition: '2 to 7 blades', met: ({ blades: z }) => Number.isInteger(z) && z >= 2 && z <= 7 },
    { condition: 'thrust zero or more', met: ({ thrust }) => thrust >= 0 },
    { condition: 'pressure above that of vapour', met: ({ pressureAboveVapour: p }) => p > 0 },
    { condition: 'addition 0 to 0.2', met: ({ addition }) => addition >= 0 && addition <= 0.2 },
  ],
  compute: ({ blades, thrust, pressureAboveVapour: p, diameter, addition }) =>
    ((1.3 + 0.3 * blades) * thrust) / (p * diameter ** 2) + addition,
});
