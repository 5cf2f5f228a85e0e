import { ORDER_OF_DAYS } from '@tailshaft/vocabulary';
import { aside } from '../model/reads.js';
import type { Trial } from '../model/trial.js';
import type { Arrangement, Revision } from '../model/vessel.js';
import { type DatedFact, datedOf } from './disagreeing.js';

type Order = (typeof ORDER_OF_DAYS)[number];

/** The latest of what one thing rests on, which is dated after it. */
export interface OutOfOrder extends DatedFact {
  readonly grave: boolean;
}

/** What cannot be later than a trial of this arrangement, and is. */
export function laterThanTrial({ dated }: Trial, tried: Arrangement): OutOfOrder[] {
  return laterThan(dated, 'trial', {
    // What was found aboard was measured before anything was built that is tried.
    survey: () => (tried.before ? datedOf(tried.before.lines).filter(isMeasured) : []),
    document: () => datedOf(tried.lines).filter(isDocument),
  });
}

/** The same of the last revision of a vessel, which its arrangements stand in. */
export function laterThanRevision({ dated }: Revision, all: readonly Arrangement[]): OutOfOrder[] {
  return laterThan(dated, 'revision', {
    survey: () => [],
    document: () => datedOf(all.flatMap(({ lines }) => lines)).filter(isDocument),
  });
}

function laterThan(
  day: string | undefined,
  after: Order['after'],
  known: Record<Order['before'], () => readonly DatedFact[]>,
): OutOfOrder[] {
  if (day === undefined) return [];
  return ORDER_OF_DAYS.filter(one => one.after === after).flatMap(({ before, grave }) => {
    const later = known[before]().filter(({ date }) => date > day);
    const [last] = later.sort((one, other) => other.date.localeCompare(one.date));
    return last ? [{ ...last, grave }] : [];
  });
}

function isMeasured({ fact }: DatedFact): boolean {
  return fact.evidence?.kind === 'measured';
}

/** The document that facts come from, by itself or as the evidence of one of them. */
function isDocument({ fact }: DatedFact): boolean {
  const kind = fact.evidence?.kind;
  if (kind) return kind === 'drawing' || kind === 'sheet';
  const value = aside(() => fact.value);
  return typeof value === 'object' && value !== null && 'title' in value;
}
