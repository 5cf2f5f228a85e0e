import {
  allFormulas,
  engineEquilibrium,
  type Formula,
  given,
  openWater,
  outsideRange,
  SERIES,
  type SeriesName,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as hullModule from '../../src/hull/index.js';
import * as propellerModule from '../../src/propeller/index.js';
import { firstRoot, rootBetween } from '../../src/propeller/roots.js';
import { bisect, curveOf, density, diesel, propeller, ratio, speed } from './support.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const names = Object.keys(SERIES) as SeriesName[];

/** Areas that a series covers with three blades: the Ka polynomials are of one area for each number of blades. */
const areasOf = (name: SeriesName): readonly [number, number] =>
  name === 'Ka' ? [0.6, 0.7] : SERIES[name].areaRatios;

describe('the series, over their whole range', () => {
  it.each(names)('%s: a covered point is finite, drives, and wastes some power', name => {
    const { pitchRatios, lowestAdvanceRatio } = SERIES[name];
    fc.assert(
      fc.property(
        within(...pitchRatios),
        within(...areasOf(name)),
        fc.integer(name === 'Wageningen B' ? { min: 2, max: 7 } : { min: 3, max: 3 }),
        within(0, 1),
        (p, area, z, share) => {
          const geometry = { ...propeller(0.7, p, area, z), areaIs: SERIES[name].area };
          const curve = openWater(name, geometry);
          if (!curve.applies) throw new Error(curve.reason);
          const tested = curve.cautions.every(one => one.met);
          const j = lowestAdvanceRatio + share * (curve.zeroThrust - lowestAdvanceRatio);
          for (const number of [curve.thrustCoefficient(j), curve.torqueCoefficient(j), curve.efficiency(j)])
            expect(Number.isFinite(number)).toBe(true);
          expect(curve.thrustCoefficient(j)).toBeGreaterThan(-1e-9);
          if (tested) expect(curve.efficiency(j)).toBeLessThan(1);
        },
      ),
    );
  });

  it.each(names)('%s: outside pitch, area or blades there is no curve, and the reason says which', name => {
    const { pitchRatios } = SERIES[name];
    const covered: Record<number, readonly [number, number]> =
      name === 'Ka' ? { 3: [0.6, 0.7], 4: [0.65, 0.75], 5: [0.7, 0.8] } : {};
    fc.assert(
      fc.property(within(0.01, 4), within(0.01, 3), fc.integer({ min: 1, max: 9 }), (p, area, z) => {
        const [least, most] = covered[z] ?? areasOf(name);
        const inside =
          p >= pitchRatios[0] &&
          p <= pitchRatios[1] &&
          area >= least &&
          area <= most &&
          (name === 'Wageningen B' ? z >= 2 && z <= 7 : z === 3 || z in covered);
        const result = openWater(name, { ...propeller(1, p, area, z), areaIs: SERIES[name].area });
        expect(result.applies).toBe(inside);
        if (!result.applies) expect(result.reason).toMatch(/blades|area|pitch/);
      }),
    );
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a diameter of %f is refused, not computed', d => {
    expect(openWater('Wageningen B', propeller(d, 1, 0.7, 4)).applies).toBe(false);
  });

  it.each(names)('%s: more pitch asks for more torque at the same advance', name => {
    const { pitchRatios, lowestAdvanceRatio } = SERIES[name];
    const [least, most] = areasOf(name);
    fc.assert(
      fc.property(
        within(pitchRatios[0], pitchRatios[1] - 0.1),
        within(0.02, 0.1),
        within(name === 'Ka' ? least : least + 0.2, Math.min(most, 0.8)),
        fc.integer(name === 'Wageningen B' ? { min: 3, max: 5 } : { min: 3, max: 3 }),
        within(0, 1),
        (p, more, area, z, share) => {
          const light = curveOf(name, 0.7, p, area, z);
          const heavy = curveOf(name, 0.7, p + more, area, z);
          const j = lowestAdvanceRatio + share * (light.zeroThrust - lowestAdvanceRatio);
          expect(heavy.torqueCoefficient(j)).toBeGreaterThan(light.torqueCoefficient(j));
        },
      ),
    );
  });

  it.each(names)('%s: an advance ratio outside is flagged in the working', name => {
    const { lowestAdvanceRatio } = SERIES[name];
    const curve = curveOf(name, 0.7, 1, 0.7, 3);
    fc.assert(
      fc.property(within(-1, 3), j => {
        const inside = j >= lowestAdvanceRatio && j <= curve.zeroThrust;
        const point = curve.at(ratio(j));
        expect(outsideRange(point.thrustCoefficient).length === 0).toBe(inside);
        expect(curve.covers(j).met).toBe(inside);
      }),
    );
  });
});

describe('equilibrium', () => {
  const engine = diesel();
  it('is finite and in balance, or says why there is none', () => {
    fc.assert(
      fc.property(
        within(0.3, 1.5),
        within(0.5, 1.4),
        within(0.4, 1),
        fc.integer({ min: 2, max: 7 }),
        within(0, 25),
        within(1, 4),
        (d, p, area, z, va, i) => {
          const driveline = { ratio: ratio(i), efficiency: ratio(0.96) };
          const curve = curveOf('Wageningen B', d, p, area, z);
          const found = engineEquilibrium({ curve, engine, driveline, speedOfAdvance: speed(va), density });
          if (!found.applies) {
            expect(found.reason.length).toBeGreaterThan(40);
            return;
          }
          for (const value of [found.engineSpeed, found.thrust, found.torque, found.power, found.efficiency])
            expect(Number.isFinite(value.si)).toBe(true);
          expect(found.thrust.si).toBeGreaterThan(-1e-6);
          expect(found.endOfTable || Math.abs(found.loadFraction.si - 1) < 1e-6).toBe(true);
        },
      ),
    );
  });
  it('more pitch never turns faster', () => {
    fc.assert(
      fc.property(within(0.6, 1.2), within(0.02, 0.15), within(0, 10), (p, more, va) => {
        const driveline = { ratio: ratio(2), efficiency: ratio(0.96) };
        const at = (pitch: number) =>
          engineEquilibrium({
            curve: curveOf('Wageningen B', 0.65, pitch, 0.7, 4),
            engine,
            driveline,
            speedOfAdvance: speed(va),
            density,
          });
        const light = at(p);
        const heavy = at(p + more);
        if (light.applies && heavy.applies)
          expect(heavy.engineSpeed.si).toBeLessThanOrEqual(light.engineSpeed.si + 1e-9);
      }),
    );
  });
});

describe('root finder', () => {
  it('agrees with bisection on cubics with one root in the bracket', () => {
    fc.assert(
      fc.property(within(-5, 5), within(0.1, 5), within(-3, 3), (root, slope, bend) => {
        const f = (x: number) => slope * (x - root) + bend ** 2 * (x - root) ** 3;
        const found = rootBetween(f, -20, 20);
        expect(found).toBeCloseTo(root, 9);
        expect(found).toBeCloseTo(bisect(f, -20, 20), 9);
      }),
    );
  });
  it('finds the lowest of several roots', () => {
    expect(firstRoot(Math.sin, 1, 20)).toBeCloseTo(Math.PI, 10);
    expect(firstRoot(x => x * x + 1, -5, 5)).toBeUndefined();
  });
});

describe('every formula of propeller and hull', () => {
  const formulas = [propellerModule, hullModule]
    .flatMap(module => Object.values(module))
    .flatMap(one => (typeof one === 'object' ? Object.values(one) : [one]))
    .filter((one): one is Formula => typeof one === 'function' && 'spec' in one);
  it('are found by name in the list of all', () => {
    expect(formulas.length).toBeGreaterThan(80);
    for (const one of formulas) expect(allFormulas().get(one.spec.name)).toBe(one);
  });
  it.each(formulas.map(one => [one.spec.name, one] as const))(
    '%s: never an unflagged NaN, never infinite',
    (_, formula) => {
      const keys = Object.keys(formula.spec.inputs);
      const number = fc.oneof(
        within(-2, 3),
        within(-1e6, 1e6),
        within(1e-6, 1e4),
        fc.constantFrom(0, 1, 3, 4),
      );
      fc.assert(
        fc.property(fc.array(number, { minLength: keys.length, maxLength: keys.length }), numbers => {
          const inputs = Object.fromEntries(
            keys.map((key, index) => [key, given(key, key, formula.spec.inputs[key]!, numbers[index]!)]),
          );
          const { si, working } = formula(inputs);
          if (!Number.isFinite(si)) {
            expect(Number.isNaN(si)).toBe(true);
            expect(working!.range.some(one => !one.met)).toBe(true);
          }
        }),
        { numRuns: 60 },
      );
    },
  );
});
