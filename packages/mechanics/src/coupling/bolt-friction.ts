import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

/** Torque that clamped flange faces pass by friction, taken at the bolt circle. T N·m; D m; F N for each bolt; μ –; n bolts. */
export const boltTorqueByFriction = /* @__PURE__ */ formula({
  name: 'torque of clamped flanges by friction',
  symbol: 'T',
  dimension: 'torque',
  inputs: { friction: 'number', bolts: 'number', preload: 'force', boltCircle: 'length' },
  text: 'T = μ n F D/2',
  symbols: { friction: 'μ', bolts: 'n', preload: 'F', boltCircle: 'D' },
  source: { title: 'statics of friction at the bolt circle', confidence: 'derived' },
  range: 'Preload remaining after settling; faces free of grease and paint.',
  compute: ({ friction, bolts, preload, boltCircle }) => (friction * bolts * preload * boltCircle) / 2,
});

/** Friction of dry, clean steel faces. */
export const DRY_FLANGE_FRICTION = {
  value: 0.15,
  source: { title: 'dry, clean steel faces', confidence: 'common practice' } satisfies Source,
} as const;
