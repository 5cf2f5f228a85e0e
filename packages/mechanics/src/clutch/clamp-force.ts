import { formula } from '../core/formula.js';
import { IS_RING, KHURMI_CLUTCH } from './sources.js';

const RING = { outerRadius: 'length', innerRadius: 'length' } as const;
const LETTERS = { outerRadius: 'r_o', innerRadius: 'r_i', pressure: 'p', clamp: 'F' } as const;

/** Clamp force at which a worn-in face reaches a pressure at its inner edge. F N, p Pa, radii m. */
export const clampFromPressureUniformWear = /* @__PURE__ */ formula({
  name: 'clutch clamp force from lining pressure, uniform wear',
  symbol: 'F',
  dimension: 'force',
  inputs: { pressure: 'pressure', ...RING },
  text: 'F = 2 π p r_i (r_o − r_i)',
  symbols: LETTERS,
  source: KHURMI_CLUTCH,
  range: [IS_RING],
  compute: si => 2 * Math.PI * si.pressure * si.innerRadius * (si.outerRadius - si.innerRadius),
});

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

/** Inner radius at which a face of given outer radius and lining pressure carries most, uniform wear. */
export const bestInnerRadius = /* @__PURE__ */ formula({
  name: 'inner radius for the largest clutch torque',
  symbol: 'r_i',
  dimension: 'length',
  inputs: { outerRadius: 'length' },
  text: 'r_i = r_o / √3',
  symbols: LETTERS,
  source: { title: 'greatest T of the uniform-wear formula at fixed r_o and p', confidence: 'derived' },
  range: 'Follows by differentiation, for any face under uniform wear.',
  compute: ({ outerRadius }) => outerRadius / Math.sqrt(3),
});
