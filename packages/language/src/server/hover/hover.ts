import { countsOf, countWords, type Part, type Shaft, type ShaftLine } from '@tailshaft/drivetrain';
import {
  asSpelling,
  DUTY_MEANINGS,
  meaningOf,
  type Spelling,
  STATEMENT_MEANINGS,
  statement,
  VALUE_MEANINGS,
  VESSEL_VOCABULARY,
  VIEW_MEANINGS,
} from '@tailshaft/vocabulary';
import { type LangiumDocument, URI } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import type { JudgedVessel } from '../../project/project.js';
import { suitingAt } from '../../project/suiting-at.js';
import type { DocumentReading, EntryReading } from '../../reading/document.js';
import type { VesselReading } from '../../reading/vessel.js';
import { scan, type Token, tokenAt } from '../../text/scan.js';
import { type JudgedLine, judgedLine, linesOf, vesselsThatSee } from '../lines.js';
import { rangeIn, samePlace, touches } from '../places.js';
import type { TailshaftServices } from '../services.js';
import { type Spot, spotAt } from '../spot.js';
import { standardAt, standardBlock } from '../standards/at-fact.js';
import { choiceHover } from './choice.js';
import { ageWords, isDate } from './date.js';
import { disarmed } from './disarm.js';
import { unitHover, valueHover } from './fact.js';
import { hullHover } from './figures.js';
import { lineHover, openChecks, rotationHover } from './line.js';
import { paragraphs, plain } from './markdown.js';
import { entryHover, placedPartHover } from './part.js';
import { blockHover, propertyHover } from './property.js';
import { ruleHover } from './rule.js';
import {
  acceptanceHover,
  assumptionHover,
  requirementHover,
  revisionHover,
  studyHover,
  trialHover,
} from './sentence.js';
import { suitsHover } from './suits.js';

/** What there is to say of the thing under the pointer. */
export class Hovers implements HoverProvider {
  constructor(private readonly services: TailshaftServices) {}

  async getHoverContent(document: LangiumDocument, { position }: HoverParams): Promise<Hover | undefined> {
    const text = document.textDocument;
    const offset = text.offsetAt(position);
    const tokens = scan(text.getText());
    const token = tokenAt(tokens, offset);
    if (!token || token.kind === 'open' || token.kind === 'close') return undefined;
    const reading = this.services.project.reading(document);
    const spot = spotAt(reading, offset) ?? titledSpot(reading, tokens, token);
    const markdown =
      (spot?.kind === 'acceptance' ? await ruleHover(token.text, this.services.pageOf) : undefined) ??
      this.of(spot, token, document) ??
      meaningOf(token.text) ??
      this.recordAt(reading, offset, document) ??
      this.dateHover(token);
    return markdown
      ? { contents: { kind: 'markdown', value: disarmed(markdown) }, range: rangeIn(text, token) }
      : undefined;
  }

