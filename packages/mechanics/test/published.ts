import { type Formula, given, type Value } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

/** One published number: inputs and result in SI (or with explicit factors), the tolerance the source's digits allow. */
export interface PublishedCase {
  readonly case: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly gives: number;
  /** Absolute, in the unit of `gives`: half a unit of the last printed digit, or as the source states. */
  readonly within: number;
  /** SI per unit of `gives`, when the source prints another unit. */
  readonly unit?: number;
}

/**
 * Tests a formula against a published table. `source` names the book, standard or page beside the numbers.
 * A table without rows is none.
 */
export function published(
  target: { readonly spec: { readonly name: string } },
  source: string,
  cases: readonly PublishedCase[],
): void {
  const formula = target as Formula;
  if (cases.length === 0) throw new Error(`no figures to check ${formula.spec.name} by`);
  describe(`${formula.spec.name} — ${source}`, () => {
    it.each(cases.map(one => [one.case, one] as const))('%s', (_, one) => {
      const values: Record<string, Value> = {};
      for (const [name, si] of Object.entries(one.inputs))
        values[name] = given(name, name, formula.spec.inputs[name]!, si);
      const result = formula(values).si / (one.unit ?? 1);
      expect(Math.abs(result - one.gives), `computed ${result}, published ${one.gives}`).toBeLessThanOrEqual(
        one.within,
      );
    });
  });
}
