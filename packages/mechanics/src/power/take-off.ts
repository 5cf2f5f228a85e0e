import { formula } from '../core/formula.js';

/** Power that a running power take-off leaves for the gear. The engine's own torque stays what it is. */
export const powerLessTakeOff = /* @__PURE__ */ formula({
  name: 'power left by a take-off',
  symbol: 'P',
  dimension: 'power',
  inputs: { power: 'power', takeOff: 'power' },
  text: 'P = P_e − P_t',
  symbols: { power: 'P_e', takeOff: 'P_t' },
  source: { title: 'balance of power at the crankshaft', confidence: 'derived' },
  range: [
    {
      condition: 'take-off power below engine power',
      met: ({ power, takeOff }) => takeOff >= 0 && takeOff < power,
    },
  ],
  compute: ({ power, takeOff }) => power - takeOff,
});
