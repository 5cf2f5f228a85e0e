import { type ByAnswer, gapsOf, isOpenCheck, ruleWords, type Verdict } from '@tailshaft/drivetrain';
import { type Place, waitsForText } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import type { CheckedSpec } from '../specs/specs.js';
import type { Spot, Spots } from '../specs/spot.js';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';

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

/** What one spec asks for, as plain data. */
export interface Asked {
  readonly shown: string;
  readonly checks: number;
  readonly behindText: number;
  readonly tables: readonly (readonly [string, readonly ByAnswer[]])[];
  readonly numberless: readonly (readonly [string, string])[];
  readonly data: readonly AskedDatum[];
}

interface AskedDatum extends Pick<Question, 'what' | 'property' | 'spot' | 'written'> {
  readonly key: string;
  readonly waits: string;
  readonly rule: string;
  readonly worth: number;
}

interface Asking {
  checks: number;
  behindText: number;
  readonly tables: (readonly [string, readonly ByAnswer[]])[];
  readonly numberless: (readonly [string, string])[];
  readonly data: AskedDatum[];
}

const MOST = 10;
/** Rules named beside a datum; `--all` lists every check. */
const MOST_RULES = 4;

/** Open questions grouped by the missing datum, over any number of specs. */
export class OpenQuestions {
  private readonly byDatum = new Map<string, Question>();
  private readonly numberless = new Map<string, string>();
  private readonly tables = new Map<string, readonly ByAnswer[]>();
  private behindText = 0;
  private checks = 0;
  private readonly files = new Set<string>();

  askedIn(specs: Spots, spec: CheckedSpec): Asked {
    const asking: Asking = { checks: 0, behindText: 0, tables: [], numberless: [], data: [] };
    for (const judged of spec.check.vessels)
      for (const verdict of judged.verdicts)
        ask(asking, specs, spec, verdict, judged.vessel.name, waitsForText(verdict, spec.check, judged));
    for (const { reading, verdicts } of spec.check.entries)
      for (const verdict of verdicts)
        ask(asking, specs, spec, verdict, reading.name, waitsForText(verdict, spec.check));
    return { ...asking, shown: spec.shown };
  }

  take({ shown, checks, behindText, tables, numberless, data }: Asked): void {
    this.files.add(shown);
    this.checks += checks;
    this.behindText += behindText;
    for (const [of, rows] of tables) this.tables.set(of, rows);
    for (const [key, message] of numberless) this.numberless.set(key, message);
    for (const { key, waits, rule, worth, ...datum } of data) {
      const asked = this.byDatum.get(key) ?? { ...datum, waiting: new Set(), rules: new Set(), value: 0 };
      this.byDatum.set(key, asked);
      asked.waiting.add(waits);
      asked.rules.add(rule);
      asked.value += worth;
    }
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
}

function ask(
  asking: Asking,
  specs: Spots,
  spec: CheckedSpec,
  verdict: Verdict,
  of: string,
  behindText: boolean,
): void {
  // What is not known of the vessel as found is asked for by the proposals that rest on it.
  if (!isOpenCheck(verdict)) return;
  asking.checks += 1;
  if (verdict.byAnswer)
    asking.tables.push([`${ruleWords(verdict.rule)} of ${of}, ${verdict.subject}`, verdict.byAnswer]);
  if (behindText) asking.behindText += 1;
  else if (verdict.missing.length === 0) {
    const spot = specs.spot(verdict.place as Place);
    const at = spot ? ` (${spot.shown}:${spot.line})` : '';
    asking.numberless.push([
      `${verdict.rule} ${spec.shown} ${verdict.subject}`,
      `${verdict.rule}: ${verdict.message}${at}`,
    ]);
  } else for (const one of gapsOf(verdict)) asking.data.push(datumOf(specs, verdict, one, of));
}

function datumOf(specs: Spots, verdict: Verdict, { gap, worth, ...at }: Gap, of: string): AskedDatum {
  const place = at.place as Place;
  return {
    key: `${place.uri} ${place.start} ${place.end} ${gap.property}`,
    what: gap.what,
    property: gap.property,
    spot: specs.spot(place),
    written: gap.at !== undefined,
    waits: `${verdict.rule} on ${of === verdict.subject ? of : `${of}, ${verdict.subject}`}`,
    rule: verdict.rule,
    worth,
  };
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
  const rules = [...one.rules].map(ruleWords);
  const more = rules.length > MOST_RULES ? ` and ${rules.length - MOST_RULES} more` : '';
  return wrapped(`${head} (${rules.slice(0, MOST_RULES).join(', ')}${more})`, io.width, '      ', '  ');
}
