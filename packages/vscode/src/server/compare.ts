import {
  compareSpecs,
  comparisonMarkdown,
  LineAnalysis,
  type ShaftLine,
  type SpecSet,
} from '@tailshaft/drivetrain';
import { createTailshaftCore, type FileCheck } from '@tailshaft/language';
import type { TailshaftServices } from '@tailshaft/language/server';
import { SCREENING } from '@tailshaft/sheet';
import { type FileSystemNode, type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import type { CompareQuestion } from '../requests.js';

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

async function checkNow({ project, shared }: TailshaftServices, uri: string): Promise<FileCheck> {
  const other = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
  await project.load(other);
  return project.check(other);
}

/** Checks texts of another time apart from the workspace. */
async function checkTexts(
  services: TailshaftServices,
  { texts, uri }: { readonly texts: Readonly<Record<string, string>>; readonly uri: string },
): Promise<FileCheck> {
  const files = new TextFiles(texts);
  const { shared, language } = createTailshaftCore({ fileSystemProvider: () => files });
  language.project.today = services.project.today;
  language.project.roots = services.project.roots;
  language.project.policy = services.project.policy;
  const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
  await language.project.load(document);
  return language.project.check(document);
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
  return errors > 0
    ? [`${name} has ${errors} ${errors === 1 ? 'error' : 'errors'} in its text: ${wrong[0]!.message}`]
    : [];
}

/** Files that are given as texts, and the folders that hold them. */
class TextFiles implements FileSystemProvider {
  private readonly files = new Map<string, string>();

  constructor(texts: Readonly<Record<string, string>>) {
    for (const [uri, text] of Object.entries(texts)) this.files.set(URI.parse(uri).path, text);
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    return this.statSync(uri);
  }

  statSync(uri: URI): FileSystemNode {
    const isFile = this.files.has(uri.path);
    return { uri, isFile, isDirectory: !isFile && this.existsSync(uri) };
  }

  async exists(uri: URI): Promise<boolean> {
    return this.existsSync(uri);
  }

  existsSync({ path }: URI): boolean {
    return this.files.has(path) || [...this.files.keys()].some(one => one.startsWith(`${path}/`));
  }

  async readFile(uri: URI): Promise<string> {
    return this.readFileSync(uri);
  }

  readFileSync({ path }: URI): string {
    const text = this.files.get(path);
    if (text === undefined) throw new Error(`${path} was not there at that time`);
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
    const start = `${uri.path}/`;
    return [...this.files.keys()]
      .filter(path => path.startsWith(start) && !path.slice(start.length).includes('/'))
      .map(path => ({ uri: uri.with({ path }), isFile: true, isDirectory: false }));
  }
}
