import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../src/index.js';
import { CAPACITY_RULES } from '../../src/rules/capacity/index.js';
import { RATIO_RULES } from '../../src/rules/ratio/index.js';
import { SPEED_RULES } from '../../src/rules/speed/index.js';
import { count, judged, quantity, ratio, sense } from '../build.js';
import { type Changes, line, offered, rated, repower } from './capacity-fixture.js';

const RULES_HERE = [...RATIO_RULES, ...CAPACITY_RULES, ...SPEED_RULES];

/** Numbers from sensible to absurd; an engine, a gear and a propeller made of them. */
const numbers = fc.record({
  power: fc.double({ min: 1, max: 3000, noNaN: true }),
  speed: fc.double({ min: 100, max: 6000, noNaN: true }),
  peak: fc.double({ min: 1, max: 20000, noNaN: true }),
  gear: fc.double({ min: 0.5, max: 8, noNaN: true }),
  rating: fc.double({ min: 0.001, max: 5, noNaN: true }),
  pitch: fc.double({ min: 1, max: 100, noNaN: true }),
});
type Numbers = typeof numbers extends fc.Arbitrary<infer T> ? T : never;

function changes({ power, speed, peak, gear, rating, pitch }: Numbers): Changes {
  return {
    engine: {
      ratings: [rated(`${power} kW`, `${speed} rpm`)],
      peakTorque: {
        y: quantity('torque', `${peak} N.m`),
        x: quantity('rotational speed', `${speed * 0.7} rpm`),
      },
    },
    gear: {
      ratios: [
        offered('2:1', `${gear}:1`, `${rating} kW/rpm`, {
          clutches: [
            {
              name: 'B',
              output: sense('opposite'),
              ahead: 'continuous',
              faces: count(12),
              friction: ratio('0.1'),
              outerDiameter: quantity('length', '160 mm'),
              innerDiameter: quantity('length', '110 mm'),
              clampForce: quantity('force', '20 kN'),
            },
          ],
        }),
      ],
    },
    ratio: '2:1',
    propeller: { pitch: quantity('length', `${pitch} in`) },
    line: { couplings: [{ kind: 'flexible', torque: quantity('torque', '1500 N.m') }] },
  };
}

const about = (one: Numbers) => {
  const after = line(changes(one));
  return repower(line(), {
    ...after,
    propeller: { ...after.propeller, change: 'retained' },
    shafts: [{ change: 'retained' }],
  });
};

/** Rules whose capacity is what a part may carry, so that more power can only take margin away. */
const CARRYING = ['gear-input-torque', 'clutch-holding', 'coupling-torque'].map(id => `capacity/${id}`);

describe('over many numbers', () => {
  it('more power never raises the margin of a part that carries it', () => {
    const carrying = RULES_HERE.filter(rule => CARRYING.includes(rule.id));
    expect(carrying).toHaveLength(CARRYING.length);
    fc.assert(
      fc.property(numbers, fc.double({ min: 1, max: 3, noNaN: true }), (one, more) => {
        const margins = (numbersHere: Numbers) =>
          judged(about(numbersHere), carrying)
            .filter(verdict => !verdict.asFound)
            .map(verdict => verdict.margin!);
        const [before, after] = [margins(one), margins({ ...one, power: one.power * more })];
        expect(before).toHaveLength(CARRYING.length);
        after.forEach((margin, index) => {
          expect(margin).toBeLessThanOrEqual(before[index]! + 1e-9);
        });
      }),
      { numRuns: 150 },
    );
  });

  it('no verdict says NaN or undefined, or has a margin that is no number', () => {
    fc.assert(
      fc.property(numbers, one => {
        for (const verdict of judged(about(one), RULES_HERE)) {
          const texts = [
            verdict.message,
            ...verdict.routes().map(route => route.title),
            ...verdict.missing.map(gap => gap.what),
          ];
          for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|no finite/);
          if (verdict.margin !== undefined) expect(Number.isFinite(verdict.margin)).toBe(true);
          if (verdict.outcome === 'cannot tell') expect(verdict.missing.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('every rule here is in the catalogue once, with words that read', () => {
    const ids = RULES.map(rule => rule.id);
    for (const rule of RULES_HERE) {
      expect(ids.filter(id => id === rule.id)).toHaveLength(1);
      expect(rule.id).toMatch(/^(ratio|capacity|speed)\/[a-z]+(-[a-z]+)*$/);
      const sentences = rule.manual.split(/[.:] (?=[A-Z])/).length;
      expect(sentences, rule.id).toBeGreaterThanOrEqual(2);
    }
  });
});
