import {
  allFormulas,
  type Dimension,
  type Formula,
  filledFormula,
  filledResult,
  findUnit,
  fromSI,
  given,
  naturalUnit,
  outsideRange,
  toSI,
  type Value,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { rightSide } from '../../src/working/filled.js';
import { evaluate } from './evaluate.js';

/** A usual size of each kind of quantity, in SI. */
const USUAL: Partial<Record<Dimension, number>> = {
  length: 0.1,
  area: 0.02,
  volume: 0.01,
  mass: 2000,
  time: 1000,
  angle: 0.1,
  temperature: 310,
  'temperature difference': 20,
  speed: 8,
  'rotational speed': 150,
  frequency: 20,
  force: 10_000,
  torque: 1000,
  energy: 1000,
  power: 200_000,
  'power per speed': 1000,
  pressure: 1e8,
  density: 1025,
  'moment of inertia': 2,
  ratio: 0.5,
  number: 3,
};

const formulas = [...allFormulas()].filter(
  ([, { spec }]) => Object.keys(spec.inputs).length > 0 && !spec.terms,
);

describe('a printed working gives its printed result', () => {
  it.each(formulas)('%s', (name, formula) => {
    const value = sample(formula);
    expect(value, 'inputs that this formula can be printed with').toBeDefined();
    const filled = filledFormula(value!)!;
    const bare = formula.spec.unit !== undefined || formula.spec.units !== undefined;
    const { result } = rightSide(`x = ${filled}`);
    const printed = filledResult(value!);
    const [got, wanted] = [evaluate(result, bare), evaluate(printed, bare)];
    const off = Math.abs(got - wanted) / Math.max(Math.abs(wanted), 1e-12);
    expect(off, `${name}: ${filled} = ${printed}, worked out ${got}, printed ${wanted}`).toBeLessThan(2e-3);
  });
});

/** A value of the formula whose inputs are printed without loss, tried with ever other numbers till it has a result. */
function sample(formula: Formula): Value | undefined {
  let found: Value | undefined;
  for (let attempt = 0; attempt < 400; attempt++) {
    const random = randomFrom(attempt + 1);
    const inputs: Record<string, Value> = {};
    for (const [key, dimension] of Object.entries(formula.spec.inputs)) {
      const size = (USUAL[dimension] ?? 1) * 4 ** (random() * 2 - 1);
      const symbol = (formula.spec.units as Record<string, string> | undefined)?.[key];
      const unit =
        (symbol ? findUnit(symbol) : undefined) ??
        (dimension === 'temperature' ? findUnit('K')! : naturalUnit({ label: key, dimension, si: size }));
      const digits = dimension === 'number' ? 1 : 3;
      inputs[key] = given(key, '✳', dimension, toSI(Number(fromSI(size, unit).toPrecision(digits)), unit));
    }
    const value = formula(inputs as never);
    if (!Number.isFinite(value.si) || value.si === 0) continue;
    if (outsideRange(value).length === 0) return value;
    found ??= value;
  }
  return found;
}

function randomFrom(seed: number): () => number {
  let state = seed * 2654435761;
  return () => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) + 0x9e3779b9) >>> 0;
    return state / 2 ** 32;
  };
}
