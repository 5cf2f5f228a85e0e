import type { Origin } from '@tailshaft/mechanics';
import {
  ENTRY_VOCABULARY,
  type Restated,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import type { EvidenceKind, SourceNote } from '../model/fact.js';
import type { Shaft } from '../model/shafting.js';
import type { Vessel } from '../model/vessel.js';
import type { FactChange, PartChange, SilentChange, SpecChange, VerdictMove } from './change.js';
import { marksMoved, marksOf } from './evidence.js';
import { type FlatFact, flatFacts, numberAndUnit } from './facts.js';
import { type KnownPart, partsOf } from './parts.js';
import type { Side } from './side.js';
import { studyFacts } from './study-facts.js';
import { trialFacts } from './trial-facts.js';

/** Changes inside parts that go by the same name as before: the ones that a reader of the text easily misses. */
export function silentChanges(before: Side, after: Side, parts: readonly PartChange[]): SilentChange[] {
  const [old, now] = [partsOf(before), partsOf(after)];
  const replaced = new Set(parts.filter(one => one.fate === 'replaced').map(one => one.placeAfter));
  const changes: SilentChange[] = [];
  for (const [key, is] of now)
    changes.push(...overrides(replaced.has(is.part.origin) ? undefined : old.get(key), is));
  for (const [key, was] of old) {
    const is = now.get(key);
    if (!is || replaced.has(is.part.origin)) continue;
    changes.push(...sourceChange(was, is), ...ratioBasis(was, is), ...otherFacts(is, parts));
    for (const [what, fact] of is.facts) {
      const earlier = was.facts.get(what);
      if (earlier)
        changes.push(
          ...unitChange(earlier, fact, is.line.key, nameOf(is)),
          ...evidenceChange(earlier, fact, is.line.key, nameOf(is)),
          ...rewritten(earlier, fact, is.line.key, nameOf(is)),
        );
    }
  }
  return changes;
}

/** What a place says otherwise than its catalogue entry, and did not say before. */
function overrides(was: KnownPart | undefined, is: KnownPart): SilentChange[] {
  const had = new Set(otherwise(was).map(overriddenWords));
  const fresh = otherwise(is).filter(one => !had.has(overriddenWords(one)));
  const [first] = fresh;
  if (!first) return [];
  const words = `${nameOf(is)}: ${fresh.map(overriddenWords).join('; ')}`;
  return [
    silent('overridden at its place', is.line.key, words, 33, first.inEntry.origin, first.atPlace.origin),
  ];
}

function otherwise(part: KnownPart | undefined): readonly Restated[] {
  return (part?.part.restated ?? []).filter(one => !one.same);
}

function overriddenWords({ property, atPlace, inEntry }: Restated): string {
  return `${property} ${atPlace.written} at its place, where its entry says ${inEntry.written}`;
}

function sourceChange(was: KnownPart, is: KnownPart): SilentChange[] {
  const [old, now] = [was.part.source?.value, is.part.source?.value];
  const marks = (one: KnownPart) => marksOf([one.part.source?.evidence]).words;
  const same = old?.title === now?.title && old?.dated === now?.dated && marks(was) === marks(is);
  if (!is.part.entry || same) return [];
  const words = `${nameOf(is)} keeps its name, its source is another: ${sourceWords(old)} → ${sourceWords(now)}`;
  return [silent('source', is.line.key, words, 34, was.part.source?.origin, is.part.source?.origin)];
}

function sourceWords(source: SourceNote | undefined): string {
  if (!source) return 'none';
  return `"${source.title}"${source.dated ? ` dated ${source.dated}` : ', no date'}`;
}

/** An entry whose facts changed under the same name touches every vessel that uses it. */
function otherFacts(is: KnownPart, parts: readonly PartChange[]): SilentChange[] {
  const change = parts.find(one => one.placeAfter === is.part.origin);
  if (change?.fate !== 'modified') return [];
  const grade = is.part.role === 'shaft' ? (is.part as Shaft).grade : undefined;
  const ofGrade = grade ? change.facts.filter(one => is.facts.get(one.what)?.behind === 'material') : [];
  const ofEntry = is.part.entry
    ? change.facts.filter(one => !isInPlace(is, one.what) && !ofGrade.includes(one))
    : [];
  const told = (name: string, facts: readonly FactChange[]) =>
    facts.length === 0
      ? []
      : [
          silent(
            'same name, other facts',
            is.line.key,
            `${name} keeps its name, other facts: ${facts.map(one => one.what).join(', ')}`,
            35,
            undefined,
            is.part.origin,
          ),
        ];
  return [...told(nameOf(is), ofEntry), ...told(`shaft material ${grade?.name}`, ofGrade)];
}

/** Facts that are of the installation and not of the entry, or that may be the one way or the other in every installation. */
function isInPlace(part: KnownPart, what: string): boolean {
  const row = part.facts.get(what)?.row;
  if (!row || row.handed) return row !== undefined;
  const entry = ENTRY_VOCABULARY[part.part.role];
  return !entry || !holdsRow(entry, row) || (part.part.restated ?? []).some(one => one.property === what);
}

/** Whether a row stands in a vocabulary, in a block of it or deeper: the rating of a ratio is a fact of the gear. */
function holdsRow({ rows, blocks }: Vocabulary, row: Row): boolean {
  return rows.includes(row) || blocks.some(one => holdsRow(one.block, row));
}

/**
 * A failure that goes because a figure of a catalogue entry is another, under the document that it had: no part was changed
 * for it, and the document cannot say both.
 */
export function holdsByFigure(changes: readonly SpecChange[]): SpecChange[] {
  return changes.map(one => {
    if (one.kind !== 'silent' || one.what !== 'same name, other facts') return one;
    const cured = changes.flatMap(move => (isCured(move, one.subject) ? [move.rule] : []));
    const renewed = changes.some(
      other =>
        other.kind === 'silent' &&
        other.what === 'source' &&
        other.subject === one.subject &&
        other.words.split(' keeps its name')[0] === one.words.split(' keeps its name')[0],
    );
    if (cured.length === 0 || renewed) return one;
    const words = `${one.words}; its document is the one it was, and ${[...new Set(cured)].join(', ')} failed before. Ask for the document`;
    return { ...one, what: 'holds by another figure', weight: 22.5, words };
  });
}

function isCured(change: SpecChange, line: string): change is VerdictMove {
  return (
    change.kind === 'verdict' &&
    change.severity !== 'note' &&
    change.after?.outcome === 'holds' &&
    (change.before?.outcome === 'fails' || change.before?.outcome === 'accepted') &&
    (change.subject === line || change.subject.startsWith(`${line}.`))
  );
}

/** What a vessel states beside its lines with the same meaning, in other units or known otherwise. */
export function settingsRestated(before: Vessel, after: Vessel): SilentChange[] {
  const restated = (
    kind: string,
    old: ReadonlyMap<string, FlatFact>,
    now: ReadonlyMap<string, FlatFact>,
  ): SilentChange[] =>
    [...now].flatMap(([what, fact]) => {
      const earlier = old.get(what);
      if (!earlier) return [];
      return [unitChange, evidenceChange, kind === 'trial' ? readingRewritten : rewritten].flatMap(told =>
        told(earlier, { ...fact, what }, after.name, kind),
      );
    });
  const kinds = ['duty', 'hull', 'criteria', 'certificate', 'helm', 'project'] as const;
  return [
    ...kinds.flatMap(kind => {
      const flat = (vessel: Vessel) => flatFacts(vessel[kind] ?? {}, VESSEL_VOCABULARY[kind]);
      return restated(kind, flat(before), flat(after));
    }),
    ...restated('trial', trialFacts(before), trialFacts(after)),
    ...restated('study', studyFacts(before), studyFacts(after)),
  ];
}

function unitChange(old: FlatFact, now: FlatFact, subject: string, of: string): SilentChange[] {
  const [one, other] = [numberAndUnit(old), numberAndUnit(now)];
  if (!one || !other || one.unit === other.unit) return [];
  const change = `${of}, ${now.what}: ${old.written} → ${now.written}`;
  if (old.meaning === now.meaning) {
    const words = `${change}: the same value in another unit`;
    return [silent('other unit, same value', subject, words, 80, old.origin, now.origin)];
  }
  if (one.number !== other.number) return [];
  const words = `${change}: the number stayed and the unit did not. Ask which of the two was meant`;
  return [silent('same number, other unit', subject, words, 8, old.origin, now.origin)];
}

function evidenceChange(old: FlatFact, now: FlatFact, subject: string, of: string): SilentChange[] {
  const moved = marksMoved(old, now);
  if (!moved) return [];
  const words = `${of}, ${now.what} ${now.written}: ${moved.words}`;
  return [silent('evidence', subject, words, moved.weaker ? 31 : 75, old.origin, now.origin)];
}

/** A figure that was read off something is another now, and is said to have been read off as before. */
function rewritten(old: FlatFact, now: FlatFact, subject: string, of: string): SilentChange[] {
  const kinds = [old.evidence?.kind, now.evidence?.kind];
  const same =
    old.marks.words === now.marks.words && kinds.every(one => one !== undefined && RECORDS.has(one));
  if (!same || old.meaning === now.meaning) return [];
  const words = `${of}, ${now.what}: ${old.written} → ${now.written}, ${now.marks.words} as before: the figure changed and its evidence did not. Ask for the record`;
  return [silent('record rewritten', subject, words, 30, old.origin, now.origin)];
}

const RECORDS = new Set<EvidenceKind>(['measured', 'plate', 'drawing', 'sheet']);

/** What was read off on a day of the past does not change. */
function readingRewritten(old: FlatFact, now: FlatFact, subject: string, of: string): SilentChange[] {
  if (old.meaning === now.meaning || old.meaning === 'unknown' || now.meaning === 'unknown') return [];
  const words = `${of} ${now.what}: ${old.written} → ${now.written}: a reading that was entered is another now. Ask for the trial sheet`;
  return [silent('record rewritten', subject, words, 30, old.origin, now.origin)];
}

function ratioBasis(was: KnownPart, is: KnownPart): SilentChange[] {
  if (is.part.role !== 'gear') return [];
  const basis = (one: KnownPart) => one.line.analysis.gearRatio('ahead')?.value?.basis;
  const [old, now] = [basis(was), basis(is)];
  const became = (old === 'nominal') === (now === 'nominal') || !old || !now ? undefined : now === 'nominal';
  if (became === undefined) return [];
  const words = became
    ? `${nameOf(is)}: the nominal ratio now stands in the place of the exact one`
    : `${nameOf(is)}: the exact ratio now stands in the place of the nominal one`;
  return [
    silent(
      became ? 'exact to nominal' : 'nominal to exact',
      is.line.key,
      words,
      became ? 32 : 37,
      undefined,
      is.part.origin,
    ),
  ];
}

function nameOf({ part, slot }: KnownPart): string {
  return part.entry ? `${part.role} ${part.entry.name}` : slot;
}

function silent(
  what: SilentChange['what'],
  subject: string,
  words: string,
  weight: number,
  placeBefore: Origin | undefined,
  placeAfter: Origin | undefined,
): SilentChange {
  return {
    kind: 'silent',
    what,
    subject,
    words,
    weight,
    ...(placeBefore ? { placeBefore } : {}),
    ...(placeAfter ? { placeAfter } : {}),
  };
}
