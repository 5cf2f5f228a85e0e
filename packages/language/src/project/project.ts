import {
  type Catalogue,
  type EntryContext,
  judgeEntry,
  judgeVessel,
  type Verdict,
  type Vessel,
} from '@tailshaft/drivetrain';
import { type LangiumDocument, type LangiumSharedCoreServices, URI } from 'langium';
import { catalogueEntry, EntryTable } from '../elaborate/catalogue.js';
import { makeVessel, quantitiesOf } from '../elaborate/vessel.js';
import type { Document } from '../generated/ast.js';
import { type DocumentReading, type EntryReading, readDocument } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import type { VesselReading } from '../reading/vessel.js';
import { EXTENSION, type ImportOutcome, importTarget, resolveImport } from './imports.js';
import { syntaxProblems } from './syntax.js';

/** A vessel of a file with everything judged of it. */
export interface JudgedVessel {
  readonly reading: VesselReading;
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  readonly verdicts: readonly Verdict[];
}

/** A catalogue entry of a file with what its own facts say. */
export interface JudgedEntry {
  readonly reading: EntryReading;
  readonly verdicts: readonly Verdict[];
}

/** Everything that can be said of one file. */
export interface FileCheck {
  readonly uri: string;
  readonly problems: readonly Problem[];
  readonly vessels: readonly JudgedVessel[];
  readonly entries: readonly JudgedEntry[];
}

/** Reads, joins and judges the specs of a workspace; what did not change is not read again. */
export class Project {
  /** Folders outside which nothing is read; empty means no such limit. */
  roots: readonly URI[] = [];
  /** The day on which ages and expiries are judged, as an ISO date. */
  today: () => string = () => new Date().toISOString().slice(0, 10);

  private readonly readings = new WeakMap<object, DocumentReading>();
  private readonly imports = new WeakMap<DocumentReading, Map<string, ImportOutcome>>();
  private readonly checks = new WeakMap<
    DocumentReading,
    { key: readonly DocumentReading[]; today: string; check: FileCheck }
  >();

  constructor(private readonly services: LangiumSharedCoreServices) {}

  /** What a parsed document says. */
  reading(document: LangiumDocument): DocumentReading {
    const key = document.parseResult;
    const had = this.readings.get(key);
    if (had) return had;
    const made = readDocument(
      key.value as Document,
      document.uri.toString(),
      document.textDocument.getText(),
    );
    this.readings.set(key, made);
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

  /**
   * Whether a change of these files may change what is said of this document: one that it imports, by whatever way,
   * changed, went, or came where an import had found nothing.
   */
  sees(document: LangiumDocument, changed: ReadonlySet<string>): boolean {
    if (this.reading(document).imports.length === 0) return false;
    const paths = [...changed].map(uri => URI.parse(uri).path);
    return this.visible(document).some(one => {
      const from = URI.parse(one.uri);
      return one.imports.some(wanted => {
        const target = importTarget(from, wanted).path;
        return paths.some(
          path => path === target || path === `${target}${EXTENSION}` || path.startsWith(`${target}/`),
        );
      });
    });
  }

  /** Problems and verdicts of one loaded document. */
  check(document: LangiumDocument): FileCheck {
    const reading = this.reading(document);
    const visible = this.visible(document);
    const today = this.today();
    const had = this.checks.get(reading);
    if (
      had &&
      had.today === today &&
      had.key.length === visible.length &&
      had.key.every((one, index) => one === visible[index])
    ) {
      return had.check;
    }
    const check = this.makeCheck(document, reading, visible, today);
    this.checks.set(reading, { key: visible, today, check });
    return check;
  }

  /** The entries that a document sees. */
  entries(document: LangiumDocument): EntryTable {
    return new EntryTable(this.visible(document));
  }

  private makeCheck(
    document: LangiumDocument,
    reading: DocumentReading,
    visible: DocumentReading[],
    today: string,
  ): FileCheck {
    const problems = [...syntaxProblems(document), ...reading.problems, ...duplicateNames(reading)];
    for (const outcome of this.imports.get(reading)?.values() ?? [])
      if (outcome.problem) problems.push(outcome.problem);
    const table = new EntryTable(visible);
    const vessels = reading.vessels.map((one): JudgedVessel => {
      const vessel = makeVessel(one, table, problem => problems.push(problem));
      return {
        reading: one,
        vessel,
        catalogue: table.catalogue,
        verdicts: judgeVessel(vessel, table.catalogue, today),
      };
    });
    const entries = reading.entries.map(
      (one): JudgedEntry => ({ reading: one, verdicts: judgeEntry(entryContext(one, today)) }),
    );
    return { uri: reading.uri, problems, vessels, entries };
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

function entryContext(entry: EntryReading, today: string): EntryContext {
  const made = catalogueEntry<Record<string, never>>(entry);
  return {
    today,
    entry: { kind: entry.kind, entry: made } as EntryContext['entry'],
    unitConcerns: entry.facts.concerns,
    quantities: quantitiesOf(entry.facts),
  };
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
        message: `There are two of ${key} in this file: I use the first. Give each its own name.`,
      });
    }
    seen.set(key, one);
  }
  return problems;
}
