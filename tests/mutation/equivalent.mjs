// Mutants that no test could tell from the source, each with its reason: they are not tried and not counted.

/**
 * By the end of the path of a source: what it says, what the mutant says instead, and why that is the same. `to` left out
 * stands for every mutant of `from`.
 */
const EQUIVALENT = [];

/** Whether a mutant of this source is known to be none. */
export function equivalentIn(path) {
  const rows = EQUIVALENT.filter(one => path.endsWith(one.path));
  return mutant =>
    rows.some(one => one.from === mutant.from && (one.to === undefined || one.to === mutant.to));
}
