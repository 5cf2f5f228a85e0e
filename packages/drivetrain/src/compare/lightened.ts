import type { Value } from '@tailshaft/mechanics';
import { NO_ROUTES, type Verdict } from '../judge/verdict.js';
import type { PartChange, SpecChange } from './change.js';

/**
 * A comparison with all that is told of it, and without the workings behind: those lead to every fact of both vessels, and
 * would keep a whole fleet in memory.
 */
export function lightened<T extends Told>(comparison: T): T {
  return {
    ...comparison,
    changes: comparison.changes.map(changeOf),
    kept: comparison.kept.map(withoutPlaces),
  };
}

interface Told {
  readonly changes: readonly SpecChange[];
  readonly kept: readonly PartChange[];
}

function changeOf(change: SpecChange): SpecChange {
  const light = withoutPlaces(change);
  if (light.kind === 'verdict') {
    const { before, after } = light;
    return {
      ...light,
      ...(before ? { before: verdictOf(before) } : {}),
      ...(after ? { after: verdictOf(after) } : {}),
    };
  }
  if (light.kind !== 'derived') return light;
  const { valueBefore, valueAfter } = light;
  return {
    ...light,
    ...(valueBefore ? { valueBefore: figureOf(valueBefore) } : {}),
    ...(valueAfter ? { valueAfter: figureOf(valueAfter) } : {}),
  };
}

function withoutPlaces<T extends { placeBefore?: unknown; placeAfter?: unknown }>(change: T): T {
  const { placeBefore: _before, placeAfter: _after, ...rest } = change;
  return rest as T;
}

function verdictOf(verdict: Verdict): Verdict {
  const { rule, outcome, severity, asFound, subject, message, criterion, criterionChosenBy, margin, folds } =
    verdict;
  return {
    rule,
    outcome,
    severity,
    subject,
    message,
    ...(asFound ? { asFound } : {}),
    ...(criterion === undefined ? {} : { criterion }),
    ...(criterionChosenBy === undefined ? {} : { criterionChosenBy }),
    ...(margin === undefined ? {} : { margin }),
    ...(folds ? { folds: folds.map(verdictOf) } : {}),
    place: NOWHERE,
    related: [],
    missing: [],
    workings: [],
    steps: [],
    explains: [],
    routes: NO_ROUTES,
  };
}

function figureOf({ dimension, si, written, unit }: Value): Value {
  return { dimension, si, written, ...(unit === undefined ? {} : { unit }) } as Value;
}

/** A place leads to the text that it stands in. */
const NOWHERE = {};
