import { ENTRY_VOCABULARY, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';
import type { KnownEntry } from './entries.js';
import { factsOfPart, flatFacts } from './facts.js';
import { commonShare, type Paired, pairUp } from './pairing.js';
import type { Renames } from './renaming.js';
import type { Judged } from './side.js';

/** Something that goes by another name than before, and is compared through it. */
export interface Rename {
  readonly of: 'vessel' | 'arrangement' | 'shaft line' | string;
  readonly from: string;
  readonly to: string;
}

/** Sister vessels differ in little: what is exchanged between them changes both, and their names are not doubted. */
const SISTERS = 0.8;

/** Whether two vessels of one name are alike enough that no other can be meant. */
export function isSurelySame(before: Judged, after: Judged): boolean {
  return commonShare(vesselTraits(before.vessel), vesselTraits(after.vessel)) >= SISTERS;
}

/** Vessels by name, then by the file that holds one on each side, then by likeness. */
export function pairVessels(before: readonly Judged[], after: readonly Judged[]): Paired<Judged> {
  return pairUp(before, after, {
    name: one => one.key ?? one.vessel.name,
    place: one => one.file,
    traits: one => vesselTraits(one.vessel),
    likeness: 0.5,
    unlike: SISTERS,
  });
}

/** Catalogue entries by kind and name, then by likeness among those of a kind. */
export function pairEntries(before: readonly KnownEntry[], after: readonly KnownEntry[]): Paired<KnownEntry> {
  return pairUp(before, after, {
    name: one => `${one.kind} ${one.name}`,
    traits: one => traitsOf(flatFacts(one.facts, ENTRY_VOCABULARY[one.kind]), one.kind),
    likeness: 0.6,
    unlike: 0.8,
  });
}

/** What goes by other names in a vessel. */
export function renamesOf(
  before: Vessel,
  after: Vessel,
  entries: Renames['entries'],
): Renames & { readonly told: readonly Rename[] } {
  const told: Rename[] = [];
  const arrangements = new Map<string, string>();
  const lines = new Map<string, Map<string, string>>();
  const paired = pairUp(before.arrangements, after.arrangements, {
    name: one => one.name,
    // The one that is left on each side, and revises something or nothing as before, is the same one.
    place: one => (one.revises === undefined ? 'as found' : 'proposed'),
    traits: arrangementTraits,
    likeness: 0.5,
  });
  for (const [was, is] of paired.pairs) {
    if (was.name !== is.name) {
      arrangements.set(was.name, is.name);
      told.push({ of: 'arrangement', from: was.name, to: is.name });
    }
    const same = pairUp(was.lines, is.lines, {
      name: one => one.name,
      place: one => one.side?.value ?? 'no side',
      traits: lineTraits,
      likeness: 0.5,
    });
    for (const [one, other] of same.pairs) {
      if (one.name === other.name) continue;
      lines.set(was.name, (lines.get(was.name) ?? new Map<string, string>()).set(one.name, other.name));
      told.push({ of: 'shaft line', from: one.path, to: other.path });
    }
  }
  const vessel = before.name === after.name ? undefined : after.name;
  if (vessel !== undefined) told.unshift({ of: 'vessel', from: before.name, to: vessel });
  return { ...(vessel === undefined ? {} : { vessel }), arrangements, lines, entries, told };
}

function vesselTraits(vessel: Vessel): Set<string> {
  return new Set([
    ...traitsOf(flatFacts(vessel.hull ?? {}, VESSEL_VOCABULARY.hull), 'hull'),
    ...traitsOf(flatFacts(vessel.duty ?? {}, VESSEL_VOCABULARY.duty), 'duty'),
    ...vessel.arrangements.flatMap(one => [...arrangementTraits(one)]),
  ]);
}

function arrangementTraits(arrangement: Arrangement): Set<string> {
  return new Set(
    arrangement.lines.flatMap(one => [...lineTraits(one)].map(each => `${one.side?.value} ${each}`)),
  );
}

function lineTraits(line: ShaftLine): Set<string> {
  return new Set(
    line.chain.flatMap(part => [
      `${part.role} ${part.entry?.name}`,
      ...traitsOf(factsOfPart(part), part.role),
    ]),
  );
}

function traitsOf(facts: ReturnType<typeof flatFacts>, of: string): Set<string> {
  return new Set([...facts.values()].map(one => `${of} ${one.what} ${one.meaning}`));
}
