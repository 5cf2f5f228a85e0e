import type { CatalogueEntry, RatioVariant } from '@tailshaft/drivetrain';
import { CompletionItemKind } from 'vscode-languageserver';
import type { EntryTable } from '../../elaborate/catalogue.js';
import type { EntryReading } from '../../reading/document.js';
import type { JudgedLine } from '../lines.js';
import { judgeGears } from './gearFit.js';
import type { Offer } from './items.js';

/** Catalogue entries for a role, with their title and source; gears with how they would fare in the line. */
export function entryOffers(role: string, table: EntryTable, line: JudgedLine | undefined): Offer[] {
  const entries = table.entries(role).filter(entry => entry.name);
  if (role !== 'gear' || !line) return entries.map(entry => entryOffer(entry));
  const fits = judgeGears(line, table.catalogue.gears);
  return entries
    .map(entry => ({ entry, fit: fits.get(entry.name) }))
    .sort((a, b) => (b.fit?.rank ?? 0) - (a.fit?.rank ?? 0))
    .map(({ entry, fit }) => entryOffer(entry, fit?.words));
}

function entryOffer(entry: EntryReading, fit?: string): Offer {
  const source = entry.facts.facts.find(one => one.row.field === 'source')?.fact?.written;
  const detail = [fit, entry.title].filter(Boolean).join(' · ');
  return {
    label: entry.name,
    kind: CompletionItemKind.Class,
    ...(detail ? { detail } : {}),
    doc: [entry.doc, source ? `Source: ${source}` : 'Source: none stated.'].filter(Boolean).join('\n\n'),
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
