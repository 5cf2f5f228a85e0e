import { formula } from '../../core/formula.js';
import { given } from '../../core/value.js';
import type { TorsionalModel } from './torsional-model.js';
import type { TorsionalMode } from './torsional-modes.js';

/** C = a Q/N with N in rpm and a near 30 (Archer), which is π Q/Ω in SI. */
export const propellerDampingArcher = /* @__PURE__ */ formula({
  name: 'propeller damping by Archer’s factor',
  symbol: 'C',
  dimension: 'torsional damping',
  inputs: { a: 'number', Q: 'torque', Omega: 'rotational speed' },
  text: 'C = a Q / (60 Ω / 2π), speed in rpm',
  symbols: { a: 'a', Q: 'Q', Omega: 'Ω' },
  source: {
    author: 'S. Archer',
    title: 'Propeller damping in torsional vibration',
    confidence: 'from memory',
  },
  range: [{ condition: 'a is near 30 (20 to 40)', met: ({ a }) => a >= 20 && a <= 40 }],
  compute: ({ a, Q, Omega }) => (a * Q) / ((60 * Omega) / (2 * Math.PI)),
});

export const ARCHER_FACTOR = given('Archer’s factor', 'a', 'number', 30, {
  assumed: 'near 30 (from memory)',
});

/** C = ω J / M, N·m·s/rad: damping at one crank from the magnifier M that it alone would allow. */
export const engineDamping = /* @__PURE__ */ formula({
  name: 'engine damping from a magnifier',
  symbol: 'C',
  dimension: 'torsional damping',
  inputs: { omega: 'rotational speed', J: 'moment of inertia', M: 'number' },
  text: 'C = ω J / M',
  symbols: { omega: 'ω', J: 'J', M: 'M' },
  source: {
    author: 'W. Ker Wilson',
    title: 'Practical Solution of Torsional Vibration Problems',
    confidence: 'from memory',
  },
  range: [{ condition: 'magnifier of a crank is 30 to 60', met: ({ M }) => M >= 30 && M <= 60 }],
  compute: ({ omega, J, M }) => (omega * J) / M,
});

/** C = ψ k / (2π ω), N·m·s/rad: an elastomeric coupling with relative damping ψ (energy lost per cycle ÷ stored). */
export const couplingDamping = /* @__PURE__ */ formula({
  name: 'elastomeric coupling damping',
  symbol: 'C',
  dimension: 'torsional damping',
  inputs: { psi: 'number', k: 'torsional stiffness', omega: 'rotational speed' },
  text: 'C = ψ k / (2π ω)',
  symbols: { psi: 'ψ', k: 'k', omega: 'ω' },
  source: { title: 'Definition of relative damping as coupling makers use it', confidence: 'from memory' },
  range: [{ condition: 'relative damping is not negative', met: ({ psi }) => psi >= 0 }],
  compute: ({ psi, k, omega }) => (psi * k) / (2 * Math.PI * omega),
});

/** ψ = 2π / M: what the dynamic magnifier on a coupling sheet says in terms of relative damping. */
export const relativeDampingOfMagnifier = /* @__PURE__ */ formula({
  name: 'relative damping of a dynamic magnifier',
  symbol: 'ψ',
  dimension: 'number',
  inputs: { magnifier: 'number' },
  text: 'ψ = 2π / M',
  symbols: { magnifier: 'M' },
  source: {
    title: 'Magnifier of one spring and damper at resonance, M = k / (ω C), put into C = ψ k / (2π ω)',
    confidence: 'derived',
  },
  range: [{ condition: 'the magnifier is positive', met: ({ magnifier }) => magnifier > 0 }],
  compute: ({ magnifier }) => (2 * Math.PI) / magnifier,
});

/** Damping of one part, N·m·s/rad at its own speed: against the ground at an inertia, or across a shaft. */
export type Damper =
  | { readonly inertia: string; readonly damping: number }
  | { readonly shaft: string; readonly damping: number };

/**
 * ζ = Σ C θ² / (2 ω Σ J θ²): damping ratio of a mode when the damping is light enough not to change its shape.
 * 1/(2ζ) is the dynamic magnifier at resonance. Follows from the work of the dampers in a cycle.
 */
export function modalDampingRatio(
  model: TorsionalModel,
  mode: TorsionalMode,
  dampers: readonly Damper[],
): number {
  const moved = (name: string) => mode.amplitudes.get(name) ?? Number.NaN;
  const lost = dampers.reduce((sum, one) => {
    if ('inertia' in one) return sum + one.damping * moved(one.inertia) ** 2;
    const shaft = model.shafts.find(({ name }) => name === one.shaft);
    return sum + (shaft ? one.damping * (moved(shaft.from) - moved(shaft.to)) ** 2 : Number.NaN);
  }, 0);
  const kinetic = model.inertias.reduce((sum, one) => sum + (one.inertia?.si ?? 0) * moved(one.name) ** 2, 0);
  return lost / (2 * mode.angular * kinetic);
}
