import {
  assemblyConditions,
  carriedShares,
  type GearMesh,
  type GearTrain,
  ringTeeth,
  torqueOfShare,
  trainMotion,
  trainRatio,
  trainTorques,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carrierTorque,
  doublePlanetRatio,
  gearPairRatio,
  ringToCarrierRatio,
  ringTorque,
  sunToCarrierRatio,
  sunToRingRatio,
} from '../held/simple-sets.js';
import { published } from '../published.js';

const KHURMI = 'Khurmi and Gupta, Theory of Machines, chapter 13';

const external = (a: string, teethA: number, b: string, teethB: number, carrier?: string): GearMesh => ({
  a,
  teethA,
  b,
  teethB,
  kind: 'external',
  carrier,
});
const internal = (a: string, teethA: number, b: string, teethB: number, carrier?: string): GearMesh => ({
  ...external(a, teethA, b, teethB, carrier),
  kind: 'internal',
});
const simpleSet = (sun: number, planet: number, ring: number): GearMesh[] => [
  external('sun', sun, 'planet', planet, 'carrier'),
  internal('planet', planet, 'ring', ring, 'carrier'),
];
const speedOf = (train: GearTrain, driven: Record<string, number>, member: string) => {
  const motion = trainMotion(train, driven);
  if (!motion.solved) throw new Error(motion.problem);
  return motion.speeds.get(member);
};

describe(`published trains, ${KHURMI}`, () => {
  it('Ex 13.1: three pairs in series, 975 rpm, gives 52 rpm', () => {
    const train = {
      meshes: [external('A', 20, 'BC', 50), external('BC', 25, 'DE', 75), external('DE', 26, 'F', 65)],
    };
    // Three external meshes: the sense turns over.
    expect(speedOf(train, { A: 975 }, 'F')).toBeCloseTo(-52, 10);
  });

  it('Ex 13.4: two gears on an arm turning 150 counter-clockwise', () => {
    const train = { meshes: [external('A', 36, 'B', 45, 'arm')] };
    expect(speedOf(train, { A: 0, arm: 150 }, 'B')).toBeCloseTo(270, 10);
    expect(speedOf(train, { A: -300, arm: 150 }, 'B')).toBeCloseTo(510, 10);
  });

  it('Ex 13.5: reverted train, arm 100 clockwise, C turns 400 counter-clockwise', () => {
    // E has 30 + 90 - 75 = 45 teeth, so that both pairs have one centre distance.
    const train = {
      meshes: [external('B', 75, 'DE', 45, 'arm'), external('DE', 90, 'C', 30, 'arm')],
      held: ['B'],
    };
    expect(speedOf(train, { arm: 100 }, 'C')).toBeCloseTo(-400, 10);
  });

  it('Ex 13.6: ring A 72 held, sun C 32, arm 18 rpm', () => {
    const train = {
      meshes: [internal('B', 20, 'A', 72, 'arm'), external('C', 32, 'B', 20, 'arm')],
      held: ['A'],
    };
    expect(speedOf(train, { arm: 18 }, 'C')).toBeCloseTo(58.5, 10);
    expect(speedOf(train, { arm: 18 }, 'B')).toBeCloseTo(-46.8, 10);
  });

  it('Ex 13.17: bevel reduction, B at 1000 rpm', () => {
    const bevel = (a: string, teethA: number, teethB: number, side: 'near' | 'far'): GearMesh => ({
      a,
      teethA,
      b: 'DE',
      teethB,
      kind: 'bevel',
      side,
      carrier: 'arm',
    });
    const meshes = [bevel('B', 20, 80, 'near'), bevel('C', 80, 80, 'far'), bevel('F', 32, 30, 'far')];
    expect(speedOf({ meshes, held: ['C'] }, { B: 1000 }, 'F')).toBeCloseTo(12.5, 10);
    // 22.375 exactly, printed to three digits.
    expect(speedOf({ meshes }, { B: 1000, C: 10 }, 'F')).toBeCloseTo(22.4, 1);
  });

  it('Ex 13.19: printed 37.15 rpm and 2692 N·m come of a rounded arm speed; exact 37.5 rpm and 2666.7 N·m', () => {
    const train = {
      meshes: [
        external('A', 15, 'BC', 20, 'arm'),
        internal('BC', 20, 'E', 55, 'arm'),
        internal('BC', 15, 'D', 50, 'arm'),
      ],
      held: ['E'],
    };
    expect(speedOf(train, { A: 1000 }, 'arm')).toBeCloseTo(214.2857, 4);
    expect(speedOf(train, { A: 1000 }, 'D')).toBeCloseTo(37.5, 10);
    const torques = trainTorques(train, 'A', 'D', 100);
    expect(torques.known && torques.torques.get('D')).toBeCloseTo(-2666.667, 3);
    // With the arm speed rounded to 214 rpm, as the book does, its figures follow.
    const rounded = speedOf({ meshes: train.meshes }, { A: 1000, arm: 214 }, 'D')!;
    expect(rounded).toBeCloseTo(37.15, 10);
    expect((100 * 1000) / rounded).toBeCloseTo(2692, 0);
  });

  it('Ex 13.20: sun torque 100 N·m, ratio 5, Z_S 16: ring 64 teeth, held with 400 N·m', () => {
    const train = { meshes: simpleSet(16, 24, 64), held: ['ring'] };
    const ratio = trainRatio(train, 'sun', 'carrier');
    expect(ratio.known && ratio.ratio.si).toBeCloseTo(5, 12);
    const torques = trainTorques(train, 'sun', 'carrier', 100);
    expect(torques.known && torques.torques.get('ring')).toBeCloseTo(400, 9);
    expect(torques.known && torques.torques.get('carrier')).toBeCloseTo(-500, 9);
  });
});

