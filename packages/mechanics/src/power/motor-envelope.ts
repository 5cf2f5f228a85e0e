import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const ENVELOPE: Source = {
  title: 'constant torque to base speed, constant power above it',
  confidence: 'common practice',
};

/** Torque an electric motor gives at a speed: its torque limit, or its power limit, or none over its greatest speed. */
export const motorTorque = /* @__PURE__ */ formula({
  name: 'motor torque at a speed',
  symbol: 'T',
  dimension: 'torque',
  inputs: {
    torqueLimit: 'torque',
    powerLimit: 'power',
    greatestSpeed: 'rotational speed',
    speed: 'rotational speed',
  },
  text: 'T = min(T_max, P_max / ω), 0 above ω_max',
  symbols: { torqueLimit: 'T_max', powerLimit: 'P_max', greatestSpeed: 'ω_max', speed: 'ω' },
  source: ENVELOPE,
  range: [
    {
      condition: 'the speed is at most the motor’s greatest',
      met: si => Math.abs(si.speed) <= si.greatestSpeed,
    },
  ],
  // A motor turns either way: its limits go by the size of the speed.
  compute: ({ torqueLimit, powerLimit, greatestSpeed, speed }) => {
    const size = Math.abs(speed);
    if (size > greatestSpeed) return 0;
    return size > 0 ? Math.min(torqueLimit, powerLimit / size) : torqueLimit;
  },
});

/** Speed up to which the torque limit governs, above which the power limit does. */
export const motorBaseSpeed = /* @__PURE__ */ formula({
  name: 'base speed of a motor',
  symbol: 'ω_b',
  dimension: 'rotational speed',
  inputs: { torqueLimit: 'torque', powerLimit: 'power' },
  text: 'ω_b = P_max / T_max',
  symbols: { torqueLimit: 'T_max', powerLimit: 'P_max' },
  source: ENVELOPE,
  range: [{ condition: 'the torque limit is above zero', met: ({ torqueLimit }) => torqueLimit > 0 }],
  compute: ({ torqueLimit, powerLimit }) => powerLimit / torqueLimit,
});

/** Speed at which a propeller of known demand takes all the torque a motor has, while that limit governs. */
export const speedAtTorqueLimit = /* @__PURE__ */ formula({
  name: 'shaft speed at the torque limit',
  symbol: 'ω',
  dimension: 'rotational speed',
  inputs: { torqueLimit: 'torque', demandTorque: 'torque', demandSpeed: 'rotational speed' },
  text: 'ω = ω_d √(T_max / T_d)',
  symbols: { torqueLimit: 'T_max', demandTorque: 'T_d', demandSpeed: 'ω_d' },
  source: { title: 'propeller law for fixed pitch: torque by the square of speed', confidence: 'published' },
  range: [
    { condition: 'demand and limit are above zero', met: si => si.torqueLimit > 0 && si.demandTorque > 0 },
  ],
  compute: ({ torqueLimit, demandTorque, demandSpeed }) =>
    demandSpeed * Math.sqrt(torqueLimit / demandTorque),
});
