import { homeOfFact, silentTopics, type Verdict } from '@tailshaft/drivetrain';
import { createTailshaftCore, type FileCheck } from '@tailshaft/language';
import { type Value, valuesBehind } from '@tailshaft/mechanics';
import { EmptyFileSystem, type LangiumDocument, URI } from 'langium';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { TODAY } from '../support/check.js';

/** What one verdict says, freed of the model: later judgements of the same bench move the places that it points to. */
export interface Told {
  readonly rule: string;
  readonly subject: string;
  readonly outcome: Verdict['outcome'];
  readonly message: string;
  readonly margin?: number;
  /** It waits for statements that contradict each other. */
  readonly disputed: boolean;
  /** Properties that it says contradict each other. */
  readonly disputes: readonly string[];
  /** Properties that it waits for. */
  readonly asked: readonly string[];
  /** Properties that it says are left out, and what it takes them for. */
  readonly assumed: readonly string[];
  /** Where the values behind its numbers stand; true until the bench judges the next text. */
  readonly readAt: () => ReadonlySet<number>;
}

/** One text with all that was said of it. */
export interface Judged {
  readonly text: string;
  readonly check: FileCheck;
  readonly told: readonly Told[];
  /** Errors of the text, in words: what the author is told before anything is judged. */
  readonly refused: readonly string[];
  /** Whether the rule is silent there because nothing of its subject is declared, as the sheet then says. */
  readonly isNotAssessed: (rule: string, subject: string) => boolean;
}

/** Making the parser takes longer than a hundred judgements: all benches share it. */
const core = createTailshaftCore(EmptyFileSystem);
core.language.project.today = () => TODAY;
let benches = 0;

/**
 * Judges one spec after another in the way an editor does: statements that did not change are not read again, which
 * makes some thousand judgements a minute.
 */
export class Bench {
  private readonly uri = URI.parse(`memory:///bench-${++benches}.shaft`);
  private document: (LangiumDocument & { textDocument: TextDocument }) | undefined;
  private version = 0;

  async judge(text: string): Promise<Judged> {
    const { shared, language } = core;
    const textDocument = TextDocument.create(this.uri.toString(), 'tailshaft', ++this.version, text);
    this.document ??= { ...shared.workspace.LangiumDocumentFactory.fromString('', this.uri), textDocument };
    this.document.textDocument = textDocument;
    this.document.parseResult = await language.parser.AsyncParser!.parse(text, undefined as never);
    await language.project.load(this.document);
    const check = language.project.check(this.document);
    return {
      text,
      check,
      told: toldOf(check),
      refused: refusalsOf(check),
      isNotAssessed: (rule, subject) => isNotAssessed(check, rule, subject),
    };
  }
}

function refusalsOf(check: FileCheck): string[] {
  return check.problems.filter(one => one.severity === 'error').map(one => `${one.code}: ${one.message}`);
}

function isNotAssessed({ vessels }: FileCheck, rule: string, subject: string): boolean {
  return vessels.some(({ vessel, verdicts }) =>
    silentTopics(vessel, verdicts, vessel.arrangements).some(
      topic =>
        topic.rules.includes(rule) &&
        topic.subjects.some(path => subject === path || subject.startsWith(`${path}.`)),
    ),
  );
}

function toldOf(check: FileCheck): Told[] {
  return [...check.vessels, ...check.entries].flatMap(({ verdicts }) => verdicts.flatMap(withFolded));
}

/** A finding that is shown under another one is still told. */
function withFolded(verdict: Verdict): Told[] {
  return [
    {
      rule: verdict.rule,
      subject: verdict.subject,
      outcome: verdict.outcome,
      message: verdict.message,
      ...(verdict.margin === undefined ? {} : { margin: verdict.margin }),
      disputed: verdict.disputed !== undefined,
      disputes: (verdict.disputes ?? []).flatMap(one => homeOfFact(one)?.property ?? []),
      asked: verdict.missing.map(one => one.property),
      assumed: valuesOf(verdict).flatMap(one => one.replaceWith ?? []),
      readAt: () => readAt(verdict),
    },
    ...(verdict.folds ?? []).flatMap(withFolded),
  ];
}

function readAt(verdict: Verdict): ReadonlySet<number> {
  const starts = valuesOf(verdict).map(one => (one.origin as { start?: number } | undefined)?.start);
  return new Set(starts.filter(one => one !== undefined));
}

/** The values that it quotes and those behind them. */
function valuesOf({ capacity, demand, workings }: Verdict): Value[] {
  const seen = new Set<Value>();
  return [capacity, demand, ...workings].flatMap(one => (one ? [...valuesBehind(one, seen)] : []));
}
