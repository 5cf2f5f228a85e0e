import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const inputs = { tensileYield: 'pressure' } as const;
const anyYield = 'A fixed share of tensile yield, for the alloys named.';

const _SMALL_CRAFT: Source = {
  title: 'ABYC P-6',
  clause: 'torsional yield',
  year: 2002,
  confidence: 'published',
};

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
