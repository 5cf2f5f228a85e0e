/** The value below which a share of the numbers lie. */
export function quantile(numbers, share) {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

/** To a tenth. */
export function rounded(number) {
  return Math.round(number * 10) / 10;
}
