import { formula } from '../core/formula.js';

/** Holding torque over engine torque; 1.5 to 2 is usual (from memory). */
export const clutchServiceFactor = /* @__PURE__ */ formula({
  name: 'service factor of a clutch',
  symbol: 'S',
  dimension: 'ratio',
  inputs: { holdingTorque: 'torque', engineTorque: 'torque' },
  text: 'S = T_c / T_e',
  symbols: { holdingTorque: 'T_c', engineTorque: 'T_e' },
  source: { title: 'definition of the service factor', confidence: 'derived' },
  range: [{ condition: 'engine torque above zero', met: ({ engineTorque }) => engineTorque > 0 }],
  compute: ({ holdingTorque, engineTorque }) => holdingTorque / engineTorque,
});

/** Usual service factors; advice, not a criterion. */
export const USUAL_SERVICE_FACTOR = {
  from: 1.5,
  to: 2,
  source: { title: 'clutch selection practice', confidence: 'from memory' },
} as const;
