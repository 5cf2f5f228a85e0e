/** One line of a printed change: kept as context, taken out or put in. */
export interface ChangedLine {
  readonly sign: ' ' | '-' | '+';
  readonly text: string;
}

/** The lines in which two specs differ, each group under the headers of the blocks that it stands in. */
export function specChange(from: string, to: string): readonly ChangedLine[] {
  const all = lineDifference(from.trim().split('\n'), to.trim().split('\n'));
  const wanted = new Set<number>();
  for (const [index, { sign, text }] of all.entries()) {
    if (sign === ' ') continue;
    wanted.add(index);
    let depth = indentOf(text);
    for (let above = index - 1; above >= 0 && depth > 0; above -= 1) {
      const line = all[above]!;
      if (line.sign === '-' || line.text.trim() === '' || indentOf(line.text) >= depth) continue;
      depth = indentOf(line.text);
      wanted.add(above);
    }
  }
  return all.filter((line, index) => wanted.has(index) && !(line.sign !== ' ' && line.text.trim() === ''));
}

/** About how many lines differ, wherever they stand: what tells which of several specs is the nearest. */
export function distance(from: string, to: string): number {
  const counts = new Map<string, number>();
  for (const line of from.split('\n')) counts.set(line, (counts.get(line) ?? 0) + 1);
  for (const line of to.split('\n')) counts.set(line, (counts.get(line) ?? 0) - 1);
  return [...counts.values()].reduce((sum, count) => sum + Math.abs(count), 0);
}

/** The shortest way from one list of lines to the other, by their longest common part. */
function lineDifference(from: readonly string[], to: readonly string[]): ChangedLine[] {
  const common = Array.from({ length: from.length + 1 }, () => new Uint16Array(to.length + 1));
  for (let row = from.length - 1; row >= 0; row -= 1) {
    for (let column = to.length - 1; column >= 0; column -= 1) {
      common[row]![column] =
        from[row] === to[column]
          ? common[row + 1]![column + 1]! + 1
          : Math.max(common[row + 1]![column]!, common[row]![column + 1]!);
    }
  }
  const lines: ChangedLine[] = [];
  let row = 0;
  let column = 0;
  while (row < from.length || column < to.length) {
    if (row < from.length && column < to.length && from[row] === to[column]) {
      lines.push({ sign: ' ', text: from[row]! });
      row += 1;
      column += 1;
    } else if (
      row < from.length &&
      (column === to.length || common[row + 1]![column]! >= common[row]![column + 1]!)
    ) {
      lines.push({ sign: '-', text: from[row]! });
      row += 1;
    } else {
      lines.push({ sign: '+', text: to[column]! });
      column += 1;
    }
  }
  return lines;
}

function indentOf(line: string): number {
  return line.length - line.trimStart().length;
}
