import type { Arrangement } from '../model/vessel.js';
import { uselessAcceptances } from './acceptances.js';
import {
  byConsequence,
  compareText,
  type PartChange,
  type RenameChange,
  type SilentChange,
  type SpecChange,
} from './change.js';
import { derivedChanges } from './derived.js';
import { fuelChanges } from './derived-fuel.js';
import { compareEntries, type EntryChange, type KnownEntry } from './entries.js';
import { lightened } from './lightened.js';
import { lineChanges } from './line-facts.js';
import { oneSidedChanges } from './one-sided.js';
import type { Paired } from './pairing.js';
import { damageNotices, damageUntold, stalePapers } from './papers.js';
import { partChanges } from './parts.js';
import { type Renames, renamed } from './renaming.js';
import { isSurelySame, pairEntries, pairVessels, type Rename, renamesOf } from './same-things.js';
import { type Judged, type Side, sideOfArrangement, sideOfVessel } from './side.js';
import { holdsByFigure, settingsRestated, silentChanges } from './silent.js';
import { relaxed, statementChanges } from './statements.js';
import { assumedOtherwise } from './tendency.js';
import { toldAtEntries } from './told-once.js';
import { untoldChanges } from './untold.js';
import { verbChanges } from './verbs.js';
import { verdictMoves } from './verdict-moves.js';

/** One vessel before and after, by consequence. */
export interface VesselComparison {
  readonly name: string;
  readonly title?: string;
  /** Gravest first. Empty when nothing of the meaning changed. */
  readonly changes: readonly SpecChange[];
  /** Parts that stay as they are. */
  readonly kept: readonly PartChange[];
  readonly addedLines: readonly string[];
  readonly removedLines: readonly string[];
}

/** Two sets of specs before and after. */
export interface Comparison {
  readonly vessels: readonly VesselComparison[];
  readonly addedVessels: readonly Judged[];
  readonly removedVessels: readonly Judged[];
  readonly entries: readonly EntryChange[];
  /** Texts that could not be read whole, in a sentence each: what they hide is not compared. */
  readonly unread: readonly string[];
}

/** What a set of specs holds. */
export interface SpecSet {
  readonly vessels: readonly Judged[];
  readonly entries: readonly KnownEntry[];
  /** Its texts that could not be read whole, in a sentence each. */
  readonly unread?: readonly string[];
}

/**
 * Compares sets of specs: vessels, and the entries that they use, by name, then by file, then by likeness. Vessels
 * without any change are left out. Those that were compared one by one already come beside the sets.
 */
export function compareSpecs(
  before: SpecSet,
  after: SpecSet,
  already: readonly VesselComparison[] = [],
): Comparison {
  const entries = pairEntries(before.entries, after.entries);
  const names = laterNames(entries);
  const { pairs, removed, added } = pairVessels(before.vessels, after.vessels);
  const told = compareEntries(entries);
  const vessels = [...already, ...pairs.map(([was, is]) => compareVessels(was, is, names))]
    .filter(isChanged)
    // Of a single vessel the entry's change is best told where it is used.
    .map((one, _, all) => (all.length > 1 ? { ...one, changes: toldAtEntries(one.changes, told) } : one));
  return {
    vessels: vessels.sort((one, other) => gravest(one) - gravest(other) || compareText(one.name, other.name)),
    addedVessels: added,
    removedVessels: removed,
    entries: told,
    unread: [...(before.unread ?? []), ...(after.unread ?? [])],
  };
}

/**
 * Compares vessels that have one name on both sides, each by itself, so that a host need not hold a thousand at once. It
 * needs all entries of both sides. Undefined where the vessel is so much another one that names may have gone round.
 */
export function comparingAlone(
  before: readonly KnownEntry[],
  after: readonly KnownEntry[],
): (was: Judged, is: Judged) => VesselComparison | undefined {
  const names = laterNames(pairEntries(before, after));
  return (was, is) => (isSurelySame(was, is) ? lightened(compareVessels(was, is, names)) : undefined);
}

function laterNames({ pairs }: Paired<KnownEntry>): Renames['entries'] {
  return new Map(
    pairs.flatMap(([was, is]) => (was.name === is.name ? [] : [[`${is.kind} ${was.name}`, is.name]])),
  );
}

