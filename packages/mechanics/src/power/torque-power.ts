import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const POWER: Source = { title: 'definition of power, P = T ω', confidence: 'derived' };
const TURNS = {
  condition: 'shaft speed above zero',
  met: (si: { readonly speed: number }) => si.speed > 0,
};

/** Torque of a power at a speed. T N·m, P W, ω rad/s; in trade units T = 9549.297 kW/rpm = 5252.113 hp/rpm lbf·ft. */
export const torqueFromPower = /* @__PURE__ */ formula({
  name: 'torque from power and speed',
  symbol: 'T',
  dimension: 'torque',
  inputs: { power: 'power', speed: 'rotational speed' },
  text: 'T = P / ω',
  symbols: { power: 'P', speed: 'ω' },
  source: POWER,
  range: [TURNS],
  compute: ({ power, speed }) => power / speed,
});

/** Power of a torque at a speed. */
export const powerFromTorque = /* @__PURE__ */ formula({
  name: 'power from torque and speed',
  symbol: 'P',
  dimension: 'power',
  inputs: { torque: 'torque', speed: 'rotational speed' },
  text: 'P = T ω',
  symbols: { torque: 'T', speed: 'ω' },
  source: POWER,
  range: 'Definition of power.',
  compute: ({ torque, speed }) => torque * speed,
});

/** Capacity number K of a power at a speed: torque as gear makers state it, kW/rpm or hp/100 rpm. SI N·m. */
export const powerPerSpeed = /* @__PURE__ */ formula({
  name: 'power per speed',
  symbol: 'K',
  dimension: 'power per speed',
  inputs: { power: 'power', speed: 'rotational speed' },
  text: 'K = P / ω',
  symbols: { power: 'P', speed: 'ω' },
  source: POWER,
  range: [TURNS],
  compute: ({ power, speed }) => power / speed,
});

/** Power that a rating by power per speed allows at a speed; only up to the part's own speed limit. */
export const powerAllowed = /* @__PURE__ */ formula({
  name: 'power allowed by power per speed',
  symbol: 'P',
  dimension: 'power',
  inputs: { capacity: 'power per speed', speed: 'rotational speed' },
  text: 'P = K ω',
  symbols: { capacity: 'K', speed: 'ω' },
  source: POWER,
  range: 'Up to the greatest speed of the rating, which its maker states.',
  compute: ({ capacity, speed }) => capacity * speed,
});

/** The torque that a rating by power per speed stands for. */
export const torqueOfCapacity = /* @__PURE__ */ formula({
  name: 'torque of a power per speed',
  symbol: 'T',
  dimension: 'torque',
  inputs: { capacity: 'power per speed' },
  text: 'T = K (1 kW/rpm = 9549.3 N·m; 1 hp/100 rpm = 71.209 N·m)',
  symbols: { capacity: 'K' },
  source: POWER,
  range: 'Definition of power.',
  compute: ({ capacity }) => capacity,
});
