import { formula } from '../core/formula.js';

/** What belt or chain pulls on the shaft that carries its driving wheel. */
export const strandSideLoad = /* @__PURE__ */ formula({
  name: 'side load of a belt or chain',
  symbol: 'F',
  dimension: 'force',
  inputs: { torque: 'torque', diameter: 'length', strandFactor: 'number' },
  text: 'F = f 2 T / d',
  symbols: { torque: 'T', diameter: 'd', strandFactor: 'f' },
  source: {
    title:
      'statics of a wheel: the difference of the strand tensions carries the torque, and their sum pulls on the shaft',
    confidence: 'derived',
  },
  range: [
    {
      condition: 'strands that run side by side, strand factor at least 1',
      met: ({ strandFactor }) => strandFactor >= 1,
    },
    { condition: 'diameter above zero', met: ({ diameter }) => diameter > 0 },
  ],
  compute: ({ torque, diameter, strandFactor }) => (strandFactor * 2 * torque) / diameter,
});
