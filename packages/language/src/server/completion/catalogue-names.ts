import type { CatalogueEntry, GearFacts, RatioVariant } from '@tailshaft/drivetrain';
import type { EntryKind, Role } from '@tailshaft/vocabulary';
import { CompletionItemKind, type TextEdit } from 'vscode-languageserver';
import { catalogueEntry, type EntryTable } from '../../elaborate/catalogue.js';
import type { Importable } from '../../project/importable.js';
import type { EntryReading } from '../../reading/document.js';
import { plain } from '../hover/markdown.js';
import type { JudgedLine } from '../lines.js';
import { judgeGears } from './gear-fit.js';
import type { Offer } from './items.js';
import type { Fit } from './line-trial.js';
import { judgeEntries } from './part-fit.js';

/** More entries of files that are not imported than anybody looks through. */
const MOST_OTHERS = 200;

/**
 * Catalogue entries for a role, with their title and source, and how they would fare in the line. Behind those
 * in sight come those of other files of the workspace, which bring their import with them.
 */
export function entryOffers(
  role: EntryKind | Role,
  table: EntryTable,
  line: JudgedLine | undefined,
  others: readonly OtherFile[] = [],
): Offer[] {
  const seen = table.entries(role).filter(entry => entry.name);
  const known = new Set(seen.map(entry => entry.name));
  // A name that several catalogues have is offered once, from the nearest.
  const more = others
    .filter(one => {
      if (known.has(one.entry.name)) return false;
      known.add(one.entry.name);
      return true;
    })
    .slice(0, MOST_OTHERS);
  const byFit = (all: readonly { entry: EntryReading; other?: OtherFile }[]) => {
    const fits = line
      ? fitsOf(
          role,
          line,
          all.map(one => one.entry),
        )
      : undefined;
    return all
      .map(one => ({ ...one, fit: fits?.get(one.entry.name) }))
      .sort((a, b) => (b.fit?.rank ?? 0) - (a.fit?.rank ?? 0))
      .map(({ entry, fit, other }) => entryOffer(entry, fit?.words, other));
  };
  return [
    ...byFit(seen.map(entry => ({ entry }))),
    ...byFit(more.map(other => ({ entry: other.entry, other }))),
  ];
}

function fitsOf(
  role: EntryKind | Role,
  line: JudgedLine,
  entries: readonly EntryReading[],
): ReadonlyMap<string, Fit> {
  if (role !== 'gear') return judgeEntries(role, line, entries);
  return judgeGears(
    line,
    entries.map(entry => catalogueEntry<GearFacts>(entry)),
  );
}

/** An entry of a file that is not imported, with the edit that imports it. */
export interface OtherFile extends Importable {
  readonly added: TextEdit;
}

function entryOffer(entry: EntryReading, fit?: string, other?: OtherFile): Offer {
  const source = entry.facts.facts.find(one => one.row.field === 'source')?.fact?.written;
  const detail = [fit, entry.title, other && `imports "${other.path}"`].filter(Boolean).join(' · ');
  return {
    label: entry.name,
    kind: CompletionItemKind.Class,
    ...(detail ? { detail } : {}),
    ...(other ? { also: other.added } : {}),
    doc: [entry.doc, source ? `Source: ${plain(source)}` : 'Source: none stated.']
      .filter(Boolean)
      .join('\n\n'),
  };
}

/** The ratios of a gear, with the exact ones beside. */
export function ratioOffers(gear: CatalogueEntry<{ ratios: readonly RatioVariant[] }> | undefined): Offer[] {
  return (gear?.facts.ratios ?? []).map(variant => ({
    label: variant.nominalFact.written,
    kind: CompletionItemKind.Value,
    ...(variant.exact?.written ? { detail: `exact ${variant.exact.written}` } : {}),
  }));
}
