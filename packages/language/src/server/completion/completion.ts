import { type CatalogueEntry, clutchesOf, type GearFacts } from '@tailshaft/drivetrain';
import { asSpelling, DUTY_CLASSES, type EntryKind, type Role } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import type { CompletionProvider } from 'langium/lsp';
import { type CompletionList, type CompletionParams, CompletionTriggerKind } from 'vscode-languageserver';
import type { EntryTable } from '../../elaborate/catalogue.js';
import { addedImport, importable } from '../../project/importable.js';
import type { LineReading } from '../../reading/arrangement.js';
import { scan } from '../../text/scan.js';
import { type JudgedLine, linesOf } from '../lines.js';
import { rangeIn } from '../places.js';
import type { TailshaftServices } from '../services.js';
import { genericGrades, standardOffers } from '../standards/offers.js';
import { isWholeWorkspaceRead } from '../workspace/whole-workspace.js';
import { entryOffers, type OtherFile, ratioOffers } from './catalogue-names.js';
import { type CursorContext, contextAt, type Frame } from './context.js';
import { factPlace, propertyOffers } from './facts.js';
import { importOffers } from './imports.js';
import { type Offer, toItems } from './items.js';
import { lineOffers } from './line-statements.js';
import { mostOffers } from './most.js';
import { diameterFit } from './part-fit.js';
import { arrangementOffers, fileOffers, vesselOffers } from './statements.js';
import type { Surroundings } from './surroundings.js';
import { evidenceOffers, type KnownNames, nextInValue, unitOffers } from './values.js';

/** Offers what can stand at the cursor: found from the text before it, however broken the rest is. */
export class Completions implements CompletionProvider {
  constructor(
    private readonly services: TailshaftServices,
    /** Whether the client fills in places of a snippet. */
    private readonly snippets: boolean,
  ) {}

  async getCompletion(document: LangiumDocument, params: CompletionParams): Promise<CompletionList> {
    const text = document.textDocument;
    const offset = text.offsetAt(params.position);
    const context = contextAt(text.getText(), offset);
    const bySpace =
      params.context?.triggerKind === CompletionTriggerKind.TriggerCharacter &&
      params.context.triggerCharacter === ' ';
    // A space asks only where a statement or a value must go on: elsewhere it would be in the way.
    const asked = context !== undefined && !(bySpace && context.statement.length === 0);
    const shown = asked ? await this.offers(context, document, offset, bySpace) : [];
    const from = (start: number | undefined) =>
      rangeIn(text, { start: start ?? startOf(context?.partial, offset), end: offset });
    const written = text.getText();
    const { offers, more } = mostOffers(shown, start =>
      written.slice(start ?? startOf(context?.partial, offset), offset),
    );
    // While files are still being read, more names may come with the next letter.
    const isIncomplete = more || !isWholeWorkspaceRead(this.services);
    return { isIncomplete, items: toItems(offers, from, this.snippets) };
  }

  private async offers(
    context: CursorContext,
    document: LangiumDocument,
    offset: number,
    bySpace: boolean,
  ): Promise<Offer[]> {
    const { frames, statement, partial, evidence } = context;
    const { project } = this.services;
    const frame = frames.at(-1)!;
    if (partial.kind === 'string') {
      if (asSpelling(statement.at(-1)?.text) !== 'import') return [];
      const files = this.services.shared.workspace.FileSystemProvider;
      return importOffers(files, document.uri, partial.text.slice(1), partial.start + 1, project.roots);
    }
    if (evidence) return evidenceOffers(evidence, project.today(), false);
    const table = project.entries(document);
    const line = this.lineAt(frames, statement, document);
    const gears = table.catalogue.gears;
    switch (frame.kind) {
      case 'file':
        return fileOffers(statement);
      case 'vessel':
        return vesselOffers(statement, this.surroundings(frames, document));
      case 'arrangement':
        return arrangementOffers(statement, this.surroundings(frames, document));
      case 'line':
        return lineOffers(statement, {
          revising: frames.some(
            one =>
              one.kind === 'arrangement' && one.header.some(token => asSpelling(token.text) === 'revises'),
          ),
          entries: role => entryOffers(role, table, line, this.others(role, document)),
          duties: engine => dutiesOf(table, engine ?? line?.line.engine?.entry?.name),
          ratios: gear => ratioOffers(gearNamed(gears, gear ?? line?.line.gear?.entry?.name)),
          clutches: (gear, ratio) =>
            clutchNames(gearNamed(gears, gear ?? line?.line.gear?.entry?.name), ratio),
          present: new Set(line?.line.chain.map(part => part.role)),
          neededHand: line?.analysis.rotation.neededHand,
        });
      case 'facts':
        return this.factOffers(frame, context, document, offset, table, bySpace);
      case 'nowhere':
        return [];
    }
  }

