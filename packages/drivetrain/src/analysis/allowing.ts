import { type Dimension, given, type Value } from '@tailshaft/mechanics';

/** A value with so much more of itself, within which another one is as good; `because` says where that comes from. */
export function allowing<D extends Dimension>(
  value: Value<D>,
  share: number,
  label: string,
  because: string,
): Value<D> {
  const more = given('what is allowed beyond', 'a', 'ratio', share, { assumed: because });
  return {
    label,
    symbol: value.symbol,
    dimension: value.dimension,
    si: value.si * (1 + share),
    working: {
      name: 'value with what is allowed beyond',
      text: 'x_a = x (1 + a)',
      inputs: [value, more],
      keys: ['x', 'a'],
      source: { title: 'a value and its tolerance', confidence: 'derived' },
      range: [],
      again: ([x = Number.NaN, a = 0]) => x * (1 + a),
    },
  };
}
