import type { EntryKind, Role } from '@tailshaft/vocabulary';
import type { LangiumDocument, LangiumDocuments } from 'langium';
import { blocksOf, withNested } from '../elaborate/vessel.js';
import type { Finding } from '../project/finding.js';
import { addedImport, importable } from '../project/importable.js';
import type { Project } from '../project/project.js';
import type { DocumentReading } from '../reading/document.js';
import { namedParts } from './inline-part.js';
import type { Offer, TextOf } from './offer.js';

/** Where a name stands that no file in sight declares, and another file of the workspace does: the import of that file. */
export function importEntry(
  project: Project,
  documents: LangiumDocuments,
  document: LangiumDocument,
  range: { readonly start: number; readonly end: number },
  findings: readonly Finding[],
  textOf: TextOf,
): Offer[] {
  const reading = project.reading(document);
  const table = project.entries(document);
  return namesUsed(reading)
    .filter(({ place, kind, name }) => touch(place, range) && !table.find(kind, name))
    .flatMap(({ place, kind, name }) => {
      const found = importable(project, documents, document, kind).filter(one => one.entry.name === name);
      const finding = findings.find(one => touch(one.place, place));
      return found.map(({ path }) => ({
        title: `Import "${path}", which declares ${kind} ${name}`,
        kind: 'quickfix',
        edits: [{ uri: reading.uri, ...addedImport(textOf(reading.uri), reading, path) }],
        ...(finding ? { finding } : {}),
        ...(found.length === 1 ? { preferred: true } : {}),
      }));
    });
}

interface NameUsed {
  readonly kind: EntryKind | Role;
  readonly name: string;
  readonly place: { readonly start: number; readonly end: number };
}

/** Catalogue entries that a file calls by name. */
function namesUsed(reading: DocumentReading): NameUsed[] {
  const parts = namedParts(reading).map(({ part }) => ({
    kind: part.role,
    name: part.name!,
    place: part.namePlace!,
  }));
  const materials = reading.vessels
    .flatMap(blocksOf)
    .flatMap(block => [...withNested(block)])
    .flatMap(block => block.facts)
    .flatMap(({ row, value, fact }) =>
      row.kind.form === 'name' && row.kind.of === 'shaft material' && value && fact?.value !== undefined
        ? [{ kind: row.kind.of, name: fact.written, place: value }]
        : [],
    );
  return [...parts, ...materials];
}

function touch(
  one: { readonly start: number; readonly end: number },
  other: { readonly start: number; readonly end: number },
): boolean {
  return one.start <= other.end && one.end >= other.start;
}
