import { interruptAndCheck, type LangiumDocument, URI } from 'langium';
import type { CodeActionProvider, LangiumSharedServices } from 'langium/lsp';
import {
  CancellationToken,
  type CodeAction,
  type CodeActionParams,
  CodeActionTriggerKind,
  type Diagnostic,
  LSPErrorCodes,
  type Range,
  ResponseError,
} from 'vscode-languageserver';
import { Names } from '../names/names.js';
import type { Finding } from '../project/finding.js';
import { everyFinding, findingsOf } from '../project/findings.js';
import type { FileCheck, Project } from '../project/project.js';
import { allQuestions } from './all-questions.js';
import { consequenceOf } from './consequence.js';
import { convertUnits } from './convert-units.js';
import { extractPart } from './extract-part.js';
import { fixAll } from './fix-all.js';
import { importEntry } from './import-entry.js';
import { inlinePart, namedPartAt, namedParts, type OnlyUse } from './inline-part.js';
import { FIX_ALL } from './kinds.js';
import { mirrorLine } from './mirror-line.js';
import type { Offer } from './offer.js';
import { curingAll, type Judge, once, onceEach, questions, toldApart } from './quick-fixes.js';
import { touchesShiftCable } from './shift-cable.js';
import { studyCandidates } from './study-candidates.js';
import { whatSuits } from './what-suits.js';
import { textsOf, workspaceEdit } from './workspace-edit.js';

/** A finding of another file that is told at an entry of this one. */
interface SaidElsewhere {
  readonly spec: string;
  readonly key: string;
}

/** Offers what could be done at a place of the text. Which of it is right stays with the author. */
export class CodeActions implements CodeActionProvider {
  private readonly names: Names;
  /** The ways out that were found, for as long as the check stands: the menu is asked for at every move of the cursor. */
  private readonly known = new WeakMap<FileCheck, Map<object, readonly Offer[]>>();

  constructor(
    private readonly services: {
      readonly project: Project;
      readonly shared: Pick<LangiumSharedServices, 'workspace'>;
    },
    /** Whether every spec of the workspace has been read, so that what nobody uses there is used nowhere. */
    private readonly allRead: () => boolean = () => true,
    /** Specs that say something of an entry that is declared there. */
    private readonly saidAt: (uri: string, range: Range) => readonly SaidElsewhere[] = () => [],
  ) {
    this.names = new Names(services.project, services.shared.workspace.LangiumDocuments);
  }

  async getCodeActions(
    document: LangiumDocument,
    params: CodeActionParams,
    token: CancellationToken = CancellationToken.None,
  ): Promise<CodeAction[]> {
    const { workspace } = this.services.shared;
    const textOf = textsOf(workspace.LangiumDocuments);
    const { diagnostics } = params.context;
    return toldApart(await this.offers(document, params, token))
      .filter(offer => offer.edits.length > 0 && !touchesShiftCable(offer.edits, textOf))
      .map(offer => {
        const about = offer.finding ? diagnosticsOf(offer.finding, diagnostics, document) : [];
        return {
          title: offer.title,
          kind: offer.kind,
          edit: workspaceEdit(offer.edits, workspace),
          ...(about.length > 0 ? { diagnostics: about } : {}),
          ...(offer.preferred ? { isPreferred: true } : {}),
        };
      });
  }

  private async offers(
    document: LangiumDocument,
    { range, context }: CodeActionParams,
    token: CancellationToken,
  ): Promise<Offer[]> {
    const { project, shared } = this.services;
    const textOf = textsOf(shared.workspace.LangiumDocuments);
    const wants = (kind: string) =>
      context.only === undefined || context.only.some(one => kind === one || kind.startsWith(`${one}.`));
    const start = document.textDocument.offsetAt(range.start);
    const end = document.textDocument.offsetAt(range.end);
    const check = project.check(document);
    const reading = project.reading(document);
    const offers: Offer[] = [];
    if (wants('quickfix') || wants(FIX_ALL)) {
      const findings = findingsOf(check);
      const touched = findingsAt(everyFinding(findings), range, document);
      // What is told under another finding of the place is put right with that one.
      const led = new Set(touched.flatMap(one => one.folded ?? []));
      const here = touched.filter(one => !led.has(one));
      if (wants('quickfix')) {
        const { LangiumDocuments } = shared.workspace;
        offers.push(...importEntry(project, LangiumDocuments, document, { start, end }, here, textOf));
        // The two sides of a pair, and several findings of one cause, come to the same edits.
        const judge: Judge = onceEach(edits => consequenceOf(project, document, edits, textOf));
        // What cures stands before what asks, and what several findings share is offered once.
        const all = here.flatMap(one => [one, ...(one.folded ?? [])]);
        const cured = await this.tried(document, check, token, here, finding =>
          curingAll(finding, textOf, judge),
        );
        const asked = all.flatMap(finding => questions(finding, textOf, judge));
        const atEntry = await this.atEntry(document, range, token);
        offers.push(...once([...cured, ...asked, ...atEntry]));
        const together = allQuestions(asked);
        if (together) offers.push(together);
      }
      const all = wants(FIX_ALL) && fixAll(findings, textOf);
      if (all) offers.push(all);
    }
    if (wants('refactor.rewrite')) offers.push(...convertUnits(reading, check, start));
    if (wants('refactor.rewrite')) {
      offers.push(...studyCandidates(project, document, start, textOf));
      const judge: Judge = edits => consequenceOf(project, document, edits, textOf);
      // A search, made for whoever asks: not for the lamp that follows the cursor.
      if (context.triggerKind !== CodeActionTriggerKind.Automatic)
        offers.push(...whatSuits(check, document.uri.toString(), start, textOf, judge));
    }
    if (wants('refactor.extract'))
      offers.push(...extractPart(reading, project.visible(document), start, textOf));
    if (wants('refactor.inline')) {
      const use = this.allRead() ? this.onlyUse(document, start) : undefined;
      if (use) offers.push(...inlinePart(use, textOf));
    }
    if (wants('refactor')) offers.push(...mirrorLine(reading, check, start, textOf));
    return offers;
  }

