import type { Arrangement, Vessel } from './vessel.js';

type Arrangements = Pick<Vessel, 'arrangements'>;

/**
 * Whether the arrangement is what was found aboard: it revises nothing and is revised. All others are proposals, the
 * steps between as much as the last one: each of them may be what is built.
 */
export function isAsFound(arrangement: Arrangement, { arrangements }: Arrangements): boolean {
  return arrangement.revises === undefined && arrangements.some(one => one.revises === arrangement.name);
}

/** The arrangements that somebody may build. */
export function proposalsOf(vessel: Arrangements): readonly Arrangement[] {
  return vessel.arrangements.filter(one => !isAsFound(one, vessel));
}
