import { formula } from '../core/formula.js';
import { FOOT, PSI } from '../units/constants.js';
import { handbook } from './sources.js';
import { KNOT } from './water.js';

/** Mean pressure on the blades above which the handbook expects cavitation. */
export const allowableBladeLoading = /* @__PURE__ */ formula({
  name: 'allowable blade loading, handbook',
  symbol: 'p,lim',
  dimension: 'pressure',
  inputs: { speedOfAdvance: 'speed', shaftDepth: 'length' },
  units: { speedOfAdvance: 'kn', shaftDepth: 'ft' },
  unit: 'psi',
  text: 'p,lim = 1.9 VA^0.5 h^0.08 (psi, kn, ft)',
  symbols: { speedOfAdvance: 'VA', shaftDepth: 'h' },
  source: handbook('5-6, allowable blade loading'),
  range: [
    { condition: 'speed of advance above zero', met: ({ speedOfAdvance }) => speedOfAdvance > 0 },
    { condition: 'shaft centre below the surface', met: ({ shaftDepth }) => shaftDepth > 0 },
  ],
  compute: ({ speedOfAdvance, shaftDepth }) =>
    1.9 * Math.sqrt(Math.max(0, speedOfAdvance) / KNOT) * (Math.max(0, shaftDepth) / FOOT) ** 0.08 * PSI,
});

/** Thrust over developed blade area, with the thrust taken from power, efficiency and speed. */
export const bladeLoading = /* @__PURE__ */ formula({
  name: 'blade loading, handbook',
  symbol: 'p',
  dimension: 'pressure',
  inputs: { power: 'power', efficiency: 'ratio', speedOfAdvance: 'speed', developedArea: 'area' },
  text: 'p = PD η0 / (VA AD)',
  symbols: { power: 'PD', efficiency: 'η0', speedOfAdvance: 'VA', developedArea: 'AD' },
  source: handbook('5-7, actual blade loading; the printed 326 SHP e / (VA Ad) is this in US units'),
  range: [
    { condition: 'speed of advance above zero', met: ({ speedOfAdvance }) => speedOfAdvance > 0 },
    { condition: 'efficiency 0 to 1', met: ({ efficiency: e }) => e >= 0 && e <= 1 },
  ],
  compute: ({ power, efficiency, speedOfAdvance, developedArea }) =>
    (power * efficiency) / (speedOfAdvance * developedArea),
});
