import { countsOf, countWords, missingData, openChecks } from '@tailshaft/drivetrain';
import { behindText, createTailshaftCore, type FileCheck, findingsOf, type Place } from '@tailshaft/language';
import { locationOf, type TailshaftServices } from '@tailshaft/language/server';
import { count } from '@tailshaft/mechanics';
import { SCREENING } from '@tailshaft/sheet';
import { type FileSystemNode, type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import type { ReportQuestion } from '../requests.js';

type Located = (place: Place) => number | undefined;

/** What the checks say of a spec, in words for an agent: as it is in the editor, or of a text given instead. */
export async function reportAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { about }: ReportQuestion,
): Promise<{ text: string }> {
  const documents = services.shared.workspace.LangiumDocuments;
  const lineOf: Located = place => {
    const line = locationOf(place, documents)?.range.start.line;
    return line === undefined ? undefined : line + 1;
  };
  return { text: told(services.project.check(document), about, lineOf) };
}

/** The same for a text that stands nowhere; what it imports is found from the address. */
export async function reportOfText(
  services: TailshaftServices,
  { uri, text, about }: ReportQuestion & { readonly uri: string; readonly text: string },
): Promise<{ text: string }> {
  const files = new WithText(services.shared.workspace.FileSystemProvider, URI.parse(uri), text);
  const { shared, language } = createTailshaftCore({ fileSystemProvider: () => files });
  language.project.today = services.project.today;
  language.project.roots = services.project.roots;
  const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
  await language.project.load(document);
  const lineOf: Located = place => {
    const found = shared.workspace.LangiumDocuments.getDocument(URI.parse(place.uri));
    return found && found.textDocument.positionAt(place.start).line + 1;
  };
  return { text: told(language.project.check(document), about, lineOf) };
}

function told(check: FileCheck, about: ReportQuestion['about'], lineOf: Located): string {
  const parts = about === 'questions' ? [questions(check, lineOf)] : findings(check, lineOf);
  return [...parts.filter(Boolean), SCREENING].join('\n\n');
}

function findings(check: FileCheck, lineOf: Located): string[] {
  const vessels = check.vessels.map(one => `${one.vessel.name}: ${countWords(countsOf(one.verdicts))}.`);
  const lines = findingsOf(check)
    .filter(one => one.severity !== 'information')
    .map(one => {
      const line = lineOf(one.place);
      const kind = one.severity === 'hint' ? 'note' : one.severity;
      return `${kind} ${one.code}${line === undefined ? '' : `, line ${line}`}: ${one.message}`;
    });
  return [
    vessels.join('\n'),
    lines.length > 0 ? lines.join('\n') : 'No findings: no check that could be made fails.',
    questions(check, lineOf),
  ];
}

/** What is not known, by the missing datum, with the checks that wait for it. */
function questions(check: FileCheck, lineOf: Located): string {
  const verdicts = openChecks([...check.vessels, ...check.entries].flatMap(one => one.verdicts));
  if (verdicts.length === 0) return 'No open question: every check could be made.';
  const keyOf = (place: object) => {
    const { uri, start, end } = place as Place;
    return `${uri} ${start} ${end}`;
  };
  const behind = behindText(check);
  const data = missingData(
    verdicts.filter(one => !behind.has(one)),
    keyOf,
  );
  const lines = data.map(({ gap, waiting }) => {
    const line = lineOf((gap.at ?? gap.host) as Place);
    const rules = new Set(waiting.map(one => one.rule));
    return `- ${gap.what}${line === undefined ? '' : `, line ${line}`}: ${[...rules].join(', ')}`;
  });
  const waiting = data.length === 0 ? '' : `, for ${count(data.length, 'missing datum', 'missing data')}`;
  const checks = verdicts.length === 1 ? 'check cannot tell' : 'checks cannot tell';
  const head = `Open questions: ${verdicts.length} ${checks}${waiting}. Such a check has neither passed nor failed.`;
  return [head, ...lines].join('\n');
}

/** The files of the workspace with one text in the place of what stands there. */
class WithText implements FileSystemProvider {
  constructor(
    private readonly files: FileSystemProvider,
    private readonly uri: URI,
    private readonly text: string,
  ) {}

  private isGiven = (uri: URI) => uri.toString() === this.uri.toString();
  private node = (uri: URI): FileSystemNode => ({ uri, isFile: true, isDirectory: false });

  stat = (uri: URI) =>
    this.isGiven(uri) ? Promise.resolve(this.node(uri)) : Promise.resolve(this.files.stat(uri));
  statSync = (uri: URI) => (this.isGiven(uri) ? this.node(uri) : this.files.statSync(uri));
  exists = async (uri: URI) => this.isGiven(uri) || (await this.files.exists(uri));
  existsSync = (uri: URI) => this.isGiven(uri) || this.files.existsSync(uri);
  readFile = async (uri: URI) => (this.isGiven(uri) ? this.text : this.files.readFile(uri));
  readFileSync = (uri: URI) => (this.isGiven(uri) ? this.text : this.files.readFileSync(uri));
  readBinary = (uri: URI) => this.files.readBinary(uri);
  readBinarySync = (uri: URI) => this.files.readBinarySync(uri);
  readDirectory = (uri: URI) => this.files.readDirectory(uri);
  readDirectorySync = (uri: URI) => this.files.readDirectorySync(uri);
}
