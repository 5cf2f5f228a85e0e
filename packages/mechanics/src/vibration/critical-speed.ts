import { formula } from '../core/formula.js';

/**
 * Speed at which an excitation of order q (times per turn of that shaft) meets a natural frequency, Ω = 2π f / q, rad/s.
 * For blade rate q is the number of blades; for whirl once per turn it is 1.
 */
export const criticalSpeed = /* @__PURE__ */ formula({
  name: 'critical speed of an order',
  symbol: 'Ω',
  dimension: 'rotational speed',
  inputs: { f: 'frequency', q: 'number' },
  text: 'Ω = 2π f / q',
  source: { title: 'Definition of an order: oscillations per turn of the shaft', confidence: 'derived' },
  range: [{ condition: 'the order is positive', met: ({ q }) => q > 0 }],
  compute: ({ f, q }) => (2 * Math.PI * f) / q,
});
