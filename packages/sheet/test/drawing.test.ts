import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveThrough } from '../src/drawing/curve.js';
import { linearScale } from '../src/drawing/scale.js';

/** On no round number, where a last digit would decide on which side it is. */
const end = fc.integer({ min: 1, max: 1e7 }).map(one => one + 0.37);

describe('axes, against a library of another house (d3-scale)', () => {
  it('end and are divided at the same round numbers', () => {
    fc.assert(
      fc.property(end, end, fc.boolean(), fc.integer({ min: 3, max: 8 }), (low, high, below, about) => {
        const domain = [below ? -low : 0, high] as const;
        const ours = linearScale({ domain, range: [10, 400], nice: about });
        const theirs = scaleLinear(domain, [10, 400]).nice(about);
        const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9 * (low + high));
        theirs.domain().forEach((one, i) => {
          near(ours.ends[i]!, one);
        });
        expect(ours.ticks(about)).toHaveLength(theirs.ticks(about).length);
        theirs.ticks(about).forEach((one, i) => {
          near(ours.ticks(about)[i]!, one);
        });
        expect(ours(high)).toBeCloseTo(theirs(high), 6);
      }),
    );
  });

  it('hold what lies beyond them at the end, where that is asked for', () => {
    const scale = linearScale({ domain: [-0.25, 2], range: [0, 100], nice: 4, clamp: true });
    expect([scale(-9), scale(9)]).toEqual([0, 100]);
  });

  it.each([
    [0, 0],
    [0, Number.NaN],
    [0, Number.POSITIVE_INFINITY],
    [0, 5e-324],
    [0, 1.7e308],
  ])('ends from %s to %s leave no endless row of numbers', (from, to) => {
    const scale = linearScale({ domain: [from, to], range: [0, 100], nice: 5 });
    expect(scale.ticks(5).length).toBeLessThan(30);
  });
});

describe('curves, against a library of another house (d3-shape)', () => {
  it('are the same paths', () => {
    const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: -300, max: 300 })), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(steps, made => {
        let x = 0;
        const points = made.map(([step, y]) => {
          x += step;
          return [x, y] as [number, number];
        });
        const theirs = line().digits(1).curve(curveMonotoneX)(points) ?? undefined;
        expect(curveThrough(points)).toBe(theirs);
      }),
    );
  });
});
