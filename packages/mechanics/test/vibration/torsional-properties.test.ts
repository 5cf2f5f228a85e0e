import {
  given,
  type HolzerChain,
  holzerBranchedFrequencies,
  holzerBranchedResidual,
  holzerChainFrequencies,
  holzerTable,
  holzerTree,
  solveTorsional,
  type TorsionalModel,
  torsionalSpeeds,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { eigs } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { referredInertia, referredStiffness } from '../held/equivalent-shaft.js';
import { G, J, K, must, trains } from './trains.js';

const frequencies = (model: TorsionalModel) => must(solveTorsional(model)).modes.map(mode => mode.angular);

/** Each within a relative distance; the lists equally long. */
function expectSame(actual: readonly number[], expected: readonly number[], within: number): void {
  expect(actual).toHaveLength(expected.length);
  actual.forEach((value, i) => {
    expect(Math.abs(value / expected[i]! - 1), `${value} against ${expected[i]}`).toBeLessThan(within);
  });
}

/** The chain n0, n1, … of a model that is one, each link looked up. */
function asChain({ inertias, shafts, gears = [] }: TorsionalModel): HolzerChain {
  const links = inertias.slice(1).map((_, i) => {
    const shaft = shafts.find(one => one.name === `s${i}`);
    if (shaft) return { stiffness: shaft.stiffness!.si };
    const gear = gears.find(one => one.name === `g${i}`)!;
    return { ratio: gear.ratio!.si * (gear.sense === 'opposite' ? -1 : 1) };
  });
  return { inertias: inertias.map(one => one.inertia!.si), links };
}

describe('Holzer’s method against the matrix method on random trains', () => {
  it('in a row: frequencies', () => {
    fc.assert(
      fc.property(trains({ branched: false }), model => {
        expectSame(holzerChainFrequencies(asChain(model)), frequencies(model), 1e-7);
      }),
    );
  });

  it('branched: frequencies, from two different roots', () => {
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const last = model.inertias.at(-1)!.name;
        const expected = frequencies(model);
        expectSame(holzerBranchedFrequencies(holzerTree(model)!), expected, 1e-7);
        expectSame(holzerBranchedFrequencies(holzerTree(model, last)!), expected, 1e-7);
      }),
    );
  });

  it('in a row: amplitudes down the table at the lowest frequency', () => {
    fc.assert(
      fc.property(trains({ branched: false }), model => {
        const [mode] = must(solveTorsional(model)).modes;
        if (mode?.unit !== 'n0') return;
        const amplitudes = [...mode.amplitudes.values()];
        const largest = Math.max(...amplitudes.map(Math.abs));
        holzerTable(asChain(model), mode.angular).forEach((row, i) => {
          expect(Math.abs(row.amplitude - amplitudes[i]!)).toBeLessThan(1e-5 * largest);
        });
      }),
    );
  });

  it('branched: the torques at the root balance at a frequency and change sign across it', () => {
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const tree = holzerTree(model)!;
        const found = holzerBranchedFrequencies(tree);
        found.forEach((angular, i) => {
          const apart = Math.min(
            ...[0, ...found].filter((_, j) => j !== i + 1).map(other => Math.abs(angular - other) / angular),
          );
          // Roots that lie on top of each other do not change the sign.
          if (apart < 1e-6) return;
          const step = Math.min(1e-7, apart / 3);
          const before = holzerBranchedResidual(tree, angular * (1 - step)).torque;
          const after = holzerBranchedResidual(tree, angular * (1 + step)).torque;
          expect(Math.sign(before)).toBe(-Math.sign(after));
        });
      }),
    );
  });
});

it('the matrix solver’s eigenvalues are those of mathjs on the referred matrices', () => {
  fc.assert(
    fc.property(trains({ branched: true }), model => {
      const { referred, modes } = must(solveTorsional(model));
      const { inertia, stiffness } = referred;
      if (inertia.length < 2) return;
      const scaled = stiffness.map((row, i) => row.map((k, j) => k / Math.sqrt(inertia[i]! * inertia[j]!)));
      const values = (eigs(scaled, { precision: 1e-12, eigenvectors: false }).values as number[])
        .map(Number)
        .sort((a, b) => a - b);
      const highest = values.at(-1)!;
      expect(Math.abs(values[0]!)).toBeLessThan(1e-8 * highest);
      modes.forEach((mode, i) => {
        expect(Math.abs(mode.angular ** 2 - values[i + 1]!)).toBeLessThan(1e-8 * highest);
      });
    }),
  );
});

