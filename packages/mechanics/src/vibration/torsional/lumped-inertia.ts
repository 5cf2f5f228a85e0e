import { formula } from '../../core/formula.js';
import { given, type Value } from '../../core/value.js';
import { LUMPED_TORSION } from '../sources.js';

/** J/2 at each end of a spring: a coupling whose sheet gives one figure for the whole. kg·m². */
export const halfInertia = /* @__PURE__ */ formula({
  name: 'half the inertia of a coupling',
  symbol: 'J/2',
  dimension: 'moment of inertia',
  inputs: { J: 'moment of inertia' },
  text: 'J/2 = J / 2',
  symbols: { J: 'J' },
  source: {
    title: 'a coupling shared between its two ends where the sheet does not tell them apart',
    confidence: 'common practice',
  },
  range: [{ condition: 'the inertia is not negative', met: ({ J }) => J >= 0 }],
  compute: ({ J }) => J / 2,
});

/** One inertia made of all that turns as one at one speed; a declared nothing where nothing is there. */
export function lumpedInertia(parts: readonly Value<'moment of inertia'>[]): Value<'moment of inertia'> {
  if (parts.length === 1) return parts[0]!;
  if (parts.length === 0) {
    return given('inertia between two springs', 'J', 'moment of inertia', 0, {
      assumed: 'left out: small against gear and propeller',
    });
  }
  return {
    label: 'inertia of what turns as one',
    symbol: 'J',
    dimension: 'moment of inertia',
    si: parts.reduce((sum, one) => sum + one.si, 0),
    working: {
      name: 'inertia of what turns as one',
      text: 'J = Σ J',
      inputs: parts,
      source: LUMPED_TORSION,
      range: [],
    },
  };
}
