import {
  type Damper,
  type ForcedResponse,
  forcedResponse,
  type SwingingTorque,
  solveTorsional,
  type TorsionalModel,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { relativeDampingOfMagnifier } from '../../src/vibration/index.js';
import { published } from '../published.js';
import { G, J, K, must } from './trains.js';

function respond(
  model: TorsionalModel,
  angular: number,
  torques: readonly SwingingTorque[],
  dampers: readonly Damper[],
): ForcedResponse {
  const response = forcedResponse(model, must(solveTorsional(model)), angular, torques, dampers);
  if (!response) throw new Error('no response');
  return response;
}

describe('one inertia on a held shaft: the magnifier of every vibration textbook', () => {
  const model: TorsionalModel = {
    inertias: [J('wall', 1, { held: true }), J('disc', 2)],
    shafts: [K('shaft', 'wall', 'disc', 800)],
    reference: 'disc',
  };
  const natural = 20;
  // 1 / √((1 − r²)² + (2ζr)²); at resonance 1/(2ζ). Den Hartog, Mechanical Vibrations, chapter 2.
  it.each([
    [0.5, 0.1],
    [1, 0.05],
    [1.4, 0.3],
    [3, 0.02],
  ])('at %d of the natural frequency with ζ %d', (r, zeta) => {
    const c = 2 * zeta * Math.sqrt(800 * 2);
    const response = respond(
      model,
      r * natural,
      [{ inertia: 'disc', torque: 40 }],
      [{ inertia: 'disc', damping: c }],
    );
    const still = 40 / 800;
    expect(response.amplitudes.get('disc')! / still).toBeCloseTo(1 / Math.hypot(1 - r ** 2, 2 * zeta * r), 9);
    expect(response.torques.get('shaft')).toBeCloseTo(800 * response.amplitudes.get('disc')!, 6);
  });

  it('gives nothing where a resonance is met and nothing damps it', () => {
    const solution = must(solveTorsional(model));
    expect(forcedResponse(model, solution, natural, [{ inertia: 'disc', torque: 40 }], [])).toBeUndefined();
  });
});

describe('the damped absorber of Den Hartog, Mechanical Vibrations, chapter 3, mass ratio 1/20', () => {
  const mu = 1 / 20;
  const [main, mainSpring] = [20, 20 * 100];
  const frequency = 10;
  const absorber = main * mu;
  const amplitude = (tuned: number, zeta: number, g: number) => {
    const spring = absorber * (tuned * frequency) ** 2;
    const model: TorsionalModel = {
      inertias: [J('wall', 1, { held: true }), J('main', main), J('absorber', absorber)],
      shafts: [
        K('main spring', 'wall', 'main', mainSpring),
        K('absorber spring', 'main', 'absorber', spring),
      ],
      reference: 'main',
    };
    const damping = 2 * zeta * absorber * frequency;
    const response = respond(
      model,
      g * frequency,
      [{ inertia: 'main', torque: mainSpring }],
      [{ shaft: 'absorber spring', damping }],
    );
    return response.amplitudes.get('main')!;
  };

  // The book's formula for x₁/x_st, written out independently of any matrix.
  const closed = (f: number, zeta: number, g: number) => {
    const d = (2 * zeta * g) ** 2;
    return Math.sqrt(
      (d + (g ** 2 - f ** 2) ** 2) /
        (d * (g ** 2 - 1 + mu * g ** 2) ** 2 +
          (mu * f ** 2 * g ** 2 - (g ** 2 - 1) * (g ** 2 - f ** 2)) ** 2),
    );
  };
  it.each([
    [1, 0.1, 0.9],
    [1, 0.32, 1.1],
    [0.95, 0.05, 1],
    [1 / 1.05, 0.127, 0.8],
  ])('tuning %d, damping %d, at %d of the main frequency', (f, zeta, g) => {
    expect(amplitude(f, zeta, g)).toBeCloseTo(closed(f, zeta, g), 8);
  });

  it('passes through its fixed points whatever the damping, at √(1 + 2/μ) when tuned to 1/(1 + μ)', () => {
    // Fixed points: g² = (1 ± √(μ/(2 + μ))) / (1 + μ), published height √41 = 6.40 for μ = 1/20.
    for (const sign of [-1, 1]) {
      const g = Math.sqrt((1 + sign * Math.sqrt(mu / (2 + mu))) / (1 + mu));
      for (const zeta of [0.02, 0.1, 0.4]) expect(amplitude(1 / (1 + mu), zeta, g)).toBeCloseTo(6.4, 2);
    }
  });
});

it('agrees with integration over time of a geared, damped train', () => {
  // engine – damper – gear (2.5:1, opposite) – shaft – propeller; every figure of the train at its own speed.
  const ratio = 2.5;
  const [engine, input, output, propeller] = [3, 0.5, 2.4, 12];
  const [k1, k2, c1, cp] = [6000, 160_000, 25, 60];
  const model: TorsionalModel = {
    inertias: [J('engine', engine), J('input', input), J('output', output), J('propeller', propeller)],
    shafts: [K('damper', 'engine', 'input', k1), K('shaft', 'output', 'propeller', k2)],
    gears: [G('mesh', 'input', 'output', ratio)],
  };
  const angular = 88;
  const torque = 300;
  const response = respond(
    model,
    angular,
    [{ inertia: 'engine', torque }],
    [
      { shaft: 'damper', damping: c1 },
      { inertia: 'propeller', damping: cp },
    ],
  );
  // Equations of motion with the gear written as a constraint θ_out = −θ_in / ratio, stepped by Runge-Kutta 4.
  const wheel = input + output / ratio ** 2;
  const rates = (t: number, [a, b, p, va, vb, vp]: number[]): number[] => {
    const out = -b! / ratio;
    const damperTorque = k1 * (a! - b!) + c1 * (va! - vb!);
    const shaftTorque = k2 * (out - p!);
    return [
      va!,
      vb!,
      vp!,
      (torque * Math.sin(angular * t) - damperTorque) / engine,
      (damperTorque + shaftTorque / ratio) / wheel,
      (shaftTorque - cp * vp!) / propeller,
    ];
  };
  let state = [0, 0, 0, 0, 0, 0];
  const step = 2e-5;
  const along = (from: number[], by: number[], h: number) => from.map((x, i) => x + h * by[i]!);
  const [from, to] = [6, 7];
  const twists = { damper: [] as number[], shaft: [] as number[] };
  for (let i = 0; i * step < to; i++) {
    const t = i * step;
    const a = rates(t, state);
    const b = rates(t + step / 2, along(state, a, step / 2));
    const c = rates(t + step / 2, along(state, b, step / 2));
    const d = rates(t + step, along(state, c, step));
    state = state.map((x, n) => x + (step / 6) * (a[n]! + 2 * b[n]! + 2 * c[n]! + d[n]!));
    if (t < from) continue;
    const [x, y, p, vx, vy] = state as [number, number, number, number, number];
    twists.damper.push(k1 * (x - y) + c1 * (vx - vy));
    twists.shaft.push(k2 * (-y / ratio - p));
  }
  const half = (some: number[]) => (Math.max(...some) - Math.min(...some)) / 2;
  expect(response.torques.get('damper')! / half(twists.damper)).toBeCloseTo(1, 3);
  expect(response.torques.get('shaft')! / half(twists.shaft)).toBeCloseTo(1, 3);
});

published(relativeDampingOfMagnifier, 'definition: energy lost a cycle over energy stored, ψ = 2π / M', [
  {
    case: 'magnifier 2π loses as much as it stores',
    inputs: { magnifier: 2 * Math.PI },
    gives: 1,
    within: 1e-12,
  },
  { case: 'magnifier 6', inputs: { magnifier: 6 }, gives: 1.0472, within: 5e-5 },
]);
