import type { Value } from '@tailshaft/mechanics';
import type { Tried } from './judgement.js';
import { type Size, type Steps, sizeBeyond } from './sizes.js';

/** How far a size is changed at most, which way, and in how many strides. */
export interface Reach {
  readonly times: number;
  readonly ways: readonly (1 | -1)[];
  readonly strides: number;
}

/** A size that settles a check, and what the check then says. */
export interface Settling {
  readonly size: Size;
  readonly tried: Tried;
}

/**
 * The smallest change of a size with which the check is settled. What says the same at the far end does not look at the size.
 * `aim` is the figure that the check itself named: where the next size in steps does, nothing is sought.
 */
export function leastChange(
  now: Value,
  steps: Steps,
  { times, ways, strides }: Reach,
  outcome: (value: Value) => Tried,
  says?: string,
  aim?: number,
): Settling | undefined {
  if (!(now.si > 0)) return undefined;
  const within = aim !== undefined && Math.abs(Math.log(aim / now.si)) <= Math.log(times) + 1e-9;
  const aimed = within ? sizeBeyond(now, aim, steps) : undefined;
  const then = aimed && outcome(aimed.value);
  if (aimed && then?.settles) return { size: aimed, tried: then };
  const found = ways.flatMap(way => {
    const furthest = says === undefined ? undefined : sizeBeyond(now, now.si * times ** way, steps);
    if (furthest && outcome(furthest.value).verdict?.message === says) return [];
    let short = now.si;
    for (let stride = 1; stride <= strides; stride += 1) {
      const size = sizeBeyond(now, now.si * times ** ((way * stride) / strides), steps);
      if (!size || size.value.si === short) continue;
      if (!outcome(size.value).settles) short = size.value.si;
      else return [nearest(now, short, size, steps, outcome)];
    }
    return [];
  });
  const best = found.sort((a, b) => distance(a.value, now) - distance(b.value, now))[0];
  const tried = best && outcome(best.value);
  return best && tried?.settles ? { size: best, tried } : undefined;
}

function distance(one: Value, now: Value): number {
  return Math.abs(Math.log(one.si / now.si));
}

/** Between a size that does not do and one that does: the one nearest to the size now that does. */
function nearest(
  now: Value,
  short: number,
  enough: Size,
  steps: Steps,
  outcome: (value: Value) => Tried,
): Size {
  let low = short;
  let best = enough;
  for (let step = 0; step < 8; step += 1) {
    const middle = sizeBeyond(now, (low + best.value.si) / 2, steps);
    if (!middle || middle.value.si === best.value.si || middle.value.si === low) break;
    if (outcome(middle.value).settles) best = middle;
    else low = middle.value.si;
  }
  return best;
}