  private factOffers(
    frame: Frame,
    { statement, partial, frames }: CursorContext,
    document: LangiumDocument,
    offset: number,
    table: EntryTable,
    bySpace: boolean,
  ): Offer[] {
    const today = this.services.project.today();
    const place = factPlace(frame.vocabulary!, statement);
    const known: KnownNames = {
      duties: [],
      clutches: clutchNames(gearNamed(table.catalogue.gears, entryName(frames)), undefined),
      lines: namesOf(this.linesOfVessel(frames, document)),
      modes: namesOf(this.linesOfVessel(frames, document).flatMap(one => one.modes)),
      materials: () => {
        const declared = entryOffers(
          'shaft material',
          table,
          this.lineAt(frames, [], document),
          this.others('shaft material', document),
        );
        const { textDocument } = document;
        const end = textDocument.positionAt(textDocument.getText().length);
        return declared.length > 0 ? declared : genericGrades({ start: end, end });
      },
      sizes: row => {
        const line = this.lineAt(frames, [], document);
        return standardOffers(
          row,
          place.vocabulary,
          (metres, written) => line && diameterFit(line, metres, written)?.words,
        );
      },
      today,
    };
    const offers: Offer[] = [];
    let done = true;
    if (place.row) {
      const next = nextInValue(place.row, place.value, partial, known);
      offers.push(...next.offers);
      done = next.done;
    } else if (place.bare.length > 0 && place.value.length === 1) {
      const number = Number.parseFloat(place.value[0]!.text);
      for (const { kind } of place.bare) {
        const dimension =
          kind.form === 'quantity' ? kind.dimension : kind.form === 'point' ? kind.of : undefined;
        if (dimension) offers.push(...unitOffers(dimension, number, false, true));
      }
      return once(offers);
    }
    const needed =
      place.row?.field === 'hand'
        ? this.lineAt(frames, [], document)?.analysis.rotation.neededHand
        : undefined;
    if (needed) offers.sort((a, b) => Number(b.label === needed) - Number(a.label === needed));
    if (!done || (bySpace && place.begun.length === 0)) return offers;
    const written = writtenIn(frame, document.textDocument.getText(), offset);
    const marks = place.row && place.value.length > 0 ? evidenceOffers([], today, true) : [];
    return [...offers, ...propertyOffers(place, written), ...marks];
  }

  /** Entries of files that this one does not import, as far as they have been read. */
  private others(role: EntryKind | Role, document: LangiumDocument): OtherFile[] {
    const { project, shared } = this.services;
    const text = document.textDocument;
    const reading = project.reading(document);
    return importable(project, shared.workspace.LangiumDocuments, document, role).map(one => {
      const { start, end, text: newText } = addedImport(text.getText(), reading, one.path);
      return { ...one, added: { range: rangeIn(text, { start, end }), newText } };
    });
  }

  /** The shaft line around the cursor as last judged, by the names in the headers. */
  private lineAt(
    frames: readonly Frame[],
    statement: readonly { text: string }[],
    document: LangiumDocument,
  ): JudgedLine | undefined {
    const name = (kind: Frame['kind']) => frames.find(one => one.kind === kind)?.header[1]?.text;
    const path = `${name('arrangement')}.${name('line') ?? statement[1]?.text}`;
    const vessel = this.services.project
      .check(document)
      .vessels.find(one => one.vessel.name === name('vessel'));
    return vessel && linesOf(vessel).find(one => one.line.path === path);
  }

