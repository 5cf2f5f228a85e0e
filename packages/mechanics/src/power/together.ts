import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const BALANCE: Source = { title: 'balance of power and torque', confidence: 'derived' };

/** Torque behind the place where a second mover gives to the same shaft. */
export const torqueTogether = /* @__PURE__ */ formula({
  name: 'torque of two movers on one shaft',
  symbol: 'T',
  dimension: 'torque',
  inputs: { first: 'torque', second: 'torque' },
  text: 'T = T1 + T2',
  symbols: { first: 'T1', second: 'T2' },
  source: BALANCE,
  range: 'Both at the speed of the shaft that they share.',
  compute: ({ first, second }) => first + second,
});

/** Torque of a mover behind stages, as if it were given at the engine. */
export const torqueReferred = /* @__PURE__ */ formula({
  name: 'torque referred to the engine',
  symbol: "T'",
  dimension: 'torque',
  inputs: { torque: 'torque', ratio: 'ratio', efficiency: 'ratio' },
  text: "T' = T / (i η)",
  symbols: { torque: 'T', ratio: 'i', efficiency: 'η' },
  source: BALANCE,
  range: [
    { condition: 'ratio above zero', met: ({ ratio }) => ratio > 0 },
    { condition: 'efficiency above zero', met: ({ efficiency }) => efficiency > 0 },
  ],
  compute: ({ torque, ratio, efficiency }) => torque / (ratio * efficiency),
});

/** Power taken behind stages, as the engine has to give it. */
export const powerReferred = /* @__PURE__ */ formula({
  name: 'power referred to the engine',
  symbol: "P'",
  dimension: 'power',
  inputs: { power: 'power', efficiency: 'ratio' },
  text: "P' = P / η",
  symbols: { power: 'P', efficiency: 'η' },
  source: BALANCE,
  range: [{ condition: 'efficiency above zero', met: si => si.efficiency > 0 }],
  compute: ({ power, efficiency }) => power / efficiency,
});
