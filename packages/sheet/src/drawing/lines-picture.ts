import type { Arrangement } from '@tailshaft/drivetrain';
import { type Block, section } from '../document/blocks.js';
import type { Sheet } from '../sheet.js';
import { linesFromAbove } from './lines-from-above.js';
import { linesFromAft } from './lines-from-aft.js';

/** The lines of an arrangement seen from aft and from above, with the way they turn ahead. */
export function linesPicture(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  if (arrangement.lines.length === 0) return undefined;
  return section(`picture-${arrangement.path}`, 'Lines', [
    {
      block: 'figure',
      svg: linesFromAft(sheet, arrangement),
      caption:
        'Seen from aft, looking forward. The arrow shows the way the shaft turns with the lever ahead. Propellers to one scale; hull not.',
    },
    {
      block: 'figure',
      svg: linesFromAbove(sheet, arrangement),
      caption:
        'Seen from above. An arrow across a part shows how its top moves with the lever ahead: towards starboard (down) when it turns clockwise seen from aft. Shafts to one scale where their length is declared.',
    },
  ]);
}
