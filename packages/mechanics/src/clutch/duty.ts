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
  range: [{ condition: 'the engine gives torque', met: ({ engineTorque }) => engineTorque > 0 }],
  compute: ({ holdingTorque, engineTorque }) => holdingTorque / engineTorque,
});

/** Usual service factors; advice, not a criterion. */
export const USUAL_SERVICE_FACTOR = {
  from: 1.5,
  to: 2,
  source: { title: 'clutch selection practice', confidence: 'from memory' },
} as const;

/** Heat made while a clutch slips at a steady speed difference, as in trolling. P W, T N·m, ω rad/s. */
export const slipPower = /* @__PURE__ */ formula({
  name: 'heat of a slipping clutch',
  symbol: 'P_s',
  dimension: 'power',
  inputs: { torque: 'torque', inputSpeed: 'rotational speed', outputSpeed: 'rotational speed' },
  text: 'P_s = T (ω_1 − ω_2)',
  symbols: { torque: 'T', inputSpeed: 'ω_1', outputSpeed: 'ω_2' },
  source: { title: 'power lost between two speeds at one torque', confidence: 'derived' },
  range: [
    {
      condition: 'the input turns at least as fast as the output',
      met: si => si.inputSpeed >= si.outputSpeed,
    },
  ],
  compute: ({ torque, inputSpeed, outputSpeed }) => torque * (inputSpeed - outputSpeed),
});

/** Heat of one engagement at constant torque that starts the load from rest while the input keeps its speed. */
export const engagementEnergy = /* @__PURE__ */ formula({
  name: 'heat of one clutch engagement',
  symbol: 'E',
  dimension: 'energy',
  inputs: { torque: 'torque', speed: 'rotational speed', time: 'time' },
  text: 'E = T ω t / 2',
  symbols: { torque: 'T', speed: 'ω', time: 't' },
  source: { title: 'slip that falls evenly to nothing at constant torque', confidence: 'derived' },
  range: [
    {
      condition: 'torque, speed and time are not negative',
      met: si => Math.min(si.torque, si.speed, si.time) >= 0,
    },
  ],
  compute: ({ torque, speed, time }) => (torque * speed * time) / 2,
});
