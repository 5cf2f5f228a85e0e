import {
  type Arrangement,
  findRule,
  type LineAnalysis,
  type ShaftLine,
  type Verdict,
  type Vessel,
} from '@tailshaft/drivetrain';
import type { Origin, Value } from '@tailshaft/mechanics';
import { besideWords } from './both-units.js';
import type { Column } from './document/blocks.js';
import { quiet, separated, strong, type Text } from './document/text.js';
import type { SheetInput } from './input.js';
import type { FactRow } from './sections/facts.js';
import { WorkingsBook } from './sections/workings-book.js';
import { valueWords } from './words.js';

/** One sheet in the making: its input, and the workings that its sections refer to. */
export class Sheet {
  readonly workings: WorkingsBook;
  /** Numbers are said in SI and in US customary units, and lines that are alike share their workings. */
  readonly forPaper: boolean;

  constructor(
    readonly input: SheetInput,
    { forPaper = false }: { readonly forPaper?: boolean } = {},
  ) {
    this.forPaper = forPaper;
    this.workings = new WorkingsBook(origin => this.place(origin), forPaper);
  }

  get vessel(): Vessel {
    return this.input.vessel;
  }

  /** What is judged now stands first, what it was revised from behind it, each in the order of the text. */
  get arrangements(): readonly Arrangement[] {
    const { arrangements } = this.vessel;
    const revised = new Set(arrangements.map(one => one.revises));
    return [
      ...arrangements.filter(one => !revised.has(one.name)),
      ...arrangements.filter(one => revised.has(one.name)),
    ];
  }

  analysis(line: ShaftLine): LineAnalysis {
    return this.input.analysisOf(line);
  }

  /** Where something is declared, when the input can say. */
  place(origin: Origin | undefined): Text | undefined {
    const text = origin && this.input.placeText?.(origin);
    return origin && text ? { as: 'place', text, origin } : undefined;
  }

  /** A number with the reference to its working: `2304 N·m W3`. `under` names the group its working is printed in. */
  number(value: Value, under: string, words = valueWords(value)): Text {
    const number = this.workings.refer(value, under);
    const other = this.forPaper ? besideWords(value, words) : undefined;
    const said = other === undefined ? words : separated(' ', words, quiet(`(${other})`));
    return number === undefined
      ? said
      : separated(' ', said, { as: 'reference', text: `W${number}`, to: `w${number}` });
  }

  /** The column beside what was written: SI, or on paper whichever of SI and US customary was not written. */
  get convertedColumn(): Column {
    return { title: this.forPaper ? 'Converted' : 'SI' };
  }

  converted({ si, other }: Pick<FactRow, 'si' | 'other'>): string {
    return (this.forPaper ? other : si) ?? '';
  }

  /** Verdicts on a line or on one of its parts. */
  ofLine(line: ShaftLine): Verdict[] {
    return this.input.verdicts.filter(
      one => one.subject === line.path || one.subject.startsWith(`${line.path}.`),
    );
  }

  /** Verdicts on an arrangement as a whole: on itself, its weight, its balance. */
  ofArrangement(arrangement: Arrangement): Verdict[] {
    const ofLines = new Set(arrangement.lines.flatMap(line => this.ofLine(line)));
    return this.input.verdicts.filter(
      one =>
        (one.subject === arrangement.path || one.subject.startsWith(`${arrangement.path}.`)) &&
        !ofLines.has(one),
    );
  }

  /** Verdicts on the vessel, and on anything that belongs to none of its arrangements. */
  ofVessel(): Verdict[] {
    const claimed = new Set(
      this.vessel.arrangements.flatMap(one => [
        ...this.ofArrangement(one),
        ...one.lines.flatMap(line => this.ofLine(line)),
      ]),
    );
    return this.input.verdicts.filter(one => !claimed.has(one));
  }

  /** Those of them that are not on a catalogue entry by itself. */
  ofVesselAlone(): Verdict[] {
    const entries = new Set(this.input.entryVerdicts);
    return this.ofVessel().filter(one => !entries.has(one));
  }

  /** Title of a rule with its id. */
  rule(id: string): Text {
    const title = findRule(id)?.title;
    return title ? separated(' ', strong(title), quiet(id)) : strong(id);
  }
}
