import { citeSource } from '../core/source.js';
import type { RangeResult, Value } from '../core/value.js';
import { formatValue } from '../units/natural.js';
import { filledFormula } from './filled.js';

/** One line of working: a value, how it came about, and how deep below the asked-for value it stands. */
export interface WorkingStep {
  readonly value: Value;
  readonly depth: number;
  readonly kind: 'computed' | 'declared' | 'assumed';
  /** `T = 1246 N·m`. */
  readonly result: string;
  /** `T = P / ω`, for computed values. */
  readonly formula?: string;
  /** `300 kW / 2300 rpm`. */
  readonly filled?: string;
  readonly source?: string;
  readonly range: readonly RangeResult[];
  readonly notes: readonly string[];
  /** This value was worked out further up already; its inputs are not repeated. */
  readonly shownAbove: boolean;
}

/** The working of a value, from itself down to what the author wrote or what was assumed. Made on demand. */
export function* workingSteps(value: Value): Generator<WorkingStep> {
  yield* below(value, 0, new Set());
}

function* below(value: Value, depth: number, seen: Set<Value>): Generator<WorkingStep> {
  const shownAbove = seen.has(value);
  seen.add(value);
  const working = value.working;
  const filled = shownAbove ? undefined : filledFormula(value);
  yield {
    value,
    depth,
    kind: working ? 'computed' : value.assumed ? 'assumed' : 'declared',
    result: `${value.symbol} = ${formatValue(value)}`,
    ...(working && !shownAbove ? { formula: working.text, source: citeSource(working.source) } : {}),
    ...(filled ? { filled } : {}),
    range: working && !shownAbove ? working.range : [],
    notes: working && !shownAbove ? (working.notes ?? []) : [],
    shownAbove,
  };
  if (shownAbove) return;
  for (const input of working?.inputs ?? []) yield* below(input, depth + 1, seen);
}
