import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { inch } from '../tables/printedUnits.js';

/** Gap between coupling faces that is still aligned, feeler at the rim. g, D m. */
export const couplingFaceTolerance = /* @__PURE__ */ formula({
  name: 'coupling face alignment tolerance',
  symbol: 'g',
  dimension: 'length',
  inputs: { couplingDiameter: 'length' },
  text: 'g = D / 1000',
  symbols: { couplingDiameter: 'D' },
  source: {
    title: "engine operator's manual",
    clause: 'coupling alignment: 0.001 in per inch of coupling diameter',
    confidence: 'published',
  },
  range: 'Afloat, rested a day or two, tanks full, shaft centred in its tube.',
  compute: ({ couplingDiameter }) => couplingDiameter / 1000,
});

/** Angle between the faces that a gap at the rim means. rad; g, D m. */
export const couplingFaceAngle = /* @__PURE__ */ formula({
  name: 'angle between coupling faces',
  symbol: 'ε',
  dimension: 'angle',
  inputs: { gapDifference: 'length', couplingDiameter: 'length' },
  text: 'ε = arctan(Δg / D)',
  symbols: { gapDifference: 'Δg', couplingDiameter: 'D' },
  source: { title: 'plane geometry', confidence: 'derived' },
  range: 'Largest minus smallest gap, read across one diameter.',
  compute: ({ gapDifference, couplingDiameter }) => Math.atan(gapDifference / couplingDiameter),
});

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
