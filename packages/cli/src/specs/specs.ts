import { dirname, resolve } from 'node:path';
import type { AcceptancePolicy } from '@tailshaft/drivetrain';
import {
  consequenceOf,
  createTailshaftCore,
  curingAll,
  type FileCheck,
  type Finding,
  findingsOf,
  type JudgedVessel,
  type Offer,
  onceEach,
  type Place,
  type ReadyStudy,
  type StudyReading,
} from '@tailshaft/language';
import { DiskFiles } from '@tailshaft/language/node-files';
import { type FileSystemNode, type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import { CannotRun, reasonOf } from '../cannot-run.js';
import { rootOf, shownPath } from './find.js';
import { readSpec } from './read-text.js';
import { type Spot, type Spots, spotIn } from './spot.js';

/** A spec file with everything judged of it. */
export interface CheckedSpec {
  readonly path: string;
  /** Its path as shown. */
  readonly shown: string;
  readonly check: FileCheck;
  readonly findings: readonly Finding[];
}

/** A spec with what it imports, before anything is judged. */
export interface SeenSpec {
  readonly texts: ReadonlyMap<string, string>;
  readonly vessels: readonly string[];
  /** How many catalogue entries it holds itself. */
  readonly entries: number;
  readonly spec: CheckedSpec;
}

export interface SpecsOptions {
  readonly cwd: string;
  readonly today: string;
  /** Who may accept what, and for how long; the usual when absent. */
  readonly policy?: AcceptancePolicy;
  /** The folder outside which nothing is imported, when the caller names one. */
  readonly root?: string;
  /** Where files come from; the disk when absent. */
  readonly files?: FileSystemProvider;
}

/** Opens and judges specs, each file once. */
export class Specs implements Spots {
  private readonly core;
  /** By folder: a thousand files of one folder have one root. */
  private readonly roots = new Map<string, string>();

  constructor(private readonly options: SpecsOptions) {
    const files = options.files ?? new GuardedFiles(options.cwd);
    this.core = createTailshaftCore({ fileSystemProvider: () => files });
    this.core.language.project.today = () => options.today;
    if (options.policy) this.core.language.project.policy = options.policy;
  }

  /** Judges a file. */
  async check(path: string): Promise<CheckedSpec> {
    return this.judge(path, () =>
      this.core.shared.workspace.LangiumDocuments.getOrCreateDocument(URI.file(path)),
    );
  }

  /** The texts of a spec and of all that it sees, by their paths, and what cannot be read of it; nothing is judged. */
  async seen(path: string): Promise<SeenSpec> {
    const { project } = this.core.language;
    const document = await this.opened(path);
    const visible = project.visible(document);
    const check = project.unjudged(document);
    return {
      texts: new Map(visible.map(({ uri }) => [URI.parse(uri).fsPath, this.textOf(uri)])),
      vessels: visible[0]!.vessels.map(one => one.name),
      entries: visible[0]!.entries.length,
      spec: { path, shown: shownPath(path, this.options.cwd), check, findings: findingsOf(check) },
    };
  }

  /** Lets go of what was worked out of a spec; its text stays. */
  rest(path: string): void {
    const document = this.core.shared.workspace.LangiumDocuments.getDocument(URI.file(path));
    if (document) this.core.language.project.rest(document);
  }

  private async opened(path: string): Promise<LangiumDocument> {
    const { project } = this.core.language;
    project.roots = [URI.file(this.rootAround(path))];
    const document = await this.core.shared.workspace.LangiumDocuments.getOrCreateDocument(URI.file(path));
    await project.load(document);
    return document;
  }

  /** Judges a text as if it stood at this path. */
  async checkText(path: string, text: string): Promise<CheckedSpec> {
    return this.judge(path, async () => {
      const { LangiumDocumentFactory, LangiumDocuments } = this.core.shared.workspace;
      const document = LangiumDocumentFactory.fromString(text, URI.file(path));
      LangiumDocuments.addDocument(document);
      return document;
    });
  }

  /** A study of one of its vessels, ready to be searched, where its text says all of it. */
  studyOf(spec: CheckedSpec, vessel: JudgedVessel, study: StudyReading): ReadyStudy | undefined {
    const document = this.core.shared.workspace.LangiumDocuments.getDocument(URI.file(spec.path));
    return document && this.core.language.project.studyOf(document, vessel, study);
  }

  /** The ways out that an editor would offer for a finding, one try after the other; all that can be found, or some that do. */
  waysOut(
    spec: CheckedSpec,
    finding: Finding,
    search: 'always' | 'in need',
  ): Generator<void, Offer[]> | undefined {
    const document = this.core.shared.workspace.LangiumDocuments.getDocument(URI.file(spec.path));
    if (!document) return undefined;
    const { project } = this.core.language;
    const textOf = (uri: string) => this.textOf(uri);
    const judge = onceEach(edits => consequenceOf(project, document, edits, textOf));
    return curingAll(finding, textOf, judge, search);
  }

  uriOf(spec: CheckedSpec): string {
    return URI.file(spec.path).toString();
  }

  /** The text of a file that was read. */
  textOf(uri: string): string {
    return (
      this.core.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))?.textDocument.getText() ?? ''
    );
  }

  /** The texts of a spec and of everything that it imports, the spec first, the others by their paths below the root. */
  textsOf(spec: CheckedSpec): { readonly path: string; readonly text: string }[] {
    const uri = this.uriOf(spec);
    const document = this.core.shared.workspace.LangiumDocuments.getDocument(URI.file(spec.path))!;
    const imported = this.core.language.project
      .visible(document)
      .map(one => one.uri)
      .filter(one => one !== uri);
    const told = (one: string) => ({ path: this.pathInRoot(one), text: this.textOf(one) });
    return [told(uri), ...imported.map(told).sort((one, other) => (one.path < other.path ? -1 : 1))];
  }

  /** Every file that was read so far, imported ones with them. */
  filesRead(): string[] {
    return this.core.shared.workspace.LangiumDocuments.all.map(one => one.uri.fsPath).toArray();
  }

  /** Forgets a file that nothing else needs. */
  drop(spec: CheckedSpec): void {
    if (spec.check.entries.length > 0) return;
    this.core.shared.workspace.LangiumDocuments.deleteDocument(URI.file(spec.path));
  }

  /** The path of a file below the root around it: the same wherever the command runs. */
  pathInRoot(uri: string): string {
    const path = URI.parse(uri).fsPath;
    return shownPath(path, this.rootAround(path));
  }

  /** Lines and columns of a place in any file that was read. */
  spot(place: Place): Spot | undefined {
    const documents = this.core.shared.workspace.LangiumDocuments;
    return spotIn(documents, place, uri => shownPath(uri.fsPath, this.options.cwd));
  }

  private rootAround(path: string): string {
    const { root, cwd } = this.options;
    if (root) return resolve(cwd, root);
    const folder = dirname(path);
    const found = this.roots.get(folder) ?? rootOf(path, cwd);
    this.roots.set(folder, found);
    return found;
  }

  private async judge(path: string, open: () => Promise<LangiumDocument>): Promise<CheckedSpec> {
    const shown = shownPath(path, this.options.cwd);
    const { project } = this.core.language;
    project.roots = [URI.file(this.rootAround(path))];
    try {
      const document = await open();
      await project.load(document);
      const check = project.check(document);
      return { path, shown, check, findings: findingsOf(check) };
    } catch (error) {
      if (error instanceof CannotRun) throw error;
      throw new CannotRun(`${shown} cannot be judged: ${reasonOf(error)}`);
    }
  }
}

/** The disk, but only what is text of a sensible size. Looked at once: a thousand vessels import one catalogue. */
class GuardedFiles extends DiskFiles {
  private readonly known = new Map<string, Promise<unknown>>();

  constructor(private readonly cwd: string) {
    super();
  }

  override readFile(uri: URI): Promise<string> {
    return readSpec(uri.fsPath, shownPath(uri.fsPath, this.cwd));
  }

  override exists(uri: URI): Promise<boolean> {
    return this.once(`exists ${uri.fsPath}`, () => super.exists(uri));
  }

  override stat(uri: URI): Promise<FileSystemNode> {
    return this.once(`stat ${uri.fsPath}`, () => super.stat(uri));
  }

  override readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.once(`folder ${uri.fsPath}`, () => super.readDirectory(uri));
  }

  override realPath(uri: URI): Promise<URI> {
    return this.once(`real ${uri.fsPath}`, () => super.realPath(uri));
  }

  private once<T>(key: string, ask: () => Promise<T>): Promise<T> {
    const had = this.known.get(key) as Promise<T> | undefined;
    if (had) return had;
    const asked = ask();
    this.known.set(key, asked);
    return asked;
  }
}
