import { LUMPED_TORSION } from '../../src/vibration/sources.js';
import { formula } from './held-formula.js';

/** Lₑ = L (dₑ/d)⁴, m: length of diameter dₑ that twists as much as length L of diameter d; same material, both solid. */
export const equivalentLength = /* @__PURE__ */ formula({
  name: 'equivalent length of a stepped shaft piece',
  symbol: 'Lₑ',
  dimension: 'length',
  inputs: { L: 'length', d: 'length', de: 'length' },
  text: 'Lₑ = L (de / d)⁴',
  source: {
    author: 'T. Bevan',
    title: 'The Theory of Machines',
    clause: 'chapter 15',
    confidence: 'published',
  },
  range: 'solid pieces of one material; the fillet’s own give is left out',
  compute: ({ L, d, de }) => L * (de / d) ** 4,
});

/** J' = J / i², kg·m²: what an inertia after a reduction i (speed before ÷ speed after) amounts to before it. */
export const referredInertia = /* @__PURE__ */ formula({
  name: 'moment of inertia referred across a gear',
  symbol: 'J′',
  dimension: 'moment of inertia',
  inputs: { J: 'moment of inertia', i: 'ratio' },
  text: 'J′ = J / i²',
  source: LUMPED_TORSION,
  range: [{ condition: 'the ratio is not zero', met: ({ i }) => i !== 0 }],
  compute: ({ J, i }) => J / i ** 2,
});

/** k' = k / i², N·m/rad: what a stiffness after a reduction i amounts to before it. */
export const referredStiffness = /* @__PURE__ */ formula({
  name: 'torsional stiffness referred across a gear',
  symbol: 'k′',
  dimension: 'torsional stiffness',
  inputs: { k: 'torsional stiffness', i: 'ratio' },
  text: 'k′ = k / i²',
  source: LUMPED_TORSION,
  range: [{ condition: 'the ratio is not zero', met: ({ i }) => i !== 0 }],
  compute: ({ k, i }) => k / i ** 2,
});