describe('laws that every train obeys', () => {
  it('all stiffness × 4: frequencies × 2; all inertia × 4: frequencies ÷ 2; shapes stay', () => {
    const scaled = (model: TorsionalModel, ofJ: number, ofK: number): TorsionalModel => ({
      ...model,
      inertias: model.inertias.map(one => J(one.name, one.inertia!.si * ofJ)),
      shafts: model.shafts.map(one => K(one.name, one.from, one.to, one.stiffness!.si * ofK)),
    });
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const before = frequencies(model);
        expectSame(
          frequencies(scaled(model, 1, 4)),
          before.map(one => one * 2),
          1e-9,
        );
        expectSame(
          frequencies(scaled(model, 4, 1)),
          before.map(one => one / 2),
          1e-9,
        );
      }),
    );
  });

  it('does not depend on the shaft it is referred to', () => {
    fc.assert(
      fc.property(trains({ branched: true }), fc.nat(), (model, pick) => {
        const reference = model.inertias[pick % model.inertias.length]!.name;
        expectSame(frequencies({ ...model, reference }), frequencies(model), 1e-7);
      }),
    );
  });

  it('is the ungeared train of inertias and stiffnesses referred by hand', () => {
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const { speeds } = torsionalSpeeds(model);
        const i = (name: string) => given('i', 'i', 'ratio', 1 / Math.abs(speeds.get(name)!));
        const byHand: TorsionalModel = {
          inertias: model.inertias.map(one => ({
            name: one.name,
            inertia: referredInertia({ J: one.inertia!, i: i(one.name) }),
          })),
          shafts: model.shafts.map(one => ({
            ...one,
            stiffness: referredStiffness({ k: one.stiffness!, i: i(one.from) }),
          })),
          gears: (model.gears ?? []).map(one => G(one.name, one.driver, one.driven, 1, 'same')),
        };
        expectSame(frequencies(byHand), frequencies(model), 1e-7);
      }),
    );
  });

  it('does not notice weightless inertias: a shaft cut in two, and a spring that leads nowhere', () => {
    fc.assert(
      fc.property(trains({ branched: true }), fc.nat(), (model, pick) => {
        if (model.shafts.length === 0) return;
        const cut = model.shafts[pick % model.shafts.length]!;
        const doubled = cut.stiffness!.si * 2;
        const weightless: TorsionalModel = {
          inertias: [J('stub', 0), ...model.inertias, J('middle', 0)],
          shafts: [
            ...model.shafts.filter(one => one !== cut),
            K('first half', cut.from, 'middle', doubled),
            K('second half', 'middle', cut.to, doubled),
            K('loose', 'stub', cut.to, 1e4),
          ],
          gears: model.gears ?? [],
          reference: model.inertias[0]!.name,
        };
        const expected = must(solveTorsional(model)).modes;
        const { modes } = must(solveTorsional(weightless));
        expectSame(
          modes.map(mode => mode.angular),
          expected.map(mode => mode.angular),
          1e-7,
        );
        expectSame(holzerBranchedFrequencies(holzerTree(weightless)!), frequencies(model), 1e-7);
        for (const { amplitudes } of modes) {
          const [from, to] = [amplitudes.get(cut.from)!, amplitudes.get(cut.to)!];
          const size = Math.max(...[...amplitudes.values()].map(Math.abs));
          expect(Math.abs(amplitudes.get('middle')! - (from + to) / 2)).toBeLessThan(1e-9 * size);
          expect(Math.abs(amplitudes.get('stub')! - to)).toBeLessThan(1e-9 * size);
        }
      }),
    );
  });

  it('has real, positive frequencies in rising order, one fewer than its coordinates, and no number that is none', () => {
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const { modes, referred } = must(solveTorsional(model));
        expect(modes).toHaveLength(referred.groups.length - 1);
        let last = 0;
        for (const mode of modes) {
          expect(mode.angular).toBeGreaterThan(0);
          expect(mode.angular).toBeGreaterThanOrEqual(last * (1 - 1e-9));
          last = mode.angular;
          const numbers = [
            mode.frequency.si,
            ...mode.amplitudes.values(),
            ...mode.torques.map(one => one.torque),
            ...mode.nodes.map(one => one.fraction),
          ];
          expect(numbers.every(Number.isFinite)).toBe(true);
        }
      }),
    );
  });

  it('has modes without a share of the rigid-body turning, and mutually orthogonal', () => {
    fc.assert(
      fc.property(trains({ branched: true }), model => {
        const { modes, speeds } = must(solveTorsional(model));
        const shapes = [speeds, ...modes.map(mode => mode.amplitudes)];
        const product = (a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>) =>
          model.inertias.reduce(
            (sum, { name, inertia }) => sum + inertia!.si * a.get(name)! * b.get(name)!,
            0,
          );
        for (const [i, a] of shapes.entries())
          for (const b of shapes.slice(i + 1))
            expect(Math.abs(product(a, b)) / Math.sqrt(product(a, a) * product(b, b))).toBeLessThan(1e-6);
      }),
    );
  });

  it('does not get stiffer by leaving a link’s spring softer', () => {
    fc.assert(
      fc.property(trains({ branched: true }), fc.nat(), (model, pick) => {
        if (model.shafts.length === 0) return;
        const softer = model.shafts[pick % model.shafts.length]!;
        const shafts = model.shafts.map(one =>
          one === softer ? K(one.name, one.from, one.to, one.stiffness!.si / 3) : one,
        );
        const before = frequencies(model);
        frequencies({ ...model, shafts }).forEach((one, i) => {
          expect(one).toBeLessThanOrEqual(before[i]! * (1 + 1e-7));
        });
      }),
    );
  });

  it('never answers with numbers while anything is missing', () => {
    fc.assert(
      fc.property(trains({ branched: true }), fc.nat(), (model, pick) => {
        const at = pick % model.inertias.length;
        const inertias = model.inertias.map((one, i) => (i === at ? { name: one.name } : one));
        const result = solveTorsional({ ...model, inertias });
        expect(result.solved).toBe(false);
        expect(!result.solved && result.missing.map(one => one.part)).toEqual([`n${at}`]);
        expect(holzerTree({ ...model, inertias })).toBeUndefined();
      }),
    );
  });
});