describe('trains', () => {
  it('keeps the ratio and flips the sense for an idler', () => {
    const pair = trainRatio({ meshes: [external('in', 20, 'out', 50)] }, 'in', 'out');
    const idler = trainRatio(
      { meshes: [external('in', 20, 'i', 31), external('i', 31, 'out', 50)] },
      'in',
      'out',
    );
    expect(pair.known && pair.ratio.si).toBeCloseTo(-2.5, 12);
    expect(idler.known && idler.ratio.si).toBeCloseTo(2.5, 12);
  });

  it('locks up to one to one', () => {
    const locked = trainRatio({ meshes: simpleSet(30, 20, 70), locked: [['sun', 'carrier']] }, 'sun', 'ring');
    expect(locked.known && locked.ratio.si).toBeCloseTo(1, 12);
  });

  it('agrees with the closed forms of a simple set, and its torques do no work', () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 12, max: 60 }), (sun, planet) => {
        const ring = sun + 2 * planet;
        const meshes = simpleSet(sun, planet, ring);
        for (const [held, input, output, expected] of [
          ['ring', 'sun', 'carrier', 1 + ring / sun],
          ['sun', 'ring', 'carrier', 1 + sun / ring],
          ['carrier', 'sun', 'ring', -ring / sun],
        ] as const) {
          const train = { meshes, held: [held] };
          const ratio = trainRatio(train, input, output);
          expect(ratio.known && Math.abs(ratio.ratio.si / expected - 1)).toBeLessThan(1e-9);
          const torques = trainTorques(train, input, output, 100);
          if (!torques.known) throw new Error(torques.problem);
          const motion = trainMotion(train, { [input]: 10 });
          if (!motion.solved) throw new Error(motion.problem);
          let work = 0;
          let sum = 0;
          for (const [member, torque] of torques.torques) {
            work += torque * motion.speeds.get(member)!;
            sum += torque;
          }
          expect(Math.abs(work)).toBeLessThan(1e-6);
          expect(Math.abs(sum)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it.each<[string, GearTrain, string, string, string]>([
    ['not held', { meshes: simpleSet(30, 20, 70) }, 'sun', 'carrier', 'must be held or locked'],
    ['held still', { meshes: simpleSet(30, 20, 70), held: ['sun'] }, 'sun', 'carrier', 'contradict'],
    ['output held', { meshes: simpleSet(30, 20, 70), held: ['ring'] }, 'sun', 'ring', 'stands still'],
    ['no mesh', { meshes: [] }, 'a', 'b', 'no mesh'],
    ['half a tooth', { meshes: [external('a', 20.5, 'b', 30)] }, 'a', 'b', 'whole number of teeth, not 20.5'],
    ['itself', { meshes: [external('a', 20, 'a', 30)] }, 'a', 'a', 'cannot mesh with itself'],
    ['stranger held', { meshes: [external('a', 20, 'b', 30)], held: ['x'] }, 'a', 'b', 'x is in no mesh'],
    ['stranger out', { meshes: [external('a', 20, 'b', 30)] }, 'a', 'x', 'x is in no mesh'],
    ['stranger in', { meshes: [external('a', 20, 'b', 30)] }, 'x', 'b', 'x is in no mesh'],
    [
      'bevel on fixed shafts',
      { meshes: [{ ...external('a', 20, 'b', 30), kind: 'bevel' }] },
      'a',
      'b',
      'depends on their axes',
    ],
  ])('says what is wrong: %s', (_, train, input, output, problem) => {
    const ratio = trainRatio(train, input, output);
    expect(ratio.known ? '' : ratio.problem).toContain(problem);
  });

  it('says what a lock carries: all of it between input and output, a share of it between sun and ring', () => {
    const meshes = simpleSet(30, 20, 70);
    const all = trainTorques({ meshes, locked: [['sun', 'carrier']] }, 'sun', 'carrier', 100);
    expect(all.known && all.locks[0]).toBeCloseTo(-100, 9);
    // Between sun and ring, each takes its share of the carrier's torque in the ratio of the teeth: 70 of 100 go across.
    const part = carriedShares({ meshes, locked: [['sun', 'ring']] }, 'sun', 'carrier');
    expect(part.known && part.shares[0]!.share.si).toBeCloseTo(-0.7, 9);
  });

  it('shows the balance of each member', () => {
    const found = carriedShares({ meshes: simpleSet(16, 24, 64), held: ['ring'] }, 'sun', 'carrier');
    expect(found.known && found.shares.map(one => [one.by, one.members, one.share.si])).toEqual([
      ['held', ['ring'], expect.closeTo(4, 9)],
    ]);
    expect(found.known && found.shares[0]!.share.working!.text).toBe(
      'T_sun + 16 F1 = 0; 24 F1 + 24 F2 = 0; T_carrier − 40 F1 + 40 F2 = 0; T_ring − 64 F2 = 0',
    );
  });

  it('has no torques where nothing is held', () => {
    const torques = trainTorques({ meshes: simpleSet(30, 20, 70) }, 'sun', 'carrier', 100);
    expect(torques.known).toBe(false);
  });

  it('shows the equations it solved', () => {
    const ratio = trainRatio({ meshes: simpleSet(16, 24, 64), held: ['ring'] }, 'sun', 'carrier');
    expect(ratio.known && ratio.ratio.working?.text).toBe(
      '16 (ω_sun − ω_carrier) = −24 (ω_planet − ω_carrier); 24 (ω_planet − ω_carrier) = 64 (ω_ring − ω_carrier)',
    );
    expect(ratio.known && ratio.ratio.working?.notes).toEqual(['ring is held']);
  });
});

published(gearPairRatio, `${KHURMI}, Ex 13.1, first pair: 975 rpm to 390`, [
  { case: '20 and 50 teeth', inputs: { driver: 20, driven: 50 }, gives: 975 / 390, within: 1e-9 },
]);
published(sunToCarrierRatio, `${KHURMI}, Ex 13.6 and 13.20`, [
  { case: 'sun 32, ring 72: 58.5 to 18 rpm', inputs: { sun: 32, ring: 72 }, gives: 58.5 / 18, within: 1e-9 },
  { case: 'sun 16, ring 64', inputs: { sun: 16, ring: 64 }, gives: 5, within: 1e-9 },
]);
published(
  ringToCarrierRatio,
  'Willis relation solved by hand: 70 (70 - c) = 30 (c - 0) with ring at 70 rpm, c = 49',
  [{ case: 'sun 30, ring 70', inputs: { sun: 30, ring: 70 }, gives: 70 / 49, within: 1e-9 }],
);
published(sunToRingRatio, `${KHURMI}, Ex 13.6 seen from the arm: 40.5 against -18 rpm`, [
  { case: 'sun 32, ring 72', inputs: { sun: 32, ring: 72 }, gives: 40.5 / -18, within: 1e-9 },
]);
published(doublePlanetRatio, 'three meshes, two external and one internal, counted by hand', [
  { case: 'sun 30, ring 75', inputs: { sun: 30, ring: 75 }, gives: 2.5, within: 1e-9 },
]);
published(ringTeeth, `${KHURMI}, Ex 13.6 and 13.19`, [
  { case: 'sun 32, planet 20', inputs: { sun: 32, planet: 20 }, gives: 72, within: 0 },
  { case: 'sun 15, planet 20', inputs: { sun: 15, planet: 20 }, gives: 55, within: 0 },
]);
published(ringTorque, `${KHURMI}, Ex 13.20`, [
  { case: '100 N·m on the sun', inputs: { sunTorque: 100, sun: 16, ring: 64 }, gives: 400, within: 0.5 },
]);
published(carrierTorque, `${KHURMI}, Ex 13.20: the sum of the other two`, [
  { case: '100 N·m on the sun', inputs: { sunTorque: 100, sun: 16, ring: 64 }, gives: -500, within: 0.5 },
]);

published(torqueOfShare, `${KHURMI}, Ex 13.20: the ring of 64 teeth on a sun of 16`, [
  { case: '100 N·m on the sun', inputs: { share: 4, inputTorque: 100 }, gives: 400, within: 0.5 },
]);

describe('assembly of a simple set', () => {
  it.each([
    [16, 24, 64, 4, [true, true, true]],
    [16, 24, 64, 3, [true, false, true]],
    [16, 24, 60, 4, [false, true, true]],
    [16, 40, 96, 4, [true, true, false]],
  ])('sun %i, planet %i, ring %i, %i planets', (sun, planet, ring, planets, met) => {
    expect(assemblyConditions(sun, planet, ring, planets).map(one => one.met)).toEqual(met);
  });
});
