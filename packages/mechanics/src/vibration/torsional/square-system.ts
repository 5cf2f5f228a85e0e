type Rows = readonly (readonly number[])[];

/**
 * Solves A X = B for a square A by elimination with partial pivoting; each row of B may hold several right-hand sides.
 * Undefined where A has no inverse, or the numbers leave the number range.
 */
export function solveSquare(A: Rows, B: Rows): number[][] | undefined {
  const size = A.length;
  const rows = A.map((row, i) => [...row, ...B[i]!]);
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let i = column + 1; i < size; i++)
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
    const pivot = rows[best]!;
    if (!(Math.abs(pivot[column]!) > 0)) return undefined;
    [rows[column], rows[best]] = [pivot, rows[column]!];
    for (let i = column + 1; i < size; i++) subtract(rows[i]!, pivot, column);
  }
  const X: number[][] = rows.map(() => []);
  for (let i = size - 1; i >= 0; i--)
    for (let side = size; side < rows[i]!.length; side++) {
      let rest = rows[i]![side]!;
      for (let j = i + 1; j < size; j++) rest -= rows[i]![j]! * X[j]![side - size]!;
      X[i]!.push(rest / rows[i]![i]!);
    }
  return X.every(row => row.every(Number.isFinite)) ? X : undefined;
}

function subtract(row: number[], pivot: readonly number[], column: number): void {
  const factor = row[column]! / pivot[column]!;
  if (factor === 0) return;
  for (let j = column; j < row.length; j++) row[j]! -= factor * pivot[j]!;
}
