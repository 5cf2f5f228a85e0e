import { describe, expect, it } from 'vitest';
import { everyFormula } from '../held/index.js';
import '@tailshaft/mechanics/methods';
import { RELATIONS, type Relation } from './relations.js';

/*
 * The limits of every formula, as its page prints them in words, against the code that decides whether they are met: just
 * below each limit, at it, and just above.
 */

interface Limits {
  readonly low?: number;
  readonly high?: number;
  /** Whether the limit itself is still within. */
  readonly atLow?: boolean;
  readonly atHigh?: boolean;
  /** Only these numbers. */
  readonly only?: readonly number[];
  readonly notZero?: true;
}

const N = '([−-]?\\d+(?:\\.\\d+)?(?:e\\d+)?)';
const UNITS: Readonly<Record<string, number>> = {
  MPa: 1e6,
  knots: 1852 / 3600,
  rpm: (2 * Math.PI) / 60,
  '%': 0.01,
  degrees: Math.PI / 180,
};

type Form = readonly [pattern: string, limits: (a: number, b: number) => Limits];
const FORMS: readonly Form[] = [
  [`is (?:one of )?${N} or ${N}`, (a, b) => ({ only: [a, b] })],
  [`${N} or ${N} blades`, (a, b) => ({ only: [a, b] })],
  [`^${N} blades$`, a => ({ only: [a] })],
  [`from ${N} to less than ${N}`, (a, b) => ({ low: a, atLow: true, high: b })],
  [`${N} to ${N}`, (a, b) => ({ low: a, atLow: true, high: b, atHigh: true })],
  [`between ${N} and ${N}`, (a, b) => ({ low: a, atLow: true, high: b, atHigh: true })],
  [`above ${N},? (?:and )?at most ${N}`, (a, b) => ({ low: a, high: b, atHigh: true })],
  [`at least ${N} and below ${N}`, (a, b) => ({ low: a, atLow: true, high: b })],
  [`(?:at most|up to) ${N}`, a => ({ high: a, atHigh: true })],
  [`(?:below|less than) ${N}`, a => ({ high: a })],
  [`(?:over|above) ${N}`, a => ({ low: a })],
  [`at least (?:one|${N})`, (a = 1) => ({ low: a, atLow: true })],
  ['not negative|zero or more|at or below the surface', () => ({ low: 0, atLow: true })],
  ['not zero', () => ({ notZero: true })],
  [
    'positive|above zero|moves|turns|gives torque|delivers power|of some length|below the surface|above that of vapour',
    () => ({ low: 0 }),
  ],
];

function limitsIn(condition: string): Limits | undefined {
  for (const [pattern, limits] of FORMS) {
    const found = new RegExp(pattern).exec(condition);
    if (!found) continue;
    const unit = /^ ?(MPa|knots|rpm|%|degrees)/.exec(condition.slice(found.index + found[0].length))?.[1];
    const [a, b] = found
      .slice(1)
      .map(one => one && Number(one.replace('−', '-')) * (unit ? UNITS[unit]! : 1));
    return limits(a as number, b as number);
  }
  return undefined;
}

/** Numbers beside each limit, with whether they are within. */
function probes(limits: Limits): (readonly [number, boolean])[] {
  const { low, high, atLow = false, atHigh = false, only, notZero } = limits;
  if (notZero) return [[0, false], [1e-9, true], [-1e-9, true]]; // biome-ignore format: pairs
  if (only)
    return only.flatMap(one => [
      [one, true] as const,
      [one * 1.01, false] as const,
      [one * 0.99, false] as const,
    ]);
  const beside = (limit: number) => Math.max(Math.abs(limit) * 1e-6, 1e-9);
  const step = (limit: number, other = Number.NaN) =>
    Math.min(beside(limit), Math.abs(other - limit) / 2 || beside(limit));
  return [
    ...(low === undefined
      ? []
      : ([
          [low, atLow],
          [low - step(low), false],
          [low + step(low, high), true],
        ] as const)),
    ...(high === undefined
      ? []
      : ([
          [high, atHigh],
          [high + step(high), false],
          [high - step(high, low), true],
        ] as const)),
  ];
}

const nextWhole = (number: number, { low = Number.NEGATIVE_INFINITY }: Limits) =>
  number > low && number - low < 1 ? Math.floor(low) + 1 : Math.floor(number);

/** Whole numbers where a count is meant. */
const counts = (name: string) => ['blades', 'screws', 'faces', 'collars'].includes(name);

/** Said in words of their own: their numbers stand below. */
const ELSEWHERE: readonly string[] = [
  'height from −500 m to 11 km',
  'temperature from 0.01 °C to the critical point',
  'no more than the reference power, unless the engine maker allows it',
  'the exponent is 3 for ball or 10/3 for roller bearings',
  'c is one of 0.82, 1.1 or 1.56',
  'the joint angle is below 90 degrees',
];

/** The inputs that a condition looks at. */
function readBy(met: (si: never) => boolean): string[] {
  const read = new Set<string>();
  for (const value of [0, 1, -1, 1e9, 0.5, 20]) {
    const told = new Proxy(
      {},
      {
        get: (_, key) => {
          read.add(String(key));
          return value;
        },
      },
    );
    met(told as never);
  }
  return [...read];
}

