import { formula } from '../core/formula.js';

/** Torque a coupling is chosen for. T_d, T N·m; K service factor, the coupling maker's. */
export const couplingDesignTorque = /* @__PURE__ */ formula({
  name: 'design torque of a coupling',
  symbol: 'T_d',
  dimension: 'torque',
  inputs: { torque: 'torque', serviceFactor: 'number' },
  text: 'T_d = K T',
  symbols: { torque: 'T', serviceFactor: 'K' },
  source: { title: "selection by the coupling maker's service factor", confidence: 'common practice' },
  range: [{ condition: 'the service factor is at least 1', met: si => si.serviceFactor >= 1 }],
  compute: ({ torque, serviceFactor }) => serviceFactor * torque,
});

/** What is left of a coupling's rating: capacity ÷ demand − 1. T N·m. */
export const couplingTorqueMargin = /* @__PURE__ */ formula({
  name: 'margin of coupling torque',
  symbol: 'm',
  dimension: 'ratio',
  inputs: { rating: 'torque', designTorque: 'torque' },
  text: 'm = T_rated / T_d − 1',
  symbols: { rating: 'T_rated', designTorque: 'T_d' },
  source: { title: 'capacity ÷ demand − 1', confidence: 'derived' },
  range: 'The definition of a margin.',
  compute: ({ rating, designTorque }) => rating / designTorque - 1,
});
