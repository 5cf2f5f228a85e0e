import type { LangiumDocument } from 'langium';
import type { Position, SelectionRange } from 'vscode-languageserver';
import { bracesOf, scan } from '../text/scan.js';
import { rangeIn } from './places.js';

/** From the word under the cursor outwards: word, its line of facts, block, block with its header, file. */
export function selectionRanges(document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
  const text = document.textDocument;
  const whole = text.getText();
  const tokens = scan(whole);
  const blocks = bracesOf(tokens);
  return positions.map(position => {
    const offset = text.offsetAt(position);
    const stretches: { start: number; end: number }[] = [{ start: 0, end: whole.length }];
    for (const block of blocks) {
      if (offset < block.header || offset > block.close) continue;
      stretches.push({ start: block.header, end: block.close });
      if (offset > block.open && offset < block.close) {
        stretches.push({ start: block.open, end: block.close });
        stretches.push({ start: block.open + 1, end: block.close - 1 });
      }
    }
    const word = tokens.find(one => offset >= one.start && offset <= one.end);
    if (word) {
      const onLine = tokens.filter(
        one =>
          one.line === word.line && one.kind !== 'open' && one.kind !== 'close' && one.kind !== 'comment',
      );
      const first = onLine[0];
      if (first) stretches.push({ start: first.start, end: onLine.at(-1)!.end });
      stretches.push({ start: word.start, end: word.end });
    }
    return nested(stretches.map(one => rangeIn(text, one)));
  });
}

/** Ranges, the widest first, each the parent of the next; one that does not lie inside its parent is left out. */
function nested(ranges: readonly SelectionRange['range'][]): SelectionRange {
  let made: SelectionRange | undefined;
  for (const range of ranges) {
    if (made && !(contains(made.range, range) && !contains(range, made.range))) continue;
    made = made ? { range, parent: made } : { range };
  }
  return made!;
}

function contains(outer: SelectionRange['range'], inner: SelectionRange['range']): boolean {
  return before(outer.start, inner.start) && before(inner.end, outer.end);
}

function before(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character <= other.character);
}
