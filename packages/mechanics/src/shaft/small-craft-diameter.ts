import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atLeast, atMost } from '../geometry/rounding-slack.js';
import { boreInside, torsionalSectionModulusOf } from './torsion.js';

/**
 * The published form is D = (321,000 SHP SF / (St rpm))^(1/3) in inches; its constant is 16 · 396,000 / (2 π²), so it
 * is plain torsion at the stress St/SF. The factor holds about 4/3 for the keyway.
 */
const SMALL_CRAFT: Source = {
  author: 'D. Gerr',
  title: 'Boat Mechanical Systems Handbook',
  clause: 'shaft diameter, the formula of ABYC P-6',
  year: 2009,
  confidence: 'published',
};

const factorInUse = {
  condition: 'the safety factor is 2 to 10, as published for pleasure to passenger service',
  met: (si: { readonly safetyFactor: number }) => atLeast(si.safetyFactor, 2) && atMost(si.safetyFactor, 10),
};

/** Least diameter of a solid propeller shaft. d m; P W; ω rad/s; St Pa (torsional yield); SF –. */
export const smallCraftShaftDiameter = /* @__PURE__ */ formula({
  name: 'small-craft shaft diameter',
  symbol: 'd',
  dimension: 'length',
  inputs: { power: 'power', speed: 'rotational speed', torsionalYield: 'pressure', safetyFactor: 'number' },
  text: 'd = (16 SF P / (π St ω))^(1/3)',
  symbols: { power: 'P', speed: 'ω', torsionalYield: 'St', safetyFactor: 'SF' },
  source: SMALL_CRAFT,
  range: [factorInUse],
  compute: ({ power, speed, torsionalYield, safetyFactor }) =>
    Math.cbrt((16 * safetyFactor * power) / (Math.PI * torsionalYield * speed)),
});

/** Power per speed the fitted shaft takes, solid (bore 0) or hollow. K N·m = W/(rad/s); d_o, d_i m; St Pa; SF –. */
export const smallCraftPowerPerSpeed = /* @__PURE__ */ formula({
  name: 'power per speed of the fitted shaft, small-craft formula',
  symbol: 'K',
  dimension: 'power per speed',
  inputs: { outsideDiameter: 'length', bore: 'length', torsionalYield: 'pressure', safetyFactor: 'number' },
  text: 'K = π (d_o⁴ − d_i⁴) St / (16 d_o SF)',
  symbols: { outsideDiameter: 'd_o', bore: 'd_i', torsionalYield: 'St', safetyFactor: 'SF' },
  source: {
    ...SMALL_CRAFT,
    clause: 'shaft diameter formula turned round; bore by section modulus',
    confidence: 'derived',
  },
  range: [factorInUse, boreInside],
  compute: ({ outsideDiameter, bore, torsionalYield, safetyFactor }) =>
    (torsionalSectionModulusOf(outsideDiameter, bore) * torsionalYield) / safetyFactor,
});

/** Safety factor that the fitted shaft really has. SF –; d_o, d_i m; St Pa; P W; ω rad/s. */
export const smallCraftSafetyFactor = /* @__PURE__ */ formula({
  name: 'safety factor of the fitted shaft, small-craft formula',
  symbol: 'SF',
  dimension: 'number',
  inputs: {
    outsideDiameter: 'length',
    bore: 'length',
    torsionalYield: 'pressure',
    power: 'power',
    speed: 'rotational speed',
  },
  text: 'SF = π (d_o⁴ − d_i⁴) St ω / (16 d_o P)',
  symbols: { outsideDiameter: 'd_o', bore: 'd_i', torsionalYield: 'St', power: 'P', speed: 'ω' },
  source: {
    ...SMALL_CRAFT,
    clause: 'shaft diameter formula turned round; bore by section modulus',
    confidence: 'derived',
  },
  range: [boreInside],
  compute: ({ outsideDiameter, bore, torsionalYield, power, speed }) =>
    (torsionalSectionModulusOf(outsideDiameter, bore) * torsionalYield * speed) / power,
});