const CONDITIONS = [...everyFormula()].flatMap(([name, { spec }]) =>
  typeof spec.range === 'string'
    ? []
    : spec.range.map(({ condition, met }) => ({
        name,
        spec,
        condition,
        met: met as (si: Readonly<Record<string, number>>) => boolean,
        inputs: readBy(met as never),
      })),
);

describe('each limit of a formula is where its words say', () => {
  const single = CONDITIONS.filter(one => one.inputs.length === 1 && !ELSEWHERE.includes(one.condition));
  it.each(single.map(one => [one.name, one.condition, one] as const))(
    '%s: %s',
    (_, condition, { met, inputs }) => {
      const limits = limitsIn(condition);
      expect(limits, 'no form fits these words').toBeDefined();
      const input = inputs[0]!;
      for (const [number, within] of probes(limits!)) {
        // The next whole number within the limit stands for one just within.
        const tried =
          counts(input) && within && !Number.isInteger(number) ? nextWhole(number, limits!) : number;
        expect(met({ [input]: tried }), `${input} = ${tried}`).toBe(within);
      }
      if (counts(input) && /whole|blades|screws/.test(condition)) expect(met({ [input]: 3.5 })).toBe(false);
    },
  );

  it.each([
    ['height from −500 m to 11 km', 'height', [-500, 0, 11_000], [-500.1, 11_000.1]],
    // 0.01 °C and 373.946 °C: IAPWS-IF97, triple and critical point of water.
    ['temperature from 0.01 °C to the critical point', 'temperature', [273.16, 640], [273.15, 647.2]],
    ['no more than the reference power, unless the engine maker allows it', 'adjustment', [0.5, 1], [1.001]],
    ['the joint angle is below 90 degrees', 'angle', [0, 1.5707, -1.5707], [Math.PI / 2, -Math.PI / 2, 2]],
    ['c is one of 0.82, 1.1 or 1.56', 'loading', [0.82, 1.1, 1.56], [0.83, 1.09, 1.57, 0]],
    [
      'the exponent is 3 for ball or 10/3 for roller bearings',
      'exponent',
      [3, 10 / 3, 3.333],
      [3.01, 3.33, 3.34, 2, 0],
    ],
  ] as const)('%s', (condition, input, within, beyond) => {
    const all = CONDITIONS.filter(one => one.condition === condition);
    expect(all.length).toBeGreaterThan(0);
    for (const { met } of all) {
      for (const number of within) expect(met({ [input]: number }), String(number)).toBe(true);
      for (const number of beyond) expect(met({ [input]: number }), String(number)).toBe(false);
    }
  });
});

const PURE = ['number', 'ratio', 'angle', 'time'];
/** Quantities of one kind are compared with each other alone, so that all may be larger or smaller together. */
function sizesOf(inputs: readonly string[], kinds: Readonly<Record<string, string>>): number[] {
  const [first, ...rest] = inputs.map(input => kinds[input]);
  const alike = first !== undefined && rest.every(one => one === first);
  return alike && !PURE.includes(first) ? [1, 7, 0.04] : [1];
}

describe('each relation between inputs of a formula is what its words say', () => {
  it.each(Object.entries(RELATIONS))('%s', (condition, tables) => {
    const all = CONDITIONS.filter(one => one.condition === condition);
    expect(all.length).toBeGreaterThan(0);
    for (const { name, met, inputs, spec } of all) {
      const fits = tables.filter(one => inputs.every(input => one.inputs.includes(input)));
      expect(fits.length, `${name}: ${inputs.join(', ')}`).toBe(1);
      for (const [within, rows] of [
        [true, fits[0]!.within],
        [false, fits[0]!.beyond],
      ] as const)
        for (const row of rows) {
          for (const size of sizesOf(fits[0]!.inputs, spec.inputs)) {
            const si = Object.fromEntries(fits[0]!.inputs.map((input, at) => [input, size * row[at]!]));
            expect(met(si), `${name}: ${JSON.stringify(si)}`).toBe(within);
          }
        }
    }
  });

  // What has no size of its own, a shaft bored away or a collar without a face, has no figure either: a stress of nil or
  // a negative one would pass every limit. A slenderness is a ratio of lengths and has one.
  it.each(['the bore is smaller than the outside diameter', 'the collar is larger outside than inside'])(
    'no figure is given unless %s',
    condition => {
      const [{ inputs, beyond }] = RELATIONS[condition] as [Relation];
      const held = CONDITIONS.filter(
        one => one.condition === condition && one.name !== 'slenderness of a shaft between supports',
      );
      expect(held.length).toBeGreaterThan(1);
      for (const { name, spec } of held)
        for (const row of beyond) {
          const si = Object.fromEntries(
            Object.keys(spec.inputs).map(input => [input, row[inputs.indexOf(input)] ?? 1]),
          );
          expect((spec.compute as (si: object) => number)(si), `${name}: ${row}`).toBeNaN();
        }
    },
  );

  it('and few are left to the tests of their formulas alone', () => {
    const left = CONDITIONS.filter(one => one.inputs.length !== 1 && !(one.condition in RELATIONS));
    expect([...new Set(left.map(one => one.condition))].sort()).toMatchInlineSnapshot(`
      [
        "advance ratio from 0 to the point of zero thrust",
        "advance ratio from 0.3 to the point of zero thrust",
        "area and pitch large enough for the form: result above zero",
        "prismatic coefficient 0.55 to 0.85 (from memory)",
        "the coefficients are unconfirmed: use for comparison only",
      ]
    `);
  });
});
