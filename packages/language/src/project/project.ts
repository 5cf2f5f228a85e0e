import {
  type AcceptancePolicy,
  type EntryContext,
  judgeAgain,
  judgeEntry,
  type KeptJudgement,
  USUAL_POLICY,
  type Verdict,
} from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import { type LangiumDocument, type LangiumSharedCoreServices, type ParseResult, URI } from 'langium';
import type { TextEdit } from '../edit/text-edit.js';
import { catalogueEntry, EntryTable } from '../elaborate/catalogue.js';
import { quantitiesOf } from '../elaborate/vessel.js';
import { LazyParse } from '../incremental/lazy-parse.js';
import { type ReadFile, readBeside, readInPieces, readWhole, sameElements } from '../incremental/pieces.js';
import type { DocumentReading, EntryReading } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import type { StudyReading, VesselReading } from '../reading/vessel.js';
import { type ReadyStudy, readyStudy } from '../study/case.js';
import { Importers } from './importers.js';
import { type ImportOutcome, resolveImport } from './imports.js';
import type { FileCheck, JudgedEntry, JudgedVessel } from './judged.js';
import { leftAlone } from './left-alone.js';
import { isTooLarge, tooLarge } from './size.js';
import { type DocumentSummary, summaryOf } from './summary.js';
import { type Beside, type Supposed, supposed, vesselOf } from './supposed.js';
import { keptVessels } from './unchanged.js';

export type { FileCheck, JudgedEntry, JudgedVessel } from './judged.js';

/** Reads, joins and judges the specs of a workspace; what did not change is not read again. */
export class Project {
  /** Folders outside which nothing is read; empty means no such limit. */
  roots: readonly URI[] = [];
  /** The day on which ages and expiries are judged, as an ISO date. */
  today: () => string = () => new Date().toISOString().slice(0, 10);

  /**
   * Brings a document up to date that is known to have changed, and says whether it can be read. Whoever is judged
   * looks at what it imports as it is now, in whatever order files are built.
   */
  freshen: (document: LangiumDocument) => Promise<boolean> = async () => true;

  /** Who may accept what, and for how long, in this workspace. */
  policy: AcceptancePolicy = USUAL_POLICY;

  private readonly files = new WeakMap<ParseResult, ReadFile>();
  private readonly lastRead = new WeakMap<LangiumDocument, ReadFile>();
  private readonly vessels = new WeakMap<VesselReading, JudgedBefore>();
  /** By document and name, what a vessel that is typed in was judged as before its text was read anew. */
  private readonly judgements = new WeakMap<LangiumDocument, Map<string, KeptJudgement>>();
  private readonly entryChecks = new WeakMap<EntryReading, Judged<JudgedEntry>>();
  private readonly importers = new Importers();
  private readonly resting = new WeakMap<
    LangiumDocument,
    { parsed: ParseResult; summary: DocumentSummary; imports?: Map<string, ImportOutcome> }
  >();
  /** The tables used last: files that import the same catalogue share one. */
  private tables: readonly EntryTable[] = [];
  private readonly imports = new WeakMap<DocumentReading, Map<string, ImportOutcome>>();
  private readonly checks = new WeakMap<
    DocumentReading,
    { key: readonly DocumentReading[]; today: string; policy: AcceptancePolicy; check: FileCheck }
  >();

  constructor(private readonly services: LangiumSharedCoreServices) {}

  /** What a parsed document says. */
  reading(document: LangiumDocument): DocumentReading {
    return this.file(document).reading;
  }

  /** The same as far as lists and other files ask for it; a file that rests is not read again for that. */
  summary(document: LangiumDocument): DocumentSummary {
    const resting = this.resting.get(document);
    const { parseResult } = document;
    if (resting?.parsed === parseResult && !this.files.has(parseResult)) return resting.summary;
    return this.reading(document);
  }

  private file(document: LangiumDocument): ReadFile {
    const parsed = document.parseResult;
    const had = this.files.get(parsed);
    if (had) return had;
    const uri = document.uri.toString();
    const text = document.textDocument.getText();
    if (isTooLarge(text)) {
      const unread: ReadFile = { reading: emptyReading(uri), syntax: [tooLarge(text)] };
      this.files.set(parsed, unread);
      this.importers.note(uri, []);
      return unread;
    }
    const { LangiumParser } = this.services.ServiceRegistry.getServices(document.uri).parser;
    const made =
      parsed instanceof LazyParse
        ? readInPieces(
            text,
            uri,
            piece => LangiumParser.parse(piece),
            this.lastRead.get(document),
            // Verdicts only point to what readings and vessels hold.
            reading =>
              reading.vessels.flatMap(one => {
                const had = this.vessels.get(one);
                return had ? [had.judged.vessel, had.problems] : [];
              }),
          )
        : readWhole(text, uri, () => parsed);
    this.files.set(parsed, made);
    this.lastRead.set(document, made);
    const resting = this.resting.get(document);
    if (resting?.imports && resting.parsed === parsed) this.imports.set(made.reading, resting.imports);
    this.importers.note(uri, made.reading.imports);
    return made;
  }

