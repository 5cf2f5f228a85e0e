import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const inputs = { tensileYield: 'pressure' } as const;
const anyYield = 'A fixed share of the tensile yield: it holds wherever the named alloys do.';

const SMALL_CRAFT: Source = {
  title: 'ABYC P-6',
  clause: 'torsional yield',
  year: 2002,
  confidence: 'published',
};

/** Torsional yield of steel and nickel alloys by the small-craft standard, from 0.2 % tensile yield. Pa. */
export const torsionalYieldTwoThirds = /* @__PURE__ */ formula({
  name: 'torsional yield, two thirds of tensile yield',
  symbol: 'S_t',
  dimension: 'pressure',
  inputs,
  text: 'S_t = 2/3 S_y',
  symbols: { tensileYield: 'S_y' },
  source: SMALL_CRAFT,
  range: anyYield,
  compute: ({ tensileYield }) => (2 / 3) * tensileYield,
});

/** Torsional yield by distortion energy (von Mises), lower than the small-craft rule. Pa. */
export const torsionalYieldDistortionEnergy = /* @__PURE__ */ formula({
  name: 'torsional yield by distortion energy',
  symbol: 'S_t',
  dimension: 'pressure',
  inputs,
  text: 'S_t = S_y / √3',
  symbols: { tensileYield: 'S_y' },
  source: { title: 'distortion-energy criterion of yield (von Mises)', confidence: 'derived' },
  range: anyYield,
  compute: ({ tensileYield }) => tensileYield / Math.sqrt(3),
});

/** Torsional yield of copper alloys. Pa. */
export const torsionalYieldCopperAlloy = /* @__PURE__ */ formula({
  name: 'torsional yield of copper alloys, half of tensile yield',
  symbol: 'S_t',
  dimension: 'pressure',
  inputs,
  text: 'S_t = 1/2 S_y',
  symbols: { tensileYield: 'S_y' },
  source: { ...SMALL_CRAFT, confidence: 'from memory' },
  range: anyYield,
  compute: ({ tensileYield }) => tensileYield / 2,
});
