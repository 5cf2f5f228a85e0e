import {
  allFormulas,
  type Dimension,
  type Formula,
  type FormulaSpec,
  formula as listed,
} from '@tailshaft/mechanics';

const all: Formula[] = [];

/**
 * Declares a formula that no spec reaches and that others are held to. It keeps the same rules, and is left out of the list that
 * the pages are made from.
 */
export function formula<const I extends Readonly<Record<string, Dimension>>, O extends Dimension>(
  spec: FormulaSpec<I, O>,
): Formula<I, O> {
  const made = listed(spec);
  (allFormulas() as Map<string, Formula>).delete(spec.name);
  all.push(made as unknown as Formula);
  return made;
}

/** All of them, by name: those of the pages and these. */
export function everyFormula(): ReadonlyMap<string, Formula> {
  return new Map([...allFormulas(), ...all.map(one => [one.spec.name, one] as const)]);
}
