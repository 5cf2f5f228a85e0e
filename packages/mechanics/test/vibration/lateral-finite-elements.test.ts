import {
  type ForwardEnd,
  given,
  overhungDunkerley,
  overhungFrequency,
  overhungInfluence,
  type SpanEnds,
  spanEnds,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { eigs } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { cantileverEndDeflection, fixedSpanDeflection, pinnedSpanDeflection } from '../held/mass-on-span.js';
import { overhungPanagopulos } from '../held/overhung-dunkerley.js';
import { uniformSpanFrequency } from '../held/uniform-span.js';
import { type BeamModel, beam, nodes } from './beam-elements.js';

const v = (si: number) => given('v', 'v', 'number', si) as never;

describe('uniform span against finite elements', () => {
  const held: Record<SpanEnds, BeamModel['held']> = {
    'pinned-pinned': [
      [0, 'deflection'],
      [12, 'deflection'],
    ],
    'fixed-pinned': [
      [0, 'deflection'],
      [0, 'slope'],
      [12, 'deflection'],
    ],
    'fixed-fixed': [
      [0, 'deflection'],
      [0, 'slope'],
      [12, 'deflection'],
      [12, 'slope'],
    ],
    cantilever: [
      [0, 'deflection'],
      [0, 'slope'],
    ],
  };
  it.each(Object.keys(held) as SpanEnds[])('%s', ends => {
    const { lowestFrequency } = beam({ at: [0, ...nodes(0, 2, 12)], EI: 1.3e5, mu: 22, held: held[ends] });
    const f = uniformSpanFrequency({ beta: spanEnds(ends), L: v(2), E: v(1.3e11), I: v(1e-6), mu: v(22) }).si;
    expect(lowestFrequency / f).toBeCloseTo(1, 4);
  });
});

describe('deflections against finite elements', () => {
  const load = { W: v(1), E: v(1e11), I: v(1e-6) };
  it.each([
    [
      'cantilever',
      cantileverEndDeflection({ ...load, L: v(1.2) }),
      {
        at: [0, 1.2],
        held: [
          [0, 'deflection'],
          [0, 'slope'],
        ],
        node: 1,
      },
    ],
    [
      'simply supported',
      pinnedSpanDeflection({ ...load, a: v(0.5), b: v(0.9) }),
      {
        at: [0, 0.5, 1.4],
        held: [
          [0, 'deflection'],
          [2, 'deflection'],
        ],
        node: 1,
      },
    ],
    [
      'fixed at both ends',
      fixedSpanDeflection({ ...load, a: v(0.5), b: v(0.9) }),
      {
        at: [0, 0.5, 1.4],
        held: [
          [0, 'deflection'],
          [0, 'slope'],
          [2, 'deflection'],
          [2, 'slope'],
        ],
        node: 1,
      },
    ],
  ] as const)('%s', (_, deflection, { at, held, node }) => {
    const { flexibility } = beam({ at, EI: 1e5, mu: 0, held });
    expect(flexibility([node, 'deflection'], [node, 'deflection']) / deflection.si).toBeCloseTo(1, 10);
  });
});

describe('overhung propeller against finite elements', () => {
  const shafts = fc.record({
    L: fc.double({ min: 0.5, max: 4, noNaN: true }),
    b: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
    m: fc.double({ min: 2, max: 300, noNaN: true }),
    Ie: fc.double({ min: 0.01, max: 30, noNaN: true }),
    mu: fc.double({ min: 2, max: 100, noNaN: true }),
    forward: fc.constantFrom<ForwardEnd>('pinned', 'fixed'),
  });
  const E = 2e11;
  const I = 6e-7;
  const SPAN = 10;
  const model = (L: number, b: number, forward: ForwardEnd, mu: number, points: BeamModel['points'] = []) =>
    beam({
      at: [0, ...nodes(0, L, SPAN), ...nodes(L, L + b, 3)],
      EI: E * I,
      mu,
      points,
      held: [
        [0, 'deflection'],
        [SPAN, 'deflection'],
        ...(forward === 'fixed' ? ([[0, 'slope']] as const) : []),
      ],
    });
  const TIP = SPAN + 3;

  it('has the influence numbers of the beam', () => {
    fc.assert(
      fc.property(shafts, ({ L, b, forward }) => {
        const { flexibility } = model(L, b, forward, 0);
        const { a11, a12, a22 } = overhungInfluence({ L, b, E, I }, forward);
        expect(flexibility([TIP, 'deflection'], [TIP, 'deflection']) / a11).toBeCloseTo(1, 6);
        expect(flexibility([TIP, 'deflection'], [TIP, 'slope']) / a12).toBeCloseTo(1, 6);
        expect(flexibility([TIP, 'slope'], [TIP, 'slope']) / a22).toBeCloseTo(1, 6);
      }),
      { numRuns: 40 },
    );
  });

  it('has the two roots that mathjs finds from those numbers', () => {
    fc.assert(
      fc.property(shafts, ({ L, b, m, Ie, forward }) => {
        const { a11, a12, a22 } = overhungInfluence({ L, b, E, I }, forward);
        const cross = a12 * Math.sqrt(m * Ie);
        const inverse = eigs([
          [a11 * m, cross],
          [cross, a22 * Ie],
        ]).values as number[];
        const expected = inverse.map(x => 1 / (2 * Math.PI * Math.sqrt(x))).sort((a, c) => a - c);
        const inputs = { L: v(L), b: v(b), E: v(E), I: v(I), m: v(m), Ie: v(Ie) };
        expect(overhungFrequency[forward].lower(inputs).si / expected[0]!).toBeCloseTo(1, 9);
        expect(overhungFrequency[forward].upper(inputs).si / expected[1]!).toBeCloseTo(1, 6);
      }),
    );
  });

  it('has Dunkerley’s coefficients: the sum of 1/ω² over all modes of the beam, and so a lower bound', () => {
    fc.assert(
      fc.property(shafts, ({ L, b, m, Ie, mu, forward }) => {
        const inputs = { L: v(L), b: v(b), E: v(E), I: v(I), m: v(m), Id: v(Ie), mu: v(mu) };
        const bound = overhungDunkerley[forward](inputs).si;
        const { sumOfInverseSquares, lowestFrequency } = model(L, b, forward, mu, [{ node: TIP, m, I: Ie }]);
        expect((2 * Math.PI * bound) ** 2 * sumOfInverseSquares).toBeCloseTo(1, 9);
        expect(bound).toBeLessThan(lowestFrequency);
        // Why the coefficients from memory are for comparison only: they fall below a bound that is already low.
        if (forward === 'pinned') expect(overhungPanagopulos(inputs).si).toBeLessThan(bound);
      }),
      // A light end makes the beam itself count most, which is where a sum that lacks something shows.
      { numRuns: 200, examples: [[{ L: 4, b: 0.05, m: 2, Ie: 0.01, mu: 100, forward: 'fixed' }]] },
    );
  });
});