  /**
   * The ways out of findings, tried one after the other. Between two tries the server answers whatever else is asked; when
   * the question is taken back, or the text is another, the answer is not worth its while.
   */
  private async tried(
    document: LangiumDocument,
    check: FileCheck,
    token: CancellationToken,
    findings: readonly Finding[],
    ways: (finding: Finding) => Generator<void, Offer[]>,
  ): Promise<Offer[]> {
    const { project } = this.services;
    const { version } = document.textDocument;
    const { state } = document;
    const offers: Offer[] = [];
    for (const finding of findings) {
      const known = this.known.get(check)?.get(finding.verdict ?? finding);
      if (known) {
        offers.push(...known);
        continue;
      }
      const steps = ways(finding);
      let step = steps.next();
      for (; !step.done; step = steps.next()) {
        await interruptAndCheck(token);
        const same = document.textDocument.version === version && document.state >= state;
        if (!same || project.check(document) !== check)
          throw new ResponseError(
            LSPErrorCodes.ContentModified,
            'The text changed while fixes were being tried.',
          );
      }
      const made = this.known.get(check) ?? new Map<object, readonly Offer[]>();
      this.known.set(check, made.set(finding.verdict ?? finding, step.value));
      offers.push(...step.value);
    }
    return offers;
  }

  /** What specs that use an entry offer for it, as far as it is written in the file of the entry: what else they could do is offered in them. */
  private async atEntry(document: LangiumDocument, range: Range, token: CancellationToken): Promise<Offer[]> {
    const { project, shared } = this.services;
    const documents = shared.workspace.LangiumDocuments;
    const textOf = textsOf(documents);
    const uri = document.uri.toString();
    const offers: Offer[] = [];
    const answered = new Set<string>();
    for (const { spec, key } of this.saidAt(uri, range)) {
      const user = answered.has(key) ? undefined : documents.getDocument(URI.parse(spec));
      if (!user) continue;
      answered.add(key);
      await project.load(user);
      const check = project.check(user);
      const found = findingsOf(check).filter(one => one.entryKey === key);
      const all = found.flatMap(one => [one, ...(one.folded ?? [])]);
      const judge: Judge = onceEach(edits => consequenceOf(project, user, edits, textOf));
      const cured = await this.tried(user, check, token, found, finding => curingAll(finding, textOf, judge));
      const asked = all.flatMap(finding => questions(finding, textOf, judge));
      offers.push(...[...cured, ...asked].filter(one => one.edits.every(edit => edit.uri === uri)));
    }
    return offers;
  }

  /** The entry that is declared or named at an offset, when one line alone uses it. */
  private onlyUse(document: LangiumDocument, offset: number): OnlyUse | undefined {
    const { project, shared } = this.services;
    const part = namedPartAt(project.reading(document), offset)?.part;
    const name = this.names.at(document, part?.namePlace?.start ?? offset);
    if (!name || (!part && !name.declares)) return undefined;
    const all = this.names.same(name);
    const [declared, ...others] = all.filter(one => one.declares);
    const [used, ...more] = all.filter(one => !one.declares);
    if (!declared || !used || others.length + more.length > 0) return undefined;
    const readingOf = (uri: string) => {
      const found = shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
      return found && project.reading(found);
    };
    const entry = readingOf(declared.uri)?.entries.find(one => one.namePlace.start === declared.start);
    const home = readingOf(used.uri);
    const use = home && namedParts(home).find(one => one.part.namePlace?.start === used.start);
    return entry && use ? { ...use, entry } : undefined;
  }
}

/** Findings that a selection touches; where it touches none, those on its lines: few clients lead to the very word. */
function findingsAt(
  findings: readonly Finding[],
  range: Range,
  { textDocument }: LangiumDocument,
): Finding[] {
  const from = textDocument.offsetAt(range.start);
  const to = textDocument.offsetAt(range.end);
  const between = (start: number, end: number) =>
    findings.filter(({ place }) => place.start <= end && place.end >= start);
  const touched = between(from, to);
  if (touched.length > 0) return touched;
  const start = textDocument.offsetAt({ line: range.start.line, character: 0 });
  const end = textDocument.offsetAt({ line: range.end.line + 1, character: 0 });
  return between(start, Math.max(start, end - 1));
}

/** The diagnostics that the client shows for a finding; one that is told at an entry elsewhere is known by its code there. */
function diagnosticsOf(
  finding: Finding,
  shown: readonly Diagnostic[],
  document: LangiumDocument,
): Diagnostic[] {
  const uri = document.uri.toString();
  if (finding.place.uri !== uri && finding.entryPlace?.uri === uri)
    return shown.filter(one => one.code === finding.code);
  const start = document.textDocument.positionAt(finding.place.start);
  return shown.filter(
    one =>
      one.code === finding.code &&
      one.message === finding.message &&
      one.range.start.line === start.line &&
      one.range.start.character === start.character,
  );
}
