import { formula } from '../../core/formula.js';
import type { Value } from '../../core/value.js';
import { LUMPED_TORSION } from '../sources.js';

/** 1/k = 1/k₁ + 1/k₂, N·m/rad: two springs that carry the same torque. */
export const seriesPairStiffness = /* @__PURE__ */ formula({
  name: 'torsional stiffness of two in series',
  symbol: 'k',
  dimension: 'torsional stiffness',
  inputs: { k1: 'torsional stiffness', k2: 'torsional stiffness' },
  text: 'k = 1 / (1/k1 + 1/k2)',
  source: LUMPED_TORSION,
  range: [{ condition: 'both stiffnesses are positive', met: ({ k1, k2 }) => k1 > 0 && k2 > 0 }],
  compute: ({ k1, k2 }) => 1 / (1 / k1 + 1 / k2),
});

/** Any number of torsion springs in series, the pair formula applied in turn. */
export function seriesStiffness(
  first: Value<'torsional stiffness'>,
  ...rest: readonly Value<'torsional stiffness'>[]
): Value<'torsional stiffness'> {
  return rest.reduce((k1, k2) => seriesPairStiffness({ k1, k2 }), first);
}
