import { type Dimension, findUnit, fromSI, toSI, type Value } from '@tailshaft/mechanics';
import type { NewQuantity, NewValue } from './new-value.js';

/** A number of the unit of this symbol. */
export function inUnit(dimension: Dimension, number: number, unit: string): NewQuantity {
  return { dimension, si: toSI(number, findUnit(unit)!), unit };
}

/** How many of the unit of this symbol a magnitude is. */
export function numberIn({ si }: Pick<Value, 'si'>, unit: string): number {
  return fromSI(si, findUnit(unit)!);
}

/** A ratio as gears are sold by it, `2.043:1`, to so many digits behind the point. */
export function ratioTo1({ si }: Pick<Value, 'si'>, decimals = 3): NewQuantity {
  return { dimension: 'ratio', si: Number(si.toFixed(decimals)), to: 1 };
}

/** What a value says, in the unit that its author wrote. */
export function quantityOf({ dimension, si, unit, figure }: Value): NewQuantity {
  return {
    dimension,
    si,
    ...(unit === undefined || unit === '1' ? {} : { unit }),
    ...(figure?.to === 1 ? { to: 1 as const } : {}),
  };
}

export const amount = (quantity: NewQuantity): NewValue => ({ is: 'quantity', quantity });
