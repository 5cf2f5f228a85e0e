import { type LangiumDocument, URI } from 'langium';
import type {
  DefinitionProvider,
  DocumentHighlightProvider,
  DocumentLinkProvider,
  LangiumSharedServices,
  ReferencesProvider,
  RenameProvider,
} from 'langium/lsp';
import {
  type DefinitionParams,
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentHighlightParams,
  type DocumentLink,
  type Location,
  type LocationLink,
  LSPErrorCodes,
  type Range,
  type ReferenceParams,
  type RenameParams,
  ResponseError,
  type TextDocumentPositionParams,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { workspaceEdit } from '../actions/workspace-edit.js';
import type { Project } from '../project/project.js';
import type { ImportReading } from '../reading/document.js';
import type { Place } from '../reading/place.js';
import { Names } from './names.js';
import type { Occurrence } from './occurrence.js';
import { whyNotNamed, whyNotRename } from './refusal.js';

const TOP: Range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** Everything that an editor asks about names, from one table of them. */
export class NameProviders
  implements
    DefinitionProvider,
    ReferencesProvider,
    DocumentHighlightProvider,
    DocumentLinkProvider,
    RenameProvider
{
  private readonly names: Names;

  constructor(
    private readonly services: {
      readonly project: Project;
      readonly shared: Pick<LangiumSharedServices, 'workspace'>;
    },
  ) {
    this.names = new Names(services.project, services.shared.workspace.LangiumDocuments);
  }

  getDefinition(document: LangiumDocument, params: DefinitionParams): LocationLink[] | undefined {
    const offset = document.textDocument.offsetAt(params.position);
    const wanted = this.services.project
      .reading(document)
      .imports.find(one => offset >= one.place.start && offset <= one.place.end);
    if (wanted) return this.importTargets(document, wanted);
    const one = this.names.at(document, offset);
    if (!one) return undefined;
    return this.names.declarations(one).flatMap(({ declares, ...name }) => {
      const targetRange = this.rangeOf(declares!);
      const targetSelectionRange = this.rangeOf(name);
      if (!targetRange || !targetSelectionRange) return [];
      const originSelectionRange = this.rangeOf(one)!;
      return [{ originSelectionRange, targetUri: name.uri, targetRange, targetSelectionRange }];
    });
  }

  findReferences(document: LangiumDocument, params: ReferenceParams): Location[] {
    const one = this.at(document, params);
    if (!one) return [];
    return this.names
      .same(one)
      .filter(other => params.context.includeDeclaration || !other.declares)
      .flatMap(other => {
        const range = this.rangeOf(other);
        return range ? [{ uri: other.uri, range }] : [];
      });
  }

  getDocumentHighlight(document: LangiumDocument, params: DocumentHighlightParams): DocumentHighlight[] {
    const one = this.at(document, params);
    if (!one) return [];
    return this.names
      .in(document)
      .filter(other => other.key === one.key)
      .map(other => ({
        range: this.rangeOf(other)!,
        kind: other.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
      }));
  }

  getDocumentLinks(document: LangiumDocument): DocumentLink[] {
    return this.services.project.reading(document).imports.flatMap(wanted => {
      const files = this.services.project.importedFiles(document, wanted.path);
      if (files.length === 0) return [];
      const said = files.map(file => decodeURIComponent(file.path.split('/').at(-1)!));
      const tooltip = files.length === 1 ? `Open ${said[0]}` : `Open the first of ${said.join(', ')}`;
      return [{ range: this.rangeOf(inQuotes(wanted))!, target: files[0]!.toString(), tooltip }];
    });
  }

  prepareRename(document: LangiumDocument, params: TextDocumentPositionParams): Range | undefined {
    const one = this.at(document, params);
    if (!one) return undefined;
    refuse(whyNotRename(this.names, one));
    return this.rangeOf(one);
  }

  rename(document: LangiumDocument, params: RenameParams): WorkspaceEdit | undefined {
    const one = this.at(document, params);
    if (!one) return undefined;
    const name = params.newName.trim();
    refuse(
      whyNotRename(this.names, one) ?? (name === one.name ? undefined : whyNotNamed(this.names, one, name)),
    );
    const edits = this.names.same(one).map(({ uri, start, end }) => ({ uri, start, end, text: name }));
    return workspaceEdit(edits, this.services.shared.workspace);
  }

  private importTargets(document: LangiumDocument, wanted: ImportReading): LocationLink[] {
    const originSelectionRange = this.rangeOf(inQuotes(wanted))!;
    return this.services.project.importedFiles(document, wanted.path).map(file => ({
      originSelectionRange,
      targetUri: file.toString(),
      targetRange: TOP,
      targetSelectionRange: TOP,
    }));
  }

  private at(document: LangiumDocument, { position }: TextDocumentPositionParams): Occurrence | undefined {
    return this.names.at(document, document.textDocument.offsetAt(position));
  }

  private rangeOf(place: Place): Range | undefined {
    const text = this.names.documents.getDocument(URI.parse(place.uri))?.textDocument;
    return text && { start: text.positionAt(place.start), end: text.positionAt(place.end) };
  }
}

/** The path of an import without its quotes. */
function inQuotes({ place, path }: ImportReading): Place {
  return { uri: place.uri, start: place.start + 1, end: place.start + 1 + path.length };
}

function refuse(why: string | undefined): void {
  if (why) throw new ResponseError(LSPErrorCodes.RequestFailed, why);
}
