import {
  basicRatingLife,
  dutyCycleLoad,
  dutyTime,
  equivalentBearingLoad,
  equivalentDutyLoad,
  given,
  lifeExponent,
  modifiedRatingLife,
  ratingLifeTime,
  reliabilityFactors,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { HOUR, KW, RPM } from '../tables/factors.js';

const hours = (C: number, P: number) => ({ revolutions: 1e6 * (C / P) ** 3 });
published(dutyTime, 'definition: an hour has 3600 seconds', [
  {
    case: '2000 h a year, 10 years',
    inputs: { hoursPerYear: 2000, years: 10 },
    gives: 20_000,
    within: 1e-9,
    unit: 3600,
  },
]);

published(ratingLifeTime, 'Wentzell, Machine Design, example 20.1: C 5050, P 2400, 1750 rpm', [
  {
    case: 'ball bearing',
    inputs: { ...hours(5050, 2400), speed: 1750 * RPM },
    gives: 88.73,
    within: 0.005,
    unit: HOUR,
  },
]);
published(ratingLifeTime, 'Jindal, Machine Design, example 18-4: C 41, P 20 kN, 720 rpm', [
  {
    case: 'ball bearing',
    inputs: { ...hours(41, 20), speed: 720 * RPM },
    gives: 199.4,
    within: 0.05,
    unit: HOUR,
  },
]);
const jindal = 'Jindal, Machine Design, example 18-2: C 5590, Fr 1250, Fa 625, X 0.56, Y 1.2';
const loads = { radialLoad: 1250, axialLoad: 625, radialFactor: 0.56, axialFactor: 1.2 };
published(equivalentBearingLoad, jindal, [
  { case: 'inner ring turns', inputs: { ...loads, ringFactor: 1 }, gives: 1450, within: 1e-9 },
  { case: 'outer ring turns', inputs: { ...loads, ringFactor: 1.2 }, gives: 1590, within: 1e-9 },
]);
published(basicRatingLife, jindal, [
  {
    case: 'inner ring turns',
    inputs: { dynamicRating: 5590, equivalentLoad: 1450, exponent: 3 },
    gives: 57.3,
    within: 0.05,
    unit: 1e6,
  },
  {
    case: 'outer ring turns',
    inputs: { dynamicRating: 5590, equivalentLoad: 1590, exponent: 3 },
    gives: 43.46,
    within: 0.005,
    unit: 1e6,
  },
]);
published(modifiedRatingLife, 'ISO 281:2007 a₁ at 95 % (from memory)', [
  {
    case: '100 million',
    inputs: { basicLife: 100e6, reliabilityFactor: reliabilityFactors[95] },
    gives: 64,
    within: 1e-9,
    unit: 1e6,
  },
]);

const step = (load: number, rpm: number, share: number) => ({
  load: given('load', 'P_i', 'force', load),
  speed: given('speed', 'n_i', 'rotational speed', rpm * RPM),
  time: given('time', 't_i', 'time', share),
});
// (¼·4³ + ¾·2³)^(1/3) = 22^(1/3) = 2.8020 by hand, at one speed.
published(dutyCycleLoad, 'ISO 281 mean load, worked by hand: 4 kN a quarter of the turns, 2 kN the rest', [
  {
    case: 'two steps at one speed',
    inputs: {
      exponent: 3,
      load1: 4 * KW,
      speed1: 1000 * RPM,
      time1: 1,
      load2: 2 * KW,
      speed2: 1000 * RPM,
      time2: 3,
    },
    gives: 2.802,
    within: 0.00005,
    unit: KW,
  },
]);

describe('rolling bearing life', () => {
  const load = fc.double({ min: 1, max: 1e6, noNaN: true });
  const exponent = given('exponent', 'p', 'number', lifeExponent.roller);

  it('more load, less life; more rating, more life', () => {
    fc.assert(
      fc.property(load, load, (C, P) => {
        const life = (c: number, p: number) =>
          basicRatingLife({
            dynamicRating: given('rating', 'C', 'force', c),
            equivalentLoad: given('load', 'P', 'force', p),
            exponent,
          }).si;
        expect(life(C, P)).toBeGreaterThan(0);
        expect(life(C, P * 1.1)).toBeLessThan(life(C, P));
        expect(life(C * 1.1, P)).toBeGreaterThan(life(C, P));
      }),
    );
  });

  it('the load of a duty cycle lies between its least and greatest, and splitting a step changes nothing', () => {
    fc.assert(
      fc.property(load, load, fc.double({ min: 0.1, max: 10, noNaN: true }), (a, b, t) => {
        const P = equivalentDutyLoad([step(a, 1000, t), step(b, 2000, 1)], exponent).si;
        expect(P).toBeGreaterThanOrEqual(Math.min(a, b) * (1 - 1e-9));
        expect(P).toBeLessThanOrEqual(Math.max(a, b) * (1 + 1e-9));
        const split = equivalentDutyLoad(
          [step(a, 1000, t / 2), step(b, 2000, 1), step(a, 1000, t / 2)],
          exponent,
        );
        expect(split.si / P).toBeCloseTo(1, 9);
      }),
    );
  });

  it('no steps give no number', () => {
    expect(equivalentDutyLoad([], exponent).si).toBeNaN();
  });
});
