import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const BURRILL: Source = {
  author: 'Burrill and Emerson',
  title: 'Propeller cavitation, as in Carlton, Marine Propellers and Propulsion, chapter 9',
  year: 1963,
  confidence: 'published',
};

/** The drawn limit lines as logarithmic fits of one university spreadsheet; the charts themselves were not at hand. */
const LINES: Source = {
  author: 'Burrill and Emerson',
  title: 'back cavitation limits, logarithmic fits of one copy',
  clause: 'the 5 % line lies within 10 % of the merchant-ship power law for cavitation numbers 0.2 to 1.5',
  year: 1963,
  confidence: 'from memory',
};

/** Resultant speed of the water at 0.7 of the radius. */
export const resultantSpeed = /* @__PURE__ */ formula({
  name: 'resultant speed at 0.7 of the radius',
  symbol: 'V0.7R',
  dimension: 'speed',
  inputs: { speedOfAdvance: 'speed', shaftSpeed: 'rotational speed', diameter: 'length' },
  text: 'V0.7R = √(VA² + (0.7 ω D / 2)²)',
  symbols: { speedOfAdvance: 'VA', shaftSpeed: 'ω', diameter: 'D' },
  source: BURRILL,
  range: 'No limit: it adds two velocities at right angles.',
  compute: ({ speedOfAdvance, shaftSpeed, diameter }) =>
    Math.hypot(speedOfAdvance, 0.35 * shaftSpeed * diameter),
});

export const cavitationNumber = /* @__PURE__ */ formula({
  name: 'cavitation number at 0.7 of the radius',
  symbol: 'σ0.7R',
  dimension: 'ratio',
  inputs: { pressureAboveVapour: 'pressure', density: 'density', resultantSpeed: 'speed' },
  text: 'σ0.7R = (p0 - pv) / (½ ρ V0.7R²)',
  symbols: { pressureAboveVapour: 'p0 - pv', density: 'ρ', resultantSpeed: 'V0.7R' },
  source: BURRILL,
  range: [{ condition: 'resultant speed at the blade above zero', met: ({ resultantSpeed: v }) => v > 0 }],
  compute: ({ pressureAboveVapour, density, resultantSpeed }) =>
    pressureAboveVapour / (0.5 * density * resultantSpeed ** 2),
});

const LIMITS = [
  {
    condition: 'cavitation number 0.15 to 1.5',
    met: ({ cavitationNumber: s }: { readonly cavitationNumber: number }) => s >= 0.15 && s <= 1.5,
  },
] as const;

function burrillLine(percent: string, a: number, b: number) {
  return formula({
    name: `thrust loading limit by Burrill, ${percent} back cavitation`,
    symbol: 'τc,lim',
    dimension: 'ratio',
    inputs: { cavitationNumber: 'ratio' },
    text: `τc,lim = ${a} ln σ0.7R + ${b}`,
    symbols: { cavitationNumber: 'σ0.7R' },
    source: LINES,
    range: LIMITS,
    compute: ({ cavitationNumber: s }) => Math.max(0, a * Math.log(s) + b),
  });
}

/** How much back cavitation is accepted: 2.5 % is careful, 5 % usual for merchant ships, 10 % for fast craft. */
export const BURRILL_LIMIT = {
  '2.5 %': burrillLine('2.5 %', 0.09798, 0.23426),
  '5 %': burrillLine('5 %', 0.11104, 0.27104),
  '10 %': burrillLine('10 %', 0.14093, 0.3458),
} as const;

/** The 10 % line for flat-face sections, as small-craft practice uses it. */
export const flatFaceThrustLoadingLimit = /* @__PURE__ */ formula({
  name: 'thrust loading limit, flat-face sections, 10 % back cavitation',
  symbol: 'τc,lim',
  dimension: 'ratio',
  inputs: { cavitationNumber: 'ratio' },
  text: 'τc,lim = 0.494 σ0.7R^0.88',
  symbols: { cavitationNumber: 'σ0.7R' },
  source: {
    author: 'Blount and Fox',
    title: 'design considerations for propellers in a cavitating environment',
    year: 1978,
    confidence: 'from memory',
  },
  range: [{ condition: 'cavitation number up to 0.6', met: ({ cavitationNumber: s }) => s > 0 && s <= 0.6 }],
  compute: ({ cavitationNumber: s }) => 0.494 * Math.max(0, s) ** 0.88,
});

/** Least expanded area ratio for a thrust at a chosen limit of thrust loading. */
export const burrillAreaRatio = /* @__PURE__ */ formula({
  name: 'least expanded area ratio by Burrill',
  symbol: 'AE/A0 min',
  dimension: 'ratio',
  inputs: {
    thrust: 'force',
    density: 'density',
    resultantSpeed: 'speed',
    loadingLimit: 'ratio',
    projectedFactor: 'ratio',
    diameter: 'length',
  },
  text: 'AE/A0 = T / (½ ρ V0.7R² τc,lim (AP/AD) π D² / 4)',
  symbols: {
    thrust: 'T',
    density: 'ρ',
    resultantSpeed: 'V0.7R',
    loadingLimit: 'τc,lim',
    projectedFactor: 'AP/AD',
    diameter: 'D',
  },
  source: { ...BURRILL, title: `${BURRILL.title}, solved for the area`, confidence: 'derived' },
  range: [{ condition: 'thrust loading limit above zero', met: ({ loadingLimit }) => loadingLimit > 0 }],
  compute: ({ thrust, density, resultantSpeed, loadingLimit, projectedFactor, diameter }) =>
    thrust /
    (0.5 * density * resultantSpeed ** 2 * loadingLimit * projectedFactor * ((Math.PI * diameter ** 2) / 4)),
});
