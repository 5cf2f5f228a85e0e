import { ENTRY_VOCABULARY } from '@tailshaft/vocabulary';
import type { Catalogue } from '../model/catalogue.js';
import type { FactChange } from './change.js';
import { factChanges, factChangeWords, flatFacts } from './facts.js';

/** A catalogue entry that is new, gone, or reads differently. */
export interface EntryChange {
  readonly kind: string;
  readonly name: string;
  readonly fate: 'added' | 'removed' | 'modified';
  readonly facts: readonly FactChange[];
  readonly words: string;
}

/** An entry by itself, whatever uses it. */
export interface KnownEntry {
  readonly kind: string;
  readonly name: string;
  readonly facts: object;
}

/** The entries of a catalogue as a list that can be compared. */
export function entriesOf(catalogue: Catalogue): KnownEntry[] {
  const list = (kind: string, entries: readonly { name: string; facts: unknown }[]) =>
    entries.map(one => ({ kind, name: one.name, facts: one.facts as object }));
  return [
    ...list('engine', catalogue.engines),
    ...list('motor', catalogue.motors),
    ...list('gear', catalogue.gears),
    ...list('transfer', catalogue.transfers),
    ...list('coupling', catalogue.couplings),
    ...list('propeller', catalogue.propellers),
    ...catalogue.materials.map(one => ({ kind: 'shaft material', name: one.name, facts: one as object })),
  ];
}

/** Entries compared by kind and name. */
export function compareEntries(before: readonly KnownEntry[], after: readonly KnownEntry[]): EntryChange[] {
  const [old, now] = [byName(before), byName(after)];
  const changes: EntryChange[] = [];
  for (const key of [...new Set([...old.keys(), ...now.keys()])].sort()) {
    const [was, is] = [old.get(key), now.get(key)];
    const { kind, name } = (is ?? was)!;
    if (!was || !is) {
      const fate = was ? 'removed' : 'added';
      changes.push({ kind, name, fate, facts: [], words: `${kind} ${name} ${fate}` });
      continue;
    }
    const facts = factChanges(factsWithSource(was), factsWithSource(is));
    if (facts.length === 0) continue;
    const words = `${kind} ${name}: ${facts.map(factChangeWords).join('; ')}`;
    changes.push({ kind, name, fate: 'modified', facts, words });
  }
  return changes;
}

function byName(entries: readonly KnownEntry[]): Map<string, KnownEntry> {
  const map = new Map<string, KnownEntry>();
  for (const one of entries) {
    const key = `${one.kind} ${one.name}`;
    if (!map.has(key)) map.set(key, one);
  }
  return map;
}

function factsWithSource({ kind, facts }: KnownEntry) {
  const { source, ...rest } = facts as { source?: unknown };
  return flatFacts({ ...rest, 'document behind it': source }, ENTRY_VOCABULARY[kind]);
}
