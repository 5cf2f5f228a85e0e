import { type Dimension, type Formula, given, type Value } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as bearing from '../../src/bearing/index.js';
import * as coupling from '../../src/coupling/index.js';
import * as geometry from '../../src/geometry/index.js';
import * as shaft from '../../src/shaft/index.js';

/** What a drivetrain can hold of each kind, SI. */
const SPAN: Partial<Record<Dimension, readonly [number, number]>> = {
  number: [0.01, 200],
  ratio: [1e-4, 50],
  length: [1e-3, 50],
  mass: [1, 1e6],
  time: [1, 1e9],
  angle: [0, 1.5],
  'rotational speed': [0.1, 1000],
  force: [1, 1e7],
  torque: [0.1, 1e7],
  power: [1, 1e8],
  'power per speed': [0.1, 1e7],
  pressure: [1e4, 1e12],
  density: [500, 20_000],
  'mass per length': [0.1, 1e4],
  'moment of mass': [-1e7, 1e7],
};

const formulas = [shaft, bearing, coupling, geometry]
  .flatMap(folder => Object.values(folder))
  .filter((one): one is Formula => typeof one === 'function' && 'spec' in one)
  .filter(one => Object.keys(one.spec.inputs).length > 0);

describe('for finite positive inputs a formula gives a number, or names the condition of its range that they break', () => {
  it('looks at every formula of these folders', () => {
    expect(formulas.length).toBeGreaterThan(60);
  });

  it.each(formulas.map(one => [one.spec.name, one] as const))('%s', (_, formula) => {
    const inputs = fc.record(
      Object.fromEntries(
        Object.entries(formula.spec.inputs).map(([name, dimension]) => {
          const [min, max] = SPAN[dimension]!;
          return [name, fc.double({ min, max, noNaN: true })];
        }),
      ),
    );
    fc.assert(
      fc.property(inputs, numbers => {
        const values: Record<string, Value> = {};
        for (const [name, si] of Object.entries(numbers))
          values[name] = given(name, name, formula.spec.inputs[name]!, si);
        const result = formula(values);
        const named = result.working!.range.filter(
          one => !one.met && one.condition !== 'these inputs give a finite result',
        );
        if (named.length === 0) expect(result.si).not.toBeNaN();
      }),
    );
  });
});
