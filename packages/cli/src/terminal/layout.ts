/** Text in lines of at most so many columns, behind an indent. Words are never cut, nor a number from its unit. */
export function wrapped(text: string, width: number, indent = '', first = indent): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  // Colour in front of the first line takes no room.
  let unseen = first.length - shownLength(first);
  for (const word of bound(text)
    .split(/[ \t\r\n]+/)
    .filter(Boolean)) {
    if (!empty && line.length - unseen + 1 + word.length > width) {
      lines.push(line);
      line = indent;
      unseen = 0;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  lines.push(line);
  return lines.join('\n').replaceAll(TIE, ' ');
}

/** Columns that a text takes, its colours left out. */
function shownLength(text: string): number {
  return text
    .split('\u001b[')
    .reduce((sum, one, index) => sum + (index ? one.length - one.indexOf('m') - 1 : one.length), 0);
}

/** Stands for a space where no line may end. */
const TIE = '\u{a0}';
const bound = (text: string) => text.replace(/([\d)]) (?=[%°]|[A-Za-zµ·]{1,4}\b)/g, `$1${TIE}`);

/** A cell whose colour does not count for its width. */
export interface Cell {
  readonly text: string;
  readonly paint?: (text: string) => string;
  readonly right?: boolean;
}

/** Rows in aligned columns, two spaces apart, without spaces at line ends. */
export function table(rows: readonly (readonly Cell[])[], indent = ''): string {
  const widths: number[] = [];
  for (const row of rows) {
    row.forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, cell.text.length);
    });
  }
  return rows
    .map(row => {
      const last = row.findLastIndex(cell => cell.text !== '');
      const cells = row.slice(0, last + 1).map((cell, column) => {
        const space = ' '.repeat(column === last && !cell.right ? 0 : widths[column]! - cell.text.length);
        const text = cell.paint ? cell.paint(cell.text) : cell.text;
        return cell.right ? space + text : text + space;
      });
      return `${indent}${cells.join('  ')}`;
    })
    .join('\n');
}
