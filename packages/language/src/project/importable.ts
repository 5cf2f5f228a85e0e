import { type LangiumDocument, type LangiumDocuments, UriUtils } from 'langium';
import type { Replacement } from '../edit/text-edit.js';
import type { DocumentReading, EntryReading } from '../reading/document.js';
import { lineBreakOf } from '../text/tokens.js';
import { relativePath, withoutExtension } from './imports.js';
import type { Project } from './project.js';

/** An entry that a file would see if it imported the file that declares it. */
export interface Importable {
  readonly entry: EntryReading;
  /** As an import would write it: `../catalogue/gears`. */
  readonly path: string;
}

/**
 * Entries of a kind in catalogues that this file does not import: files of entries alone, since one with a vessel in it is
 * a spec of its own. The nearest come first; of two with one name in one file, the first.
 */
export function importable(
  project: Project,
  documents: LangiumDocuments,
  from: LangiumDocument,
  kind: string,
): Importable[] {
  const seen = new Set(project.visible(from).map(one => one.uri));
  const known = project.entries(from);
  const folder = UriUtils.dirname(from.uri).path;
  const found: Importable[] = [];
  for (const one of documents.all) {
    if (one.uri.scheme !== from.uri.scheme || seen.has(one.uri.toString())) continue;
    const { entries, vessels } = project.summary(one);
    if (vessels.length > 0) continue;
    const path = relativePath(folder, withoutExtension(one.uri.path));
    const named = new Set<string>();
    for (const entry of entries) {
      if (entry.kind !== kind || !entry.name || named.has(entry.name)) continue;
      named.add(entry.name);
      if (known.find(kind, entry.name) === undefined) found.push({ entry, path });
    }
  }
  const steps = ({ path }: Importable) => path.split('/').length;
  return found.sort((one, other) => steps(one) - steps(other) || (one.path < other.path ? -1 : 1));
}

/** Writes an import behind those that a file has, or at its beginning. */
export function addedImport(text: string, { imports }: DocumentReading, path: string): Replacement {
  const eol = lineBreakOf(text);
  const last = imports.at(-1);
  if (last) return { start: last.place.end, end: last.place.end, text: `${eol}import "${path}"` };
  const start = text.startsWith('\uFEFF') ? 1 : 0;
  return { start, end: start, text: `import "${path}"${eol}${eol}` };
}