  private of(spot: Spot | undefined, token: Token, document: LangiumDocument): string | undefined {
    const { project } = this.services;
    switch (spot?.kind) {
      case 'import':
        return this.importHover(spot.wanted.path, document);
      case 'entry':
        return entryHover(spot.entry, this.linesOfEntry(spot.entry));
      case 'vessel': {
        const judged = this.judged(spot.vessel, document);
        return (
          judged &&
          paragraphs(
            `**vessel ${plain(spot.vessel.name)}**${spot.vessel.title ? ` · ${plain(spot.vessel.title)}` : ''}`,
            spot.vessel.doc,
            `All checks: ${countWords(countsOf(judged.verdicts))}.`,
            openChecks(judged.verdicts),
          )
        );
      }
      case 'arrangement':
      case 'base': {
        const name = spot.kind === 'base' ? spot.arrangement.revises?.name : spot.arrangement.name;
        const judged = this.judged(spot.vessel, document);
        const verdicts =
          judged?.verdicts.filter(one => one.subject === name || one.subject.startsWith(`${name}.`)) ?? [];
        return paragraphs(
          `**arrangement ${plain(name ?? '')}** · ${countWords(countsOf(verdicts))}`,
          openChecks(verdicts),
        );
      }
      case 'line':
      case 'mirrored': {
        if (asSpelling(token.text) === 'mirrors') return meaningOf(token.text);
        const reading =
          spot.kind === 'line'
            ? spot.line
            : spot.arrangement.lines.find(one => one.name === spot.line.mirrors?.name);
        const line = reading && judgedLine(project, document, reading);
        return line && lineHover(line);
      }
      case 'part': {
        const line = judgedLine(project, document, spot.line);
        if (spot.on === 'name') {
          const entry = spot.part.name
            ? project.entries(document).find(spot.part.role, spot.part.name)
            : undefined;
          return entry && entryHover(entry, this.linesOfEntry(entry));
        }
        if (VALUE_MEANINGS[token.text] ?? DUTY_MEANINGS[token.text]) return undefined;
        if (spot.part.action === 'remove')
          return `**${spot.part.role}** of ${plain(spot.line.name)}, removed: ${statement('remove', 'line')?.doc}`;
        return paragraphs(
          placedPartHover(spot.part.role, line, spot.part.host),
          isSized(spot.part.role, line?.line) ? suitsHover(this.suitingAt(document, token.start)) : undefined,
        );
      }
      case 'fact':
        return this.factHover(spot, token, document);
      case 'nested':
        return paragraphs(
          blockHover(spot.nested.row),
          standardBlock(spot.nested),
          VALUE_MEANINGS[token.text],
        );
      case 'acceptance': {
        const judged = this.judged(spot.vessel, document);
        if (STATEMENT_MEANINGS[token.text]) return undefined;
        return judged && acceptanceHover(judged, spot.acceptance, project.today());
      }
      case 'requirement':
      case 'assumption': {
        if (SENTENCE_WORDS.has(token.text)) return undefined;
        const judged = this.judged(spot.vessel, document);
        if (!judged) return undefined;
        const said =
          spot.kind === 'requirement'
            ? requirementHover(judged, spot.sentence.place)
            : assumptionHover(judged, spot.sentence.place);
        return paragraphs(unitHover(token.text, undefined), said);
      }
      default:
        return undefined;
    }
  }

  private factHover(
    spot: Extract<Spot, { kind: 'fact' }>,
    token: Token,
    document: LangiumDocument,
  ): string | undefined {
    const { fact, block, owner } = spot;
    const { project } = this.services;
    if (spot.on === 'words') {
      const judged =
        block.host.vocabulary === VESSEL_VOCABULARY.hull &&
        owner.vessel &&
        this.judged(owner.vessel, document);
      return paragraphs(
        propertyHover(fact.row, block.host.vocabulary),
        judged ? hullHover(judged.vessel) : undefined,
      );
    }
    const unit =
      token.kind === 'word' && fact.row.kind.form !== 'word' ? unitHover(token.text, fact) : undefined;
    if (unit) return unit;
    const lines = owner.entry
      ? this.linesOfEntry(owner.entry)
      : project
          .check(document)
          .vessels.filter(one => one.reading === owner.vessel)
          .flatMap(linesOf);
    const own = owner.line && judgedLine(project, document, owner.line);
    if (fact.row.kind.form === 'name' && fact.row.kind.of === 'shaft material') {
      const entry = project.entries(document).find('shaft material', token.text);
      if (entry) return entryHover(entry, this.linesOfEntry(entry));
    }
    const place = { uri: document.uri.toString(), ...(fact.value ?? fact.words) };
    return paragraphs(
      valueHover(fact, place, lines),
      choiceHover(fact.row.field, own),
      own && fact.fact?.value === undefined && SIZES.has(fact.row.field)
        ? suitsHover(this.suitingAt(document, token.start))
        : undefined,
      fact.row.kind.form === 'rotation' && VIEW_MEANINGS[token.text],
      this.dateHover(token),
      standardAt(fact, block),
      (fact.row.field === 'class' ? DUTY_MEANINGS : { ...DUTY_MEANINGS, ...VALUE_MEANINGS })[token.text],
      own && ROTATES.has(fact.row.field) && rotationHover(own),
    );
  }

  private suitingAt(document: LangiumDocument, offset: number) {
    return suitingAt(this.services.project.check(document), document.uri.toString(), offset);
  }

