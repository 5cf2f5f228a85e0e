import {
  classShaftDiameter,
  continuousTorsionalLimit,
  type Formula,
  given,
  motorTorque,
  overallEfficiency,
  type Value,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { compareBoreAndShaft } from '../../src/coupling/bore-fit.js';
import { hollowShare } from '../../src/shaft/torsion.js';

const at = (formula: unknown, si: Readonly<Record<string, number>>) =>
  ((formula as Formula).spec.compute as (si: object) => number)(si);

/* Formulas that are put together of pieces: just below each joint, at it and just above, by the text that is printed. */
describe('a formula of several pieces changes from one to the other where its text says', () => {
  const shaft = { power: 100e3, speed: 100, tensileStrength: 600e6, plantFactor: 100, featureFactor: 1 };
  const solid = at(classShaftDiameter, { ...shaft, boreRatio: 0 });
  it.each([
    // d = F k (P/n · 560/(R_m + 160) / (1 − (d_i/d_o)⁴))^(1/3); bores up to 0.4 d ignored.
    [0.39, 1],
    [0.4, 1],
    [0.401, 1 / (1 - 0.401 ** 4)],
    [0.407, 1 / (1 - 0.407 ** 4)],
    [0.6, 1 / (1 - 0.6 ** 4)],
  ])('the class diameter with a bore of %d of it', (boreRatio, share) => {
    expect((at(classShaftDiameter, { ...shaft, boreRatio }) / solid) ** 3).toBeCloseTo(share, 12);
  });

  it.each([0.5, 0.899, 0.9, 0.901, 0.91, 1, 1.04])(
    'the limit of torsional stress at %d of rated speed, 3 − 2 min(λ, 0.9)²',
    speedShare => {
      const limit = at(continuousTorsionalLimit, {
        tensileStrength: 560e6,
        featureFactor: 1,
        sizeFactor: 1,
        speedShare,
      });
      expect(limit / ((560e6 + 160e6) / 18)).toBeCloseTo(3 - 2 * Math.min(speedShare, 0.9) ** 2, 12);
    },
  );

  it.each([
    // T = min(T_max, P_max / ω), 0 above ω_max: 100 N·m to 50 rad/s, 5 kW to 200 rad/s, either way.
    [0, 100],
    [0.5, 100],
    [50, 100],
    [51, 5000 / 51],
    [200, 25],
    [200.001, 0],
  ])('the torque of a motor at %d rad/s', (speed, torque) => {
    for (const sense of [1, -1]) {
      const given = { torqueLimit: 100, powerLimit: 5000, greatestSpeed: 200, speed: sense * speed };
      expect(at(motorTorque, given)).toBe(torque);
    }
  });

  it.each([
    [0, 1],
    [0.5, 1 - 0.5 ** 4],
    [0.999, 1 - 0.999 ** 4],
    [1, Number.NaN],
    [-0.001, Number.NaN],
  ])('what a bore of %d leaves of the section', (boreRatio, share) => {
    expect(hollowShare(boreRatio)).toBe(share);
  });
});

const efficiency = (si: number) => given('efficiency', 'η', 'ratio', si);
it.each([
  [[], 1, true, 'η = 1'],
  [[1], 1, true, 'η = η_1'],
  [[0.5, 0.9], 0.45, true, 'η = η_1 η_2'],
  [[0.001, 0.9], 0.0009, true, 'η = η_1 η_2'],
  [[0.9, 0], 0, false, 'η = η_1 η_2'],
  [[-0.1, 0.9], -0.09, false, 'η = η_1 η_2'],
  [[0.9, 1.01, 1], 0.909, false, 'η = η_1 η_2 η_3'],
] as const)('efficiencies of %j in series', (stages, si, met, text) => {
  const value = overallEfficiency(stages.map(efficiency));
  expect(value.si).toBeCloseTo(si, 12);
  expect(value.working!.range).toMatchObject([{ met }]);
  expect(value.working!.text).toBe(text);
});

const size = (mm: number | undefined): Value<'length'> | undefined =>
  mm === undefined ? undefined : given('size', 'd', 'length', mm / 1000);
it.each([
  // A tenth of a millimetre tells sizes apart.
  [50, 50.099, 'agrees'],
  [50.099, 50, 'agrees'],
  [50, 50.101, 'differs'],
  [50.101, 50, 'differs'],
  [undefined, 50, 'not stated on one'],
  [50, undefined, 'not stated on other'],
  [undefined, undefined, 'not stated on both'],
] as const)('a bore of %d mm on a shaft of %d mm: %s', (bore, shaft, says) => {
  for (const key of ['diameter', 'keyWidth'] as const) {
    const found = compareBoreAndShaft({ [key]: size(bore) }, { [key]: size(shaft) });
    const own = found.filter(one => one.feature === (key === 'diameter' ? 'coupling bore' : 'key width'));
    const told = own.map(one =>
      one.result === 'differs' ? 'differs' : `${one.result} on ${'on' in one && one.on}`,
    );
    expect(told.join() || 'agrees').toBe(says);
  }
});
