import { byGravity, ruleWords, type Weighed } from '@tailshaft/drivetrain';
import type { Finding } from '@tailshaft/language';
import { count, percent, plural } from '@tailshaft/mechanics';
import type { Form, Run } from '../forms/form.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import type { Baseline } from './baseline.js';
import { CAUTION } from './cautions.js';
import { acceptedText, asFoundText, findingText, knownText } from './finding-text.js';
import { isKnown, type Judged } from './judged.js';
import { marginLines, type VesselMargins, vesselMargins } from './margins.js';
import { underImports } from './missing-import.js';
import { NotAssessed, type SilentVessel, silentIn } from './not-assessed.js';
import { type Asked, OpenQuestions } from './open-questions.js';
import { gravestFirst, type Rank, rankOf, severityOf, weightOf } from './severity.js';
import type { Tally } from './tally.js';
import { TRIES_ENDED, type TriedWays, type Tries, TriesGranted, WaysTried } from './tried-ways.js';
import { verdictTable } from './verdict-table.js';
import { byWorst, type Standing, standingLines, standingsOf } from './vessel-lines.js';

/** How much of the report is wanted. */
export interface Wanted {
  /** Everything, where the usual report stops at the first of each. */
  readonly all: boolean;
  readonly verdicts: boolean;
  /** Findings alone. */
  readonly quiet: boolean;
  /** A line for each vessel alone. */
  readonly summary: boolean;
}

/** What is said of one spec, as plain data. */
interface Piece {
  readonly standings: readonly Standing[];
  readonly told: readonly ToldOnce[];
  readonly known: readonly RankedText[];
  readonly accepted: readonly { readonly weight: Weighed; readonly text: string }[];
  readonly asked?: Asked;
  readonly silent?: readonly SilentVessel[];
  readonly margins: readonly VesselMargins[];
  readonly table?: string;
}

interface RankedText {
  readonly rank: Rank;
  readonly text: string;
}

interface ToldOnce extends RankedText {
  readonly of: string;
  readonly key?: string;
  /** What was tried to find its ways out, and what it says without them. */
  readonly tried?: { readonly tries: Tries; readonly without: string };
}

interface Told {
  /** What it is ordered by: a finding itself would keep its whole vessel. */
  rank: Rank;
  text: string;
  /** The vessel it is said of, with its file. */
  of: string;
  /** Other vessels of which it is said too, where it is a fact of a catalogue entry. */
  readonly others: string[];
}

/**
 * The report on any number of specs, the gravest first across them: how each vessel stands, what fails, what is
 * accepted, what is as found, the data that checks wait for, the margins, the caution. Specs are added one by one and
 * need not be kept.
 */
export class CheckReport implements Form<Piece> {
  private readonly standings: Standing[] = [];
  private readonly told: Told[] = [];
  private readonly atEntries = new Map<string, Told>();
  private readonly accepted: { readonly weight: Weighed; readonly text: string }[] = [];
  private readonly known: RankedText[] = [];
  private readonly questions = new OpenQuestions();
  private readonly notAssessed = new NotAssessed();
  private readonly margins: VesselMargins[] = [];
  private readonly tables: string[] = [];
  private readonly waysTried: WaysTried;
  private readonly granted = new TriesGranted();

  constructor(
    private readonly io: Io,
    private readonly specs: Specs,
    private readonly wanted: Wanted,
    private readonly baseline?: Baseline,
  ) {
    this.waysTried = new WaysTried(specs, 'in need');
  }

