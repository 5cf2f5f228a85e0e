import type { Value } from '../core/value.js';
import { findUnit } from './find.js';
import type { Unit } from './unit.js';

/** The unit that the author wrote a value in; nothing for a computed value and a plain number. */
export function writtenUnit(value: Pick<Value, 'unit'> | undefined): Unit | undefined {
  return value?.unit === undefined || value.unit === '1' ? undefined : findUnit(value.unit);
}

/** Whether the author measures this in inches, so that a size beside it is said in inches too. */
export function isInInches(value: Pick<Value, 'unit'> | undefined): boolean {
  return value?.unit === 'in';
}
