import type { Origin } from '../core/value.js';
import { solveEquations } from './linear-equations.js';

/**
 * Two gears in mesh. Gears on one shaft are one member, whatever their tooth counts.
 * `external`: both toothed outside. `internal`: one is a ring. `bevel`: `a` is a gear on the main axis and `b` a bevel
 * planet on an arm across it; `side` is the side of the planet that `a` touches, and the speed of `b` is its spin on the arm.
 */
export interface GearMesh {
  readonly a: string;
  readonly teethA: number;
  readonly b: string;
  readonly teethB: number;
  readonly kind: 'external' | 'internal' | 'bevel';
  readonly side?: 'near' | 'far';
  /** Member that carries the planet of this mesh; none when both shafts have fixed bearings. */
  readonly carrier?: string | undefined;
  /** Where the two tooth counts are declared; one without a place is said to be `assumed`. */
  readonly places?: readonly [a: Origin | undefined, b: Origin | undefined];
  readonly assumed?: string;
}

/** A gear train by its tooth counts, in one state of its clutches and brakes. */
export interface GearTrain {
  readonly meshes: readonly GearMesh[];
  /** Members that a brake or the housing holds still. */
  readonly held?: readonly string[];
  /** Pairs of members that a clutch locks together. */
  readonly locked?: readonly (readonly [string, string])[];
}

/** Speed of every member, or the sentence that says why there is none. */
export type TrainMotion =
  | { readonly solved: true; readonly speeds: ReadonlyMap<string, number | undefined> }
  | { readonly solved: false; readonly problem: string };

/**
 * Speeds of all members when some are driven, by Willis: speeds relative to the carrier are in the ratio of the teeth.
 * Any unit of speed; the sign is the sense. A member whose speed is left open (its train is not held) is undefined.
 */
export function trainMotion(train: GearTrain, driven: Readonly<Record<string, number>>): TrainMotion {
  const problem = problemOf(train);
  if (problem) return { solved: false, problem };
  const members = membersOf(train);
  for (const name of Object.keys(driven)) {
    if (!members.includes(name)) return { solved: false, problem: `${name} is in no mesh of this train` };
  }
  const equations = constraints(train, members).map(row => [...row, 0]);
  for (const [name, speed] of Object.entries(driven)) equations.push([...unit(members, name), speed]);
  const solution = solveEquations(equations, members.length);
  if (solution.contradictory) {
    return {
      solved: false,
      problem: 'this train cannot turn so: what is driven, held and locked contradict each other',
    };
  }
  return { solved: true, speeds: new Map(members.map((name, i) => [name, solution.values[i]])) };
}

/** Every member named in the train. */
export function membersOf(train: GearTrain): string[] {
  const names = new Set<string>();
  for (const mesh of train.meshes) {
    names.add(mesh.a).add(mesh.b);
    if (mesh.carrier) names.add(mesh.carrier);
  }
  return [...names];
}

/** One row per mesh, held member and lock; row · speeds = 0. */
export function constraints(train: GearTrain, members: readonly string[]): number[][] {
  const rows = train.meshes.map(mesh => meshRow(mesh, members));
  for (const name of train.held ?? []) rows.push(unit(members, name));
  for (const [one, other] of train.locked ?? []) {
    rows.push(unit(members, one).map((k, i) => k - unit(members, other)[i]!));
  }
  return rows;
}

/** Why the train cannot be worked out, if it cannot. */
export function problemOf(train: GearTrain): string | undefined {
  if (train.meshes.length === 0) return 'the train has no mesh';
  for (const mesh of train.meshes) {
    for (const [name, teeth] of [
      [mesh.a, mesh.teethA],
      [mesh.b, mesh.teethB],
    ] as const) {
      if (!Number.isInteger(teeth) || teeth < 1) return `${name} needs a whole number of teeth, not ${teeth}`;
    }
    if (mesh.a === mesh.b) return `${mesh.a} cannot mesh with itself`;
    if (mesh.carrier === mesh.a || mesh.carrier === mesh.b)
      return `${mesh.carrier} cannot be carried by itself`;
    if (mesh.kind === 'internal' && mesh.teethA === mesh.teethB) {
      return `${mesh.a} and ${mesh.b} have equal teeth: a pinion inside a ring must have fewer`;
    }
    if (mesh.kind === 'bevel' && !mesh.carrier) {
      return `the bevel mesh of ${mesh.a} and ${mesh.b} has no carrier: with fixed shafts its sense depends on their axes`;
    }
  }
  const members = membersOf(train);
  const named = [...(train.held ?? []), ...(train.locked ?? []).flat()];
  const stranger = named.find(name => !members.includes(name));
  return stranger ? `${stranger} is in no mesh of this train` : undefined;
}

function meshRow(mesh: GearMesh, members: readonly string[]): number[] {
  const row = members.map(() => 0);
  const add = (name: string, k: number) => {
    row[members.indexOf(name)]! += k;
  };
  // External: Za (ωa - ωc) + Zb (ωb - ωc) = 0. Internal: the same with a minus sign.
  const sign = mesh.kind === 'external' || (mesh.kind === 'bevel' && mesh.side === 'far') ? 1 : -1;
  add(mesh.a, mesh.teethA);
  add(mesh.b, sign * mesh.teethB);
  if (mesh.carrier) add(mesh.carrier, -(mesh.teethA + (mesh.kind === 'bevel' ? 0 : sign * mesh.teethB)));
  return row;
}

function unit(members: readonly string[], name: string): number[] {
  return members.map(member => (member === name ? 1 : 0));
}
