import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

/** How far the propeller hub stands behind the aft bearing, counted in shaft diameters. –; a, d m. */
export const overhangInDiameters = /* @__PURE__ */ formula({
  name: 'propeller overhang in diameters',
  symbol: 'a/d',
  dimension: 'ratio',
  inputs: { overhang: 'length', diameter: 'length' },
  text: 'a / d',
  symbols: { overhang: 'a', diameter: 'd' },
  source: { title: 'definition, aft end of the bearing to forward face of the hub', confidence: 'derived' },
  range: 'A definition; the published guides are 1 and 1.5 diameters.',
  compute: ({ overhang, diameter }) => overhang / diameter,
});

/** Longest overhang by a guide. a, d m; guide in diameters. */
export const overhangLimit = /* @__PURE__ */ formula({
  name: 'propeller overhang allowed',
  symbol: 'a_max',
  dimension: 'length',
  inputs: { diameter: 'length', guide: 'ratio' },
  text: 'a_max = g d',
  symbols: { diameter: 'd', guide: 'g' },
  source: {
    title: 'ABYC P-6 and SAE J756, as quoted',
    clause: 'propeller overhang',
    confidence: 'published',
  },
  range: [{ condition: 'the guide is 1 or 1.5 diameters', met: si => si.guide === 1 || si.guide === 1.5 }],
  compute: ({ diameter, guide }) => guide * diameter,
});

/** How far the hub may stand behind the aft bearing, in shaft diameters. The two quotations disagree. */
export const overhangGuides = [
  { diameters: 1, source: { title: 'ABYC P-6 and SAE J756, as quoted', confidence: 'published' } },
  { diameters: 1.5, source: { title: 'ABYC P-6, as quoted elsewhere', confidence: 'published' } },
] as const satisfies readonly { diameters: number; source: Source }[];
