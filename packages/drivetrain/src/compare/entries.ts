import { ENTRY_VOCABULARY } from '@tailshaft/vocabulary';
import type { Catalogue } from '../model/catalogue.js';
import { compareText, type FactChange } from './change.js';
import { factChanges, factChangeWords, flatFacts, markChanges } from './facts.js';
import type { Paired } from './pairing.js';

/** A catalogue entry that is new, gone, or reads differently. */
export interface EntryChange {
  readonly kind: string;
  readonly name: string;
  readonly fate: 'added' | 'removed' | 'modified' | 'renamed';
  /** Its name before, where it goes by another one. */
  readonly from?: string;
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

/** Entries as they were paired; those that read the same are left out. */
export function compareEntries({ pairs, removed, added }: Paired<KnownEntry>): EntryChange[] {
  const changes: EntryChange[] = [];
  for (const [was, is] of pairs) {
    const { kind, name } = is;
    const [old, now] = [factsWithSource(was), factsWithSource(is)];
    const facts = [...factChanges(old, now), ...markChanges(old, now)];
    const other = was.name !== name;
    if (facts.length === 0 && !other) continue;
    const told = facts.map(factChangeWords).join('; ');
    const words = other
      ? `${kind} ${was.name} renamed ${name}${told ? `, and: ${told}` : ''}`
      : `${kind} ${name}: ${told}`;
    changes.push({
      kind,
      name,
      fate: other ? 'renamed' : 'modified',
      facts,
      words,
      ...(other ? { from: was.name } : {}),
    });
  }
  for (const [fate, list] of [
    ['removed', removed],
    ['added', added],
  ] as const)
    for (const { kind, name } of list)
      changes.push({ kind, name, fate, facts: [], words: `${kind} ${name} ${fate}` });
  return changes.sort((a, b) => compareText(`${a.kind} ${a.name}`, `${b.kind} ${b.name}`));
}

export function factsWithSource({ kind, facts }: KnownEntry) {
  const { source, ...rest } = facts as { source?: unknown };
  return flatFacts({ ...rest, 'document behind it': source }, ENTRY_VOCABULARY[kind]);
}
