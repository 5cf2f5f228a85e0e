import { formula, type RangeRule } from '../core/formula.js';
import { ROUND_SECTION } from './sources.js';

type Bored = { d: 'length'; di: 'length' };

const bored: RangeRule<Bored> = {
  condition: 'the bore is not negative and smaller than the outside diameter',
  met: ({ d, di }) => di >= 0 && di < d,
};

/** I = π (d⁴ − di⁴) / 64, for bending. d outside diameter, di bore (0 when solid), m. */
export const shaftSecondMomentOfArea = /* @__PURE__ */ formula({
  name: 'second moment of area of a round shaft',
  symbol: 'I',
  dimension: 'second moment of area',
  inputs: { d: 'length', di: 'length' },
  text: 'I = π (d⁴ − di⁴) / 64',
  source: ROUND_SECTION,
  range: [bored],
  compute: ({ d, di }) => (Math.PI * (d ** 4 - di ** 4)) / 64,
});

/**
 * Polar moment of inertia of the shaft itself, J = ρ π (d⁴ − di⁴) L / 32, kg·m².
 * In a lumped system half of it goes to each end, which is close while the span between inertias is short
 * against the wave length of the mode.
 */
export const shaftPolarInertia = /* @__PURE__ */ formula({
  name: 'polar moment of inertia of a round shaft',
  symbol: 'J',
  dimension: 'moment of inertia',
  inputs: { d: 'length', di: 'length', L: 'length', rho: 'density' },
  text: 'J = ρ π (d⁴ − di⁴) L / 32',
  symbols: { d: 'd', di: 'di', L: 'L', rho: 'ρ' },
  source: ROUND_SECTION,
  range: [bored],
  compute: ({ d, di, L, rho }) => (rho * Math.PI * (d ** 4 - di ** 4) * L) / 32,
});

/** k = G π (d⁴ − di⁴) / (32 L), N·m/rad. G shear modulus, Pa; L length between the flanges or hubs, m. */
export const shaftTorsionalStiffness = /* @__PURE__ */ formula({
  name: 'torsional stiffness of a round shaft',
  symbol: 'k',
  dimension: 'torsional stiffness',
  inputs: { G: 'pressure', d: 'length', di: 'length', L: 'length' },
  text: 'k = G π (d⁴ − di⁴) / (32 L)',
  source: { title: 'Saint-Venant torsion of a round bar', confidence: 'derived' },
  range: [bored],
  compute: ({ G, d, di, L }) => (G * Math.PI * (d ** 4 - di ** 4)) / (32 * L),
});
