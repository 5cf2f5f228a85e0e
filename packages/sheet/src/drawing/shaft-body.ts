import type { Shaft } from '@tailshaft/drivetrain';
import type { Markup } from '../document/markup.js';
import { joined } from '../document/markup.js';
import { box, lineFrom } from './svg.js';

/** Half the thickness on paper of a shaft outside its sections. */
const HALF = 3;

/**
 * A shaft that is drawn from `aft` to `forward`: its sections where they are declared to be, thicker or thinner than the
 * rest, and its bore as a line along it. What has no place is not drawn.
 */
export function shaftBody(shaft: Shaft, aft: number, forward: number, y: number): Markup {
  const pieces = piecesOf(shaft, aft, forward);
  const hollow = usable(shaft.boreDiameter?.value?.si) !== undefined;
  return joined(
    ...pieces.map(({ left, right, half }) => box(left, y - half, right - left, 2 * half, 'shaft')),
    hollow ? lineFrom(aft, y, forward, y, 'edge') : undefined,
  );
}

interface Piece {
  readonly left: number;
  readonly right: number;
  readonly half: number;
}

/** The sections on paper, and what lies between them, aft first. */
function piecesOf(shaft: Shaft, aft: number, forward: number): Piece[] {
  const length = usable(shaft.length?.value?.si);
  const diameter = usable(shaft.diameter?.value?.si);
  const sections = (shaft.sections ?? [])
    .flatMap((section): Piece[] => {
      const start = section.from?.value?.si;
      const [long, thick] = [usable(section.length?.value?.si), usable(section.diameter?.value?.si)];
      if (!length || !diameter || !long || !thick || start === undefined || !(start >= 0)) return [];
      const x = (place: number) => forward - Math.min(1, place / length) * (forward - aft);
      // Steps of a few per cent would not be seen: they are drawn four times as steep.
      const half = Math.min(8, Math.max(1, HALF * (1 + 4 * (thick / diameter - 1))));
      return [{ left: x(start + long), right: x(start), half }];
    })
    .sort((one, other) => one.left - other.left);
  const pieces: Piece[] = [];
  let at = aft;
  for (const section of sections) {
    const left = Math.max(at, section.left);
    if (section.right <= left) continue;
    if (left > at) pieces.push({ left: at, right: left, half: HALF });
    pieces.push({ ...section, left });
    at = section.right;
  }
  return forward > at ? [...pieces, { left: at, right: forward, half: HALF }] : pieces;
}

function usable(number: number | undefined): number | undefined {
  return number !== undefined && Number.isFinite(number) && number > 0 ? number : undefined;
}
