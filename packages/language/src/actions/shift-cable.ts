import type { TextEdit } from '../edit/text-edit.js';
import { piecesOf } from '../text/tokens.js';
import type { TextOf } from './offer.js';

const VALUE = ['push', 'pull', 'for', 'ahead', 'unknown'];

/**
 * Whether edits write, move or take away what a shift cable does. Crossing a cable makes a wrong rotation look right
 * while the gear runs ahead in its astern clutch, so no offer of the editor ever does it: the author writes it by hand.
 */
export function touchesShiftCable(edits: readonly TextEdit[], textOf: TextOf): boolean {
  return edits.some(edit => {
    const written = piecesOf(edit.text).filter(piece => !piece.comment);
    if (written.some((piece, index) => piece.text === 'shift' && written[index + 1]?.text === 'cable'))
      return true;
    return shiftCables(textOf(edit.uri)).some(cable =>
      edit.start === edit.end
        ? edit.start > cable.start && edit.start < cable.end
        : edit.start < cable.end && edit.end > cable.start,
    );
  });
}

/** Every `shift cable` of a text with its value, also one that cannot be read. */
function shiftCables(text: string): { start: number; end: number }[] {
  if (!text.includes('shift')) return [];
  const pieces = piecesOf(text).filter(piece => !piece.comment);
  return pieces.flatMap((piece, index) => {
    const cable = pieces[index + 1];
    if (piece.text !== 'shift' || cable?.text !== 'cable') return [];
    let last = cable;
    for (let next = index + 2; pieces[next]?.line === piece.line; next += 1) {
      if (!VALUE.includes(pieces[next]!.text) && last !== cable) break;
      if (/^[{}[\]]$/.test(pieces[next]!.text)) break;
      last = pieces[next]!;
    }
    return [{ start: piece.start, end: last.end }];
  });
}
