import {
  apparentSlip,
  BLADE_NUMBER_FACTORS,
  bladeArea,
  bollardByPowerAndDiameter,
  bollardUpperBound,
  expectedSlip,
  HANDBOOK_PITCH_RATIO,
  handbookBollardThrust,
  handbookDiameter,
  pitchFromSlip,
  realSlip,
  speedFromSlip,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { thrustFromEfficiency } from '../held/bollard.js';
import { handbookLeastDiameter } from '../held/handbook-sizing.js';
import { published } from '../published.js';

const KNOT = 1852 / 3600;
const MPH = 0.44704;
const RPM = Math.PI / 30;
const INCH = 0.0254;
const HP = 745.6998715822702;
const LBF = 4.4482216152605;
const MEMORY = 'recomputed apart from this code; handbook formula from memory';

// The page works with 76.3 mph where the sum gives 76.37, so its last digit is good to one unit.
it('the 10.9 % of the page follow from its own 76.3 mph; with all digits they are 11.0 %', () => {
  expect((100 * (1 - 68 / 76.3)).toFixed(1)).toBe('10.9');
  expect((100 * (1 - 68 / 76.37)).toFixed(1)).toBe('11.0');
});
published(apparentSlip, 'slip example of a public page: 25 in, 6000 rpm through 1.86, 68 mph', [
  {
    case: 'with all digits',
    inputs: { vesselSpeed: 68 * MPH, pitch: 25 * INCH, shaftSpeed: (6000 / 1.86) * RPM },
    gives: 1 - 68 / 76.37,
    within: 5e-5,
  },
  {
    case: '10.9 %',
    inputs: { vesselSpeed: 68 * MPH, pitch: 25 * INCH, shaftSpeed: (6000 / 1.86) * RPM },
    gives: 10.9,
    within: 0.1,
    unit: 0.01,
  },
]);
published(speedFromSlip, 'the same page: the speed without slip, 76.3 mph as printed with its own constant', [
  {
    case: 'no slip',
    inputs: { pitch: 25 * INCH, shaftSpeed: (6000 / 1.86) * RPM, slip: 0 },
    gives: 76.3,
    within: 0.1,
    unit: MPH,
  },
  {
    case: 'no slip, recomputed',
    inputs: { pitch: 25 * INCH, shaftSpeed: (6000 / 1.86) * RPM, slip: 0 },
    gives: 76.4,
    within: 0.05,
    unit: MPH,
  },
]);
published(speedFromSlip, 'speed at clutch-in, recomputed: 650 rpm through 2.0, pitch 0.76 m, slip 30 %', [
  {
    case: '2.88 m/s',
    inputs: { pitch: 0.76, shaftSpeed: (650 / 2) * RPM, slip: 0.3 },
    gives: 2.88,
    within: 0.005,
  },
  {
    case: '5.6 kn',
    inputs: { pitch: 0.76, shaftSpeed: (650 / 2) * RPM, slip: 0.3 },
    gives: 5.6,
    within: 0.05,
    unit: KNOT,
  },
]);
published(realSlip, 'recomputed by hand from the definition', [
  {
    case: '8 m/s, 1 m at 10 rev/s',
    inputs: { speedOfAdvance: 8, pitch: 1, shaftSpeed: 600 * RPM },
    gives: 0.2,
    within: 1e-12,
  },
]);
published(pitchFromSlip, MEMORY, [
  {
    case: '10 kn, 1000 rpm, s 0.377',
    inputs: { vesselSpeed: 10 * KNOT, shaftSpeed: 1000 * RPM, slip: 1.4 / 10 ** 0.57 },
    gives: 19.5,
    within: 0.005,
    unit: INCH,
  },
  {
    case: '22 kn, 1800 rpm, s 0.2404',
    inputs: { vesselSpeed: 22 * KNOT, shaftSpeed: 1800 * RPM, slip: 0.2404 },
    gives: 19.55,
    within: 0.005,
    unit: INCH,
  },
]);
published(
  expectedSlip,
  MEMORY,
  [
    [7, 0.462],
    [10, 0.377],
    [20, 0.254],
    [30, 0.201],
  ].map(([knots, gives]) => ({
    case: `${knots} kn`,
    inputs: { vesselSpeed: knots! * KNOT },
    gives: gives!,
    within: 5.1e-4,
  })),
);

published(
  handbookDiameter,
  MEMORY,
  [
    [50, 1000, 21.93],
    [200, 1200, 25.94],
    [350, 1700, 23.54],
  ].map(([power, speed, gives]) => ({
    case: `${power} hp at ${speed} rpm`,
    inputs: { power: power! * HP, shaftSpeed: speed! * RPM },
    gives: gives!,
    within: 0.0051,
    unit: INCH,
  })),
);
const LEAST = { waterlineBeam: 10 * 0.3048, hullDraught: 2.5 * 0.3048 };
published(handbookLeastDiameter, MEMORY, [
  { case: 'single', inputs: { ...LEAST, screws: 1 }, gives: 20.35, within: 0.0051, unit: INCH },
  { case: 'twin, 0.8 of it', inputs: { ...LEAST, screws: 2 }, gives: 16.28, within: 0.0051, unit: INCH },
  { case: 'triple, 0.65 of it', inputs: { ...LEAST, screws: 3 }, gives: 13.2275, within: 0.0051, unit: INCH },
]);
for (const [which, gives] of [
  ['average', 0.837],
  ['greatest', 0.991],
  ['least', 0.662],
] as const)
  published(HANDBOOK_PITCH_RATIO[which], MEMORY, [
    { case: '10 kn', inputs: { vesselSpeed: 10 * KNOT }, gives, within: 5.1e-4 },
  ]);
published(bladeArea, 'recomputed apart from this code: 28 in, DAR 0.55', [
  {
    case: '338.7 in²',
    inputs: { areaRatio: 0.55, diameter: 28 * INCH },
    gives: 338.7,
    within: 0.05,
    unit: INCH ** 2,
  },
]);
published(
  thrustFromEfficiency,
  'recomputed apart from this code, with the handbook constant 326 (exactly 325.87)',
  [
    {
      case: '100 hp, e 0.55, 9 kn',
      inputs: { power: 100 * HP, efficiency: 0.55, speedOfAdvance: 9 * KNOT },
      gives: (325.87 * 100 * 0.55) / 9,
      within: 0.05,
      unit: LBF,
    },
    {
      case: '1992 lb with 326, which is 0.04 % high',
      inputs: { power: 100 * HP, efficiency: 0.55, speedOfAdvance: 9 * KNOT },
      gives: (1992 * 325.87) / 326,
      within: 0.5,
      unit: LBF,
    },
  ],
);
published(
  handbookBollardThrust,
  'recomputed apart from this code; coefficient from memory and one public answer',
  [
    [100, 28, 2421],
    [350, 30, 5869],
  ].map(([power, diameter, gives]) => ({
    case: `${power} hp, ${diameter} in`,
    inputs: { power: power! * HP, diameter: diameter! * INCH },
    gives: gives!,
    within: 0.5,
    unit: LBF,
  })),
);
published(
  bollardByPowerAndDiameter,
  "recomputed from a marine-equipment maker's encyclopedia: T = (D P)^(2/3)",
  [
    {
      case: '250 kW, 1.0 m, before losses',
      inputs: { power: 250000, diameter: 1 },
      gives: 39.7,
      within: 0.05,
      unit: 1000,
    },
  ],
);
published(bollardUpperBound, 'recomputed apart from this code: momentum theory', [
  {
    case: '250 kW, 1.0 m',
    inputs: { density: 1025, power: 250000, diameter: 1 },
    gives: 46.5,
    within: 0.05,
    unit: 1000,
  },
]);

describe('blade number factors, handbook, from memory', () => {
  it('turn a three-blade propeller into two and four blades', () => {
    expect(BLADE_NUMBER_FACTORS[2]).toEqual({ diameter: 1.05, pitch: 1.01 });
    expect(BLADE_NUMBER_FACTORS[4]).toEqual({ diameter: 0.94, pitch: 0.98 });
  });
});
