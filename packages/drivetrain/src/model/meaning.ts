/** A canonical text of a value or fact: numbers in SI, to twelve digits, so that a unit that was exchanged exactly is equal. */
export function meaningOf(value: unknown): string {
  if (typeof value === 'number') return value.toPrecision(12);
  if (typeof value !== 'object' || value === null) return String(value);
  if ('si' in value && 'dimension' in value) {
    return `${String(value.dimension)} ${Number(value.si).toPrecision(12)}`;
  }
  const parts = Object.entries(value)
    .filter(([key, part]) => part !== undefined && !NOT_MEANING.has(key))
    .map(([key, part]) => `${key}: ${meaningOf(part)}`);
  return `{${parts.sort().join(', ')}}`;
}

/** Where and how something is written, or known, is not what it means. */
const NOT_MEANING = new Set(['origin', 'written', 'evidence', 'reads', 'lapsed', 'outdated']);
