import { type Formula, given, outsideRange, type Value } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyFormula } from '../held/index.js';

interface Rule {
  readonly condition: string;
  readonly met: (si: object) => boolean;
}
const rulesOf = ({ spec }: Formula): readonly Rule[] =>
  typeof spec.range === 'string' ? [] : (spec.range as readonly Rule[]);

const ruled = [...everyFormula().values()].filter(one => rulesOf(one).length > 0);

/** From a millionth to a million, either sign, whole or not, and the numbers that limits are often made of. */
const anything = fc.oneof(
  fc.double({ min: -6, max: 6, noNaN: true }).map(power => 10 ** power),
  fc.double({ min: -6, max: 6, noNaN: true }).map(power => -(10 ** power)),
  fc.integer({ min: -2, max: 12 }),
  fc.constantFrom(0, 0.05, 0.5, 0.7, 1, 1.5, 3, 4, 100, 1000, 1e7, 1e9),
);

describe('a formula outside its range says so', () => {
  it('there are many to look at', () => {
    expect(ruled.length).toBeGreaterThan(150);
  });

  it.each(ruled.map(one => [one.spec.name, one] as const))('%s', (name, formula) => {
    const keys = Object.keys(formula.spec.inputs);
    const unbroken = new Set(rulesOf(formula).map(one => one.condition));
    fc.assert(
      fc.property(fc.array(anything, { minLength: keys.length, maxLength: keys.length }), numbers => {
        const inputs: Record<string, Value> = {};
        keys.forEach((key, index) => {
          inputs[key] = given(key, key, formula.spec.inputs[key]!, numbers[index]!);
        });
        const value = formula(inputs);
        const si = Object.fromEntries(keys.map((key, index) => [key, numbers[index]!]));
        const told = outsideRange(value);
        // Whoever computes on with it hears of it too.
        const sum: Value = {
          ...given('sum', 's', value.dimension, value.si),
          working: { ...value.working!, name: 'sum', inputs: [value], range: [] },
        };
        for (const { condition, met } of rulesOf(formula)) {
          expect(told.includes(`${name}: ${condition}`), condition).toBe(!met(si));
          if (!met(si)) {
            unbroken.delete(condition);
            expect(outsideRange(sum)).toContain(`${name}: ${condition}`);
          }
        }
        // No result, no silence.
        if (!Number.isFinite(value.si)) expect(told.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
    // A condition that nothing breaks is no limit.
    expect([...unbroken]).toEqual([]);
  });
});
