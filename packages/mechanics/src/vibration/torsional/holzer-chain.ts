import { bisectCount } from './bisect-count.js';

/** Inertias in a row, kg·m², with what joins each to the next; everything at its own speed. */
export interface HolzerChain {
  readonly inertias: readonly number[];
  /** One fewer than the inertias. */
  readonly links: readonly ChainLink[];
}

/** A spring (N·m/rad), or rigid gears: speed before ÷ speed after, negative when they reverse the sense. */
export type ChainLink = { readonly stiffness: number } | { readonly ratio: number };

export interface HolzerRow {
  /** Amplitude of this inertia, rad, the first being 1. */
  readonly amplitude: number;
  /** Torque handed on beyond this inertia, at its own speed, N·m. The last one is the residual. */
  readonly torque: number;
}

/**
 * Holzer's table for a trial ω (rad/s): T_i = T_(i−1) + J_i ω² θ_i and θ_(i+1) = θ_i − T_i/k_i.
 * The torque beyond the last inertia must be zero, which it is at a natural frequency only.
 * Method: H. Holzer, Die Berechnung der Drehschwingungen, 1921 (from memory).
 */
export function holzerTable(chain: HolzerChain, angular: number): HolzerRow[] {
  let amplitude = 1;
  let torque = 0;
  return chain.inertias.map((inertia, i) => {
    torque += inertia * angular ** 2 * amplitude;
    const row = { amplitude, torque };
    const link = chain.links[i];
    if (link && 'stiffness' in link) {
      amplitude -= torque / link.stiffness;
    } else if (link) {
      amplitude /= link.ratio;
      torque *= link.ratio;
    }
    return row;
  });
}

/** Torque left over beyond the last inertia, N·m per rad of the first. */
export function holzerResidual(chain: HolzerChain, angular: number): number {
  return holzerTable(chain, angular).at(-1)!.torque;
}

/**
 * Natural frequencies of the chain, rad/s, lowest first, without the rigid-body turning.
 * The number of them below a trial ω is the number of sign changes down the table, the residual counted as the
 * amplitude of one more inertia behind it (Sturm); bisection on that count misses no root and finds no false one.
 */
export function holzerChainFrequencies(chain: HolzerChain): number[] {
  return bisectCount(angular => signChanges(chain, angular), freeCoordinates(chain));
}

function signChanges(chain: HolzerChain, angular: number): number {
  let [amplitude, torque, sense, changes] = [1, 0, 1, 0];
  let last = 1;
  const meet = (signed: number) => {
    if (signed === 0) return;
    if (Math.sign(signed) !== last) changes++;
    last = Math.sign(signed);
  };
  chain.inertias.forEach((inertia, i) => {
    torque += inertia * angular ** 2 * amplitude;
    const link = chain.links[i];
    if (!link) return;
    if ('stiffness' in link) {
      amplitude -= torque / link.stiffness;
    } else {
      amplitude /= link.ratio;
      torque *= link.ratio;
      sense *= Math.sign(link.ratio);
    }
    meet(amplitude * sense);
    // Only signs count, so a table that grows without bound may be scaled down.
    const size = Math.max(Math.abs(amplitude), 1e-30);
    if (size > 1e100) [amplitude, torque] = [amplitude / size, torque / size];
  });
  meet(-torque * sense);
  return changes;
}

/** Sets of inertias that gears join count once, and only when they weigh anything. */
function freeCoordinates({ inertias, links }: HolzerChain): number {
  let count = 0;
  let weighed = false;
  inertias.forEach((inertia, i) => {
    const before = links[i - 1];
    if (!before || 'stiffness' in before) weighed = false;
    if (inertia > 0 && !weighed) {
      count++;
      weighed = true;
    }
  });
  return count;
}
