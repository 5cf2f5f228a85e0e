import {
  given,
  holzerChainFrequencies,
  holzerResidual,
  holzerTable,
  renamed,
  seriesPairStiffness,
  seriesStiffness,
  shaftPolarInertia,
  shaftTorsionalStiffness,
  solveTorsional,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import {
  oneInertiaFrequency,
  threeInertiaFrequency,
  twoInertiaFrequency,
  twoInertiaNode,
} from '../held/closed-forms.js';
import { equivalentLength, referredInertia, referredStiffness } from '../held/equivalent-shaft.js';
import { published } from '../published.js';
import { G, J, K, must } from './trains.js';
import { INCH, LONG_TON, PER_MINUTE, POUND, PSI } from './units.js';

const stiffness = (modulus: number, d: number, L: number) => {
  const v = (si: number) => given('v', 'v', 'length', si);
  return shaftTorsionalStiffness({ G: given('G', 'G', 'pressure', modulus), d: v(d), di: v(0), L: v(L) }).si;
};

/** lb·in² of a book whose g is not the standard one: it divides weights by its own g. */
const poundInch2 = (value: number, g: number) => value * POUND * INCH ** 2 * (386.0885826771654 / (g * 12));

describe('Sarkar, Theory of Machines, illustration 12 p. 298: motor and pump through gears, 4.20 Hz', () => {
  const motorShaft = stiffness(84e9, 0.045, 0.18);
  const pumpShaft = stiffness(84e9, 0.09, 0.45);
  it('as the train is built, with the gears’ own inertia left out', () => {
    const train = must(
      solveTorsional({
        inertias: [J('motor', 400), J('pinion', 0), J('wheel', 0), J('pump', 1400)],
        shafts: [
          K('motor shaft', 'motor', 'pinion', motorShaft),
          K('pump shaft', 'wheel', 'pump', pumpShaft),
        ],
        gears: [G('gears', 'pinion', 'wheel', 3)],
      }),
    );
    expect(train.modes).toHaveLength(1);
    expect(train.modes[0]!.frequency.si).toBeCloseTo(4.2021, 4);
    expect(Math.abs(train.modes[0]!.frequency.si - 4.2)).toBeLessThan(0.005);
  });
});
published(
  equivalentLength,
  'Sarkar, Theory of Machines, illus. 12: 0.253125 m added, before the ratio squared',
  [{ case: 'pump shaft', inputs: { L: 0.45, d: 0.09, de: 0.045 }, gives: 0.253125 / 9, within: 1e-12 }],
);
published(equivalentLength, 'T. Bevan, The Theory of Machines, ch. 15 ex. 11: 66.5 in in all', [
  {
    case: 'shaft of D, across the gears',
    inputs: { L: 25.5, d: 3.5, de: 2.75 },
    gives: (66.5 - 39.504) * 0.36,
    within: 0.001,
  },
]);
published(referredInertia, 'Sarkar, Theory of Machines, illus. 12: 1400 at a third of the speed', [
  { case: 'pump', inputs: { J: 1400, i: 3 }, gives: 155.56, within: 0.005 },
]);
published(referredStiffness, 'the same: a stiffness falls by the ratio squared', [
  { case: 'round numbers', inputs: { k: 900, i: 3 }, gives: 100, within: 1e-12 },
]);
published(twoInertiaFrequency, 'Sarkar, Theory of Machines, illus. 12: 4.20 Hz over 0.433125 m of 45 mm', [
  {
    case: 'motor and referred pump',
    inputs: { k: stiffness(84e9, 0.045, 0.433125), J1: 400, J2: 1400 / 9 },
    gives: 4.2,
    within: 0.005,
  },
]);

// Bevan ch. 15 ex. 11: A 1500, gears 54 and 850, D 50,000 lb·in², D at 0.6 of A's speed, 2.75 in shaft, 66.5 in in all.
// Its first length, 39.504 in, is what is left of 66.5 in after D's shaft.
const bevan11 = (g: number, gears: boolean) => ({
  inertias: [
    J('A', poundInch2(1500, g)),
    J('pinion', gears ? poundInch2(54, g) : 0),
    J('wheel', gears ? poundInch2(850, g) : 0),
    J('D', poundInch2(50_000, g)),
  ],
  shafts: [
    K('first', 'A', 'pinion', stiffness(12e6 * PSI, 2.75 * INCH, 39.504 * INCH)),
    K('second', 'wheel', 'D', stiffness(12e6 * PSI, 3.5 * INCH, 25.5 * INCH)),
  ],
  gears: [G('gears', 'pinion', 'wheel', 1 / 0.6)],
});
const perMinute = (model: Parameters<typeof solveTorsional>[0]) =>
  must(solveTorsional(model)).modes.map(mode => mode.frequency.si * 60);

describe('T. Bevan, The Theory of Machines, ch. 15 ex. 11 p. 587: geared train', () => {
  it('gears left out: 5086 per minute, as printed, with the 32.3 ft/s² that the public worked copy typed for g', () => {
    expect(Math.abs(perMinute(bevan11(32.3, false))[0]! - 5086)).toBeLessThanOrEqual(0.5);
  });
  it('gears left out, with 32.2 ft/s²: 5077.7', () => {
    expect(Math.abs(perMinute(bevan11(32.2, false))[0]! - 5077.7)).toBeLessThanOrEqual(0.05);
  });
  it('with the gears, 32.2 ft/s²: 5004.7 and 20,763', () => {
    const [first, second] = perMinute(bevan11(32.2, true));
    expect(Math.abs(first! - 5004.7)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(second! - 20_763)).toBeLessThanOrEqual(0.5);
  });
  // The worked copy does not solve for its nodes: it takes them as given, 63.15 and 3.661 in from A (the first on A's
  // shaft carried on past the gears), and scales case a) by the root of the distances. With those two its 5014 and
  // 20,824 follow to the last digit. Where they come from is not printed.
  it('with the gears, by the copy’s own steps: 5014 and 20,824 from nodes given as 63.15 and 3.661 in', () => {
    const leftOut = perMinute(bevan11(32.3, false))[0]!;
    const nodeLeftOut = (66.5 * 18_000) / (18_000 + 1500);
    expect(Math.abs(leftOut * Math.sqrt(nodeLeftOut / 63.15) - 5014)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(leftOut * Math.sqrt(nodeLeftOut / 3.661) - 20_824)).toBeLessThanOrEqual(0.5);
  });
  // Torques balance at the gears where 360/1500 (L₁ − l)(L₂ − l/12) = l (66.5 − 13 l/12), all on A's shaft. Its roots, by
  // hand, are 63.19 and 3.671 in: the given distances are 0.06 % and 0.27 % short, and a frequency goes with their root.
  it('has its nodes at 63.19 and 3.671 in, so that 5014 and 20,824 are 0.03 % and 0.14 % high', () => {
    const [a, b, c] = [13 / 12 + 0.24 / 12, -(66.5 + 0.24 * (39.504 / 12 + 26.996)), 0.24 * 39.504 * 26.996];
    const nodes = [1, -1].map(sign => (-b + sign * Math.sqrt(b * b - 4 * a * c)) / (2 * a));
    expect(nodes.map(one => one.toPrecision(4))).toEqual(['63.19', '3.671']);
    const model = bevan11(32.3, true);
    const [JA, k] = [model.inertias[0]!.inertia!.si, model.shafts[0]!.stiffness!.si];
    must(solveTorsional(model)).modes.forEach((mode, i) => {
      // l at which a shaft of A's own would hold A at this frequency: k L₁ / l = J_A ω².
      expect(((k * 39.504) / (JA * mode.angular ** 2) / nodes[i]!).toFixed(4)).toBe('1.0000');
      const given = [63.15, 3.661][i]!;
      const moved = ((mode.angular * 30) / Math.PI) * Math.sqrt(nodes[i]! / given);
      expect(Math.abs(moved / [5014, 20_824][i]! - 1)).toBeLessThan(3e-5);
    });
  });
});

const bevan1 = {
  k: stiffness(12e6 * PSI, 3 * INCH, 36 * INCH),
  J: 0.3 * LONG_TON * (15 * INCH) ** 2,
};
published(oneInertiaFrequency, 'T. Bevan, The Theory of Machines, ch. 15 ex. 1: 786 per minute', [
  { case: 'disc at the end of a shaft', inputs: bevan1, gives: 786, within: 0.5, unit: PER_MINUTE },
]);

describe('T. Bevan, The Theory of Machines, ch. 15, as trains with held ends', () => {
  it('ex. 1: 786 per minute', () => {
    const model = {
      inertias: [J('disc', bevan1.J), { name: 'wall', held: true }],
      shafts: [K('shaft', 'disc', 'wall', bevan1.k)],
    };
    expect(Math.abs(perMinute(model)[0]! - 786)).toBeLessThanOrEqual(0.5);
  });
  it('ex. 2: 321 per minute, between two walls', () => {
    const model = {
      inertias: [
        { name: 'left wall', held: true },
        J('disc', 0.5 * LONG_TON * (20 * INCH) ** 2),
        { name: 'right wall', held: true },
      ],
      shafts: [
        K('left', 'left wall', 'disc', stiffness(12e6 * PSI, 2 * INCH, 36 * INCH)),
        K('right', 'disc', 'right wall', stiffness(12e6 * PSI, 2 * INCH, 24 * INCH)),
      ],
      reference: 'disc',
    };
    expect(Math.abs(perMinute(model)[0]! - 321)).toBeLessThanOrEqual(0.5);
  });
});

// J 20, 4, 60 kg·m² with 1e5 and 4e4 N·m/rad: Holzer's table worked outside this code.
describe('three inertias by Holzer’s table, worked outside this code', () => {
  const chain = { inertias: [20, 4, 60], links: [{ stiffness: 1e5 }, { stiffness: 4e4 }] };
  const worked = [
    { angular: 42.4391, cpm: 405.264, amplitudes: [1, 0.639784, -0.375986], torques: [36021.6, 40630.8] },
    { angular: 197.1436, cpm: 1882.582, amplitudes: [1, -6.773117, 0.118208], torques: undefined },
  ];
  const model = {
    inertias: [J('1', 20), J('2', 4), J('3', 60)],
    shafts: [K('a', '1', '2', 1e5), K('b', '2', '3', 4e4)],
  };

  it('finds both frequencies', () => {
    holzerChainFrequencies(chain).forEach((angular, i) => {
      expect(angular).toBeCloseTo(worked[i]!.angular, 4);
      expect((angular * 60) / (2 * Math.PI)).toBeCloseTo(worked[i]!.cpm, 3);
    });
    expect(holzerChainFrequencies(chain)).toHaveLength(2);
  });

  it('tabulates amplitudes and torques, and leaves no residual', () => {
    holzerChainFrequencies(chain).forEach((angular, i) => {
      const table = holzerTable(chain, angular);
      for (const [row, amplitude] of worked[i]!.amplitudes.entries())
        expect(table[row]!.amplitude).toBeCloseTo(amplitude, 6);
      for (const [row, torque] of (worked[i]!.torques ?? []).entries())
        expect(table[row]!.torque).toBeCloseTo(torque, 1);
      expect(Math.abs(holzerResidual(chain, angular))).toBeLessThan(1e-6);
    });
  });

  it('agrees with the matrix in frequency, amplitudes, torques and node', () => {
    const { modes } = must(solveTorsional(model));
    modes.forEach((mode, i) => {
      expect(mode.angular).toBeCloseTo(worked[i]!.angular, 4);
      expect([...mode.amplitudes.values()].map(a => a.toFixed(6))).toEqual(
        worked[i]!.amplitudes.map(a => a.toFixed(6)),
      );
      for (const [at, torque] of (worked[i]!.torques ?? []).entries())
        expect(mode.torques[at]!.torque).toBeCloseTo(torque, 1);
    });
    expect(modes.map(mode => mode.nodes.map(node => node.shaft))).toEqual([['b'], ['a', 'b']]);
    expect(modes[0]!.nodes[0]!.fraction).toBeCloseTo(0.639784 / (0.639784 + 0.375986), 6);
  });
});

const three = { J1: 20, J2: 4, J3: 60, k1: 1e5, k2: 4e4 };
published(threeInertiaFrequency.lower, 'Holzer’s table worked outside this code', [
  { case: 'per minute', inputs: three, gives: 405.264, within: 5e-4, unit: PER_MINUTE },
]);
published(threeInertiaFrequency.upper, 'Holzer’s table worked outside this code', [
  { case: 'per minute', inputs: three, gives: 1882.582, within: 5e-4, unit: PER_MINUTE },
]);
published(twoInertiaNode, 'lever rule: 1 and 3 over 2 m stand still at 1.5 m', [
  { case: 'round numbers', inputs: { L: 2, J1: 1, J2: 3 }, gives: 1.5, within: 1e-12 },
]);
published(shaftTorsionalStiffness, 'T. Bevan, The Theory of Machines, ch. 15 ex. 1: 2.651e6 lbf·in/rad', [
  {
    case: '3 in, 36 in',
    inputs: { G: 12e6 * PSI, d: 3 * INCH, di: 0, L: 36 * INCH },
    gives: 2.651e6,
    within: 500,
    unit: PSI * INCH ** 3,
  },
]);
published(shaftPolarInertia, 'half of mass times radius squared: 7850 kg/m³, 0.1 m by 1 m weighs 61.65 kg', [
  {
    case: 'solid',
    inputs: { d: 0.1, di: 0, L: 1, rho: 7850 },
    gives: (61.654 * 0.05 ** 2) / 2,
    within: 1e-6,
  },
]);
published(seriesPairStiffness, 'springs in series: 3 and 6 give 2', [
  { case: 'round numbers', inputs: { k1: 3, k2: 6 }, gives: 2, within: 1e-12 },
]);

it('gives a stepped shaft one stiffness by equivalent length and by springs in series', () => {
  const length = (si: number) => given('L', 'L', 'length', si);
  const modulus = given('G', 'G', 'pressure', 80e9);
  const piece = (d: number, L: number) =>
    shaftTorsionalStiffness({ G: modulus, d: length(d), di: length(0), L: length(L) });
  const whole = [piece(0.06, 0.8), piece(0.05, 0.3), piece(0.07, 1.1)] as const;
  const pieces: [number, number][] = [
    [0.06, 0.8],
    [0.05, 0.3],
    [0.07, 1.1],
  ];
  const equal = pieces
    .map(([d, L]) => equivalentLength({ L: length(L), d: length(d), de: length(0.06) }).si)
    .reduce((a, b) => a + b);
  expect(seriesStiffness(...whole).si).toBeCloseTo(piece(0.06, equal).si, 6);
  expect(renamed(seriesStiffness(whole[0]), 'one').si).toBe(whole[0].si);
});
