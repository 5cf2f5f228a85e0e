import type { Dimension, Formula } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { everyFormula } from '../held/index.js';
import '@tailshaft/mechanics/methods';

/*
 * A relation between quantities is true in every system of units (Bridgman, Dimensional Analysis, 1922): with metre,
 * kilogram and second replaced by units of other sizes a formula gives the same quantity, and a limit is met where it was.
 */

/** Powers of length, mass and time. */
const POWERS: Readonly<Record<Dimension, readonly [length: number, mass: number, time: number]>> = {
  number: [0, 0, 0],
  ratio: [0, 0, 0],
  angle: [0, 0, 0],
  temperature: [0, 0, 0],
  'temperature difference': [0, 0, 0],
  length: [1, 0, 0],
  area: [2, 0, 0],
  volume: [3, 0, 0],
  mass: [0, 1, 0],
  time: [0, 0, 1],
  speed: [1, 0, -1],
  acceleration: [1, 0, -2],
  'rotational speed': [0, 0, -1],
  frequency: [0, 0, -1],
  force: [1, 1, -2],
  torque: [2, 1, -2],
  energy: [2, 1, -2],
  power: [2, 1, -3],
  'power per speed': [2, 1, -2],
  pressure: [-1, 1, -2],
  density: [-3, 1, 0],
  'mass per length': [-1, 1, 0],
  'moment of inertia': [2, 1, 0],
  'second moment of area': [4, 0, 0],
  'section modulus': [3, 0, 0],
  'torsional stiffness': [2, 1, -2],
  'torsional damping': [2, 1, -1],
  'linear stiffness': [0, 1, -2],
  'moment of mass': [1, 1, 0],
  'volume flow': [3, 0, -1],
  'kinematic viscosity': [2, 0, -1],
  'fuel rate': [-2, 0, 2],
};

/** Units of other sizes, as numbers of the old units in one of the new. */
const UNITS = [
  [0.3048, 1, 1],
  [1, 0.4536, 1],
  [1, 1, 60],
  [7, 3, 0.2],
  [0.02, 11, 5],
] as const;
type Units = (typeof UNITS)[number];
const sizeIn = (dimension: Dimension, units: Units) =>
  POWERS[dimension].reduce((size, power, at) => size * units[at]! ** -power, 1);

/** Numbers spread over six orders, the same in every run. */
const GOLDEN = 0.618_033_988_749_895;
const spread = (run: number, input: number) =>
  10 ** ((((run + 1) * GOLDEN * (1 + input * 0.414) + input * 0.29) % 1) * 4 - 2);

type Numbers = Readonly<Record<string, number>>;
interface Condition {
  readonly condition: string;
  readonly met: (si: Numbers) => boolean;
}

const RUNS = 60;

/** What is true in one system of units alone: limits that fall otherwise, and the result where it does. */
function heldToUnits({ spec }: Formula): { limits: string[]; result: boolean } {
  const limits = new Set<string>();
  let result = false;
  const inputs = Object.entries(spec.inputs);
  const compute = spec.compute as (si: Numbers) => number;
  const range = typeof spec.range === 'string' ? [] : (spec.range as unknown as readonly Condition[]);
  for (let run = 0; run < RUNS; run++) {
    const si = Object.fromEntries(inputs.map(([name], at) => [name, spread(run, at)]));
    for (const units of UNITS) {
      const other = Object.fromEntries(
        inputs.map(([name, dimension]) => [name, si[name]! * sizeIn(dimension, units)]),
      );
      for (const { condition, met } of range) if (met(si) !== met(other)) limits.add(condition);
      const [was, is] = [compute(si) * sizeIn(spec.dimension, units), compute(other)];
      if (Number.isFinite(was) !== Number.isFinite(is) || Math.abs(was - is) > 1e-9 * Math.abs(was))
        result = true;
    }
  }
  return { limits: [...limits], result };
}

/** Their text is an equation between numbers in named units, or has the pull of the earth in it, which is 9.81 m/s². */
const owned = ({ spec }: Formula) => spec.units !== undefined || /\bg\b/.test(spec.text);
/** Regressions and tables in SI units, whose figures stand elsewhere than in their text. */
const REGRESSIONS = [
  'Holtrop-Mennen 1982 resistance',
  'Holtrop 1984 resistance',
  'Holtrop-Mennen 1982 wake fraction, single screw',
  'Holtrop 1984 wake fraction, single screw',
  'saturation pressure of water vapour',
  'air pressure at a height',
  // Hours of each year, over years.
  'running time over years of duty',
];

const tellAll = () =>
  [...everyFormula()].map(([name, formula]) => ({ name, formula, ...heldToUnits(formula) }));

describe('in units of any size', () => {
  it('a formula gives the same quantity, unless it has figures of its own that have units', () => {
    const told = tellAll();
    expect(told.length).toBeGreaterThan(250);
    const left = told.filter(one => one.result && !owned(one.formula));
    expect(left.map(one => one.name).sort()).toEqual([...REGRESSIONS].sort());
  });

  it('a limit is met where it was, unless its words name a unit or it belongs to such a formula', () => {
    const left = tellAll()
      .filter(one => !one.formula.spec.units)
      .flatMap(one => one.limits.map(limit => `${one.name}: ${limit}`));
    // A Froude number has g in it.
    expect(left).toEqual(left.filter(one => one.includes('Froude number')));
    expect(left.length).toBeLessThan(4);
  });
});
