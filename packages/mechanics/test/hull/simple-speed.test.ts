import {
  admiraltyCoefficient,
  crouchSpeed,
  displacementLengthRatio,
  displacementSpeed,
  displacementSpeedLength,
  given,
  hullSpeed,
  outsideRange,
  speedLengthRatio,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';

const KNOT = 1852 / 3600;
const FT = 0.3048;
const LB = 0.45359237;
const HP = 745.6998715822702;
const MPH = 0.44704;

// A constant in mph turned into knots, since the formula takes knots.
const MPH_200 = 200 * (MPH / KNOT);
published(crouchSpeed, 'a public forum thread: C 200 (mph), 2000 lb', [
  {
    case: '50 hp: 31.6 mph',
    inputs: { power: 50 * HP, displacement: 2000 * LB, constant: MPH_200, waterlineLength: 16 * FT },
    gives: 31.6,
    within: 0.05,
    unit: MPH,
  },
  {
    case: '70 hp: 37.4 mph',
    inputs: { power: 70 * HP, displacement: 2000 * LB, constant: MPH_200, waterlineLength: 16 * FT },
    gives: 37.4,
    within: 0.05,
    unit: MPH,
  },
]);
published(crouchSpeed, 'recomputed apart from this code; constants from memory', [
  {
    case: '300 hp, 12 000 lb, C 150',
    inputs: { power: 300 * HP, displacement: 12000 * LB, constant: 150, waterlineLength: 30 * FT },
    gives: 23.7,
    within: 0.05,
    unit: KNOT,
  },
  {
    case: '700 hp, 20 000 lb, C 190',
    inputs: { power: 700 * HP, displacement: 20000 * LB, constant: 190, waterlineLength: 35 * FT },
    gives: 35.5,
    within: 0.05,
    unit: KNOT,
  },
]);

published(speedLengthRatio, 'recomputed by hand from the definition', [
  {
    case: '9 kn on 36 ft',
    inputs: { vesselSpeed: 9 * KNOT, waterlineLength: 36 * FT },
    gives: 1.5,
    within: 1e-9,
  },
]);
published(hullSpeed, 'a public encyclopedia entry: 500 ft gives 30 kn', [
  { case: '500 ft', inputs: { waterlineLength: 500 * FT }, gives: 30, within: 0.5, unit: KNOT },
]);
published(hullSpeed, 'recomputed apart from this code', [
  { case: '32 ft', inputs: { waterlineLength: 32 * FT }, gives: 7.58, within: 0.005, unit: KNOT },
  { case: '25 ft', inputs: { waterlineLength: 25 * FT }, gives: 6.7, within: 0.005, unit: KNOT },
]);

/** lb, hp, ft, SL, kn, DL, SLmax. */
const BOATS: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [20000, 50, 32, 1.4475, 8.188, 272.5, 1.4441],
  [12000, 27, 26, 1.3975, 7.126, 304.8, 1.3946],
];
const REC = 'recomputed apart from this code; handbook formulas, coefficient from memory';
published(
  displacementSpeedLength,
  REC,
  BOATS.map(([w, p, , sl]) => ({
    case: `${w} lb, ${p} hp`,
    inputs: { displacement: w * LB, power: p * HP },
    gives: sl,
    within: 5.1e-5,
  })),
);
published(
  displacementLengthRatio,
  REC,
  BOATS.map(([w, , l, , , dl]) => ({
    case: `${w} lb, ${l} ft`,
    inputs: { displacement: w * LB, waterlineLength: l * FT },
    gives: dl,
    within: 0.051,
  })),
);
published(
  displacementSpeed,
  // Both boats have a little more power than their hulls can use, so the speed is the cap: SLmax √LWL.
  `${REC}; capped`,
  BOATS.map(([w, p, l, , , , max]) => ({
    case: `${w} lb, ${p} hp, ${l} ft`,
    inputs: { displacement: w * LB, power: p * HP, waterlineLength: l * FT },
    gives: max * Math.sqrt(l),
    within: 5e-4,
    unit: KNOT,
  })),
);
describe('displacement speed', () => {
  const mass = (lb: number) => given('W', 'W', 'mass', lb * LB);
  const length = (ft: number) => given('L', 'L', 'length', ft * FT);
  const hp = (si: number) => given('P', 'P', 'power', si * HP);
  it.each(BOATS)('%f lb with %f hp on %f ft: uncapped %f, %f kn as recomputed', (w, p, l, sl, knots) => {
    const powered = displacementSpeedLength({ displacement: mass(w), power: hp(p) }).si;
    expect(powered).toBeCloseTo(sl, 4);
    expect(powered * Math.sqrt(l)).toBeCloseTo(knots, 3);
  });
  it('says that it does not apply to power beyond the cap, and holds below it', () => {
    const capped = displacementSpeed({
      displacement: mass(20000),
      power: hp(200),
      waterlineLength: length(32),
    });
    expect(outsideRange(capped).join()).toContain('does not apply');
    const inside = displacementSpeed({
      displacement: mass(20000),
      power: hp(30),
      waterlineLength: length(32),
    });
    expect(outsideRange(inside)).toEqual([]);
    expect(inside.si).toBeLessThan(capped.si);
  });
  it('Crouch says when the hull would not plane', () => {
    const slow = crouchSpeed({
      displacement: mass(20000),
      power: hp(100),
      constant: given('C', 'C', 'number', 150),
      waterlineLength: length(32),
    });
    expect(outsideRange(slow).join()).toContain('does not plane');
  });
});

published(admiraltyCoefficient, 'recomputed by hand: 1000 t, 10 kn, 250 kW', [
  {
    case: '100 · 1000 / 250',
    inputs: { displacement: 1e6, vesselSpeed: 10 * KNOT, power: 250000 },
    gives: 400,
    within: 1e-6,
  },
]);
