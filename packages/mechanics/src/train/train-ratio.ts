import type { Source } from '../core/source.js';
import { given, type Value } from '../core/value.js';
import { solveEquations } from './linear-equations.js';
import { constraints, type GearTrain, membersOf, problemOf, trainMotion } from './train.js';

export const WILLIS: Source = {
  author: 'R. Willis',
  title: 'Principles of Mechanism',
  clause: 'speeds relative to the arm',
  confidence: 'published',
};

/** Signed speed ratio, input over output, or why there is none. */
export type TrainRatio =
  | { readonly known: true; readonly ratio: Value<'ratio'> }
  | { readonly known: false; readonly problem: string };

/**
 * Speed ratio of a train from its tooth counts, input ÷ output: positive when the sense is kept, negative when reversed.
 * Not known when the train is not held where it must be, or cannot turn.
 */
export function trainRatio(train: GearTrain, input: string, output: string): TrainRatio {
  const motion = trainMotion(train, { [input]: 1 });
  if (!motion.solved) return { known: false, problem: motion.problem };
  if (!motion.speeds.has(output)) return { known: false, problem: `${output} is in no mesh of this train` };
  const speed = motion.speeds.get(output);
  if (speed === undefined) {
    return {
      known: false,
      problem: `nothing fixes the speed of ${output} when ${input} turns: a member must be held or locked`,
    };
  }
  if (Math.abs(speed) < 1e-12) return { known: false, problem: `${output} stands still when ${input} turns` };
  return {
    known: true,
    ratio: {
      label: `speed ratio, ${input} to ${output}`,
      symbol: 'i',
      dimension: 'ratio',
      si: 1 / speed,
      working: {
        name: 'speed ratio of a gear train',
        text: trainText(train),
        inputs: teethOf(train),
        source: WILLIS,
        range: [],
        notes: [
          ...(train.held ?? []).map(name => `${name} is held`),
          ...(train.locked ?? []).map(([a, b]) => `${a} and ${b} are locked together`),
        ],
      },
    },
  };
}

/** Torques that act on each member from outside the train, or why they are not known. */
export type TrainTorques =
  | {
      readonly known: true;
      readonly torques: ReadonlyMap<string, number>;
      /** What each lock carries, in the order of the train: the torque that its second member gives its first. */
      readonly locks: readonly number[];
    }
  | { readonly known: false; readonly problem: string };

/**
 * Torque on each member from outside (N·m, positive in the sense of a positive input) without losses: what drives it,
 * what loads it, what holds it still. They add up to zero, bevel planets apart, and do no work together.
 */
export function trainTorques(
  train: GearTrain,
  input: string,
  output: string,
  inputTorque: number,
): TrainTorques {
  const problem = problemOf(train);
  if (problem) return { known: false, problem };
  const members = membersOf(train);
  for (const name of [input, output]) {
    if (!members.includes(name)) return { known: false, problem: `${name} is in no mesh of this train` };
  }
  const rows = constraints(train, members);
  // Balance of each member: outside torque + what every constraint puts on it = 0. Unknown: constraints, output torque.
  const equations = members.map(name => {
    const i = members.indexOf(name);
    const balance = rows.map(row => row[i]!);
    balance.push(name === output ? 1 : 0);
    return [...balance, name === input ? -inputTorque : 0];
  });
  const solution = solveEquations(equations, rows.length + 1);
  const loads = solution.values;
  if (solution.contradictory || loads[rows.length] === undefined) {
    return { known: false, problem: 'the torques do not balance: the train is not held where it must be' };
  }
  const torques = new Map(members.map(name => [name, 0]));
  torques.set(input, inputTorque);
  torques.set(output, (torques.get(output) ?? 0) + loads[rows.length]!);
  const heldFrom = train.meshes.length;
  const locksFrom = heldFrom + (train.held?.length ?? 0);
  for (const [k, name] of (train.held ?? []).entries()) {
    const reaction = loads[heldFrom + k];
    if (reaction === undefined)
      return { known: false, problem: `the torque that holds ${name} is not determined` };
    torques.set(name, (torques.get(name) ?? 0) + reaction);
  }
  const locks: number[] = [];
  for (const [k, [one, other]] of (train.locked ?? []).entries()) {
    const carried = loads[locksFrom + k];
    if (carried === undefined)
      return { known: false, problem: `the torque between ${one} and ${other} is not determined` };
    locks.push(carried);
  }
  return { known: true, torques, locks };
}

function trainText(train: GearTrain): string {
  return train.meshes
    .map(mesh => {
      const relative = (name: string) => (mesh.carrier ? `(ω_${name} − ω_${mesh.carrier})` : `ω_${name}`);
      const planet = mesh.kind === 'bevel' ? `ω_${mesh.b}` : relative(mesh.b);
      const sign = mesh.kind === 'external' || (mesh.kind === 'bevel' && mesh.side === 'far') ? '−' : '';
      return `${mesh.teethA} ${relative(mesh.a)} = ${sign}${mesh.teethB} ${planet}`;
    })
    .join('; ');
}

/** Every tooth count of a train, once for each wheel. */
export function teethOf(train: GearTrain): Value[] {
  const counts = new Map<string, Value>();
  for (const mesh of train.meshes) {
    for (const [name, count, origin] of [
      [mesh.a, mesh.teethA, mesh.places?.[0]],
      [mesh.b, mesh.teethB, mesh.places?.[1]],
    ] as const) {
      const { assumed } = mesh;
      const more = origin ? { origin } : assumed === undefined ? {} : { assumed };
      counts.set(`${name} ${count}`, given(`teeth of ${name}`, `Z_${name}`, 'number', count, more));
    }
  }
  return [...counts.values()];
}
