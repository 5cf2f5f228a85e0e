import { describe, expect, it } from 'vitest';
import {
  filledFormula,
  given,
  hullSpeed,
  projectedAreaFactor,
  torsionalShearStress,
  type Value,
} from '../../src/index.js';
import { lettersOr, rightSide } from '../../src/working/filled.js';
import { everyFormula } from '../held/index.js';

/** Constants, functions, units and words that a formula's text may hold beside the letters of its inputs. */
const KNOWN = new Set([
  ...['π', 'g', 'cos', 'sin', 'tan', 'arctan', 'arccos', 'log10', 'ln', 'min', 'max'],
  ...[
    'm',
    'cm',
    'mm',
    'in',
    'ft',
    'kW',
    'hp',
    'rpm',
    'kn',
    't',
    'lb',
    'lbf',
    'psi',
    'MPa',
    'kPa',
    'K',
    'N',
    'kN',
  ],
  // Constants that the source tabulates by the number of blades.
  ...['C1', 'C2'],
]);
const WORDS = /^\p{Ll}{2,}$/u;

/** Formulas that take named inputs; the others add up lists. */
const formulas = [...everyFormula()].filter(([, { spec }]) => Object.keys(spec.inputs).length > 0);

/** Letters that the text itself says: `m = 1.2, 1, …`. */
const said = (text: string) => [...text.matchAll(/(\p{L}[\p{L}\p{Nd}_₀-₉]*) =/gu)].map(found => found[1]!);

describe.each(formulas)('%s', (_, { spec }) => {
  const symbols = Object.keys(spec.inputs).map(key => spec.symbols?.[key] ?? key);

  it('has a number for every letter, or says in which terms it is written', () => {
    if (spec.terms) {
      expect(spec.symbols).toBeUndefined();
      expect(spec.terms.length).toBeGreaterThan(15);
      return;
    }
    const letters = rightSide(spec.text).result.match(lettersOr(symbols)) ?? [];
    const own = new Set([...symbols, ...said(spec.text)]);
    const left = letters.filter(one => !own.has(one) && !KNOWN.has(one) && !WORDS.test(one));
    expect(left, `letters of "${spec.text}" that no input goes by`).toEqual([]);
  });

  it('gives no letter to two inputs', () => {
    expect(new Set(symbols).size).toBe(symbols.length);
  });
});

it('fills every text that is not written in other terms, whatever the caller calls its values', () => {
  for (const [name, formula] of formulas) {
    const { spec } = formula;
    const inputs = Object.fromEntries(
      Object.entries(spec.inputs).map(([key, dimension]) => [
        key,
        given(key, '✳', dimension, 2) as Value<never>,
      ]),
    );
    const filled = filledFormula(formula(inputs));
    if (spec.terms) expect(filled, name).toBeUndefined();
    else expect(filled, name).toBeDefined();
  }
});

const mm = (label: string, si: number) => given(label, 'x', 'length', si, { written: `${si * 1000} mm` });
it.each([
  [
    'a length that is raised to a power stands in brackets',
    torsionalShearStress({
      torque: given('torque', 'T', 'torque', 1000, { written: '1000 N.m' }),
      outsideDiameter: mm('outside', 0.06),
      bore: mm('bore', 0.02),
    }),
    '16 × 1000 N·m × 60 mm / (π ((60 mm)⁴ − (20 mm)⁴))',
  ],
  [
    'a symbol of several signs is one',
    projectedAreaFactor({ pitchRatio: given('pitch ratio', 'x', 'ratio', 0.8) }),
    '1.067 - 0.229 × 0.8',
  ],
  [
    'a number is in the unit that a handbook asks for',
    hullSpeed({ waterlineLength: given('length', 'L', 'length', 10.9, { written: '10.9 m' }) }),
    '1.34 √(35.76 ft)',
  ],
])('%s', (_, value, text) => {
  expect(filledFormula(value)).toBe(text);
});
