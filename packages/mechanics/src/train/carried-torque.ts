import { formula } from '../core/formula.js';
import type { Value } from '../core/value.js';
import { constraints, type GearTrain, membersOf } from './train.js';
import { teethOf, trainTorques, WILLIS } from './train-ratio.js';

/** What one brake (or the housing) or one clutch of a train carries, as a share of the input torque. */
export interface CarriedShare {
  readonly by: 'held' | 'locked';
  /** The member that is held, or the two that are locked together. */
  readonly members: readonly string[];
  /** Torque from outside on the held member, or between the locked two, over input torque; positive with the input. */
  readonly share: Value<'ratio'>;
}

/**
 * Torque on every held member and in every lock of a train, over the input torque and without losses; or why it is not
 * known. Teeth in mesh pass one force, so each member is in balance under the torques of its meshes.
 */
export function carriedShares(
  train: GearTrain,
  input: string,
  output: string,
):
  | { readonly known: true; readonly shares: readonly CarriedShare[] }
  | { readonly known: false; readonly problem: string } {
  const found = trainTorques(train, input, output, 1);
  if (!found.known) return found;
  const text = balances(train, input, output);
  const inputs = teethOf(train);
  const share = (label: string, symbol: string, si: number): Value<'ratio'> => ({
    label,
    symbol,
    dimension: 'ratio',
    si,
    working: {
      name: 'torque carried in a gear train',
      text,
      inputs,
      keys: [],
      source: { ...WILLIS, clause: 'equilibrium of each member, no losses', confidence: 'derived' },
      range: [],
      notes: [`T_${input} is taken as 1`],
    },
  });
  return {
    known: true,
    shares: [
      ...(train.held ?? []).map(name => ({
        by: 'held' as const,
        members: [name],
        share: share(`torque that holds ${name}, over input torque`, `T_${name}`, found.torques.get(name)!),
      })),
      ...(train.locked ?? []).map(([one, other], k) => ({
        by: 'locked' as const,
        members: [one, other],
        share: share(
          `torque between ${one} and ${other}, over input torque`,
          `T_${one}-${other}`,
          found.locks[k]!,
        ),
      })),
    ],
  };
}

/** Torque that a clutch or brake carries, by its share of the torque that enters the train. */
export const torqueOfShare = /* @__PURE__ */ formula({
  name: 'torque carried by a member of a gear train',
  symbol: 'T_h',
  dimension: 'torque',
  inputs: { share: 'ratio', inputTorque: 'torque' },
  text: 'T_h = |k| T_1',
  symbols: { share: 'k', inputTorque: 'T_1' },
  source: { ...WILLIS, clause: 'equilibrium of each member, no losses', confidence: 'derived' },
  range: 'Steady running, no losses in the meshes.',
  compute: ({ share, inputTorque }) => Math.abs(share) * inputTorque,
});

/** The balance of every member, each tooth force by its number: `T_sun + 16 F1 = 0`. */
function balances(train: GearTrain, input: string, output: string): string {
  const members = membersOf(train);
  const rows = constraints(train, members);
  const held = new Set([input, output, ...(train.held ?? [])]);
  const locks = train.locked ?? [];
  return members
    .map((name, i) => {
      const terms = held.has(name) ? [`T_${name}`] : [];
      for (const [k] of train.meshes.entries()) {
        const teeth = rows[k]![i]!;
        if (teeth !== 0) terms.push(`${teeth < 0 ? '− ' : '+ '}${Math.abs(teeth)} F${k + 1}`);
      }
      for (const [one, other] of locks) {
        if (one === name) terms.push(`+ T_${one}-${other}`);
        if (other === name) terms.push(`− T_${one}-${other}`);
      }
      return `${terms.join(' ').replace(/^\+ /, '')} = 0`;
    })
    .join('; ');
}
