import type { Value } from '../../src/core/value.js';
import { DUNKERLEY } from '../../src/vibration/sources.js';
import { formula } from './held-formula.js';

/** 1/f² = 1/f₁² + 1/f₂², for a shaft whose parts alone would vibrate at f₁ and f₂. Never above the true frequency. */
export const dunkerleyPair = /* @__PURE__ */ formula({
  name: 'Dunkerley combination of two frequencies',
  symbol: 'f',
  dimension: 'frequency',
  inputs: { f1: 'frequency', f2: 'frequency' },
  text: 'f = 1 / √(1/f1² + 1/f2²)',
  source: DUNKERLEY,
  range: 'the lowest mode only; the result is a lower bound',
  compute: ({ f1, f2 }) => (f1 * f2) / Math.hypot(f1, f2),
});

/** Dunkerley's combination of any number of frequencies, which is the pair formula applied in turn. */
export function dunkerley(
  first: Value<'frequency'>,
  ...rest: readonly Value<'frequency'>[]
): Value<'frequency'> {
  return rest.reduce((f1, f2) => dunkerleyPair({ f1, f2 }), first);
}
