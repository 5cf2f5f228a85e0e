import {
  type CarriedShare,
  carriedShares,
  given,
  trainRatio as ratioOfTrain,
  type Value,
} from '@tailshaft/mechanics';
import type { Train } from '../model/gear.js';
import { KeptBy } from '../model/reads.js';
import { teethOfTrain } from './train-teeth.js';

/** What tooth counts give: input ÷ output speed, negative where the sense is reversed; or why they give nothing. */
export type TrainResult =
  | { readonly known: true; readonly ratio: Value<'ratio'> }
  | { readonly known: false; readonly problem: string };

/** The signed ratio of a declared train, a row of meshes or with planets. Worked out once: many checks ask for it. */
export function signedTrainRatio(train: Train): TrainResult {
  return results.once(train, () => workedOut(train));
}

const results = new KeptBy<Train>();

function workedOut(train: Train): TrainResult {
  if (isOnePiece(train)) {
    const reason = 'no member is held: the set turns as one piece';
    return { known: true, ratio: given('ratio of the locked set', 'i', 'ratio', 1, { assumed: reason }) };
  }
  const teeth = teethOfTrain(train);
  return teeth.known ? ratioOfTrain(teeth.train, teeth.input, teeth.output) : teeth;
}

/** The size of the ratio alone, where the train has one. */
export function unsignedTrainRatio(train: Train): Value<'ratio'> | undefined {
  const result = signedTrainRatio(train);
  return result.known ? { ...result.ratio, si: Math.abs(result.ratio.si) } : undefined;
}

/** What each held member and each lock of a train carries, over the torque that enters it; none where it is not known. */
export function carriedInTrain(train: Train): readonly CarriedShare[] {
  const teeth = isOnePiece(train) ? undefined : teethOfTrain(train);
  if (!teeth?.known) return [];
  const found = carriedShares(teeth.train, teeth.input, teeth.output);
  return found.known ? found.shares : [];
}

/** `held none`: a set by its sun and ring that turns as one piece whatever its teeth are. */
function isOnePiece(train: Train): boolean {
  return train.meshes.length === 0 && train.held.length === 1 && train.held[0]!.value === 'none';
}