  pieceOf(judged: Judged): Piece {
    const { io, specs, wanted } = this;
    const { spec } = judged;
    const standings = standingsOf(spec);
    if (wanted.summary) return { standings, told: [], known: [], accepted: [], margins: [] };
    const findings = (wanted.all ? spec.findings : underImports(spec.findings)).filter(
      one => severityOf(one) !== 'information',
    );
    const short = {
      standings,
      told: findings
        .filter(one => !isKnown(judged, one))
        .map(one => this.toldOnce(one, spec, judged.standings?.get(one) === 'worse')),
      known: findings
        .filter(one => isKnown(judged, one))
        .map(one => ({ rank: rankOf(one), text: knownText(io, specs, one) })),
      accepted: spec.check.vessels.flatMap(({ vessel, verdicts }) =>
        verdicts
          .filter(one => one.outcome === 'accepted')
          .map(one => ({ weight: weightOf(one), text: acceptedText(io, specs, one, vessel.name) })),
      ),
    };
    if (wanted.quiet) return { ...short, margins: [] };
    return {
      ...short,
      asked: this.questions.askedIn(specs, spec),
      silent: silentIn(spec),
      margins: spec.check.vessels.flatMap(one => vesselMargins(one)),
      ...(wanted.verdicts
        ? { table: `${io.paint.strong(spec.shown)}\n${verdictTable(io, specs, spec)}` }
        : {}),
    };
  }

  take({ standings, told, known, accepted, asked, silent, margins, table }: Piece): void {
    this.standings.push(...standings);
    for (const one of told) this.tell(one);
    this.known.push(...known);
    this.accepted.push(...accepted);
    if (asked) this.questions.take(asked);
    if (silent) this.notAssessed.take(silent);
    this.margins.push(...margins);
    if (table !== undefined) this.tables.push(table);
  }

  text({ tally }: Run): string {
    if (tally.files === 0) return '';
    const { io, wanted } = this;
    const blocks: string[] = [];
    if (!wanted.quiet) blocks.push(this.vesselLines());
    if (wanted.summary) return blocks.filter(Boolean).join('\n');
    const ordered = [...this.told].sort((a, b) => gravestFirst(a.rank, b.rank));
    const asFound = (one: Told) => one.rank.verdict?.asFound === true;
    blocks.push(...ordered.filter(one => !asFound(one)).map(one => this.toldText(one)));
    blocks.push(...this.accepted.sort((a, b) => byGravity(a.weight, b.weight)).map(one => one.text));
    blocks.push(...this.knownBlocks());
    const found = ordered.filter(asFound);
    if (found.length > 0)
      blocks.push(
        io.paint.strong(`As found: ${count(tally.asFound, 'check fails', 'checks fail')} before any change`),
        ...found.map(one => this.toldText(one)),
      );
    if (wanted.quiet) return ended(blocks);
    blocks.push(this.questions.text(io, wanted.all), this.notAssessed.text(io));
    blocks.push(marginLines(io, this.margins, wanted.all));
    blocks.push(...this.tables, totals(io, tally), io.paint.quiet(wrapped(CAUTION, io.width)));
    return ended(blocks);
  }

  private toldOnce(finding: Finding, spec: CheckedSpec, worse: boolean): ToldOnce {
    const { io, specs, wanted } = this;
    const marked = (text: string) =>
      worse ? `${text}\n  ${io.paint.warning('worse than in the baseline')}` : text;
    const rank = rankOf(finding);
    const key = finding.entryKey;
    const of = `${finding.vessel?.vessel.name} (${spec.shown})`;
    const told = { rank, of, ...(key === undefined ? {} : { key }) };
    if (finding.verdict?.asFound === true && !wanted.all)
      return { ...told, text: marked(asFoundText(io, specs, finding)) };
    const tries = this.waysTried.of(spec, finding);
    const textWith = (tried?: TriedWays) => marked(findingText(io, specs, finding, wanted.all, tried));
    if (!tries) return { ...told, text: textWith() };
    const without = textWith(TRIES_ENDED);
    const text = tries.ways ? textWith({ waysOutTried: tries.ways }) : without;
    return { ...told, text, tried: { tries, without } };
  }

