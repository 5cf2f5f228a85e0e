import { type LangiumDocument, URI } from 'langium';
import { createTailshaftCore, type FileCheck, findingsOf } from '../../src/index.js';
import { MemoryFiles, uriOf } from '../server/memory-files.js';

// Specs of one file share one parser: to make a parser takes longer than to read a spec.
const memory = new MemoryFiles({});
const shared = makeCore(memory);
let count = 0;

function makeCore(files: MemoryFiles): ReturnType<typeof createTailshaftCore> {
  const core = createTailshaftCore({ fileSystemProvider: () => files });
  core.language.project.today = () => '2026-06-01';
  return core;
}

/** Specs read without an editor: the first file is the one that is checked. */
export class Specs {
  readonly document: LangiumDocument;
  readonly check: FileCheck;

  private constructor(
    readonly core: ReturnType<typeof createTailshaftCore>,
    document: LangiumDocument,
  ) {
    this.document = document;
    this.check = core.language.project.check(document);
  }

  static async read(files: string | Readonly<Record<string, string>>): Promise<Specs> {
    const all = typeof files === 'string' ? { [`spec-${++count}/ternhaven.shaft`]: files } : files;
    const core = typeof files === 'string' ? shared : makeCore(new MemoryFiles(all));
    if (core === shared) for (const [path, text] of Object.entries(all)) memory.texts.set(uriOf(path), text);
    const documents = core.shared.workspace.LangiumDocuments;
    const [path] = Object.keys(all);
    const document = await documents.getOrCreateDocument(URI.parse(uriOf(path!)));
    await core.language.project.load(document);
    return new Specs(core, document);
  }

  textOf = (uri: string): string =>
    this.core.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))!.textDocument.getText();

  get reading() {
    return this.core.language.project.reading(this.document);
  }

  /** `code: message`, one a line. */
  get findings(): string[] {
    return findingsOf(this.check).map(one => `${one.code}: ${one.message}`);
  }
}
