import { bisectCount } from './bisect-count.js';
import type { ChainLink } from './holzer-chain.js';
import { type TorsionalModel, torsionalGap } from './torsional-model.js';

/** A train without loops, hung up at one inertia: each branch is reached by a spring or by rigid gears. */
export interface HolzerTree {
  readonly name: string;
  /** kg·m², at its own speed. */
  readonly inertia: number;
  readonly branches: readonly { readonly link: ChainLink; readonly to: HolzerTree }[];
}

/** Amplitude at an inertia and the sum of inertia torques up to and with it, on a common scale. */
interface State {
  readonly amplitude: number;
  readonly torque: number;
}

/**
 * Holzer's method for a branched train: every branch is worked from its tip to the junction, and at a natural
 * frequency the torques that meet there are in balance. Returns the torque left over at the root and its amplitude.
 * Instead of dividing by a branch's amplitude at the junction (zero when the branch vibrates alone) all branches are
 * put on the product of their amplitudes, so the residual has no poles.
 */
export function holzerBranchedResidual(tree: HolzerTree, angular: number): State {
  const arriving = tree.branches.map(({ link, to }) => across(link, holzerBranchedResidual(to, angular)));
  const amplitude = arriving.reduce((product, one) => product * one.amplitude, 1);
  const torque = arriving.reduce(
    (sum, one, i) =>
      sum +
      arriving.reduce((product, other, j) => (i === j ? product : product * other.amplitude), one.torque),
    tree.inertia * angular ** 2 * amplitude,
  );
  return { amplitude, torque };
}

/**
 * Natural frequencies of the tree, rad/s, lowest first, without the rigid-body turning. How many lie below a trial ω
 * is the number of negative pivots met on the way from the tips to the root (Sylvester's law of inertia).
 */
export function holzerBranchedFrequencies(tree: HolzerTree): number[] {
  return bisectCount(angular => negativePivots(tree, angular), weighedCoordinates(tree));
}

/** The tree of a model, from its reference or the inertia named; undefined with data missing, loops or held parts. */
export function holzerTree(model: TorsionalModel, root?: string): HolzerTree | undefined {
  const gap = torsionalGap(model);
  if (gap.missing.length > 0 || gap.faults.length > 0 || model.inertias.some(one => one.held))
    return undefined;
  const elements = model.shafts.length + (model.gears?.length ?? 0);
  if (elements !== model.inertias.length - 1) return undefined;
  const reached = new Set<string>();
  const tree = hang(model, root ?? model.reference ?? model.inertias[0]!.name, reached);
  return reached.size === model.inertias.length ? tree : undefined;
}

function hang(model: TorsionalModel, name: string, reached: Set<string>): HolzerTree {
  reached.add(name);
  const branches: { link: ChainLink; to: HolzerTree }[] = [];
  const grow = (here: string, there: string, link: ChainLink) => {
    if (here === name && !reached.has(there)) branches.push({ link, to: hang(model, there, reached) });
  };
  for (const { from, to, stiffness } of model.shafts) {
    grow(from, to, { stiffness: stiffness!.si });
    grow(to, from, { stiffness: stiffness!.si });
  }
  for (const { driver, driven, ratio, sense } of model.gears ?? []) {
    const signed = ratio!.si * (sense === 'opposite' ? -1 : 1);
    grow(driver, driven, { ratio: signed });
    grow(driven, driver, { ratio: 1 / signed });
  }
  const own = model.inertias.find(one => one.name === name)!;
  return { name, inertia: own.inertia!.si, branches };
}

/** From a branch's inertia to the junction; a ratio is speed at the junction ÷ speed of the branch. */
function across(link: ChainLink, { amplitude, torque }: State): State {
  if ('stiffness' in link) return { amplitude: amplitude - torque / link.stiffness, torque };
  return { amplitude: amplitude * link.ratio, torque: torque / link.ratio };
}

function negativePivots(tree: HolzerTree, angular: number): number {
  let negative = 0;
  const dynamicStiffness = (node: HolzerTree): number => {
    let own = -node.inertia * angular ** 2;
    for (const { link, to } of node.branches) {
      const branch = dynamicStiffness(to);
      if ('ratio' in link) {
        own += branch / link.ratio ** 2;
        continue;
      }
      // A pivot of exactly zero is a branch at its own resonance: taken as just past it.
      const pivot = branch + link.stiffness || -Number.MIN_VALUE;
      if (pivot < 0) negative++;
      own += link.stiffness * (branch / pivot);
    }
    return own;
  };
  if (dynamicStiffness(tree) < 0) negative++;
  return negative;
}

function weighedCoordinates(tree: HolzerTree): number {
  let springs = 0;
  const weighs = (node: HolzerTree): boolean => {
    let weighed = node.inertia > 0;
    for (const { link, to } of node.branches) {
      const branch = weighs(to);
      if ('ratio' in link) weighed ||= branch;
      else if (branch) springs++;
    }
    return weighed;
  };
  return (weighs(tree) ? 1 : 0) + springs;
}