  /** Loads everything that a document imports, directly or not, each file once. */
  async load(document: LangiumDocument): Promise<void> {
    const seen = new Set<string>([document.uri.toString()]);
    const waiting = [document];
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const reading = this.reading(next);
      const outcomes = new Map<string, ImportOutcome>();
      for (const wanted of reading.imports) {
        const outcome = await resolveImport(
          this.services.workspace.FileSystemProvider,
          next.uri,
          wanted,
          this.roots,
        );
        outcomes.set(wanted.path, await this.loadFiles(outcome, wanted, seen, waiting));
      }
      this.imports.set(reading, outcomes);
    }
  }

  /** The document itself and all that it sees through imports, itself first. */
  visible(document: LangiumDocument): DocumentReading[] {
    const seen = new Map<string, DocumentReading>();
    const visit = (one: LangiumDocument) => {
      const uri = one.uri.toString();
      if (seen.has(uri)) return;
      const reading = this.reading(one);
      seen.set(uri, reading);
      for (const outcome of this.imports.get(reading)?.values() ?? []) {
        for (const file of outcome.files) {
          const found = this.services.workspace.LangiumDocuments.getDocument(file);
          if (found) visit(found);
        }
      }
    };
    visit(document);
    return [...seen.values()];
  }

  /** The files that each import of a loaded document brings in. */
  importedFiles(document: LangiumDocument, path: string): readonly URI[] {
    return this.imports.get(this.reading(document))?.get(path)?.files ?? [];
  }

  /** Files of which a change of these may change what is said: they import one of them, by whatever way, or tried to. */
  affectedBy(changed: Iterable<string>): Set<string> {
    return this.importers.of(changed);
  }

  /** Says that a file is gone. */
  forget(uri: string): void {
    this.importers.forget(uri);
  }

  /**
   * Lets go of what was worked out of a closed document, and, where no other file uses its entries, of what was read: it
   * is read and judged again when somebody asks. Its summary stays, and what its imports bring in.
   */
  rest(document: LangiumDocument): void {
    const reading = this.reading(document);
    this.checks.delete(reading);
    this.judgements.delete(document);
    for (const vessel of reading.vessels) this.vessels.delete(vessel);
    for (const entry of reading.entries) this.entryChecks.delete(entry);
    const { parseResult: parsed } = document;
    if (reading.entries.length > 0 || !(parsed instanceof LazyParse)) return;
    const imports = this.imports.get(reading);
    this.resting.set(document, { parsed, summary: summaryOf(reading), ...(imports ? { imports } : {}) });
    this.files.delete(parsed);
    this.lastRead.delete(document);
    parsed.forget();
  }

  /** Problems and verdicts of one loaded document. */
  check(document: LangiumDocument): FileCheck {
    const reading = this.reading(document);
    const visible = this.visible(document);
    const today = this.today();
    const had = this.checks.get(reading);
    if (had && had.today === today && had.policy === this.policy && sameElements(had.key, visible))
      return had.check;
    const check = this.makeCheck(document, reading, visible, today);
    this.checks.set(reading, { key: visible, today, policy: this.policy, check });
    return check;
  }

  /**
   * What would be said of a loaded document if its text, or that of files it sees, were other. Nothing of it is kept, and
   * nothing else changes. Its places are none of the text.
   */
  supposing(
    document: LangiumDocument,
    texts: ReadonlyMap<string, string>,
    edits: readonly TextEdit[] = [],
  ): Supposed {
    const syntax: Problem[] = [];
    const { LangiumDocuments } = this.services.workspace;
    const visible = this.visible(document).map((one, index) => {
      const text = texts.get(one.uri);
      const standing = index === 0 ? document : LangiumDocuments.getDocument(URI.parse(one.uri));
      if (text === undefined || !standing) return one;
      const { LangiumParser } = this.services.ServiceRegistry.getServices(standing.uri).parser;
      const parse = (piece: string) => LangiumParser.parse(piece);
      const file = readBeside(text, one.uri, parse, this.file(standing)) ?? readWhole(text, one.uri, parse);
      if (index === 0) syntax.push(...file.syntax);
      return file.reading;
    });
    const reading = visible[0]!;
    const lists = visible.map(one => one.entries).filter(list => list.length > 0);
    const table = this.tables.find(one => sameElements(one.lists, lists)) ?? new EntryTable(lists);
    const text = texts.size === 1 ? texts.get(document.uri.toString()) : undefined;
    const standing = { reading: this.reading(document), text: document.textDocument.getText() };
    const kept =
      text === undefined ? () => undefined : keptVessels(this.check(document), standing, { reading, text });
    return supposed(reading, table, this.today(), this.policy, {
      problems: [...syntax, ...reading.problems, ...duplicateNames(reading)],
      kept,
      beside: one => this.besideOf(one, document, edits),
      entry: (one, today) => this.judgedEntry(one, today),
    });
  }

  /** A vessel as it stands, where edits of its file leave some of its arrangements alone. */
  private besideOf(
    { name }: VesselReading,
    document: LangiumDocument,
    edits: readonly TextEdit[],
  ): Beside | undefined {
    const standing = this.check(document).vessels.find(one => one.vessel.name === name);
    if (!standing || edits.length === 0) return undefined;
    return { standing, same: leftAlone(standing.reading, this.reading(document), edits) };
  }

  /** A study of a vessel of a loaded document, ready to be searched; undefined where its text does not say all of it. */
  studyOf(
    document: LangiumDocument,
    { reading, vessel, today }: JudgedVessel,
    study: StudyReading,
  ): ReadyStudy | undefined {
    const judged = { today, policy: this.policy };
    return readyStudy(reading, study, vessel, this.entries(document), judged);
  }

  /** The entries that a document sees. */
  entries(document: LangiumDocument): EntryTable {
    return this.tableOf(this.visible(document));
  }

  /** What is said of an entry that a document sees, in whichever file it is declared. */
  ofEntry(document: LangiumDocument, at: Origin): readonly Verdict[] {
    const reading = this.visible(document)
      .flatMap(one => one.entries)
      .find(one => one.host === at);
    return reading ? this.judgedEntry(reading, this.today()).verdicts : [];
  }

  /** The same table as long as the same entries are seen. */
  private tableOf(visible: readonly DocumentReading[]): EntryTable {
    const lists = visible.map(one => one.entries).filter(list => list.length > 0);
    const had = this.tables.find(table => sameElements(table.lists, lists));
    if (had) return had;
    const made = new EntryTable(lists);
    this.tables = [made, ...this.tables.slice(0, MOST_TABLES - 1)];
    return made;
  }

  /** What cannot be read of a loaded document, without a verdict. */
  unjudged(document: LangiumDocument): FileCheck {
    const reading = this.reading(document);
    const visible = this.visible(document);
    const problems = this.problemsOf(document, reading, visible);
    const table = this.tableOf(visible);
    for (const one of reading.vessels) vesselOf(one, table, problem => problems.push(problem));
    return { uri: reading.uri, problems, vessels: [], entries: [] };
  }

  private problemsOf(
    document: LangiumDocument,
    reading: DocumentReading,
    visible: readonly DocumentReading[],
  ): Problem[] {
    const problems = [...this.file(document).syntax, ...reading.problems, ...duplicateNames(reading)];
    for (const outcome of this.imports.get(reading)?.values() ?? [])
      if (outcome.problem) problems.push(outcome.problem);
    if (reading.vessels.length > 0)
      problems.push(
        ...strayImports(reading, visible, path => this.imports.get(reading)?.get(path)?.files ?? []),
      );
    return problems;
  }

  private makeCheck(
    document: LangiumDocument,
    reading: DocumentReading,
    visible: DocumentReading[],
    today: string,
  ): FileCheck {
    const problems = this.problemsOf(document, reading, visible);
    const table = this.tableOf(visible);
    const before = this.judgements.get(document);
    const vessels = reading.vessels.map(one => this.judgedVessel(one, table, today, before?.get(one.name)));
    this.judgements.set(
      document,
      new Map(vessels.map(({ judgement }) => [judgement.vessel.name, judgement])),
    );
    return {
      uri: reading.uri,
      problems: [...problems, ...vessels.flatMap(one => one.problems)],
      vessels: vessels.map(one => one.judged),
      entries: reading.entries.map(one => this.judgedEntry(one, today)),
    };
  }

  /** A vessel that did not change is not judged again as long as it sees the same entries. */
  private judgedVessel(
    reading: VesselReading,
    table: EntryTable,
    today: string,
    before: KeptJudgement | undefined,
  ): JudgedBefore {
    const had = this.vessels.get(reading);
    if (had && had.table === table && had.today === today && had.policy === this.policy) return had;
    const problems: Problem[] = [];
    const vessel = vesselOf(reading, table, problem => problems.push(problem));
    const { catalogue } = table;
    const judgement = judgeAgain(vessel, { catalogue, today, policy: this.policy }, before);
    const judged = { reading, vessel, catalogue, today, verdicts: judgement.verdicts };
    const made = { judged, judgement, problems, table, today, policy: this.policy };
    this.vessels.set(reading, made);
    return made;
  }

  private judgedEntry(reading: EntryReading, today: string): JudgedEntry {
    const had = this.entryChecks.get(reading);
    if (had?.today === today) return had.judged;
    const judged = { reading, verdicts: judgeEntry(entryContext(reading, today)) };
    this.entryChecks.set(reading, { judged, problems: [], today });
    return judged;
  }

  private async loadFiles(
    outcome: ImportOutcome,
    wanted: { path: string; place: { start: number; end: number } },
    seen: Set<string>,
    waiting: LangiumDocument[],
  ): Promise<ImportOutcome> {
    const loaded: URI[] = [];
    let problem = outcome.problem;
    for (const file of outcome.files) {
      const uri = file.toString();
      const known = seen.has(uri);
      seen.add(uri);
      try {
        const document = await this.services.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
        if (!(await this.freshen(document))) throw new Error('unreadable');
        if (isTooLarge(document.textDocument.getText())) throw new Error('too large');
        loaded.push(file);
        if (!known) waiting.push(document);
      } catch {
        problem = {
          code: 'text/import',
          start: wanted.place.start,
          end: wanted.place.end,
          severity: 'error',
          message: `"${file.path.split('/').at(-1)}", imported by "${wanted.path}", could not be read as text.`,
        };
      }
    }
    return { files: loaded, ...(problem ? { problem } : {}) };
  }
}

