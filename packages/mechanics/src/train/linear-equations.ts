/** What a set of linear equations says of each unknown. */
export interface LinearSolution {
  /** Undefined where the equations leave the unknown open. */
  readonly values: readonly (number | undefined)[];
  /** The equations contradict each other. */
  readonly contradictory: boolean;
}

/**
 * Solves equations that may be too few, too many or contradictory, as the equations of a gear train being typed are.
 * Each row holds the coefficients and, last, the right-hand side. Gauss-Jordan elimination with partial pivoting.
 */
export function solveEquations(equations: readonly (readonly number[])[], unknowns: number): LinearSolution {
  const rows = equations.map(scaled);
  const pivotOf = new Array<number | undefined>(unknowns).fill(undefined);
  let next = 0;
  for (let column = 0; column < unknowns && next < rows.length; column++) {
    let best = next;
    for (let i = next; i < rows.length; i++) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
    }
    if (Math.abs(rows[best]![column]!) < ZERO) continue;
    [rows[next], rows[best]] = [rows[best]!, rows[next]!];
    const pivot = rows[next]!;
    const lead = pivot[column]!;
    for (let j = 0; j <= unknowns; j++) pivot[j] = pivot[j]! / lead;
    for (let i = 0; i < rows.length; i++) {
      const factor = rows[i]![column]!;
      if (i === next || factor === 0) continue;
      for (let j = 0; j <= unknowns; j++) rows[i]![j] = rows[i]![j]! - factor * pivot[j]!;
    }
    pivotOf[column] = next++;
  }
  const contradictory = rows.slice(next).some(row => Math.abs(row[unknowns]!) > ZERO);
  const values = pivotOf.map((row, column) => {
    if (row === undefined) return undefined;
    const depends = rows[row]!.some((k, j) => j !== column && j < unknowns && Math.abs(k) > ZERO);
    return depends ? undefined : rows[row]![unknowns]!;
  });
  return { values, contradictory };
}

/** Rows are brought to a largest coefficient of one, so one threshold tells rounding from a number. */
const ZERO = 1e-10;

function scaled(row: readonly number[]): number[] {
  const size = Math.max(...row.slice(0, -1).map(Math.abs));
  return size > 0 ? row.map(k => k / size) : [...row];
}
