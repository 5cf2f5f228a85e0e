import { given, type Value } from '@tailshaft/mechanics';
import type { NamedQuantity } from './quantity.js';

/** What a quantity comes to from its lines: the least of them, or all of them together. */
export function together(quantity: NamedQuantity, values: readonly (Value | undefined)[]): Value | undefined {
  const [first, ...rest] = values;
  if (!first || rest.length === 0 || quantity.over === 'line') return first;
  const known = values as readonly Value[];
  if (quantity.over === 'vessel') return known.reduce((a, b) => (b.si < a.si ? b : a));
  const sum = known.reduce((total, one) => total + one.si, 0);
  return given(`${quantity.name} of all lines`, first.symbol, first.dimension, sum, {
    assumed: `sum over ${known.length} lines`,
  });
}
