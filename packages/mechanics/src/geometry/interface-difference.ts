import type { Value } from '../core/value.js';

/** One feature of two mating parts that does not agree, or that cannot be compared. */
export type InterfaceDifference =
  | {
      readonly feature: string;
      readonly result: 'differs';
      readonly one: Value | string;
      readonly other: Value | string;
      /** One minus other, SI, where both are numbers. */
      readonly by?: number;
      /** False where the parts still go together but somebody must know. */
      readonly prevents: boolean;
    }
  | { readonly feature: string; readonly result: 'not stated'; readonly on: 'one' | 'other' | 'both' };

/** Agreement of two numbers within a tolerance, SI. Nothing is returned when they agree. */
export function compareValues(
  feature: string,
  one: Value | undefined,
  other: Value | undefined,
  tolerance: number,
  prevents = true,
): InterfaceDifference[] {
  const missing = notStated(feature, one, other);
  if (missing) return [missing];
  const by = one!.si - other!.si;
  if (Math.abs(by) <= tolerance) return [];
  return [{ feature, result: 'differs', one: one!, other: other!, by, prevents }];
}

/** What is missing for a comparison: missing data never count as agreement. */
export function notStated(feature: string, one: unknown, other: unknown): InterfaceDifference | undefined {
  if (one !== undefined && other !== undefined) return undefined;
  const on = one === undefined ? (other === undefined ? 'both' : 'one') : 'other';
  return { feature, result: 'not stated', on };
}
