import type { Value } from '@tailshaft/mechanics';
import { amount, asStated, type NewValue, ratioTo1 } from '@tailshaft/vocabulary';

/** An exact ratio as its sheet writes it; one that is computed to three digits. */
export function exactAmount(exact: Value<'ratio'>): NewValue {
  const { written } = exact;
  return written === undefined ? amount(ratioTo1(exact)) : asStated({ ...exact, written });
}
