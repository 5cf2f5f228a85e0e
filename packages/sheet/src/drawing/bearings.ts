import type { Shaft } from '@tailshaft/drivetrain';
import type { Child, Markup } from '../document/markup.js';
import { joined } from '../document/markup.js';
import type { Sheet } from '../sheet.js';
import { box, lineFrom } from './svg.js';
import { followed } from './view.js';

/**
 * The bearings of a shaft that is drawn from `aft` to `forward`: where they are declared to be, or spread evenly where
 * their places are not known. A thrust bearing has its collar.
 */
export function bearingsOf(sheet: Sheet, shaft: Shaft, aft: number, forward: number, y: number): Markup {
  const bearings = shaft.bearings ?? [];
  const length = usable(shaft.length?.value?.si);
  const children = bearings.map((bearing, index): Child => {
    const position = usable(bearing.position?.value?.si);
    const share =
      length !== undefined && position !== undefined
        ? Math.min(1, position / length)
        : (index + 1) / (bearings.length + 1);
    const room = forward - aft;
    const wide = Math.min(40, Math.max(9, ((usable(bearing.length?.value?.si) ?? 0) / (length ?? 1)) * room));
    const middle = Math.min(forward - wide / 2, Math.max(aft + wide / 2, forward - share * room));
    const kind = bearing.kind?.value;
    return followed(
      sheet,
      { path: `${shaft.path}.${bearing.name}`, origin: bearing.origin },
      `bearing ${bearing.name}${kind ? `, ${kind}` : ''}`,
      box(middle - wide / 2, y - 11, wide, 6, 'part'),
      box(middle - wide / 2, y + 5, wide, 6, 'part'),
      kind === 'thrust' ? lineFrom(middle, y - 9, middle, y + 9, 'axis') : undefined,
    );
  });
  return joined(...children);
}

function usable(number: number | undefined): number | undefined {
  return number !== undefined && Number.isFinite(number) && number > 0 ? number : undefined;
}
