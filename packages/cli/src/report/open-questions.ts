import { type ByAnswer, gapsOf, isOpenCheck, type Verdict } from '@tailshaft/drivetrain';
import { type Place, waitsForText } from '@tailshaft/language';
import type { CheckedSpec } from '../specs/specs.js';
import type { Spot, Spots } from '../specs/spot.js';
import type { Io } from '../terminal/io.js';
import { count, wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { shortName } from './tally.js';

/** One missing datum with the checks that wait for it. */
export interface Question {
  readonly what: string;
  readonly property: string;
  /** Where it is to be written. */
  readonly spot: Spot | undefined;
  /** Something stands there, but it cannot be used. */
  readonly written: boolean;
  readonly waiting: Set<string>;
  readonly rules: Set<string>;
  value: number;
}

type Gap = ReturnType<typeof gapsOf>[number];

const MOST = 10;
/** Rules named beside a datum; `--all` lists every check. */
const MOST_RULES = 4;

/** Open questions grouped by the missing datum, over any number of specs. */
export class OpenQuestions {
  private readonly byDatum = new Map<string, Question>();
  private readonly numberless = new Map<string, string>();
  private readonly tables = new Map<string, Verdict['byAnswer'] & object>();
  private behindText = 0;
  private checks = 0;
  private readonly files = new Set<string>();

  add(specs: Spots, spec: CheckedSpec): void {
    this.files.add(spec.shown);
    for (const judged of spec.check.vessels)
      for (const verdict of judged.verdicts)
        this.take(specs, spec, verdict, judged.vessel.name, waitsForText(verdict, spec.check, judged));
    for (const { reading, verdicts } of spec.check.entries)
      for (const verdict of verdicts)
        this.take(specs, spec, verdict, reading.name, waitsForText(verdict, spec.check));
  }

  /** The datum whose answer settles most comes first. */
  get list(): Question[] {
    return [...this.byDatum.values()].sort((one, other) => other.value - one.value);
  }

  text(io: Io, all: boolean): string {
    if (this.checks === 0) return '';
    const list = this.list;
    const data = count(list.length, 'missing datum', 'missing data');
    const head = `Open questions: ${count(this.checks, 'check', 'checks')} cannot tell`;
    const lines = [io.paint.open(list.length > 0 ? `${head}, for ${data}` : head)];
    for (const one of all ? list : list.slice(0, MOST))
      lines.push(questionText(io, one, this.atWords(one), all));
    if (!all && list.length > MOST) lines.push(`  and ${list.length - MOST} more: see --all`);
    for (const [of, rows] of this.tables) lines.push(...tableText(io, of, rows));
    for (const message of this.numberless.values())
      lines.push(wrapped(visible(message), io.width, '      ', '  '));
    if (this.behindText > 0)
      lines.push(`  ${count(this.behindText, 'check waits', 'checks wait')} until the text can be read`);
    return lines.join('\n');
  }

  /** `line 63` where one file was asked about, and it lies there; `gears.shaft:63` otherwise. */
  private atWords({ spot }: Question): string {
    if (!spot) return '';
    const { shown, line } = spot;
    return this.files.size === 1 && this.files.has(shown) ? `, line ${line}` : `, ${shown}:${line}`;
  }

  private take(specs: Spots, spec: CheckedSpec, verdict: Verdict, of: string, behindText: boolean): void {
    // What is not known of the vessel as found is asked for by the proposals that rest on it.
    if (!isOpenCheck(verdict)) return;
    this.checks += 1;
    if (verdict.byAnswer)
      this.tables.set(`${shortName(verdict.rule)} of ${of}, ${verdict.subject}`, verdict.byAnswer);
    if (behindText) this.behindText += 1;
    else if (verdict.missing.length === 0) {
      const spot = specs.spot(verdict.place as Place);
      const at = spot ? ` (${spot.shown}:${spot.line})` : '';
      this.numberless.set(
        `${verdict.rule} ${spec.shown} ${verdict.subject}`,
        `${verdict.rule}: ${verdict.message}${at}`,
      );
    } else for (const one of gapsOf(verdict)) this.ask(specs, verdict, one, of);
  }

  private ask(specs: Spots, verdict: Verdict, { gap, worth, ...at }: Gap, of: string): void {
    const place = at.place as Place;
    const key = `${place.uri} ${place.start} ${place.end} ${gap.property}`;
    let asked = this.byDatum.get(key);
    if (!asked) {
      const spot = specs.spot(place);
      asked = {
        what: gap.what,
        property: gap.property,
        spot,
        written: gap.at !== undefined,
        waiting: new Set(),
        rules: new Set(),
        value: 0,
      };
      this.byDatum.set(key, asked);
    }
    asked.waiting.add(`${verdict.rule} on ${of === verdict.subject ? of : `${of}, ${verdict.subject}`}`);
    asked.rules.add(verdict.rule);
    asked.value += worth;
  }
}

/** Which answer gives what. */
function tableText(io: Io, of: string, rows: readonly ByAnswer[]): string[] {
  return [
    wrapped(`${visible(of)}, by answer:`, io.width, '      ', '  '),
    ...rows.map(({ given, result }) =>
      wrapped(visible(`${given.join(', ')}: ${result}`), io.width, '        ', '      '),
    ),
  ];
}

/** `material of the shaft, line 63: 4 checks wait`. */
function questionText(io: Io, one: Question, at: string, all: boolean): string {
  const wait = count(one.waiting.size, 'check waits', 'checks wait');
  const written = one.written ? ' (what stands there is not enough)' : '';
  const head = `${visible(one.what)}${at}: ${wait}${written}`;
  if (all) {
    const checks = [...one.waiting].map(check => wrapped(check, io.width, '        ', '      '));
    return [wrapped(`${head}; write: ${one.property} ...`, io.width, '      ', '  '), ...checks].join('\n');
  }
  const rules = [...one.rules].map(shortName);
  const more = rules.length > MOST_RULES ? ` and ${rules.length - MOST_RULES} more` : '';
  return wrapped(`${head} (${rules.slice(0, MOST_RULES).join(', ')}${more})`, io.width, '      ', '  ');
}
