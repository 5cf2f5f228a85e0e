import type { Role } from '@tailshaft/drivetrain';
import type { Kept } from '../reading/place.js';
import type { PartLayers } from './part.js';

/** Where these stand in a line is where they are written. */
const BY_TEXT: readonly Role[] = ['coupling', 'motor', 'shaft'];

/**
 * A part that is kept stands where it stood, and one statement may keep several; another part stands where it is written.
 * So a kept part knows what must be said as well, and where, when another one comes in its place.
 */
export function inTheirPlaces(ordered: readonly PartLayers[]): PartLayers[] {
  return ordered.map((one, index) => {
    const { origin } = one;
    if (!['retained', 'modified'].includes(one.stated ?? '') || origin.insertInto) return one;
    const together = ordered.filter(other => other.origin === origin);
    if (together.length === 1 && (one.stated === 'modified' || origin.block)) return one;
    const before = ordered.slice(0, index).findLast(other => other.origin !== origin)?.origin;
    const late =
      BY_TEXT.includes(one.role) &&
      before &&
      !before.insertInto &&
      before.uri === origin.uri &&
      before.start > origin.start;
    if (together.length === 1 && !late) return one;
    const keeps: Kept = {
      names: together.map(other => other.name),
      own: together.indexOf(one),
      ...(late ? { behind: before } : {}),
    };
    return { ...one, origin: { ...origin, keeps } };
  });
}
