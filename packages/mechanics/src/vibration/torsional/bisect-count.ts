/**
 * Finds the trial values at which a count of natural frequencies below steps up, lowest first, beginning with the
 * second: the first is the rigid-body turning at zero. `total` is the highest count there is.
 */
export function bisectCount(countBelow: (angular: number) => number, total: number): number[] {
  if (total < 2) return [];
  let top = 1;
  while (countBelow(top) < total) {
    top *= 2;
    if (!Number.isFinite(top * top)) return [];
  }
  const roots: number[] = [];
  for (let wanted = 2; wanted <= total; wanted++) {
    let low = roots.at(-1) ?? 0;
    let high = top;
    // Ends when no number lies between, at most some hundred steps.
    for (let middle = high / 2; ; middle = (low + high) / 2) {
      if (middle <= low || middle >= high) {
        middle = (low + high) / 2;
        if (middle <= low || middle >= high) break;
      }
      if (countBelow(middle) >= wanted) high = middle;
      else low = middle;
    }
    roots.push(high);
  }
  return roots;
}