  /** Names of shaft lines in any arrangement of the vessel around the cursor, each once. */
  private linesOfVessel(frames: readonly Frame[], document: LangiumDocument): readonly LineReading[] {
    const name = frames.find(one => one.kind === 'vessel')?.header[1]?.text;
    const vessel = this.services.project.reading(document).vessels.find(one => one.name === name);
    return vessel?.arrangements.flatMap(one => one.lines) ?? [];
  }

  private surroundings(frames: readonly Frame[], document: LangiumDocument): Surroundings {
    const name = (kind: Frame['kind']) => frames.find(one => one.kind === kind)?.header[1]?.text;
    const vessel = this.services.project.reading(document).vessels.find(one => one.name === name('vessel'));
    const arrangements = vessel?.arrangements ?? [];
    const here = arrangements.find(one => one.name === name('arrangement'));
    return {
      duties: DUTY_CLASSES,
      arrangements: arrangements.map(one => one.name),
      modes: [
        ...new Set(
          arrangements.flatMap(one => one.lines.flatMap(line => line.modes.map(({ name }) => name))),
        ),
      ].filter(Boolean),
      lines: here?.lines.map(one => one.name) ?? [],
      paths: [
        ...new Set(
          arrangements.flatMap(one => [
            one.name,
            ...one.lines.flatMap(line => [line.name, `${one.name}.${line.name}`]),
          ]),
        ),
        ...arrangements.flatMap(one =>
          one.lines.flatMap(line => line.parts.map(part => `${one.name}.${line.name}.${part.role}`)),
        ),
      ],
      today: this.services.project.today(),
    };
  }
}

function startOf(partial: CursorContext['partial'] | undefined, offset: number): number {
  // A number is not replaced: what is offered behind it is added to it.
  return partial && partial.kind === 'word' ? partial.start : offset;
}

function gearNamed(
  gears: readonly CatalogueEntry<GearFacts>[],
  name: string | undefined,
): CatalogueEntry<GearFacts> | undefined {
  return gears.find(one => one.name === name);
}

function clutchNames(gear: CatalogueEntry<GearFacts> | undefined, ratio: string | undefined): string[] {
  if (!gear) return [];
  const variants = gear.facts.ratios.filter(one => ratio === undefined || one.nominalFact.written === ratio);
  const clutches =
    variants.length > 0 ? variants.flatMap(one => clutchesOf(gear.facts, one)) : gear.facts.clutches;
  return [...new Set(clutches.map(one => one.name))];
}

function dutiesOf(table: EntryTable, engine: string | undefined): readonly string[] {
  const entry = table.catalogue.engines.find(one => one.name === engine);
  return entry ? entry.facts.ratings.map(one => one.duty) : DUTY_CLASSES;
}

/** The catalogue entry whose block is open around the cursor. */
function entryName(frames: readonly Frame[]): string | undefined {
  return frames[1]?.header[1]?.text;
}

/** Properties that the block of the cursor says already, on either side of it. */
function writtenIn(frame: Frame, text: string, offset: number): Set<string> {
  const written = new Set<string>();
  let depth = 0;
  const words: { text: string; line: number }[] = [];
  for (const token of scan(text.slice(frame.start + 1))) {
    if (token.kind === 'close' && depth === 0) break;
    if (token.kind === 'open') depth += 1;
    else if (token.kind === 'close') depth -= 1;
    else if (depth === 0 && token.end + frame.start + 1 !== offset) words.push(token);
  }
  for (const row of [...frame.vocabulary!.rows, ...frame.vocabulary!.blocks]) {
    const parts = row.words.split(' ');
    const found = words.some((_word, index) =>
      parts.every((part, ahead) => words[index + ahead]?.text === part),
    );
    if (found) written.add(row.words);
  }
  return written;
}

function namesOf(all: readonly { readonly name: string }[]): string[] {
  return [...new Set(all.map(one => one.name))].filter(Boolean);
}

function once(offers: readonly Offer[]): Offer[] {
  const seen = new Set<string>();
  return offers.filter(one => {
    if (seen.has(one.label)) return false;
    seen.add(one.label);
    return true;
  });
}
