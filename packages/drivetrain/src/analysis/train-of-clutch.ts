import type { Clutch, Gear, Train } from '../model/gear.js';
import { clutchesOf } from './gear-data.js';
import { signedTrainRatio } from './train-ratio.js';

/**
 * The tooth counts that describe this clutch: its own; those of the ratio with what this clutch holds and locks in them;
 * or those of a ratio that has no other clutch.
 */
export function trainOf(
  gear: Pick<Gear, 'variant' | 'clutches'>,
  clutch: Clutch | undefined,
): Train | undefined {
  if (clutch?.train) return clutch.train;
  const shared = gear.variant?.train;
  if (!shared) return undefined;
  if (clutch && statesOf(clutch) > 0) return completedBy(clutch, shared);
  return clutchesOf(gear, gear.variant).length <= 1 ? shared : undefined;
}

/** Whether the ratio's train is one that only a clutch completes, by holding or locking a member of it. */
export function waitsForClutch(gear: Pick<Gear, 'variant' | 'clutches'>): boolean {
  const shared = gear.variant?.train;
  if (!shared) return false;
  return (
    clutchesOf(gear, gear.variant).some(one => !one.train && statesOf(one) > 0) &&
    !signedTrainRatio(shared).known
  );
}

/** The same object for the same clutch, so that what is worked out of it once is known from then on. */
function completedBy({ holds = [], locks = [] }: Clutch, shared: Train): Train {
  const had = completed.get(shared)?.find(one => sameFacts(one.holds, holds) && sameFacts(one.locks, locks));
  if (had) return had.train;
  const train = { ...shared, held: [...shared.held, ...holds], locked: [...shared.locked, ...locks] };
  completed.set(shared, [...(completed.get(shared) ?? []), { holds, locks, train }]);
  return train;
}

interface Completed {
  readonly holds: readonly object[];
  readonly locks: readonly object[];
  readonly train: Train;
}

const completed = new WeakMap<Train, readonly Completed[]>();

function sameFacts(some: readonly object[], others: readonly object[]): boolean {
  return some.length === others.length && some.every((one, at) => one === others[at]);
}

function statesOf({ holds, locks }: Clutch): number {
  return (holds?.length ?? 0) + (locks?.length ?? 0);
}
