import {
  assumptionsBehind,
  given,
  propellerInertiaInWater,
  solveTorsional,
  TORSIONAL_ENTRAINED_WATER,
  type TorsionalGap,
  type TorsionalModel,
  valuesBehind,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { twoInertiaFrequency, twoInertiaNode } from '../held/closed-forms.js';
import { G, J, K, must } from './trains.js';

/** One engine through a damper, gear and shaft to a propeller; the astern train hangs on the input as a branch. */
const train: TorsionalModel = {
  inertias: [
    J('engine', 1.8),
    J('gear input', 0.09),
    J('astern wheel', 0.05),
    J('gear output', 0.35),
    J('propeller', 3.1),
  ],
  shafts: [
    K('damper', 'engine', 'gear input', 2.4e4),
    K('astern shaft', 'gear input', 'astern wheel', 6e5),
    K('propeller shaft', 'gear output', 'propeller', 3.6e4),
  ],
  gears: [G('ahead mesh', 'gear input', 'gear output', 2.04)],
};

describe('a geared, branched train', () => {
  const solution = must(solveTorsional(train));

  it('has one coordinate for each set of inertias that gears tie, and one mode fewer', () => {
    expect(solution.referred.groups).toEqual([
      ['engine'],
      ['gear input', 'gear output'],
      ['astern wheel'],
      ['propeller'],
    ]);
    expect(solution.turnsFreely).toBe(true);
    expect(solution.modes.map(mode => mode.number)).toEqual([1, 2, 3]);
  });

  it('gives signed speeds: the output turns the other way at 1/2.04', () => {
    expect(solution.speeds.get('propeller')).toBeCloseTo(-1 / 2.04, 12);
    expect(solution.speeds.get('astern wheel')).toBe(1);
  });

  it('has referred matrices that are symmetric, with rows that sum to zero', () => {
    const { stiffness, inertia } = solution.referred;
    stiffness.forEach((row, i) => {
      expect(row.reduce((a, b) => a + b)).toBeCloseTo(0, 6);
      row.forEach((value, j) => {
        expect(value).toBe(stiffness[j]![i]);
      });
    });
    expect(inertia[1]).toBeCloseTo(0.09 + 0.35 / 2.04 ** 2, 12);
    expect(inertia[3]).toBeCloseTo(3.1 / 2.04 ** 2, 12);
  });

  it('gives amplitudes at each part’s own speed: both sides of a mesh keep its ratio and sense', () => {
    for (const { amplitudes } of solution.modes) {
      expect(amplitudes.get('engine')).toBe(1);
      expect(amplitudes.get('gear output')! * -2.04).toBeCloseTo(amplitudes.get('gear input')!, 10);
    }
  });

  it('has torques in balance at every inertia', () => {
    for (const { angular, amplitudes, torques } of solution.modes) {
      const torque = (element: string) => torques.find(one => one.element === element)!.torque;
      const inertial = (name: string, value: number) => value * angular ** 2 * amplitudes.get(name)!;
      expect(inertial('engine', 1.8)).toBeCloseTo(torque('damper'), 4);
      expect(inertial('astern wheel', 0.05)).toBeCloseTo(-torque('astern shaft'), 4);
      expect(torque('damper') + inertial('gear input', 0.09)).toBeCloseTo(
        torque('astern shaft') + torque('ahead mesh'),
        4,
      );
      // Through the mesh: T × ratio, turned round, arrives at the wheel.
      expect(torque('ahead mesh') * -2.04 + inertial('gear output', 0.35)).toBeCloseTo(
        torque('propeller shaft'),
        4,
      );
    }
  });

  it('has as many nodes as its number in the lower modes, and places them in a shaft', () => {
    expect(solution.modes[0]!.nodes.map(node => node.shaft)).toEqual(['propeller shaft']);
    for (const { fraction } of solution.modes.flatMap(mode => mode.nodes)) {
      expect(fraction).toBeGreaterThan(0);
      expect(fraction).toBeLessThan(1);
    }
  });

  it('shows its working: every number of the description, and what was left out', () => {
    const { frequency } = solution.modes[0]!;
    expect([...valuesBehind(frequency)]).toHaveLength(1 + 5 + 3 + 1);
    expect(frequency.working?.notes?.join()).toContain('rigid');
  });

  it('does not change in frequency with the reference or the sense of a branch', () => {
    const other = must(solveTorsional({ ...train, reference: 'propeller' }));
    const same = must(
      solveTorsional({ ...train, gears: [G('ahead mesh', 'gear input', 'gear output', 2.04, 'same')] }),
    );
    solution.modes.forEach((mode, i) => {
      expect(other.modes[i]!.angular / mode.angular).toBeCloseTo(1, 10);
      expect(same.modes[i]!.angular / mode.angular).toBeCloseTo(1, 10);
      expect(other.modes[i]!.amplitudes.get('propeller')).toBe(1);
    });
  });

  it('notes a sense that nobody gave, and still gives frequencies', () => {
    const { sense: _, ...unsaid } = train.gears![0]!;
    const result = must(solveTorsional({ ...train, gears: [unsaid] }));
    expect(result.notes.join()).toContain('ahead mesh does not say its sense');
    expect(result.modes[0]!.angular).toBeCloseTo(solution.modes[0]!.angular, 8);
  });
});

describe('simple trains by closed form', () => {
  it('two inertias: frequency and node', () => {
    const { modes } = must(
      solveTorsional({ inertias: [J('a', 2), J('b', 5)], shafts: [K('shaft', 'a', 'b', 3e4)] }),
    );
    const inputs = {
      J1: given('J1', 'J1', 'moment of inertia', 2),
      J2: given('J2', 'J2', 'moment of inertia', 5),
    };
    const k = given('k', 'k', 'torsional stiffness', 3e4);
    expect(modes[0]!.frequency.si).toBeCloseTo(twoInertiaFrequency({ ...inputs, k }).si, 10);
    const L = given('L', 'L', 'length', 1);
    expect(modes[0]!.nodes[0]!.fraction).toBeCloseTo(twoInertiaNode({ ...inputs, L }).si, 12);
  });

  it('twin engines into one gear: in one mode they swing against each other and the propeller stands still', () => {
    const { modes } = must(
      solveTorsional({
        inertias: [
          J('propeller', 40),
          J('wheel', 4),
          J('port', 3),
          J('starboard', 3),
          J('port pinion', 0),
          J('starboard pinion', 0),
        ],
        shafts: [
          K('line', 'propeller', 'wheel', 8e4),
          K('port coupling', 'port', 'port pinion', 2e4),
          K('starboard coupling', 'starboard', 'starboard pinion', 2e4),
        ],
        gears: [
          G('port mesh', 'port pinion', 'wheel', 3),
          G('starboard mesh', 'starboard pinion', 'wheel', 3),
        ],
      }),
    );
    expect(modes).toHaveLength(3);
    const against = modes.find(mode => mode.unit !== 'propeller')!;
    expect(against.angular).toBeCloseTo(Math.sqrt(2e4 / 3), 8);
    expect(against.amplitudes.get('propeller')).toBeCloseTo(0, 9);
    expect(against.amplitudes.get('starboard')).toBeCloseTo(-against.amplitudes.get('port')!, 9);
  });

  it('a held end behind gears: the torque at the mesh comes from the side that can be summed', () => {
    const { modes, turnsFreely } = must(
      solveTorsional({
        inertias: [J('motor', 2), J('pinion', 0.1), J('wheel', 0.4), { name: 'brake', held: true }],
        shafts: [K('input', 'motor', 'pinion', 1e4), K('output', 'wheel', 'brake', 9e4)],
        gears: [G('mesh', 'wheel', 'pinion', 0.5)],
      }),
    );
    expect(turnsFreely).toBe(false);
    expect(modes).toHaveLength(2);
    for (const { torques, angular, amplitudes } of modes) {
      const torque = (element: string) => torques.find(one => one.element === element)!.torque;
      expect(torque('input')).toBeCloseTo(2 * angular ** 2 * amplitudes.get('motor')!, 5);
      expect(0.4 * angular ** 2 * amplitudes.get('wheel')!).toBeCloseTo(torque('output') + torque('mesh'), 4);
    }
  });

  it('a split path that closes through gears: solved, with the load share of its meshes left out', () => {
    const { modes } = must(
      solveTorsional({
        inertias: [J('engine', 5), J('a', 0.1), J('b', 0.1), J('wheel', 1), J('propeller', 9)],
        shafts: [
          K('quill a', 'engine', 'a', 1e5),
          K('quill b', 'engine', 'b', 2e5),
          K('line', 'wheel', 'propeller', 4e4),
        ],
        gears: [G('mesh a', 'a', 'wheel', 2), G('mesh b', 'b', 'wheel', 2)],
      }),
    );
    expect(modes).toHaveLength(2);
    expect(modes[0]!.torques.map(one => one.element)).toEqual(['quill a', 'quill b', 'line']);
  });
});

describe('data that are missing or wrong', () => {
  const gap = (model: TorsionalModel): TorsionalGap => {
    const result = solveTorsional(model);
    if (result.solved) throw new Error('solved without the data');
    return result;
  };

  it('lists every absent number by part and gives no result', () => {
    const { missing, faults } = gap({
      inertias: [{ name: 'engine' }, J('gear', 0.1), { name: 'gear output' }, J('propeller', 3)],
      shafts: [{ name: 'damper', from: 'engine', to: 'gear' }, K('line', 'gear output', 'propeller', 3e4)],
      gears: [{ name: 'mesh', driver: 'gear', driven: 'gear output' }],
    });
    expect(missing.map(one => `${one.what} of ${one.part}`)).toEqual([
      'moment of inertia of engine',
      'moment of inertia of gear output',
      'torsional stiffness of damper',
      'ratio of mesh',
    ]);
    expect(missing[0]!.sentence).toContain('engine has no moment of inertia');
    expect(faults).toEqual([]);
  });

  it('counts a value without a finite result as missing', () => {
    const { missing } = gap({
      inertias: [J('a', 1), J('b', 1)],
      shafts: [K('shaft', 'a', 'b', Number.NaN)],
    });
    expect(missing.map(one => one.part)).toEqual(['shaft']);
  });

  it.each<[string, TorsionalModel, string]>([
    ['nothing', { inertias: [], shafts: [] }, 'no inertias'],
    [
      'negative inertia',
      { inertias: [J('a', -1), J('b', 1)], shafts: [K('s', 'a', 'b', 1)] },
      'a has a moment',
    ],
    [
      'no stiffness',
      { inertias: [J('a', 1), J('b', 1)], shafts: [K('s', 'a', 'b', 0)] },
      's has a torsional',
    ],
    [
      'endless ratio',
      { inertias: [J('a', 1), J('b', 1)], shafts: [], gears: [G('g', 'a', 'b', Number.POSITIVE_INFINITY)] },
      'g has a ratio',
    ],
    ['unknown end', { inertias: [J('a', 1)], shafts: [K('s', 'a', 'b', 1)] }, 's leads to b'],
    ['back to itself', { inertias: [J('a', 1)], shafts: [K('s', 'a', 'a', 1)] }, 'back to itself'],
    ['twice', { inertias: [J('a', 1), J('a', 2)], shafts: [] }, 'Two inertias are named a'],
    [
      'element twice',
      { inertias: [J('a', 1), J('b', 1)], shafts: [K('s', 'a', 'b', 1), K('s', 'a', 'b', 1)] },
      'Two shafts or gears are named s',
    ],
    ['reference', { inertias: [J('a', 1)], shafts: [], reference: 'z' }, 'The reference z'],
    ['apart', { inertias: [J('a', 1), J('b', 2)], shafts: [] }, 'b is not connected to a'],
    ['weightless', { inertias: [J('a', 0), J('b', 0)], shafts: [K('s', 'a', 'b', 1)] }, 'No inertia'],
    [
      'locked loop',
      {
        inertias: [J('a', 1), J('b', 1), J('c', 1)],
        shafts: [K('s', 'b', 'c', 1)],
        gears: [G('g', 'a', 'b', 2), G('h', 'a', 'c', 3)],
      },
      'closes a loop',
    ],
  ])('refuses: %s', (_, model, sentence) => {
    expect(gap(model).faults.join('\n')).toContain(sentence);
  });

  it('one inertia alone has no vibrating mode', () => {
    expect(must(solveTorsional({ inertias: [J('a', 1)], shafts: [] })).modes).toEqual([]);
  });

  it('keeps the entrained water visible as an assumption of every frequency', () => {
    const dry = given('dry polar inertia', 'J', 'moment of inertia', 2.5);
    const inertia = propellerInertiaInWater({ I: dry, w: TORSIONAL_ENTRAINED_WATER });
    const { modes } = must(
      solveTorsional({
        inertias: [J('engine', 2), { name: 'propeller', inertia }],
        shafts: [K('line', 'engine', 'propeller', 3e4)],
      }),
    );
    expect(assumptionsBehind(modes[0]!.frequency).join()).toContain('20 to 30 %');
  });
});
