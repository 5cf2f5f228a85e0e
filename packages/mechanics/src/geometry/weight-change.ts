import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';

const MOMENTS: Source = { title: 'statics: first moment of mass', confidence: 'derived' };
const lever = 'Levers are measured from one reference, with one sign.';

/** Moment of a part about the reference. kg·m; m kg, removed parts negative; x m. */
export const momentOfMass = /* @__PURE__ */ formula({
  name: 'moment of mass',
  symbol: 'M',
  dimension: 'moment of mass',
  inputs: { mass: 'mass', lever: 'length' },
  text: 'M = m x',
  symbols: { mass: 'm', lever: 'x' },
  source: MOMENTS,
  range: lever,
  compute: ({ mass, lever: x }) => mass * x,
});

/** Total of masses under any keys; `totalMass` takes a list. kg. */
export const massSum = /* @__PURE__ */ formula({
  name: 'total mass',
  symbol: 'Σm',
  dimension: 'mass',
  inputs: {} as Record<string, 'mass'>,
  text: 'Σm = m₁ + m₂ + …',
  source: MOMENTS,
  range: 'A sum; removed parts negative.',
  compute: si => Object.values(si).reduce((total, mass) => total + mass, 0),
});

/** Total of moments under any keys; `totalMoment` takes a list. kg·m. */
export const momentSum = /* @__PURE__ */ formula({
  name: 'total moment of mass',
  symbol: 'ΣM',
  dimension: 'moment of mass',
  inputs: {} as Record<string, 'moment of mass'>,
  text: 'ΣM = M₁ + M₂ + …',
  source: MOMENTS,
  range: 'A sum about one reference; removed parts negative.',
  compute: si => Object.values(si).reduce((total, moment) => total + moment, 0),
});

/** Sum of masses; removed parts negative. kg. */
export function totalMass(masses: readonly Value<'mass'>[]): Value<'mass'> {
  return massSum(Object.fromEntries(masses.map((mass, i) => [`mass ${i + 1}`, mass])));
}

/** Sum of moments about one reference; removed parts negative. kg·m. */
export function totalMoment(moments: readonly Value<'moment of mass'>[]): Value<'moment of mass'> {
  return momentSum(Object.fromEntries(moments.map((moment, i) => [`moment ${i + 1}`, moment])));
}

/** Centre of gravity of the vessel after the change, along the same axis as the levers. m; Δ, Σm kg; ΣM kg·m. */
export const newCentreOfGravity = /* @__PURE__ */ formula({
  name: 'centre of gravity after the change',
  symbol: 'x_G',
  dimension: 'length',
  inputs: {
    displacement: 'mass',
    centreOfGravity: 'length',
    massChange: 'mass',
    momentChange: 'moment of mass',
  },
  text: 'x_G′ = (Δ x_G + ΣM) / (Δ + Σm)',
  symbols: { displacement: 'Δ', centreOfGravity: 'x_G', massChange: 'Σm', momentChange: 'ΣM' },
  source: MOMENTS,
  range: [
    { condition: 'mass is left after the change', met: si => si.displacement + si.massChange > 0 },
    {
      condition:
        'change at most a tenth of the displacement; beyond that the stability calculations must be redone',
      met: si => Math.abs(si.massChange) <= 0.1 * si.displacement,
    },
  ],
  compute: ({ displacement, centreOfGravity, massChange, momentChange }) =>
    (displacement * centreOfGravity + momentChange) / (displacement + massChange),
});
