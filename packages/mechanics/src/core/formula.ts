import type { Dimension } from './dimension.js';
import type { Source } from './source.js';
import type { RangeResult, Value } from './value.js';

type InputSpecs = Record<string, Dimension>;
type Numbers<I extends InputSpecs> = { readonly [K in keyof I]: number };
type Values<I extends InputSpecs> = { readonly [K in keyof I]: Value<I[K]> };

export interface RangeRule<I extends InputSpecs> {
  readonly condition: string;
  readonly met: (si: Numbers<I>) => boolean;
}

export interface FormulaSpec<I extends InputSpecs, O extends Dimension> {
  /** Unique, in words: `torsional shear stress`. */
  readonly name: string;
  readonly symbol: string;
  readonly dimension: O;
  /** Dimension of each input by name; the caller's Values bring labels and symbols. */
  readonly inputs: I;
  readonly text: string;
  /** Letters of `text` by input, so that numbers go where they belong whatever symbols the caller's values carry. */
  readonly symbols?: { readonly [K in keyof I]?: string };
  /** Units that `text` takes its inputs in, where it is no equation between quantities but one between numbers. */
  readonly units?: { readonly [K in keyof I]?: string };
  /** Letters of `text` that the source tabulates, with their numbers for these inputs. */
  readonly tabulated?: (si: Numbers<I>) => Readonly<Record<string, number>>;
  /** Unit that the number which such a text gives is in. */
  readonly unit?: string;
  /**
   * Said where the inputs do not stand in `text`: it is written in terms that are worked out from them, or is an equation
   * whose root is the result. Such a text is printed as it is, without numbers.
   */
  readonly terms?: string;
  readonly source: Source;
  /** Where it holds; or the sentence that says why it holds everywhere. */
  readonly range: readonly RangeRule<I>[] | string;
  /** SI in, SI out. */
  readonly compute: (si: Numbers<I>) => number;
}

/** A formula that can be called with values, and read: name, source, range. */
export interface Formula<I extends InputSpecs = InputSpecs, O extends Dimension = Dimension> {
  (inputs: Values<I>, notes?: readonly string[]): Value<O>;
  readonly spec: FormulaSpec<I, O>;
}

const registry = new Map<string, Formula>();

/**
 * Declares a formula once: calling it gives the value with its working.
 * A result that is not finite is returned as NaN with the broken condition named, never thrown.
 */
export function formula<const I extends InputSpecs, O extends Dimension>(
  spec: FormulaSpec<I, O>,
): Formula<I, O> {
  const ranges = typeof spec.range === 'string' ? [] : spec.range;
  const { symbols, units, unit, terms, tabulated } = spec;
  const call = (inputs: Values<I>, notes?: readonly string[]): Value<O> => {
    // Root finders call this thousands of times, so that nothing is made twice.
    const names = Object.keys(inputs);
    const values: Value[] = [];
    const all: Record<string, number> = {};
    for (const name of names) {
      const value = inputs[name]!;
      values.push(value);
      all[name] = value.si;
    }
    const numbers = all as Numbers<I>;
    const range: RangeResult[] = ranges.map(rule => ({ condition: rule.condition, met: rule.met(numbers) }));
    const raw = spec.compute(numbers);
    if (!Number.isFinite(raw)) range.push({ condition: 'these inputs give a finite result', met: false });
    return {
      label: spec.name,
      symbol: spec.symbol,
      dimension: spec.dimension,
      si: Number.isFinite(raw) ? raw : Number.NaN,
      working: {
        name: spec.name,
        text: spec.text,
        inputs: values,
        keys: terms ? [] : symbols ? names.map(key => symbols[key] ?? key) : names,
        names,
        ...(units ? { units: names.map(key => units[key]) } : undefined),
        ...(unit ? { unit } : undefined),
        ...(tabulated ? { tabulated: tabulated(numbers) } : undefined),
        source: spec.source,
        range,
        ...(notes || terms ? { notes: [...(terms ? [terms] : []), ...(notes ?? [])] } : undefined),
      },
    };
  };
  const made: Formula<I, O> = Object.assign(call, { spec });
  if (registry.has(spec.name)) throw new Error(`two formulas are named ${spec.name}`);
  registry.set(spec.name, made as unknown as Formula);
  return made;
}

/** Every formula declared so far, by name. */
export function allFormulas(): ReadonlyMap<string, Formula> {
  return registry;
}
