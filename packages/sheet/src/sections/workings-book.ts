import {
  citeSource,
  filledFormula,
  formatValue,
  type Origin,
  resultOf,
  type Value,
} from '@tailshaft/mechanics';
import { code, lineBreak, quiet, separated, type Text, warning } from '../document/text.js';
import { valueWords } from '../words.js';

/** One computed number with its formula, ready to print. */
export interface BookEntry {
  readonly number: number;
  readonly value: Value;
  readonly under: string;
}

/**
 * Numbers the workings of a sheet. Every computed value gets one entry, with the values that go into it one level
 * below: those that were computed themselves are entries of their own, the rest are declared or assumed.
 */
export class WorkingsBook {
  readonly entries: BookEntry[] = [];
  readonly #numbers = new Map<string, number>();
  readonly #keys = new WeakMap<Value, string>();
  readonly #origins = new Map<Origin, number>();

  constructor(
    private readonly place: (origin: Origin | undefined) => Text | undefined,
    /** The same figures by the same formulas are one entry wherever they were declared: lines alike share theirs. */
    private readonly alike = false,
  ) {}

  /** The number of a value's working, entered on first use; undefined for values that were not computed. */
  refer(value: Value, under: string): number | undefined {
    if (!value.working) return undefined;
    const key = this.#key(value);
    const had = this.#numbers.get(key);
    if (had !== undefined) return had;
    const number = this.entries.length + 1;
    this.#numbers.set(key, number);
    this.entries.push({ number, value, under });
    for (const input of value.working.inputs) this.refer(input, under);
    return number;
  }

  /** Name and result: `shaft torque T = 2304 N·m`. */
  title({ value, number }: BookEntry): Text {
    return [
      { as: 'anchor', text: `W${number}`, id: `w${number}` },
      ` ${value.label} `,
      code(`${value.symbol} = ${formatValue(value)}`),
    ];
  }

  /** Formula with the numbers in it, inputs, range, remarks, source. */
  lines({ value, under }: BookEntry): Text[] {
    const working = value.working!;
    const filled = filledFormula(value);
    const [left = value.symbol] = working.text.split('=');
    const met = working.range.filter(one => one.met).map(one => one.condition);
    return [
      separated(
        lineBreak,
        code(working.text),
        filled && code(`${left.trim()} = ${filled} = ${resultOf(value)}`),
        value.assumed && warning(`assumed: ${value.assumed}`),
      ),
      ...working.inputs.map((input, index) => this.#input(input, letterOf(value, index), under)),
      ...working.range
        .filter(one => !one.met)
        .map((one): Text => warning(`OUTSIDE ITS RANGE: needs ${one.condition}.`)),
      quiet(
        separated(
          ' ',
          `Source: ${citeSource(working.source)}.`,
          met.length > 0 ? `Within its range: ${met.join('; ')}.` : undefined,
          ...(working.notes ?? []).map(note => `Note: ${note}.`),
        ),
      ),
    ];
  }

  #input(input: Value, letter: string, under: string): Text {
    const number = this.refer(input, under);
    const words = valueWords(input);
    const same = formatValue(input);
    return separated(
      ' ',
      separated(' ', code(letter), `${input.label}:`, code(words)),
      input.written && words !== same && input.dimension !== 'ratio' ? quiet(`= ${same}`) : undefined,
      number === undefined
        ? (this.place(input.origin) ?? (input.assumed ? undefined : quiet('place not recorded')))
        : { as: 'reference', text: `W${number}`, to: `w${number}` },
      input.assumed && warning(`assumed: ${input.assumed}`),
    );
  }

  /** Two values with one key are the same number, from the same declarations by the same way. */
  #key(value: Value): string {
    const had = this.#keys.get(value);
    if (had !== undefined) return had;
    const { working } = value;
    // A computed or declared number keeps its working and its place under whatever name it goes; an assumed one has none.
    const key = [
      working || (value.origin && !this.alike) ? '' : value.label,
      value.si,
      value.assumed ?? '',
      value.origin && !this.alike ? this.#originNumber(value.origin) : '',
      working ? `${working.name}(${working.inputs.map(input => this.#key(input)).join(';')})` : '',
    ].join('|');
    const short = this.#interned(key);
    this.#keys.set(value, short);
    return short;
  }

  readonly #interns = new Map<string, string>();

  /** Long keys of deep workings are replaced by short ones, so that they stay linear in size. */
  #interned(key: string): string {
    const had = this.#interns.get(key);
    if (had !== undefined) return had;
    const short = `#${this.#interns.size}`;
    this.#interns.set(key, short);
    return short;
  }

  #originNumber(origin: Origin): number {
    const had = this.#origins.get(origin);
    if (had !== undefined) return had;
    this.#origins.set(origin, this.#origins.size);
    return this.#origins.size - 1;
  }
}

/** The letter that an input goes by in the formula, or else its own symbol. */
function letterOf(value: Value, index: number): string {
  const { keys, text, inputs } = value.working!;
  const key = keys?.[index];
  const symbol = inputs[index]!.symbol;
  return key !== undefined && text.match(LETTERS)?.includes(key) ? key : symbol;
}

const LETTERS = /\p{L}[\p{L}\p{N}_′'₀-₉]*/gu;