/** Compares one vessel with itself at another time. */
export function compareVessels(
  before: Judged,
  after: Judged,
  entries: Renames['entries'] = new Map(),
): VesselComparison {
  const names = renamesOf(before.vessel, after.vessel, entries);
  const was = renamed(before, names);
  const compared = compareSides(sideOfVessel(was), sideOfVessel(after), false);
  const statements = assumedOtherwise(statementChanges(was.vessel, after.vessel), compared.changes);
  const restated = settingsRestated(was.vessel, after.vessel);
  const changes = [...compared.changes, ...statements, ...relaxed(statements), ...restated];
  for (const rename of names.told) changes.push(renameChange(rename, after.vessel.name));
  const unrevised = withoutRevision(after, changes);
  const notices = [...damageNotices(was.vessel, after.vessel), ...damageUntold(was.vessel, after.vessel)];
  return finish(after, { ...compared, changes: [...changes, ...unrevised, ...notices] });
}

function renameChange({ of, from, to }: Rename, subject: string): RenameChange {
  return { kind: 'rename', of, from, to, subject, weight: 70, words: `${of} ${from} renamed ${to}` };
}

/** Compares two arrangements of one vessel, as found against proposed. */
export function compareArrangements(
  judged: Judged,
  before: Arrangement,
  after: Arrangement,
): VesselComparison {
  // Only where the later one revises the earlier one do its verbs speak of the earlier one's parts.
  const revises = (one: Arrangement | undefined): boolean =>
    one !== undefined && (one.before?.name === before.name || revises(one.before));
  const compared = compareSides(
    sideOfArrangement(judged, before),
    sideOfArrangement(judged, after),
    revises(after),
  );
  return finish(judged, compared);
}

/** Whether anything of the meaning changed: order, comments, spelling and layout never do. */
export function isChanged(comparison: VesselComparison): boolean {
  return (
    comparison.changes.length > 0 || comparison.addedLines.length > 0 || comparison.removedLines.length > 0
  );
}

/** Whether nothing at all changed between two sets. Where a text cannot be read whole that is never known. */
export function isSame(comparison: Comparison): boolean {
  const { vessels, addedVessels, removedVessels, entries, unread } = comparison;
  return vessels.length + addedVessels.length + removedVessels.length + entries.length + unread.length === 0;
}

type Parts = Omit<VesselComparison, 'name' | 'title'>;

function compareSides(before: Side, after: Side, revision: boolean): Parts {
  const parts = partChanges(before, after, revision);
  const moves = verdictMoves(before, after, revision);
  const changed = parts.filter(one => one.fate !== 'kept');
  return {
    changes: [
      ...moves,
      ...derivedChanges(before, after),
      ...fuelChanges(before, after),
      ...changed,
      ...lineChanges(before, after),
      ...silentChanges(before, after, parts),
      ...oneSidedChanges(before, after, parts),
      ...verbChanges(before, after, revision),
      ...untoldChanges(before, after, parts),
      ...uselessAcceptances(after, moves),
    ],
    kept: parts.filter(one => one.fate === 'kept'),
    addedLines: [...after.lines.keys()].filter(key => !before.lines.has(key)),
    removedLines: [...before.lines.keys()].filter(key => !after.lines.has(key)),
  };
}

function finish({ vessel, key }: Judged, compared: Parts): VesselComparison {
  const changes = [...compared.changes, ...stalePapers(vessel.name, compared.changes)];
  return {
    ...compared,
    name: key ?? vessel.name,
    ...(vessel.title ? { title: vessel.title } : {}),
    changes: holdsByFigure(changes).sort(byConsequence),
  };
}

/** A vessel that keeps a record of revisions, and was changed without a line in it. */
function withoutRevision({ vessel }: Judged, changes: readonly SpecChange[]): SilentChange[] {
  const meant = changes.filter(one => one.kind !== 'silent' || one.what !== 'other unit, same value');
  const recorded = changes.some(one => one.kind === 'statement' && one.about === 'revision');
  if (vessel.revisions.length === 0 || meant.length === 0 || recorded) return [];
  return [
    {
      kind: 'silent',
      what: 'no revision',
      subject: vessel.name,
      weight: 53,
      words: `no revision was entered for these changes: the last is ${vessel.revisions.at(-1)!.name}`,
      placeAfter: vessel.revisions.at(-1)!.origin,
    },
  ];
}

function gravest(one: VesselComparison): number {
  return one.changes[0]?.weight ?? Number.POSITIVE_INFINITY;
}
