import type { Source } from '../../core/source.js';
import type { Damper } from './damping.js';
import { solveSquare } from './square-system.js';
import type { TorsionalModel } from './torsional-model.js';
import type { TorsionalSolution } from './torsional-modes.js';

/** A torque that swings at one frequency, N·m of amplitude, on an inertia at its own speed. */
export interface SwingingTorque {
  readonly inertia: string;
  readonly torque: number;
  /** Phase against the other torques of the same frequency, rad. */
  readonly phase?: number;
}

/** Steady vibration under such torques: sizes only, half of the swing from end to end. */
export interface ForcedResponse {
  readonly angular: number;
  /** Amplitude of each inertia at its own speed, rad. */
  readonly amplitudes: ReadonlyMap<string, number>;
  /** Amplitude of the torque in each shaft or coupling, spring and damper together, N·m at its own speed. */
  readonly torques: ReadonlyMap<string, number>;
}

export const FORCED_TORSION: Source = {
  title:
    'Steady vibration of rigid inertias joined by torsion springs and viscous dampers under torques of one frequency',
  confidence: 'derived',
};

/**
 * (K − ω² J + iωC) θ = T in the referred system, solved as a real system of twice the size. Undefined where nothing
 * damps a resonance that is met exactly.
 */
export function forcedResponse(
  model: TorsionalModel,
  { referred, speeds }: TorsionalSolution,
  angular: number,
  torques: readonly SwingingTorque[],
  dampers: readonly Damper[],
): ForcedResponse | undefined {
  const { groups, groupOf, held, inertia, stiffness } = referred;
  const free = groups.map((_, at) => at).filter(at => !held.has(at));
  const place = new Map(free.map((group, at) => [group, at]));
  const placeOf = (name: string) => place.get(groupOf.get(name)!);
  const size = free.length;
  const damping = zeros(size);
  const add = (i: number | undefined, j: number | undefined, value: number) => {
    if (i !== undefined && j !== undefined) damping[i]![j]! += value;
  };
  const across = new Map<string, number>();
  for (const one of dampers) {
    if ('inertia' in one) {
      const at = placeOf(one.inertia);
      add(at, at, one.damping * speeds.get(one.inertia)! ** 2);
      continue;
    }
    const shaft = model.shafts.find(({ name }) => name === one.shaft);
    if (!shaft) continue;
    across.set(one.shaft, (across.get(one.shaft) ?? 0) + one.damping);
    const [a, b] = [placeOf(shaft.from), placeOf(shaft.to)];
    const referredDamping = one.damping * speeds.get(shaft.from)! ** 2;
    add(a, a, referredDamping);
    add(b, b, referredDamping);
    add(a, b, -referredDamping);
    add(b, a, -referredDamping);
  }
  const system = zeros(2 * size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const spring = stiffness[free[i]!]![free[j]!]! - (i === j ? angular ** 2 * inertia[free[i]!]! : 0);
      const resist = angular * damping[i]![j]!;
      system[i]![j] = spring;
      system[size + i]![size + j] = spring;
      system[i]![size + j] = -resist;
      system[size + i]![j] = resist;
    }
  const right = system.map(() => [0]);
  for (const { inertia: at, torque, phase = 0 } of torques) {
    const row = placeOf(at);
    if (row === undefined) continue;
    const here = torque * speeds.get(at)!;
    right[row]![0]! += here * Math.cos(phase);
    right[size + row]![0]! += here * Math.sin(phase);
  }
  const solved = solveSquare(system, right)?.flat();
  if (!solved) return undefined;
  const moved = (name: string): readonly [number, number] => {
    const row = placeOf(name);
    const speed = speeds.get(name)!;
    return row === undefined ? [0, 0] : [solved[row]! * speed, solved[size + row]! * speed];
  };
  return {
    angular,
    amplitudes: new Map(model.inertias.map(({ name }) => [name, Math.hypot(...moved(name))])),
    torques: new Map(
      model.shafts.map(({ name, from, to, stiffness: k }) => {
        const [a, b] = [moved(from), moved(to)];
        const twist = Math.hypot(a[0] - b[0], a[1] - b[1]);
        return [name, twist * Math.hypot(k!.si, angular * (across.get(name) ?? 0))];
      }),
    ),
  };
}

function zeros(size: number): number[][] {
  return Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
}
