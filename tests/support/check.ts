import {
  createTailshaftCore,
  everyFinding,
  type FileCheck,
  type Finding,
  findingsOf,
} from '@tailshaft/language';
import { EmptyFileSystem, URI } from 'langium';
import { NodeFileSystem } from 'langium/node';

const memory = createTailshaftCore(EmptyFileSystem);
let count = 0;

export interface Checked {
  readonly uri: string;
  readonly text: string;
  readonly check: FileCheck;
  /** Each finding by itself, also those that are told under another of the same cause. */
  readonly findings: readonly Finding[];
}

/** The day on which all tests judge ages and expiries. */
export const TODAY = '2026-03-01';
memory.language.project.today = () => TODAY;

/** Checks one spec that imports nothing. */
export async function checkText(text: string): Promise<Checked> {
  const uri = URI.parse(`memory:///spec-${++count}.shaft`);
  const { LangiumDocumentFactory, LangiumDocuments } = memory.shared.workspace;
  const document = LangiumDocumentFactory.fromString(text, uri);
  LangiumDocuments.addDocument(document);
  await memory.language.project.load(document);
  const check = memory.language.project.check(document);
  LangiumDocuments.deleteDocument(uri);
  return { uri: uri.toString(), text, check, findings: everyFinding(findingsOf(check)) };
}

/** Checks a file of the disk with all that it imports. */
export async function checkFile(path: string, today = TODAY): Promise<Checked> {
  const { shared, language } = createTailshaftCore(NodeFileSystem);
  language.project.today = () => today;
  const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.file(path));
  await language.project.load(document);
  const check = language.project.check(document);
  return {
    uri: document.uri.toString(),
    text: document.textDocument.getText(),
    check,
    findings: everyFinding(findingsOf(check)),
  };
}

/** One line per finding: code, the words it stands on, and what it says. */
export function shown(checked: Checked): string[] {
  return checked.findings.map(
    one => `${one.code} at "${checked.text.slice(one.place.start, one.place.end)}": ${one.message}`,
  );
}
