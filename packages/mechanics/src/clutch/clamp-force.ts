import { formula } from '../core/formula.js';

/**
 * Clamp force of an annular hydraulic piston less its return springs. The head of oil that turns with the clutch is left
 * out, so a piston that is not balanced against it pushes harder when running and drags when released.
 */
export const hydraulicClamp = /* @__PURE__ */ formula({
  name: 'clamp force of a hydraulic piston',
  symbol: 'F',
  dimension: 'force',
  inputs: {
    oilPressure: 'pressure',
    outsideDiameter: 'length',
    insideDiameter: 'length',
    springForce: 'force',
  },
  text: 'F = p π (D_o² − D_i²) / 4 − F_s',
  symbols: { oilPressure: 'p', outsideDiameter: 'D_o', insideDiameter: 'D_i', springForce: 'F_s' },
  source: { title: 'statics of an annular piston', confidence: 'derived' },
  range: [
    {
      condition: 'the piston is a ring or a disc',
      met: si => si.outsideDiameter > si.insideDiameter && si.insideDiameter >= 0,
    },
    {
      condition: 'the oil overcomes the return springs',
      met: si =>
        (si.oilPressure * Math.PI * (si.outsideDiameter ** 2 - si.insideDiameter ** 2)) / 4 > si.springForce,
    },
  ],
  compute: si =>
    (si.oilPressure * Math.PI * (si.outsideDiameter ** 2 - si.insideDiameter ** 2)) / 4 - si.springForce,
});
