import type { Source } from '../core/source.js';

/** Friction of a clutch pair running in oil. Pressures in Pa, from and to; undefined where none is given. */
export interface FrictionPair {
  readonly pair: string;
  readonly friction: { readonly from: number; readonly to: number };
  readonly pressure?: { readonly from?: number; readonly to: number };
  readonly source: Source;
}

const SHIGLEY: Source = {
  author: 'J. E. Shigley',
  title: 'Mechanical Engineering Design',
  clause: 'friction materials for clutches',
  confidence: 'from memory',
};

/** Wet friction pairs. A maker's own figure for the lining in question goes before any of these. */
export const WET_FRICTION: readonly FrictionPair[] = [
  {
    pair: 'sintered bronze on steel',
    friction: { from: 0.05, to: 0.1 },
    pressure: { to: 2.1e6 },
    source: SHIGLEY,
  },
  {
    pair: 'powder metal on cast iron',
    friction: { from: 0.05, to: 0.1 },
    pressure: { to: 1.0e6 },
    source: SHIGLEY,
  },
  {
    pair: 'moulded lining on steel',
    friction: { from: 0.08, to: 0.12 },
    pressure: { from: 0.34e6, to: 1.0e6 },
    source: SHIGLEY,
  },
  {
    pair: 'woven lining on steel',
    friction: { from: 0.1, to: 0.2 },
    pressure: { from: 0.34e6, to: 0.69e6 },
    source: SHIGLEY,
  },
  {
    pair: 'cork on steel',
    friction: { from: 0.15, to: 0.25 },
    pressure: { from: 0.055e6, to: 0.1e6 },
    source: SHIGLEY,
  },
  {
    pair: 'paper on steel',
    friction: { from: 0.1, to: 0.14 },
    pressure: { from: 1e6, to: 4e6 },
    source: { title: 'paper friction linings, dynamic to static', confidence: 'from memory' },
  },
  {
    pair: 'steel on bronze',
    friction: { from: 0.1, to: 0.1 },
    pressure: { to: 0.3e6 },
    source: {
      author: 'V. B. Bhandari',
      title: 'Design of Machine Elements',
      clause: 'example 11.8',
      confidence: 'published',
    },
  },
];

/** No lining against ground steel in oil is reported above this; a spec that claims more needs a source. */
export const WET_FRICTION_BOUND: { readonly value: number; readonly source: Source } = {
  value: 0.15,
  source: { title: 'note of a wet-friction supplier', confidence: 'published' },
};
