import { type TailshaftServices, wholeWorkspace } from '@tailshaft/language/server';
import { UriUtils } from 'langium';
import type { CatalogueNote } from '../requests.js';

/** More than anybody looks through. */
const MOST = 20;

/** What of the workspace holds catalogue entries and no vessel: each folder whose specs are all such, and other files. */
export async function catalogues(services: TailshaftServices): Promise<CatalogueNote[]> {
  await wholeWorkspace(services);
  const folders = new Map<string, { uri: string; entries: number; vessels: number }[]>();
  for (const { uri } of services.shared.workspace.LangiumDocuments.all) {
    if (uri.scheme === 'untitled') continue;
    const document = services.shared.workspace.LangiumDocuments.getDocument(uri)!;
    const { entries, vessels } = services.project.summary(document);
    const folder = UriUtils.dirname(uri).toString();
    const had = folders.get(folder) ?? [];
    had.push({ uri: uri.toString(), entries: entries.length, vessels: vessels.length });
    folders.set(folder, had);
  }
  const notes = [...folders].flatMap(([folder, files]): CatalogueNote[] => {
    const filled = files.filter(one => one.entries > 0 && one.vessels === 0);
    if (files.length < 2 || filled.length < files.length) return filled;
    return [{ uri: folder, entries: filled.reduce((sum, one) => sum + one.entries, 0) }];
  });
  return notes.sort((one, other) => other.entries - one.entries).slice(0, MOST);
}
