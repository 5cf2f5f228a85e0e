import {
  effectivePower,
  given,
  type HullNumbers,
  handbookWakeSingle,
  handbookWakeTwin,
  holtropHull,
  holtropRelativeRotativeSingle,
  holtropRelativeRotativeTwin,
  holtropThrustDeductionSingle1982,
  holtropThrustDeductionSingle1984,
  holtropThrustDeductionTwin,
  holtropWakeSingle1982,
  holtropWakeSingle1984,
  holtropWakeTwin,
  outsideRange,
  planingAppendageEfficiency,
  planingTwinWake,
  taylorWakeSingle,
  taylorWakeTwin,
  viscousCoefficient,
  volumeFroudeNumber,
  wakeTerms,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { EXAMPLE_1982, EXAMPLE_1984 } from './holtrop-examples.js';

const KNOT = 1852 / 3600;
const MEMORY_1982 = 'Holtrop and Mennen 1982, worked example, from memory';
const AT_25 = { vesselSpeed: 25 * KNOT, diameter: 8, ...EXAMPLE_1982 };

published(holtropWakeSingle1982, MEMORY_1982, [{ case: 'w', inputs: AT_25, gives: 0.2584, within: 5e-5 }]);
published(holtropThrustDeductionSingle1982, MEMORY_1982, [
  { case: 't', inputs: AT_25, gives: 0.1747, within: 5e-5 },
]);
published(holtropRelativeRotativeSingle, MEMORY_1982, [
  {
    case: 'ηR with AE/A0 0.7393',
    inputs: { areaRatio: 0.7393, prismaticCoefficient: 0.5833, buoyancyForward: -0.75 },
    gives: 0.9931,
    within: 5e-5,
  },
]);
describe(`${MEMORY_1982}: intermediates`, () => {
  const { c9, c11, CP1 } = wakeTerms(AT_25, '1982');
  it.each([
    ['CV', viscousCoefficient(EXAMPLE_1982, 25 * KNOT, '1982'), 0.001963, 5e-7],
    ['c9', c9, 14.5, 5e-3],
    ['c11', c11, 1.25, 1e-12],
    ['CP1', CP1, 0.5477, 5e-5],
  ] as const)('%s', (_, ours, recalled, within) => {
    expect(Math.abs(ours - recalled), `computed ${ours}`).toBeLessThanOrEqual(within);
  });
});

/** A full coaster: prismatic coefficient over 0.7, beam over five draughts, so that the other branches are taken. */
const COASTER: HullNumbers = {
  ...EXAMPLE_1982,
  waterlineLength: 100,
  beam: 20,
  draughtForward: 3.5,
  draughtAft: 3.9,
  displacedVolume: 5250,
  buoyancyForward: 0.5,
  midshipCoefficient: 0.95,
  waterplaneCoefficient: 0.85,
  bulbArea: 0.01,
  bulbHeight: 1,
  transomArea: 0,
  appendageArea: 20,
  sternShape: 0,
};
const APART = 'recomputed apart from this code; no published value was found';
const COASTER_AT_12 = { vesselSpeed: 12 * KNOT, diameter: 1.8, ...COASTER };
published(holtropWakeSingle1984, APART, [
  { case: 'the 1982 hull, U-shaped stern', inputs: AT_25, gives: 0.275187, within: 5e-7 },
  { case: 'the 1982 hull, normal stern', inputs: { ...AT_25, sternShape: 0 }, gives: 0.23866, within: 5e-7 },
  { case: 'full coaster at 12 kn', inputs: COASTER_AT_12, gives: 0.442642, within: 5e-7 },
]);
published(holtropThrustDeductionSingle1984, APART, [
  { case: 'the 1982 hull, U-shaped stern', inputs: AT_25, gives: 0.198376, within: 5e-7 },
  { case: 'full coaster at 12 kn', inputs: COASTER_AT_12, gives: 0.24223, within: 5e-7 },
]);

const TWIN = { blockCoefficient: 0.5, diameter: 1, beam: 5, draught: 1.5 };
published(holtropWakeTwin, 'recomputed apart from this code; Holtrop 1984 example, from memory', [
  {
    case: 'CB 0.50, CV 0.0035',
    inputs: { ...TWIN, viscousCoefficient: 0.0035 },
    gives: 0.0883,
    within: 5e-5,
  },
  {
    case: '1984 example, 31 kn',
    inputs: {
      blockCoefficient: 0.46875,
      viscousCoefficient: viscousCoefficient(EXAMPLE_1984, 31 * KNOT, '1984'),
      diameter: 3.231,
      beam: 12,
      draught: 3.2,
    },
    gives: 0.039,
    within: 5e-4,
  },
]);
published(holtropThrustDeductionTwin, 'recomputed apart from this code; Holtrop 1984 example, from memory', [
  { case: 'CB 0.50', inputs: TWIN, gives: 0.0937, within: 5e-5 },
  {
    case: '1984 example',
    inputs: { blockCoefficient: 0.46875, diameter: 3.231, beam: 12, draught: 3.2 },
    gives: 0.054,
    within: 5e-4,
  },
]);
published(holtropRelativeRotativeTwin, 'recomputed apart from this code; Holtrop 1984 example, from memory', [
  {
    case: 'CP 0.62, lcb -2, P/D 1.0',
    inputs: { pitchRatio: 1, prismaticCoefficient: 0.62, buoyancyForward: -2 },
    gives: 0.9843,
    within: 5.1e-5,
  },
  {
    case: '1984 example, P/D 1.136',
    inputs: {
      pitchRatio: 1.136,
      prismaticCoefficient: holtropHull(EXAMPLE_1984, '1984').CP,
      buoyancyForward: -4.5,
    },
    gives: 0.98,
    within: 5e-4,
  },
]);
const TAYLOR = 'recomputed: Taylor 1943, as two public notes give it';
published(taylorWakeSingle, TAYLOR, [
  { case: 'CB 0.50', inputs: { blockCoefficient: 0.5 }, gives: 0.2, within: 5e-4 },
  { case: 'CB 0.60', inputs: { blockCoefficient: 0.6 }, gives: 0.25, within: 5e-4 },
]);
published(taylorWakeTwin, TAYLOR, [
  { case: 'CB 0.50', inputs: { blockCoefficient: 0.5 }, gives: 0.075, within: 5e-4 },
  { case: 'CB 0.60', inputs: { blockCoefficient: 0.6 }, gives: 0.13, within: 5e-4 },
]);
const HANDBOOK = 'recomputed; handbook 6-4, from memory';
published(handbookWakeSingle, HANDBOOK, [
  { case: 'CB 0.45: 1 - w 0.84', inputs: { blockCoefficient: 0.45 }, gives: 0.16, within: 5e-4 },
  { case: 'CB 0.50, where Taylor has 0.20', inputs: { blockCoefficient: 0.5 }, gives: 0.19, within: 5e-4 },
]);
published(handbookWakeTwin, HANDBOOK, [
  { case: 'CB 0.45: 1 - w 0.88', inputs: { blockCoefficient: 0.45 }, gives: 0.12, within: 5e-4 },
  { case: 'CB 0.50, where Taylor has 0.075', inputs: { blockCoefficient: 0.5 }, gives: 0.14, within: 5e-4 },
]);

const BLOUNT_FOX = 'Blount and Fox 1976, table from memory, low confidence';
/** Volume Froude number, 1 - w, appendage efficiency. */
const PLANING: readonly (readonly [number, number, number])[] = [
  [0.5, 1.05, 0.951],
  [1.0, 1.06, 0.948],
  [1.5, 1.04, 0.942],
  [2.0, 0.99, 0.935],
  [2.5, 0.97, 0.925],
  [3.0, 0.975, 0.913],
  [3.5, 0.98, 0.9],
  [4.0, 0.975, 0.885],
];
published(
  planingTwinWake,
  BLOUNT_FOX,
  PLANING.map(([f, factor]) => ({
    case: `Fn∇ ${f}`,
    inputs: { volumeFroudeNumber: f },
    gives: 1 - factor,
    within: 1e-12,
  })),
);
published(
  planingAppendageEfficiency,
  BLOUNT_FOX,
  PLANING.map(([f, , efficiency]) => ({
    case: `Fn∇ ${f}`,
    inputs: { volumeFroudeNumber: f },
    gives: efficiency,
    within: 5.1e-4,
  })),
);
published(volumeFroudeNumber, 'recomputed by hand from the definition', [
  {
    case: '8 m³: √(g · 2 m)',
    inputs: { vesselSpeed: Math.sqrt(9.80665 * 2), displacedVolume: 8 },
    gives: 1,
    within: 1e-12,
  },
]);

const _HAND = 'recomputed by hand from the definition';
const _TILT = { shaftAngle: (8 * Math.PI) / 180, trim: (4 * Math.PI) / 180 };
published(effectivePower, 'Holtrop and Mennen 1982, worked example', [
  {
    case: '1793.26 kN at 25 kn',
    inputs: { resistance: 1793260, vesselSpeed: 25 * KNOT },
    gives: 23063,
    within: 0.5,
    unit: 1000,
  },
]);

describe('rules of thumb outside their range', () => {
  it('flag a block coefficient they were not made for', () => {
    const blockCoefficient = given('CB', 'CB', 'ratio', 0.25);
    for (const rule of [taylorWakeSingle, taylorWakeTwin, handbookWakeSingle, handbookWakeTwin])
      expect(outsideRange(rule({ blockCoefficient }))).toHaveLength(1);
  });
  it('flag a volume Froude number beyond the planing table and hold its last row', () => {
    const beyond = planingTwinWake({ volumeFroudeNumber: given('Fn∇', 'Fn∇', 'ratio', 5) });
    expect(outsideRange(beyond)).toHaveLength(1);
    expect(beyond.si).toBeCloseTo(0.025, 12);
  });
});
