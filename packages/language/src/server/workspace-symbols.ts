import type { FuzzyMatcher, WorkspaceSymbolProvider } from 'langium/lsp';
import {
  type CancellationToken,
  SymbolKind,
  type WorkspaceSymbol,
  type WorkspaceSymbolParams,
} from 'vscode-languageserver';
import type { Place } from '../reading/place.js';
import { locationOf } from './places.js';
import type { TailshaftServices } from './services.js';

/** More than anybody looks through; the client asks again with more letters. */
const MOST = 500;

/** Entries, vessels and shaft lines of the whole workspace by name. */
export class WorkspaceSymbols implements WorkspaceSymbolProvider {
  constructor(
    private readonly matcher: FuzzyMatcher,
    private readonly services: () => TailshaftServices,
  ) {}

  getSymbols({ query }: WorkspaceSymbolParams, token?: CancellationToken): WorkspaceSymbol[] {
    const { project, shared } = this.services();
    const documents = shared.workspace.LangiumDocuments;
    const found: WorkspaceSymbol[] = [];
    const add = (name: string, kind: SymbolKind, place: Place, container: string) => {
      const location = name && this.matcher.match(query, name) ? locationOf(place, documents) : undefined;
      if (location) found.push({ name, kind, location, containerName: container });
    };
    for (const document of documents.all) {
      if (found.length >= MOST || token?.isCancellationRequested) break;
      const reading = project.summary(document);
      for (const entry of reading.entries) add(entry.name, SymbolKind.Class, entry.namePlace, entry.kind);
      for (const vessel of reading.vessels) {
        add(vessel.name, SymbolKind.Module, vessel.namePlace, 'vessel');
        for (const arrangement of vessel.arrangements)
          for (const line of arrangement.lines)
            add(line.name, SymbolKind.Object, line.namePlace, `${vessel.name} ${arrangement.name}`);
      }
    }
    return found.slice(0, MOST);
  }
}
