import type { TorsionalModel } from './torsional-model.js';
import type { TorsionalSpeeds } from './torsional-speeds.js';

/**
 * The equivalent ungeared system at the speed of the reference inertia: one coordinate for each set of inertias that
 * gears tie together. J = Σ J s² and k s², with s the speed relative to the reference.
 */
export interface ReferredSystem {
  /** Names of the inertias that move with each coordinate. */
  readonly groups: readonly (readonly string[])[];
  /** Referred moment of inertia of each coordinate, kg·m² (the matrix is diagonal). */
  readonly inertia: readonly number[];
  /** Referred stiffness matrix, N·m/rad. */
  readonly stiffness: readonly (readonly number[])[];
  readonly groupOf: ReadonlyMap<string, number>;
  /** Coordinates that cannot turn. */
  readonly held: ReadonlySet<number>;
}

/** Assembles the referred matrices. Needs complete data and agreeing speeds. */
export function referredSystem(model: TorsionalModel, { speeds }: TorsionalSpeeds): ReferredSystem {
  const { groups, groupOf } = gearGroups(model);
  const inertia = groups.map(() => 0);
  const held = new Set<number>();
  for (const one of model.inertias) {
    const group = groupOf.get(one.name)!;
    if (one.held) held.add(group);
    inertia[group]! += (one.inertia?.si ?? 0) * speeds.get(one.name)! ** 2;
  }
  const stiffness = groups.map(() => groups.map(() => 0));
  for (const { from, to, stiffness: k } of model.shafts) {
    const [a, b] = [groupOf.get(from)!, groupOf.get(to)!];
    const referred = k!.si * speeds.get(from)! ** 2;
    stiffness[a]![a]! += referred;
    stiffness[b]![b]! += referred;
    stiffness[a]![b]! -= referred;
    stiffness[b]![a]! -= referred;
  }
  return { groups, inertia, stiffness, groupOf, held };
}

/** Inertias joined by gears move together: found by following gears only. */
function gearGroups({ inertias, gears = [] }: TorsionalModel) {
  const groups: string[][] = [];
  const groupOf = new Map<string, number>();
  for (const { name } of inertias) {
    if (groupOf.has(name)) continue;
    const members: string[] = [];
    const queue = [name];
    for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
      if (groupOf.has(at)) continue;
      groupOf.set(at, groups.length);
      members.push(at);
      for (const { driver, driven } of gears) {
        if (driver === at) queue.push(driven);
        if (driven === at) queue.push(driver);
      }
    }
    groups.push(members);
  }
  return { groups, groupOf };
}
