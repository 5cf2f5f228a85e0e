import { PLACE_VOCABULARY, type Row, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { declareFact, homeOfFact } from '../model/declared-fact.js';
import type { EvidenceKind, Fact } from '../model/fact.js';
import { meaningOf } from '../model/meaning.js';
import { aside } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';

/** A designer's document, and an assumption, speak of what is planned as well as of what is there. */
const OF_THE_PLAN: readonly (EvidenceKind | undefined)[] = ['drawing', 'sheet', 'assumed'];

/** Facts of the hull that were stated with a part of the line. */
const WITH_A_PART = VESSEL_VOCABULARY.hull!.rows.filter(row =>
  row.measuredWith?.some(path => path.includes('.')),
);

/**
 * The vessel as this line meets it. What the hull states was taken with the parts that are there: where one of those is
 * another in this line, the figure is used on, for a wake of the old propeller is nearer than none, and nothing holds on it.
 */
export function vesselOf(line: ShaftLine, vessel: Vessel): Vessel {
  const { before } = line;
  const { hull } = vessel;
  if (!hull || !before) return vessel;
  const fields = hull as unknown as Record<string, unknown>;
  const now = WITH_A_PART.flatMap(row => {
    if (!Object.hasOwn(fields, row.field)) return [];
    const changed = aside(() => changedWith(row, before, line));
    if (changed === undefined) return [];
    const was = fields[row.field];
    const outdated = (fact: Fact<unknown>) => outdatedBy(fact, changed);
    return [[row.field, Array.isArray(was) ? was.map(outdated) : outdated(was as Fact<unknown>)] as const];
  });
  if (now.length === 0) return vessel;
  return withFields(vessel, { hull: withFields(hull, Object.fromEntries(now)) });
}

/** A copy that looks where the object itself looks, but for these fields. */
function withFields<T extends object>(object: T, fields: Readonly<Record<string, unknown>>): T {
  const copy = Object.create(
    Object.getPrototypeOf(object) as object,
    Object.getOwnPropertyDescriptors(object),
  ) as T;
  for (const [field, value] of Object.entries(fields))
    Object.defineProperty(copy, field, { value, enumerable: true });
  return copy;
}

/** `propeller diameter 22 in, which is 24 in now`; nothing where all is as it was, or was not known. */
function changedWith(row: Row, before: ShaftLine, line: ShaftLine): string | undefined {
  const words = row.measuredWith!.flatMap(path => {
    const [role, field] = path.split('.') as ['propeller' | 'engine', string];
    if (field === undefined) return [];
    const [was, is] = [before, line].map(
      one => (one[role] as Record<string, unknown> | undefined)?.[field],
    ) as (Fact<unknown> | undefined)[];
    if (was === undefined || is === undefined || meaningOf(was) === meaningOf(is)) return [];
    if (was.written === undefined || is.written === undefined) return [`another ${role}`];
    const name = PLACE_VOCABULARY[role]?.rows.find(one => one.field === field)?.words ?? field;
    return [`${role} ${name} ${was.written}, which is ${is.written} now`];
  });
  return words.length > 0 ? words.join(', and ') : undefined;
}

function outdatedBy(fact: Fact<unknown>, changed: string): Fact<unknown> {
  const home = homeOfFact(fact);
  const value = aside(() => fact.value);
  if (!home || value === undefined || OF_THE_PLAN.includes(fact.evidence?.kind)) return fact;
  return declareFact({ ...copied(fact), value, outdated: `stated with ${changed}` }, home);
}

function copied(fact: Fact<unknown>): Fact<unknown> {
  return aside(() => ({ ...fact }));
}
