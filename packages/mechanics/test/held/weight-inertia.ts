import type { Source } from '../../src/core/source.js';
import { formula } from './held-formula.js';

const ENTRAINED: Source = {
  author: 'MacPherson, Puleo and Packard',
  title: 'Estimation of entrained water added mass properties for vibration analysis',
  clause: 'parametric form; the coefficients recalled, not read',
  year: 2007,
  confidence: 'from memory',
};

/** Coefficients of the parametric form for 3 to 6 blades. */
const ENTRAINED_BY_BLADES: Readonly<Record<number, readonly [number, number]>> = {
  3: [0.00477, 0.00093],
  4: [0.00394, 0.00087],
  5: [0.00359, 0.0008],
  6: [0.00344, 0.00076],
};

/** Moment of inertia of the water that swings with the propeller. */
export const entrainedWaterInertia = /* @__PURE__ */ formula({
  name: 'entrained water inertia',
  symbol: 'IE',
  dimension: 'moment of inertia',
  inputs: {
    areaRatio: 'ratio',
    pitchRatio: 'ratio',
    blades: 'number',
    density: 'density',
    diameter: 'length',
  },
  text: 'IE = (C1 (AE/A0) (P/D) - C2) ρ D⁵; C1, C2 from the table for Z blades',
  symbols: { areaRatio: 'AE/A0', pitchRatio: 'P/D', blades: 'Z', density: 'ρ', diameter: 'D' },
  tabulated: ({ blades }) => {
    const [C1, C2] = entrainedFactors(blades);
    return { C1, C2 };
  },
  source: ENTRAINED,
  range: [
    { condition: '3 to 6 blades', met: ({ blades: z }) => Number.isInteger(z) && z >= 3 && z <= 6 },
    {
      condition: 'area and pitch large enough for the form: result above zero',
      met: si => entrained(si) > 0,
    },
  ],
  compute: si => Math.max(0, entrained(si)),
});

/** Propeller and its water together, when the dry inertia is known. */
export const wetInertia = /* @__PURE__ */ formula({
  name: 'propeller inertia in water',
  symbol: 'Iwet',
  dimension: 'moment of inertia',
  inputs: { dryInertia: 'moment of inertia', entrainedInertia: 'moment of inertia' },
  text: 'Iwet = Idry + IE',
  symbols: { dryInertia: 'Idry', entrainedInertia: 'IE' },
  source: { title: 'sum of the two', confidence: 'derived' },
  range: 'Holds everywhere: it is a sum of two inertias.',
  compute: ({ dryInertia, entrainedInertia }) => dryInertia + entrainedInertia,
});

function entrained(si: {
  readonly areaRatio: number;
  readonly pitchRatio: number;
  readonly blades: number;
  readonly density: number;
  readonly diameter: number;
}): number {
  const [c1, c2] = entrainedFactors(si.blades);
  return (c1 * si.areaRatio * si.pitchRatio - c2) * si.density * si.diameter ** 5;
}

/** Those of the nearest number of blades that the table has; the range says whether it holds. */
function entrainedFactors(blades: number): readonly [number, number] {
  return ENTRAINED_BY_BLADES[Math.min(6, Math.max(3, Math.round(blades)))]!;
}
