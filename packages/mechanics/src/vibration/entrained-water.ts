import { formula } from '../core/formula.js';
import { given } from '../core/value.js';
import { WOYTOWICH } from './sources.js';

/** Water that a vibrating propeller carries sideways, as a fraction of its own mass and diametral inertia. */
export const LATERAL_ENTRAINED_WATER = given('entrained water, sideways', 'w', 'number', 0.25, {
  assumed:
    'one quarter of the propeller’s own mass and diametral inertia (Woytowich, Journal of Ship Research 1979)',
});

/** Water that a propeller carries in torsion, as a fraction of its own polar inertia. */
export const TORSIONAL_ENTRAINED_WATER = given('entrained water, torsion', 'w', 'number', 0.25, {
  assumed: 'one quarter of the propeller’s own polar inertia; 20 to 30 % is usual (from memory)',
});

/** m' = m (1 + w), kg. */
export const propellerMassInWater = /* @__PURE__ */ formula({
  name: 'propeller mass with entrained water',
  symbol: 'm′',
  dimension: 'mass',
  inputs: { m: 'mass', w: 'number' },
  text: 'm′ = m (1 + w)',
  source: WOYTOWICH,
  range: [{ condition: 'entrained water is not negative', met: ({ w }) => w >= 0 }],
  compute: ({ m, w }) => m * (1 + w),
});

/** I' = I (1 + w), kg·m²: polar or diametral, with the fraction that belongs to it. */
export const propellerInertiaInWater = /* @__PURE__ */ formula({
  name: 'propeller inertia with entrained water',
  symbol: 'I′',
  dimension: 'moment of inertia',
  inputs: { I: 'moment of inertia', w: 'number' },
  text: 'I′ = I (1 + w)',
  source: WOYTOWICH,
  range: [{ condition: 'entrained water is not negative', met: ({ w }) => w >= 0 }],
  compute: ({ I, w }) => I * (1 + w),
});
