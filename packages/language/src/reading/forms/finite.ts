import type { Cursor } from '../cursor.js';

/**
 * A number that no computer holds, such as `1e999` or `1/0`, measures nothing: it is refused where it stands, so that no
 * check ever meets it. Nothing is returned when all numbers of the value can be used.
 */
export function refuseEndless(
  cursor: Cursor,
  property: string,
  value: unknown,
  range: { readonly start: number; readonly end: number },
): boolean {
  if (!hasEndless(value)) return false;
  endlessProblem(cursor, property, range);
  return true;
}

export function endlessProblem(
  cursor: Cursor,
  property: string,
  range: { readonly start: number; readonly end: number },
): undefined {
  return cursor.problem(
    'text/number',
    range,
    `"${property}" is not a usable number: it is too large, or divided by zero. Write the value, or "unknown" until it is known.`,
  );
}

function hasEndless(value: unknown): boolean {
  if (typeof value !== 'object' || value === null)
    return typeof value === 'number' && !Number.isFinite(value);
  if (Array.isArray(value)) return value.some(hasEndless);
  return Object.entries(value).some(([key, part]) => key !== 'origin' && hasEndless(part));
}
