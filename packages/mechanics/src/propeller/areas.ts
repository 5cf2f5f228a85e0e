import { formula } from '../core/formula.js';

const KCA_AREA = {
  author: 'Radojcic',
  title: 'regression of the Gawn-Burrill KCA series',
  clause: 'area relation; two copies agree',
  year: 1988,
  confidence: 'published',
} as const;

/** AE/A0 of a flat-face propeller whose developed area ratio is known. */
export const expandedAreaRatio = /* @__PURE__ */ formula({
  name: 'expanded area ratio from developed',
  symbol: 'AE/A0',
  dimension: 'ratio',
  inputs: { developedAreaRatio: 'ratio', blades: 'number' },
  text: 'AE/A0 = 0.34 (AD/A0) (2.75 + (AD/A0) / Z)',
  symbols: { developedAreaRatio: 'AD/A0', blades: 'Z' },
  source: KCA_AREA,
  range: [
    {
      condition: 'developed area ratio 0.5 to 1.1',
      met: ({ developedAreaRatio: a }) => a >= 0.5 && a <= 1.1,
    },
    { condition: '3 blades', met: ({ blades }) => blades === 3 },
  ],
  compute: ({ developedAreaRatio: a, blades: z }) => 0.34 * a * (2.75 + a / z),
});

/** The same relation read the other way. */
export const developedAreaRatio = /* @__PURE__ */ formula({
  name: 'developed area ratio from expanded',
  symbol: 'AD/A0',
  dimension: 'ratio',
  inputs: { expandedAreaRatio: 'ratio', blades: 'number' },
  text: 'AD/A0 = (√(3200 Z (AE/A0) / 17 + 121 Z²) - 11 Z) / 8',
  symbols: { expandedAreaRatio: 'AE/A0', blades: 'Z' },
  source: KCA_AREA,
  range: [
    {
      condition: 'expanded area ratio 0.49 to 1.17',
      met: ({ expandedAreaRatio: a }) => a >= 0.49 && a <= 1.17,
    },
    { condition: '3 blades', met: ({ blades }) => blades === 3 },
  ],
  compute: ({ expandedAreaRatio: a, blades: z }) => developedFromExpanded(a, z),
});

/** The inverse of the area relation, on bare numbers, for the inner loops. */
function developedFromExpanded(expanded: number, blades: number): number {
  return (Math.sqrt((3200 * blades * expanded) / 17 + 121 * blades ** 2) - 11 * blades) / 8;
}

/** Projected over developed area, as blade loading criteria use it. */
export const projectedAreaFactor = /* @__PURE__ */ formula({
  name: 'projected over developed blade area',
  symbol: 'AP/AD',
  dimension: 'ratio',
  inputs: { pitchRatio: 'ratio' },
  text: 'AP/AD = 1.067 - 0.229 P/D',
  symbols: { pitchRatio: 'P/D' },
  source: {
    title: 'UFC 4-159-03, equation 22 (after Taylor); also in Burrill and Emerson',
    year: 1963,
    confidence: 'published',
  },
  range: [{ condition: 'pitch ratio 0.5 to 2.0', met: ({ pitchRatio: p }) => p >= 0.5 && p <= 2 }],
  compute: ({ pitchRatio: p }) => 1.067 - 0.229 * p,
});

/** Blade area from its ratio to the disc of the tip circle. */
export const bladeArea = /* @__PURE__ */ formula({
  name: 'blade area from disc area ratio',
  symbol: 'A',
  dimension: 'area',
  inputs: { areaRatio: 'ratio', diameter: 'length' },
  text: 'A = (A/A0) π D² / 4',
  symbols: { areaRatio: 'A/A0', diameter: 'D' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: 'Definition.',
  compute: ({ areaRatio, diameter }) => (areaRatio * Math.PI * diameter ** 2) / 4,
});