  private judged(vessel: VesselReading, document: LangiumDocument): JudgedVessel | undefined {
    return this.services.project.check(document).vessels.find(one => one.reading === vessel);
  }

  /** What the record of a vessel says where nothing smaller does: its revisions, trials and studies. */
  private recordAt(
    { vessels }: DocumentReading,
    offset: number,
    document: LangiumDocument,
  ): string | undefined {
    const today = this.services.project.today();
    for (const vessel of vessels) {
      const revision = vessel.revisions.find(one => touches(one.place, offset));
      if (revision) return revisionHover(revision, today);
      const trial = vessel.trials.find(one => touches(one.place, offset));
      const judged = trial && this.judged(vessel, document);
      if (judged) return trialHover(judged, trial, today);
      const study = vessel.studies.find(one => touches(one.place, offset));
      const of = study && this.judged(vessel, document);
      if (of) return studyHover(study, this.services.project.studyOf(document, of, study));
    }
    return undefined;
  }

  private dateHover({ text }: Token): string | undefined {
    return isDate(text) ? `${ageWords(text, this.services.project.today())}.` : undefined;
  }

  private importHover(path: string, document: LangiumDocument): string | undefined {
    const seen = this.services.project.visible(document).slice(1);
    const entries = seen.flatMap((one: DocumentReading) => one.entries);
    const kinds = new Map<string, number>();
    for (const entry of entries) kinds.set(entry.kind, (kinds.get(entry.kind) ?? 0) + 1);
    const counts = [...kinds].map(([kind, count]) => `${count} ${kind}`).join(', ');
    return paragraphs(
      `**import** ${plain(path)}`,
      `This file sees ${seen.length} other files by its imports${counts ? `: ${counts}` : ''}.`,
    );
  }

  /** Lines of loaded vessels that use an entry, wherever it is declared. */
  private linesOfEntry(entry: EntryReading): JudgedLine[] {
    const documents = this.services.shared.workspace.LangiumDocuments;
    const home = documents.getDocument(URI.parse(entry.host.uri));
    if (!home) return [];
    return vesselsThatSee(this.services.project, home, documents.all)
      .flatMap(one => [...linesOf(one)])
      .filter(({ line }) => line.chain.some(part => entriesOf(part).some(one => samePlace(one, entry.host))));
  }
}

/** A title in quotes stands for what it is the title of. */
function titledSpot(reading: DocumentReading, tokens: readonly Token[], token: Token): Spot | undefined {
  const at = tokens.indexOf(token);
  const before = asSpelling(tokens[at - 1]?.text) === 'because' ? tokens[at - 2] : tokens[at - 1];
  if (token.kind !== 'string' || !before) return undefined;
  const spot = spotAt(reading, before.start);
  return spot && TITLED.has(spot.kind) ? spot : undefined;
}

const TITLED: ReadonlySet<Spot['kind']> = new Set(['entry', 'vessel', 'arrangement', 'base', 'assumption']);

/** Where the facts of a part come from: its entry, and for a shaft the grade of its bar. */
function entriesOf(part: Part): object[] {
  const grade = part.role === 'shaft' ? (part as Shaft).grade?.origin : undefined;
  return [part.entry?.origin, grade].filter(one => one !== undefined);
}

/** Words of sentences that mean the same wherever they stand. */
const SENTENCE_WORDS: ReadonlySet<string> = new Set<Spelling>(['require', 'assume', 'because']);

/** Facts that decide which way the shaft turns, or must agree with it. */
const ROTATES = new Set([
  'hand',
  'handSetting',
  'aheadClutch',
  'flywheelFaces',
  'pumpIndex',
  'rotation',
  'output',
]);

/** Sizes that are worked out where they are open. */
const SIZES: ReadonlySet<string> = new Set(['diameter', 'pitch', 'ratioUsed']);

/** Parts of which a hover says what would suit: of a propeller only where a size is open, since that is a search. */
function isSized(role: string, line: ShaftLine | undefined): boolean {
  if (role === 'shaft' || role === 'gear') return true;
  const { propeller } = line ?? {};
  return role === 'propeller' && !(propeller?.diameter?.value && propeller.pitch?.value);
}