function emptyReading(uri: string): DocumentReading {
  return { uri, imports: [], entries: [], vessels: [], problems: [], strays: [] };
}

/** More folders of catalogues than one person works with at a time. */
const MOST_TABLES = 16;

/** What was judged, and of what. */
interface Judged<T> {
  readonly judged: T;
  readonly problems: readonly Problem[];
  readonly table?: EntryTable;
  readonly today: string;
  readonly policy?: AcceptancePolicy;
}

/** A vessel with what is kept to judge it again. */
interface JudgedBefore extends Judged<JudgedVessel> {
  readonly judgement: KeptJudgement;
}

function entryContext(entry: EntryReading, today: string): EntryContext {
  const made = catalogueEntry<Record<string, never>>(entry);
  return {
    today,
    entry: { kind: entry.kind, entry: made } as EntryContext['entry'],
    unitConcerns: entry.facts.concerns,
    quantities: quantitiesOf(entry.facts),
  };
}

/**
 * Statements of an imported file that no file can hold, such as criteria outside of a vessel: whoever imports them believes
 * that they count, and would read of it in the other file only.
 */
function strayImports(
  { imports }: DocumentReading,
  visible: readonly DocumentReading[],
  filesOf: (path: string) => readonly URI[],
): Problem[] {
  return imports.flatMap(({ path, place }) => {
    const files = filesOf(path).map(String);
    return visible
      .filter(one => files.includes(one.uri))
      .flatMap(one => {
        const [stray] = one.strays;
        if (!stray) return [];
        return [
          {
            code: 'text/import',
            start: place.start,
            end: place.end,
            severity: 'error' as const,
            message: `"${one.uri.split('/').at(-1)}" has a statement that counts nowhere. ${stray.message}`,
          },
        ];
      });
  });
}

/** Two entries of one kind with one name in one file: a name must say which. */
function duplicateNames(reading: DocumentReading): Problem[] {
  const seen = new Map<string, EntryReading | VesselReading>();
  const problems: Problem[] = [];
  for (const one of [...reading.entries, ...reading.vessels]) {
    const kind = 'kind' in one ? one.kind : 'vessel';
    const key = `${kind} ${one.name}`;
    if (one.name && seen.has(key)) {
      problems.push({
        code: 'text/twice',
        start: one.namePlace.start,
        end: one.namePlace.end,
        severity: 'error',
        message: `This file declares ${key} twice; the first is used. Give each its own name.`,
      });
    }
    seen.set(key, one);
  }
  return problems;
}
