import { type FormulaSpec, formula } from '../../core/formula.js';
import { WOYTOWICH } from '../sources.js';
import { type ForwardEnd, type OverhungShaft, overhungInfluence } from './overhung-influence.js';

const INPUTS = {
  L: 'length',
  b: 'length',
  E: 'pressure',
  I: 'second moment of area',
  m: 'mass',
  Ie: 'moment of inertia',
} as const;

type Inputs = OverhungShaft & { readonly m: number; readonly Ie: number };

/**
 * The two frequencies of a propeller on a massless overhung shaft, Hz: it moves sideways and tilts.
 * With x = 1/ω²: x² − x (a11 m + a22 Ie) + m Ie (a11 a22 − a12²) = 0.
 * L span, b overhang, E, I of the shaft; m mass and Ie effective diametral inertia of the propeller, both with
 * entrained water. Both forward-end cases together bracket the true frequency.
 */
export const overhungFrequency = {
  pinned: { lower: declare('lower', 'pinned'), upper: declare('upper', 'pinned') },
  fixed: { lower: declare('lower', 'fixed'), upper: declare('upper', 'fixed') },
};

/**
 * Ie = Id − Ip/q: diametral inertia as it acts when the shaft whirls at q times its own speed, kg·m².
 * q is positive when the whirl turns with the shaft, negative when it turns against it, and ±Z at blade rate.
 */
export const whirlInertia = /* @__PURE__ */ formula({
  name: 'effective diametral inertia in whirl',
  symbol: 'Ie',
  dimension: 'moment of inertia',
  inputs: { Id: 'moment of inertia', Ip: 'moment of inertia', q: 'number' },
  text: 'Ie = Id − Ip / q',
  source: { title: 'Gyroscopic moment of a whirling disc', confidence: 'derived' },
  range: [{ condition: 'order of the whirl is not zero', met: ({ q }) => q !== 0 }],
  compute: ({ Id, Ip, q }) => Id - Ip / q,
});

/** Highest of the pair is lost when the gyroscopic moment makes the effective inertia negative. */
function roots(si: Inputs, forward: ForwardEnd) {
  const { a11, a12, a22 } = overhungInfluence(si, forward);
  const sum = a11 * si.m + a22 * si.Ie;
  const product = si.m * si.Ie * (a11 * a22 - a12 ** 2);
  const large = (sum + Math.sqrt(sum ** 2 - 4 * product)) / 2;
  const frequency = (x: number) => (x > 0 ? 1 / (2 * Math.PI * Math.sqrt(x)) : Number.NaN);
  return { lower: frequency(large), upper: frequency(product / large) };
}

function declare(which: 'lower' | 'upper', forward: ForwardEnd) {
  const spec: FormulaSpec<typeof INPUTS, 'frequency'> = {
    name: `${which} frequency of an overhung propeller, forward end ${forward}`,
    symbol: which === 'lower' ? 'f₁' : 'f₂',
    dimension: 'frequency',
    inputs: INPUTS,
    text: `1 − ω² (a11 m + a22 Ie) + ω⁴ m Ie (a11 a22 − a12²) = 0, a11 = b³/3EI + b²L/${forward === 'pinned' ? 3 : 4}EI, …; ${which} root, f = ω/2π`,
    terms: `f is the ${which} root of this equation`,
    source: WOYTOWICH,
    range: [
      { condition: 'propeller mass is positive', met: ({ m }) => m > 0 },
      // The lower root is there whatever the inertia.
      ...(which === 'upper'
        ? [
            {
              condition: 'effective diametral inertia is positive (when not, there is no upper root)',
              met: ({ Ie }: Inputs) => Ie > 0,
            },
          ]
        : []),
    ],
    compute: si => roots(si, forward)[which],
  };
  return formula(spec);
}
