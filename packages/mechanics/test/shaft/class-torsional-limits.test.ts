import {
  barredRangeEnd,
  barredRangeStart,
  continuousTorsionalLimit,
  given,
  outsideRange,
  speedShare,
  torsionalSizeFactor,
  transientTorsionalLimit,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { MM, MPA, RPM } from '../tables/factors.js';

/** Rm MPa, c_K, d mm, λ, and c_D, τ_C, τ_T as recomputed in full precision from the terms the three sources share. */
const recomputed = [
  [600, 1.0, 200, 0.5, 0.672312, 70.966, 120.643],
  [600, 0.55, 168, 1.0, 0.68375, 21.912, 50.228],
  [800, 1.0, 340, 1.0, 0.639859, 47.094, 80.059],
  [600, 0.55, 450, 1.0, 0.624057, 19.999, 45.843],
  [600, 0.55, 168, 0.8, 0.68375, 27.31, 62.603],
] as const;
const source = 'IACS UR M68, terms as in naval rules and a published thesis calculation, recomputed';

published(
  torsionalSizeFactor,
  source,
  recomputed.map(([, , d, , cD]) => ({
    case: `${d} mm`,
    inputs: { diameter: d * MM },
    gives: cD,
    within: 5e-7,
  })),
);
published(
  continuousTorsionalLimit,
  source,
  recomputed.map(([Rm, cK, d, lambda, , tauC]) => ({
    case: `Rm ${Rm}, c_K ${cK}, ${d} mm, λ ${lambda}`,
    inputs: {
      tensileStrength: Rm * MPA,
      featureFactor: cK,
      sizeFactor: 0.35 + 0.93 * d ** -0.2,
      speedShare: lambda,
    },
    gives: tauC,
    within: 0.0005,
    unit: MPA,
  })),
);
// Fed with τ_C of all digits: rounded to 0.001 MPa it would be 0.0012 out.
published(
  transientTorsionalLimit,
  source,
  recomputed.map(([Rm, cK, d, lambda, , , tauT]) => ({
    case: `Rm ${Rm}, c_K ${cK}, ${d} mm, λ ${lambda}`,
    inputs: {
      continuousLimit:
        ((Rm + 160) / 18) *
        cK *
        (0.35 + 0.93 * d ** -0.2) *
        (lambda < 0.9 ? 3 - 2 * lambda ** 2 : 1.38) *
        MPA,
      featureFactor: cK,
    },
    gives: tauT,
    within: 0.0005,
    unit: MPA,
  })),
);
published(speedShare, 'definition', [
  { case: '450 of 900 rpm', inputs: { speed: 450 * RPM, ratedSpeed: 900 * RPM }, gives: 0.5, within: 1e-12 },
]);
// λ_c = 0.5: 16·100/17.5 and 17.5·100/16.
published(barredRangeStart, 'IACS UR M68, bounds of the barred range, worked by hand', [
  {
    case: 'critical at half of rated',
    inputs: { criticalSpeed: 100, ratedSpeed: 200 },
    gives: 91.4286,
    within: 5e-5,
  },
]);
published(barredRangeEnd, 'IACS UR M68, bounds of the barred range, worked by hand', [
  {
    case: 'critical at half of rated',
    inputs: { criticalSpeed: 100, ratedSpeed: 200 },
    gives: 109.375,
    within: 1e-9,
  },
]);

const limit = (lambda: number) =>
  continuousTorsionalLimit({
    tensileStrength: given('tensile strength', 'R_m', 'pressure', 600e6),
    featureFactor: given('feature factor', 'c_K', 'number', 1),
    sizeFactor: given('size factor', 'c_D', 'number', 0.65),
    speedShare: given('speed share', 'λ', 'ratio', lambda),
  });

it('the two brackets meet at 0.9 of rated speed', () => {
  expect(limit(0.9 - 1e-9).si / limit(0.9).si).toBeCloseTo(1, 8);
});

it('flags speeds from 1.05 of rated, and a barred range from 0.8', () => {
  expect(outsideRange(limit(1.04))).toEqual([]);
  expect(outsideRange(limit(1.05))).toHaveLength(1);
  const barred = (criticalSpeed: number) =>
    barredRangeStart({
      criticalSpeed: given('critical speed', 'n_c', 'rotational speed', criticalSpeed),
      ratedSpeed: given('rated speed', 'n₀', 'rotational speed', 100),
    });
  expect(outsideRange(barred(79))).toEqual([]);
  expect(outsideRange(barred(80))).toHaveLength(1);
});
