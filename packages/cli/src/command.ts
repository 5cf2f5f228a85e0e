import { type ParseArgsConfig, parseArgs } from 'node:util';
import { type AcceptancePolicy, daysFrom, policyFrom } from '@tailshaft/drivetrain';
import { CannotRun } from './cannot-run.js';
import type { Io } from './terminal/io.js';
import { wrapped } from './terminal/layout.js';

/** One option of a command. */
export interface Option {
  readonly name: string;
  /** One letter that means the same: `-o`. */
  readonly short?: string;
  /** What stands behind it: `<path>`. Absent for a switch. */
  readonly takes?: string;
  /** All that may stand behind it, where that is a choice of words. */
  readonly words?: readonly string[];
  readonly means: string;
}

/** Options as given: a text, or true for a switch. */
export type Given = Readonly<Record<string, string | boolean | undefined>>;

export interface Command {
  readonly usage: readonly string[];
  readonly about: string;
  readonly options: readonly Option[];
  /** Said at the end of the help: statuses, examples. */
  readonly notes: readonly string[];
  /** All words that it may take, where they are a choice and no paths; for completion. */
  readonly words?: () => readonly string[];
  /** The status that the process ends with. */
  run(io: Io, given: Given, words: readonly string[]): Promise<number>;
}

/** A command as the overview has it. */
export interface Listed {
  readonly name: string;
  readonly summary: string;
  /** Loaded when asked for, so that a small command starts at once. */
  readonly load: () => Promise<Command>;
}

/** Takes the arguments of a command apart; what it does not know is told, with the way to its help. */
export function parse(
  name: string,
  command: Command,
  args: readonly string[],
): { given: Given; words: string[] } {
  const options: NonNullable<ParseArgsConfig['options']> = { help: { type: 'boolean', short: 'h' } };
  for (const one of command.options)
    options[one.name] = {
      type: one.takes ? 'string' : 'boolean',
      ...(one.short ? { short: one.short } : {}),
    };
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return { given: values as Given, words: positionals };
  } catch (error) {
    const why = error instanceof Error ? error.message.split('. ')[0]! : String(error);
    throw new CannotRun(`${why}. See: tailshaft ${name} --help`);
  }
}

/** The help page of a command. */
export function helpOf(command: Command, width: number): string {
  const lines = command.usage.map((one, index) => `${index === 0 ? 'Usage: ' : '       '}${one}`);
  lines.push('', wrapped(command.about, width));
  if (command.options.length > 0) {
    lines.push('', 'Options:');
    const heads = command.options.map(
      one => `  --${one.name}${one.short ? `, -${one.short}` : ''}${one.takes ? ` ${one.takes}` : ''}`,
    );
    const column = Math.max(...heads.map(one => one.length)) + 2;
    command.options.forEach((one, index) => {
      lines.push(wrapped(one.means, width, ' '.repeat(column), heads[index]!.padEnd(column)));
    });
  }
  if (command.notes.length > 0) lines.push('', ...command.notes.map(one => wrapped(one, width)));
  return `${lines.join('\n')}\n`;
}

/** The text of an option, or undefined. */
export function textOf(given: Given, name: string): string | undefined {
  const value = given[name];
  return typeof value === 'string' ? value : undefined;
}

/** One of several words, or a complaint that lists them. */
export function oneOf<W extends string>(given: Given, name: string, words: readonly W[], usual: W): W {
  const value = textOf(given, name);
  if (value === undefined) return usual;
  const found = words.find(one => one === value);
  if (!found) throw new CannotRun(`--${name} is one of ${words.join(', ')}, not "${value}"`);
  return found;
}

/** The day to judge on: `--today`, or today. */
export function dayOf(given: Given): string {
  const value = textOf(given, 'today') ?? new Date().toISOString().slice(0, 10);
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(value) && !Number.isNaN(Date.parse(value));
  if (!isDay) throw new CannotRun(`--today is a date such as 2026-03-02, not "${value}"`);
  return value;
}

export const TODAY: Option = {
  name: 'today',
  takes: '<date>',
  means: 'Judge ages and expiries on this day, such as 2026-03-02, instead of today.',
};
export const ACCEPTANCES: readonly Option[] = [
  {
    name: 'accepted-by',
    takes: '<roles>',
    means:
      'Who may accept failures, by rule: "rotation/ class surveyor; capacity/ naval architect, gear maker".',
  },
  {
    name: 'accepted-for',
    takes: '<time>',
    means: 'For how long an acceptance may last, such as "18 months".',
  },
];

/** Who may accept what, and for how long. */
export function policyOf(given: Given): AcceptancePolicy {
  const longest = textOf(given, 'accepted-for');
  if (longest !== undefined && daysFrom(longest) === undefined)
    throw new CannotRun(`--accepted-for is a time such as "18 months", not "${longest}"`);
  return policyFrom(textOf(given, 'accepted-by') ?? '', longest ?? '');
}

export const ROOT: Option = {
  name: 'root',
  takes: '<folder>',
  means:
    'Nothing outside this folder is imported. Default: the git repository around the file, or else the current ' +
    'folder, or else the folder of the file.',
};
