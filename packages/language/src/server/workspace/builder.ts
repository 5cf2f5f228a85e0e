import {
  type AstNode,
  Cancellation,
  type CstNode,
  DefaultDocumentBuilder,
  DocumentState,
  interruptAndCheck,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  URI,
} from 'langium';
import type { Project } from '../../project/project.js';
import { belongs } from './belongs.js';

/** Work that may wait until nobody types. */
export interface Later {
  later(uris: Iterable<URI>): void;
}

/**
 * Rebuilds what changed and what sees it. Open documents are rebuilt at once; closed ones that see a changed file are
 * handed on to be rebuilt when there is time.
 */
export class Builder extends DefaultDocumentBuilder {
  /** Set once by the module; breaks the circle between the two. */
  background: Later | undefined;

  constructor(
    services: LangiumSharedCoreServices,
    private readonly project: () => Project,
  ) {
    super(services);
    this.updateBuildOptions = { validation: true };
  }

  override async update(
    changed: URI[],
    deleted: URI[],
    token = Cancellation.CancellationToken.None,
  ): Promise<void> {
    this.currentState = DocumentState.Changed;
    const { roots } = this.project();
    const isOpen = (uri: URI) => this.textDocuments?.get(uri.toString()) !== undefined && belongs(uri, roots);
    const forgotten = deleted.flatMap(uri => this.forget(uri));
    const gone = forgotten.filter(uri => !isOpen(uri));
    // A text that is open lives on when its file goes.
    const left = [...changed, ...forgotten.filter(isOpen)];
    const found = (await Promise.all(left.map(uri => this.findChangedUris(uri)))).flat();
    const documents = found.map(uri => this.changedDocument(uri));
    const known = new Set(found.map(uri => uri.toString()));
    const affected = this.project().affectedBy([
      ...known,
      ...[...gone, ...deleted].map(uri => uri.toString()),
    ]);
    const seeing: LangiumDocument[] = [];
    for (const uri of affected) {
      const one = known.has(uri) ? undefined : this.langiumDocuments.getDocument(URI.parse(uri));
      if (one) seeing.push(one);
    }
    for (const one of seeing) this.resetToState(one, DocumentState.ComputedScopes);
    await this.emitUpdate(found, gone);
    await interruptAndCheck(token);
    // Open documents cannot wait. What they see is brought up to date when they are judged.
    const now: LangiumDocument[] = [];
    const later: URI[] = [];
    for (const one of [...documents, ...seeing])
      if (isOpen(one.uri)) now.push(one);
      else later.push(one.uri);
    this.background?.later(later);
    await this.buildDocuments(now, this.updateBuildOptions, token);
  }

  /** Builds one document that nobody waits for. */
  async buildLater(uri: URI, token: Cancellation.CancellationToken): Promise<void> {
    // What went while it waited its turn has nothing to be said of.
    if (!this.langiumDocuments.hasDocument(uri) && !(await this.fileSystemProvider.exists(uri))) return;
    const document = await this.langiumDocuments.getOrCreateDocument(uri);
    if (document.state >= DocumentState.Validated) return;
    const before = this.currentState;
    await this.buildDocuments([document], this.updateBuildOptions, token);
    this.currentState = Math.max(before, this.currentState);
  }

  private forget(uri: URI): URI[] {
    return this.langiumDocuments.deleteDocuments(uri).map(document => {
      this.cleanUpDeleted(document);
      this.project().forget(document.uri.toString());
      return document.uri;
    });
  }

  private changedDocument(uri: URI): LangiumDocument {
    let document = this.langiumDocuments.getDocument(uri);
    if (!document) {
      document = this.langiumDocumentFactory.fromModel(EMPTY(), uri);
      document.state = DocumentState.Changed;
      this.langiumDocuments.addDocument(document);
    }
    this.resetToState(document, DocumentState.Changed);
    return document;
  }
}

/** Lets go of the syntax tree of a closed file; its reading stays, and opening it parses it again. */
export function dropTree(document: LangiumDocument): void {
  const root = document.parseResult.value as AstNode & { statements?: unknown[]; $cstNode?: CstNode };
  const empty = { $type: root.$type, statements: [], $document: document };
  (document.parseResult as { value: AstNode }).value = empty as unknown as AstNode;
}

const EMPTY = () => ({ $type: 'Document', statements: [] }) as AstNode;
