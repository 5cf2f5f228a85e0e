import {
  dividedShaft,
  given,
  SHAFT_PIECES,
  shaftPieceInertia,
  shaftPieceStiffness,
  solveTorsional,
  type TorsionalModel,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { J, must } from './trains.js';

/** Shafts of stiffness k and own inertia Js between J1 and J2, held at the first where J1 is not given. */
function lowest(k: number, Js: number, J1: number | undefined, J2: number): number {
  const { stiffness, between, atEnd } = dividedShaft(
    given('k', 'k', 'torsional stiffness', k),
    given('J', 'J', 'moment of inertia', Js),
  );
  const inertias = Array.from({ length: SHAFT_PIECES + 1 }, (_, at) =>
    J(`${at}`, at === 0 ? (J1 ?? 1) + atEnd.si : at === SHAFT_PIECES ? J2 + atEnd.si : between.si),
  );
  const model: TorsionalModel = {
    inertias: J1 === undefined ? [{ name: '0', held: true }, ...inertias.slice(1)] : inertias,
    shafts: Array.from({ length: SHAFT_PIECES }, (_, at) => ({
      name: `piece ${at}`,
      from: `${at}`,
      to: `${at + 1}`,
      stiffness,
    })),
  };
  return must(solveTorsional(model)).modes[0]!.angular;
}

/** Root of a rising function by halves. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let turn = 0; turn < 200; turn++) {
    const middle = (a + b) / 2;
    if (f(a) * f(middle) <= 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

/**
 * Wave equation of a uniform shaft with an inertia at either end, a = J1/Js and b = J2/Js: with λ = ω √(Js/k),
 * (a b λ² − 1) sin λ = (a + b) λ cos λ. Standard in books on vibration (S. Timoshenko, Vibration Problems in
 * Engineering, torsional vibration of a shaft with discs at the ends; the equation from memory, derived again here).
 */
const waveBothEnds = (a: number, b: number) =>
  root(x => (a * b * x * x - 1) * Math.sin(x) - (a + b) * x * Math.cos(x), 1e-6, Math.PI - 1e-6);

/** One end held: λ tan λ = Js/J. */
const waveHeld = (share: number) =>
  root(x => x * Math.sin(x) - share * Math.cos(x), 1e-9, Math.PI / 2 - 1e-12);

describe('a shaft that turns along its length', () => {
  it.each([
    [10, 4],
    [3, 1],
    [1, 1],
    [0.5, 2],
    [0.25, 0.25],
  ])('agrees with the wave equation with inertias of %d and %d times its own at the ends', (a, b) => {
    const exact = waveBothEnds(a, b);
    expect(Math.abs(lowest(1, 1, a, b) / exact - 1)).toBeLessThan(a * b < 0.1 ? 0.005 : 0.0025);
    // Left out, it comes out too high: by 4 % where the ends are about four times the shaft.
    expect(Math.sqrt(1 / a + 1 / b) / exact).toBeGreaterThan(1.01);
  });

  it.each([0.05, 0.1, 0.3])(
    'one end held, agrees with the wave equation and with a third of its inertia at the other, %d of it',
    share => {
      const exact = waveHeld(share);
      expect(Math.abs(lowest(1, share, undefined, 1) / (exact / Math.sqrt(share)) - 1)).toBeLessThan(0.002);
      // A third of the shaft added to the end (Rayleigh; R. S. Khurmi, Theory of Machines, ch. 24, from memory).
      expect(Math.abs(lowest(1, share, undefined, 1) * Math.sqrt(1 + share / 3) - 1)).toBeLessThan(0.002);
    },
  );
});

published(shaftPieceInertia, 'by definition of a share', [
  { case: 'a quarter', inputs: { J: 0.2, n: 4 }, gives: 0.05, within: 1e-12 },
]);
published(shaftPieceStiffness, 'springs in series: n equal pieces give the whole', [
  { case: 'four pieces', inputs: { k: 1000, n: 4 }, gives: 4000, within: 1e-12 },
]);
