import type { Source } from '../core/source.js';
import { inch } from '../tables/printed-units.js';

/** Absolute limits in use, m. Rigid and flexible couplings alike: a flexible coupling cures no misalignment. */
export const couplingAlignmentGuides = [
  {
    most: inch(0.003),
    source: {
      title: 'two inboard manuals and a trade page',
      clause: 'gap at 90 degree positions',
      confidence: 'published',
    },
  },
  {
    most: inch(0.004),
    source: { title: 'two further pages', clause: 'gap accepted', confidence: 'published' },
  },
] as const satisfies readonly { most: number; source: Source }[];

/** Run-out of a half-coupling's face, measured on its shaft. m. */
export const couplingRunOutGuide = {
  most: inch(0.002),
  source: { title: 'face run-out of a fitted half-coupling', confidence: 'from memory' },
} as const satisfies { most: number; source: Source };
