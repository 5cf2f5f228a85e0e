import {
  compareSpecs,
  comparisonMarkdown,
  LineAnalysis,
  type ShaftLine,
  type SpecSet,
} from '@tailshaft/drivetrain';
import { createTailshaftCore, type FileCheck, marksOf } from '@tailshaft/language';
import type { TailshaftServices } from '@tailshaft/language/server';
import { count } from '@tailshaft/mechanics';
import { SCREENING } from '@tailshaft/sheet';
import { type FileSystemNode, type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import type { CompareQuestion, MarkNote, OtherTexts } from '../requests.js';

/** What leads from the other text to this one, by consequence. */
export async function compareAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { before, after }: CompareQuestion,
): Promise<{ markdown: string; caution: string }> {
  const now = setOf(after ? await checkTexts(services, after) : services.project.check(document));
  const then =
    'texts' in before
      ? await checkTexts(services, before)
      : await checkNow(services, before.textDocument.uri);
  return { markdown: comparisonMarkdown(compareSpecs(setOf(then), now)), caution: SCREENING };
}

/** The lines of a text whose consequence moved since the texts of another time. */
export async function marksAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  before: OtherTexts,
): Promise<MarkNote[]> {
  const now = services.project.check(document);
  const comparison = compareSpecs(setOf(await checkTexts(services, before)), setOf(now));
  const byLine = new Map<number, MarkNote>();
  for (const { place, gravity, words } of marksOf(comparison, now.vessels, document.uri.toString())) {
    const { line } = document.textDocument.positionAt(place.start);
    const had = byLine.get(line);
    byLine.set(line, {
      line,
      gravity: graver(had?.gravity, gravity),
      words: [...new Set([...(had?.words ?? []), ...words])],
    });
  }
  return [...byLine.values()];
}

function graver(one: MarkNote['gravity'] | undefined, other: MarkNote['gravity']): MarkNote['gravity'] {
  if (one === undefined || one === other) return other;
  return one === 'worse' || other === 'worse' ? 'worse' : 'moved';
}

/** What another time's texts import beside themselves: addresses of files, and of folders that may hold more. */
export async function wantedAnswer(services: TailshaftServices, other: OtherTexts): Promise<string[]> {
  const files = new TextFiles(other.texts);
  await loaded(services, files, other.uri);
  return [...files.wanted];
}

async function checkNow({ project, shared }: TailshaftServices, uri: string): Promise<FileCheck> {
  const other = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
  await project.load(other);
  return project.check(other);
}

/** Checks texts of another time apart from the workspace. */
async function checkTexts(services: TailshaftServices, { texts, uri }: OtherTexts): Promise<FileCheck> {
  const { project, document } = await loaded(services, new TextFiles(texts), uri);
  return project.check(document);
}

async function loaded(services: TailshaftServices, files: TextFiles, uri: string) {
  const { shared, language } = createTailshaftCore({ fileSystemProvider: () => files });
  const { project } = language;
  project.today = services.project.today;
  project.roots = services.project.roots;
  project.policy = services.project.policy;
  const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
  await project.load(document);
  return { project, document };
}

function setOf(check: FileCheck): SpecSet {
  return {
    vessels: check.vessels.map(({ vessel, verdicts }) => {
      const made = new Map<ShaftLine, LineAnalysis>();
      const analysisOf = (line: ShaftLine) => {
        const had = made.get(line) ?? new LineAnalysis(line, vessel);
        made.set(line, had);
        return had;
      };
      return { vessel, verdicts, analysisOf };
    }),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
    unread: unreadIn(check),
  };
}

/** What cannot be read is not compared, and is said first. */
function unreadIn({ uri, problems }: FileCheck): string[] {
  const wrong = problems.filter(one => one.severity === 'error');
  const errors = wrong.length;
  const name = URI.parse(uri).path.split('/').at(-1);
  return errors > 0 ? [`${name} has ${count(errors, 'error')} in its text: ${wrong[0]!.message}`] : [];
}

/** Files that are given as texts, and the folders that hold them. */
class TextFiles implements FileSystemProvider {
  private readonly files = new Map<string, string>();
  /** Asked for: what is not there, and folders, which may once have held more. */
  readonly wanted = new Set<string>();

  constructor(texts: Readonly<Record<string, string>>) {
    for (const [uri, text] of Object.entries(texts)) this.files.set(URI.parse(uri).path, text);
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    return this.statSync(uri);
  }

  statSync(uri: URI): FileSystemNode {
    const isFile = this.files.has(uri.path);
    if (!isFile) this.wanted.add(uri.toString());
    return { uri, isFile, isDirectory: !isFile && this.existsSync(uri) };
  }

  async exists(uri: URI): Promise<boolean> {
    return this.existsSync(uri);
  }

  existsSync(uri: URI): boolean {
    if (this.files.has(uri.path)) return true;
    this.wanted.add(uri.toString());
    return [...this.files.keys()].some(one => one.startsWith(`${uri.path}/`));
  }

  async readFile(uri: URI): Promise<string> {
    return this.readFileSync(uri);
  }

  readFileSync(uri: URI): string {
    const text = this.files.get(uri.path);
    if (text === undefined) {
      this.wanted.add(uri.toString());
      throw new Error(`${uri.path} was not there at that time`);
    }
    return text;
  }

  async readBinary(): Promise<Uint8Array> {
    throw new Error('Specs are text.');
  }

  readBinarySync(): Uint8Array {
    throw new Error('Specs are text.');
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.readDirectorySync(uri);
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    this.wanted.add(uri.toString());
    const start = `${uri.path}/`;
    return [...this.files.keys()]
      .filter(path => path.startsWith(start) && !path.slice(start.length).includes('/'))
      .map(path => ({ uri: uri.with({ path }), isFile: true, isDirectory: false }));
  }
}
