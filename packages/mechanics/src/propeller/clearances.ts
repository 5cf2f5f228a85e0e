import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { DEFINITION } from './sources.js';

/** The class table. Which measure each letter means was read from the layout of its figure. */
const CLASS_TABLE: Source = {
  author: "Lloyd's Register",
  title: 'Rules and Regulations for the Classification of Ships',
  clause: 'Part 3 Chapter 6 Table 6.7.2',
  year: 2000,
  confidence: 'published',
};

interface Row {
  readonly what: string;
  readonly symbol: string;
  /** Factors of K D for 3, 4, 5, 6 blades. */
  readonly factors: readonly [number, number, number, number];
  /** Least values as a share of D for 3, 4, 5, 6 blades. */
  readonly least: readonly [number, number, number, number];
}

/** The table names its clearances by letter; what each letter measures was read off the figure beside it. */
const BY_LETTER: Source = {
  ...CLASS_TABLE,
  clause: `${CLASS_TABLE.clause}; its letters as the layout of the figure shows them`,
};

function classClearance(row: Row) {
  return formula({
    name: `recommended clearance, ${row.what}`,
    symbol: row.symbol,
    dimension: 'length',
    inputs: { factor: 'ratio', diameter: 'length', blades: 'number' },
    text: `${row.symbol} = max(m K D, c D); m = ${row.factors.join(', ')} and c = ${row.least.join(', ')} for 3, 4, 5, 6 blades`,
    symbols: { factor: 'K', diameter: 'D' },
    tabulated: ({ blades }) => ({ m: row.factors[columnOf(blades)], c: row.least[columnOf(blades)] }),
    source: BY_LETTER,
    range: [
      { condition: '3 to 6 blades', met: ({ blades: z }) => Number.isInteger(z) && z >= 3 && z <= 6 },
      { condition: 'diameter above zero', met: ({ diameter }) => diameter > 0 },
    ],
    compute: ({ factor, diameter, blades }) => {
      const column = columnOf(blades);
      return Math.max(row.factors[column] * factor, row.least[column]) * diameter;
    },
  });
}

/** Outside 3 to 6 blades the nearest column is shown and the range says that it does not hold. */
function columnOf(blades: number): 0 | 1 | 2 | 3 {
  return Math.min(3, Math.max(0, Math.round(blades) - 3)) as 0 | 1 | 2 | 3;
}

/** Clearances that a class society recommends, by place. */
export const CLASS_CLEARANCE = {
  'single screw tip to hull': classClearance({
    what: 'tip to hull, single screw',
    symbol: 'a',
    factors: [1.2, 1.0, 0.85, 0.75],
    least: [0.1, 0.1, 0.1, 0.1],
  }),
  'single screw blade to sternframe': classClearance({
    what: 'blade to sternframe ahead, single screw',
    symbol: 'b',
    factors: [1.8, 1.5, 1.275, 1.125],
    least: [0.15, 0.15, 0.15, 0.15],
  }),
  'twin screw tip to hull': classClearance({
    what: 'tip to hull, twin screw',
    symbol: 'e',
    factors: [1.2, 1.0, 0.85, 0.75],
    least: [0.2, 0.2, 0.16, 0.16],
  }),
  'twin screw blade to bracket': classClearance({
    what: 'blade to bossing or bracket ahead, twin screw',
    symbol: 'f',
    factors: [1.2, 1.2, 0.85, 0.75],
    least: [0.15, 0.15, 0.15, 0.15],
  }),
} as const;

/** Two clearances of the same table that depend on the diameter alone, as shares of it; single screw. */
export const CLASS_CLEARANCE_BY_DIAMETER = { 'blade to rudder': 0.12, 'tip to sole piece': 0.03 } as const;

export const tipClearanceShare = /* @__PURE__ */ formula({
  name: 'tip clearance as a share of the diameter',
  symbol: 'c/D',
  dimension: 'ratio',
  inputs: { clearance: 'length', diameter: 'length' },
  text: 'c/D',
  symbols: { clearance: 'c', diameter: 'D' },
  source: DEFINITION,
  range: 'Definition.',
  compute: ({ clearance, diameter }) => clearance / diameter,
});

/** What a change of diameter does to the tip clearance: half of it, since the tip is on the radius. */
export const tipClearanceAfterChange = /* @__PURE__ */ formula({
  name: 'tip clearance after a change of diameter',
  symbol: 'c',
  dimension: 'length',
  inputs: { clearance: 'length', diameter: 'length', newDiameter: 'length' },
  text: "c' = c - (D' - D) / 2",
  symbols: { clearance: 'c', diameter: 'D', newDiameter: "D'" },
  source: DEFINITION,
  range: 'Geometry, with the shaft where it was.',
  compute: ({ clearance, diameter, newDiameter }) => clearance - (newDiameter - diameter) / 2,
});

/** Least tip clearances in use, as shares of the diameter. Which one judges is for the spec to say. */
export const TIP_CLEARANCE_CRITERIA: readonly {
  readonly craft: string;
  readonly share: number;
  readonly source: Source;
}[] = [
  {
    craft: 'slow sailing craft, bare rule of thumb',
    share: 0.1,
    source: { title: 'tip clearance of a tenth of the diameter', confidence: 'common practice' },
  },
  {
    craft: 'motor craft',
    share: 0.15,
    source: { title: 'tip clearance of 15 % of the diameter', confidence: 'common practice' },
  },
  {
    craft: 'small craft',
    share: 0.17,
    source: {
      author: 'Gerr',
      title: 'Propeller Handbook',
      clause: 'as quoted in public',
      year: 1989,
      confidence: 'published',
    },
  },
  {
    craft: 'larger vessels, ordinary blades',
    share: 0.2,
    source: { title: "clearances, a marine-equipment maker's encyclopedia", confidence: 'published' },
  },
  {
    craft: 'ferries and passenger vessels',
    share: 0.25,
    source: { title: "clearances, a marine-equipment maker's encyclopedia", confidence: 'published' },
  },
];

/** How far the hub's forward face may stand from the aft bearing, in shaft diameters. */
export const HUB_OVERHANG_LIMIT = {
  shaftDiameters: 1,
  source: { title: 'ABYC P-06 and SAE J756, as quoted in public', confidence: 'published' },
} as const;