  private tell({ rank, of, key, tried, text: whole }: ToldOnce): void {
    const text = tried && !this.granted.grants(tried.tries) ? tried.without : whole;
    const had = key === undefined ? undefined : this.atEntries.get(key);
    if (!had || this.wanted.all) {
      const told: Told = { rank, text, of, others: [] };
      this.told.push(told);
      if (key !== undefined) this.atEntries.set(key, told);
    } else if (gravestFirst(rank, had.rank) < 0) {
      // The vessel that it hits hardest leads.
      had.others.push(had.of);
      Object.assign(had, { rank, text, of });
    } else had.others.push(of);
  }

  private toldText({ text, others }: Told): string {
    if (others.length === 0) return text;
    const lead = `  ${this.io.paint.quiet('as well:')} `;
    return `${text}\n${wrapped([...new Set(others)].join(', '), this.io.width, '       ', lead)}`;
  }

  /** What the baseline knows: it changes no status, and stays told until it is put right. */
  private knownBlocks(): string[] {
    const { baseline, known, io } = this;
    if (!baseline) return [];
    const gone = baseline.gone();
    const head = `In the baseline of ${baseline.written}: ${count(known.length, 'finding')}, known and not accepted`;
    const tail = `${count(gone, 'finding')} of the baseline ${plural(gone, 'is', 'are')} gone: write it again`;
    return [
      ...(known.length > 0 ? [io.paint.strong(head)] : []),
      ...known.sort((a, b) => gravestFirst(a.rank, b.rank)).map(one => one.text),
      ...(gone > 0 ? [tail] : []),
    ];
  }

  /** One line for each vessel; a finding must stand within the first ten lines of the report. */
  private vesselLines(): string {
    const { io, wanted } = this;
    const ordered = [...this.standings].sort(byWorst);
    const most =
      wanted.all || wanted.summary || ordered.length <= MOST_VESSELS ? ordered.length : MOST_VESSELS - 1;
    const more = ordered.slice(most);
    const lines = standingLines(io, ordered.slice(0, most));
    if (more.length === 0) return lines.join('\n');
    const of = (word: string) => more.filter(one => one.word === word).length;
    const words = [...new Set(more.map(one => one.word))].map(word => `${of(word)} ${word}`);
    return [...lines, `and ${more.length} more (${words.join(', ')}): see --summary`].join('\n');
  }
}

/** The line of a finding is the tenth at most: five lines on vessels, one between, and what names the finding. */
const MOST_VESSELS = 6;

function totals(io: Io, tally: Tally): string {
  const { paint } = io;
  const found = [
    tally.errors ? paint.error(count(tally.errors, 'error')) : tally.known ? 'no new error' : 'no error',
    tally.warnings ? paint.warning(count(tally.warnings, 'warning')) : '',
    tally.notes ? count(tally.notes, 'note') : '',
  ].filter(Boolean);
  const least = tally.smallest
    ? `, the least by ${percent(tally.smallest.margin!)} (${ruleWords(tally.smallest.rule)} of ${tally.smallest.subject})`
    : '';
  const entries = tally.holdsOnEntries ? ` (${tally.holdsOnEntries} of them on catalogue entries)` : '';
  const checks = [
    `${count(tally.holds, 'check holds', 'checks hold')}${entries}${least}`,
    tally.notChecked ? paint.open(`${tally.notChecked} cannot tell for lack of data`) : '',
    tally.known ? `${count(tally.known, 'finding is', 'findings are')} in the baseline` : '',
    tally.accepted
      ? `${count(tally.accepted, 'failure is accepted', 'failures are accepted')}, by the persons named in the spec`
      : '',
  ].filter(Boolean);
  const sum = tally.errors + tally.warnings + tally.notes + tally.known;
  const causes = tally.fails > sum ? ` (one finding for each cause; ${tally.fails} checks fail)` : '';
  const files = `${count(tally.files, 'file')}, ${count(tally.vessels, 'vessel')}`;
  return `${wrapped(`${files}: ${found.join(', ')}${causes}.`, io.width)}\n${wrapped(`${checks.join('; ')}.`, io.width)}`;
}

function ended(blocks: readonly string[]): string {
  return blocks.filter(Boolean).join('\n\n');
}
