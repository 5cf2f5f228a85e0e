import {
  type AstNode,
  Cancellation,
  type CstNode,
  DefaultDocumentBuilder,
  DocumentState,
  interruptAndCheck,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  type URI,
} from 'langium';
import type { Project } from '../../project/project.js';

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
    const gone = deleted.flatMap(uri => this.forget(uri));
    const found = (await Promise.all(changed.map(uri => this.findChangedUris(uri)))).flat();
    const documents = found.map(uri => this.changedDocument(uri));
    const all = new Set([...found, ...gone, ...deleted].map(uri => uri.toString()));
    const others = this.langiumDocuments.all.filter(one => !all.has(one.uri.toString())).toArray();
    const seeing = this.project().seenBy(others, all);
    for (const one of seeing) this.resetToState(one, DocumentState.ComputedScopes);
    await this.emitUpdate(found, gone);
    await interruptAndCheck(token);
    const { now, later } = this.byUrgency([...documents, ...seeing]);
    this.background?.later(later.map(one => one.uri));
    await this.buildDocuments(now, this.updateBuildOptions, token);
  }

  /** Open documents, and changed ones that an open one sees, cannot wait. */
  private byUrgency(documents: readonly LangiumDocument[]) {
    const open = this.openDocuments();
    const urgent = (one: LangiumDocument) =>
      open.includes(one) ||
      (one.state === DocumentState.Changed && open.some(other => this.seesOne(other, one.uri)));
    return { now: documents.filter(urgent), later: documents.filter(one => !urgent(one)) };
  }

  /** Builds one document that nobody waits for; open ones that turn out to see it are judged again. */
  async buildLater(uri: URI, token: Cancellation.CancellationToken): Promise<void> {
    const document = await this.langiumDocuments.getOrCreateDocument(uri);
    if (document.state >= DocumentState.Validated) return;
    const wasChanged = document.state === DocumentState.Changed;
    const before = this.currentState;
    await this.buildDocuments([document], this.updateBuildOptions, token);
    if (wasChanged) {
      const seeing = this.openDocuments().filter(one => one !== document && this.seesOne(one, uri));
      for (const one of seeing) this.resetToState(one, DocumentState.ComputedScopes);
      await this.buildDocuments(seeing, this.updateBuildOptions, token);
    }
    this.currentState = Math.max(before, this.currentState);
  }

  private openDocuments(): LangiumDocument[] {
    const texts = this.textDocuments;
    return this.langiumDocuments.all.filter(one => texts?.get(one.uri.toString()) !== undefined).toArray();
  }

  private seesOne(document: LangiumDocument, uri: URI): boolean {
    return this.project().sees(document, new Set([uri.toString()]));
  }

  private forget(uri: URI): URI[] {
    return this.langiumDocuments.deleteDocuments(uri).map(document => {
      this.cleanUpDeleted(document);
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
