import { DEFINITION } from '../../src/propeller/sources.js';
import { formula } from './held-formula.js';

/** Thrust of a moving propeller of known efficiency: T VA = PD η0. */
export const thrustFromEfficiency = /* @__PURE__ */ formula({
  name: 'thrust from power, efficiency and speed',
  symbol: 'T',
  dimension: 'force',
  inputs: { power: 'power', efficiency: 'ratio', speedOfAdvance: 'speed' },
  text: 'T = PD η0 / VA',
  symbols: { power: 'PD', efficiency: 'η0', speedOfAdvance: 'VA' },
  source: DEFINITION,
  range: [
    { condition: 'speed of advance above zero', met: ({ speedOfAdvance }) => speedOfAdvance > 0 },
    { condition: 'efficiency 0 to 1', met: ({ efficiency: e }) => e >= 0 && e <= 1 },
  ],
  compute: ({ power, efficiency, speedOfAdvance }) => (power * efficiency) / speedOfAdvance,
});
