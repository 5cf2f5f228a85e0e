import type { Dimension } from '../core/dimension.js';
import { findUnit, unitsOf } from './find.js';
import type { Unit } from './unit.js';

/**
 * The unit to offer for a quantity: the best known one, or, beside a value already written in some unit (`like`),
 * the best known one of the same tradition: power beside `lbf.ft` is offered in hp, beside `N.m` in kW.
 */
export function preferredUnit(dimension: Dimension, like?: Unit | string): Unit {
  const units = unitsOf(dimension);
  const model = typeof like === 'string' ? findUnit(like) : like;
  const first = units.find(unit => unit.system === 'any' || unit.system === 'metric') ?? units[0];
  if (!first) throw new Error(`no unit measures ${dimension}`);
  if (!model || model.system === 'any') return units[0] ?? first;
  if (model.dimensions.includes(dimension)) return model;
  const wanted = model.system === 'imperial' ? ['imperial', 'US', 'any'] : [model.system, 'any'];
  for (const system of wanted) {
    const found = units.find(unit => unit.system === system);
    if (found) return found;
  }
  return first;
}
