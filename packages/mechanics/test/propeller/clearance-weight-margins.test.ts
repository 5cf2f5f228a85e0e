import {
  CLASS_CLEARANCE,
  DEMAND_EXPONENT,
  given,
  outsideRange,
  powerDemandByLaw,
  propellerMassEstimate,
  speedForPowerByLaw,
  tipClearanceAfterChange,
  tipClearanceShare,
  toleranceOf,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import {
  lightRunningDemand,
  trialPointMarginsInTurn,
  trialPointSeaMarginOnTrial,
} from '../held/demand-law.js';
import { entrainedWaterInertia, wetInertia } from '../held/weight-inertia.js';
import { published } from '../published.js';

const INCH = 0.0254;
const POUND = 0.45359237;

const TABLE = "Lloyd's Register, Rules for Ships, July 2000, Part 3 Chapter 6 Table 6.7.2";
/** The factors of K D and least shares of D as the table prints them, for 3, 4, 5, 6 blades. */
const PRINTED = {
  'single screw tip to hull': { m: [1.2, 1, 0.85, 0.75], least: [0.1, 0.1, 0.1, 0.1] },
  'single screw blade to sternframe': { m: [1.8, 1.5, 1.275, 1.125], least: [0.15, 0.15, 0.15, 0.15] },
  'twin screw tip to hull': { m: [1.2, 1, 0.85, 0.75], least: [0.2, 0.2, 0.16, 0.16] },
  'twin screw blade to bracket': { m: [1.2, 1.2, 0.85, 0.75], least: [0.15, 0.15, 0.15, 0.15] },
} as const;
for (const [place, { m, least }] of Object.entries(PRINTED))
  published(
    CLASS_CLEARANCE[place as keyof typeof PRINTED],
    TABLE,
    [3, 4, 5, 6].flatMap((blades, column) => [
      {
        case: `${blades} blades, K 0.4`,
        inputs: { factor: 0.4, diameter: 1, blades },
        gives: m[column]! * 0.4,
        within: 1e-12,
      },
      {
        case: `${blades} blades, least`,
        inputs: { factor: 0.01, diameter: 2, blades },
        gives: least[column]! * 2,
        within: 1e-12,
      },
    ]),
  );

published(tipClearanceShare, 'small craft: 17 % of 20 in is 3.4 in, as quoted in public', [
  { case: '3.4 of 20 in', inputs: { clearance: 3.4 * INCH, diameter: 20 * INCH }, gives: 0.17, within: 1e-9 },
]);
published(tipClearanceAfterChange, 'recomputed: one inch more diameter takes half an inch of clearance', [
  {
    case: '20 to 21 in',
    inputs: { clearance: 3.4 * INCH, diameter: 20 * INCH, newDiameter: 21 * INCH },
    gives: 2.9,
    within: 1e-9,
    unit: INCH,
  },
]);

published(
  propellerMassEstimate,
  'recomputed apart from this code; coefficients from memory, low confidence',
  [
    {
      case: '24 in, 3 blades',
      inputs: { diameter: 24 * INCH, blades: 3 },
      gives: 39.1,
      within: 0.05,
      unit: POUND,
    },
    {
      case: '24 in, 4 blades',
      inputs: { diameter: 24 * INCH, blades: 4 },
      gives: 52.3,
      within: 0.05,
      unit: POUND,
    },
  ],
);
published(entrainedWaterInertia, 'recomputed by hand; coefficients from memory', [
  {
    case: '3 blades, area 0.6, pitch ratio 1, 1 m',
    inputs: { areaRatio: 0.6, pitchRatio: 1, blades: 3, density: 1000, diameter: 1 },
    gives: 1.932,
    within: 1e-9,
  },
  // (0.00394 · 0.6 − 0.00087) · 1000 and (0.00359 · 0.6 − 0.0008) · 1000.
  {
    case: '4 blades, area 0.6, pitch ratio 1, 1 m',
    inputs: { areaRatio: 0.6, pitchRatio: 1, blades: 4, density: 1000, diameter: 1 },
    gives: 1.494,
    within: 1e-9,
  },
  {
    case: '5 blades, area 0.6, pitch ratio 1, 1 m',
    inputs: { areaRatio: 0.6, pitchRatio: 1, blades: 5, density: 1000, diameter: 1 },
    gives: 1.354,
    within: 1e-9,
  },
  {
    case: '6 blades, area 0.8, pitch ratio 1.2, 0.5 m',
    inputs: { areaRatio: 0.8, pitchRatio: 1.2, blades: 6, density: 1000, diameter: 0.5 },
    gives: 0.07945,
    within: 1e-9,
  },
]);
published(wetInertia, 'recomputed: a sum', [
  { case: 'sum', inputs: { dryInertia: 1, entrainedInertia: 0.27 }, gives: 1.27, within: 1e-12 },
]);

/** Speed ratio, power ratio with exponent 3 and with 2.7. */
const LAW: readonly (readonly [number, number, number])[] = [
  [0.5, 0.125, 0.1539],
  [0.6, 0.216, 0.2518],
  [0.7, 0.343, 0.3817],
  [0.8, 0.512, 0.5474],
  [0.9, 0.729, 0.7524],
  [1.0, 1.0, 1.0],
];
const law = (exponent: number, column: 1 | 2) =>
  LAW.map(row => ({
    case: `${row[0]} of rated speed, exponent ${exponent}`,
    inputs: { referencePower: 1, referenceSpeed: 100, speed: 100 * row[0], exponent },
    gives: row[column],
    within: 5.1e-5,
  }));
published(powerDemandByLaw, 'recomputed apart from this code: propeller law', [
  ...law(DEMAND_EXPONENT['propeller law'].value, 1),
  ...law(DEMAND_EXPONENT['average boat'].value, 2),
]);
published(
  speedForPowerByLaw,
  'recomputed: the same table read backwards',
  LAW.map(row => ({
    case: `${row[1]} of rated power`,
    inputs: { referencePower: 1, referenceSpeed: 100, power: row[1], exponent: 3 },
    gives: 100 * row[0],
    within: 1e-9,
  })),
);
published(
  lightRunningDemand,
  'recomputed apart from this code: factor at rated speed',
  [
    [0.03, 0.9151],
    [0.05, 0.8638],
    [0.07, 0.8163],
  ].map(([margin, gives]) => ({
    case: `${(margin! * 100).toFixed(0)} %`,
    inputs: { referencePower: 1, referenceSpeed: 100, speed: 100, lightRunningMargin: margin! },
    gives: gives!,
    within: 5.1e-5,
  })),
);
const MARGINS = { seaMargin: 0.15, engineMargin: 0.1 };
published(trialPointSeaMarginOnTrial, 'engine-selection manual of a slow-speed engine licensor', [
  { case: '15 and 10 %', inputs: MARGINS, gives: 78.3, within: 0.05, unit: 0.01 },
]);
published(trialPointMarginsInTurn, "load diagram of a related licensor's manual", [
  { case: '15 and 10 %', inputs: MARGINS, gives: 76.5, within: 0.05, unit: 0.01 },
]);

describe('tolerances of ISO 484-2:1981', () => {
  it.each([
    ['II', 0.24],
    ['I', 0.18],
  ] as const)('24 in pitch, class %s: mean pitch within %f in', (quality, inches) => {
    expect(toleranceOf('pitch', quality, 24 * INCH)! / INCH).toBeCloseTo(inches, 9);
  });
  it('keeps the least thickness tolerance of 2.5 mm in class I', () => {
    expect(toleranceOf('thicknessPlus', 'I', 0.02)).toBeCloseTo(0.0025, 12);
    expect(toleranceOf('thicknessPlus', 'I', 0.2)).toBeCloseTo(0.005, 12);
  });
  it('sets no limit on local pitch in class III, and degrees on spacing', () => {
    expect(toleranceOf('localPitch', 'III', 0.6)).toBeUndefined();
    expect(toleranceOf('spacing', 'II', 0)).toBe(2);
  });
});

describe('tables say when they do not reach', () => {
  it('flags class clearances and mass for two blades', () => {
    const diameter = given('D', 'D', 'length', 1);
    const blades = given('Z', 'Z', 'number', 2);
    const factor = given('K', 'K', 'ratio', 0.2);
    expect(
      outsideRange(CLASS_CLEARANCE['twin screw tip to hull']({ factor, diameter, blades })),
    ).toHaveLength(1);
    expect(outsideRange(propellerMassEstimate({ diameter, blades }))).toHaveLength(1);
  });
});
