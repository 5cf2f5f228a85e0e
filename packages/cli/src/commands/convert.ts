import { resolve } from 'node:path';
import { COMMENTS, commentsByEntry, EXTENSION, type Problem, placeOf, tableOf } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import { type Command, dayOf, type Given, oneOf, TODAY, textOf } from '../command.js';
import { readCsv, writeCsv } from '../convert/csv.js';
import { type Converted, entriesFrom, trialFrom } from '../convert/from-csv.js';
import { shownPath } from '../specs/find.js';
import { decodeSpec, readBytes } from '../specs/read-text.js';
import { Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';

const DIRECTIONS = ['csv', 'spec'] as const;

export const convert: Command = {
  usage: [
    'tailshaft convert <parts.csv> [--out <file>]',
    'tailshaft convert <catalogue.shaft> [--kind <kind>] [--out <file>]',
    'tailshaft convert <runs.csv> --trial <name> [--of <arrangement>] [--dated <date>]',
  ],
  about:
    'Turns a table into catalogue entries and back, without loss, and a table of readings into the runs of a trial. The first row names the columns: kind, ' +
    'name, title, remark, comments, and properties by their words, with the unit of the column in brackets: "mass [kg]". A property of a ' +
    'block stands behind the block: "ratio 2.04:1 / clutch A / output". Where the header gives no unit, the cell does, as in a ' +
    'spec. A table of runs has the columns run (the shaft line) and at, and the readings.',
  options: [
    {
      name: 'from',
      takes: '<what>',
      words: DIRECTIONS,
      means: 'What is read, csv or spec, where the name of the file does not say it.',
    },
    { name: 'kind', takes: '<kind>', means: 'Only entries of this kind, such as gear or "shaft material".' },
    { name: 'out', takes: '<file>', means: 'Write there instead of printing.' },
    { name: 'trial', takes: '<name>', means: 'The rows are runs of a trial of this name.' },
    { name: 'of', takes: '<arrangement>', means: 'The arrangement that was tried.' },
    { name: 'dated', takes: '<date>', means: 'The day of the trial.' },
    TODAY,
  ],
  notes: [
    'Status: 0 everything was taken; 1 rows were refused, each listed with its line, column and reason; 2 nothing could be done.',
  ],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  if (words.length !== 1)
    throw new CannotRun('name one file to convert, or - for standard input. See: tailshaft convert --help');
  const [word] = words as [string];
  const path = resolve(io.cwd, word);
  const shown = word === '-' ? 'standard input' : shownPath(path, io.cwd);
  const from = oneOf(given, 'from', DIRECTIONS, word.endsWith(EXTENSION) ? 'spec' : 'csv');
  const bytes = word === '-' ? await io.readStdin() : await readBytes(path, shown);
  const text = decodeSpec(bytes, shown);
  const specs = new Specs({ cwd: io.cwd, today: dayOf(given) });
  if (from === 'spec')
    return toCsv(
      io,
      given,
      specs,
      text,
      word === '-' ? resolve(io.cwd, `converted${EXTENSION}`) : path,
      shown,
    );
  const table = readCsv(text, shown);
  const name = textOf(given, 'trial');
  const made =
    name === undefined
      ? await entriesFrom(table, problemsBy(specs, io.cwd))
      : await trialFrom(
          table,
          { name, ...only(given, 'of'), ...only(given, 'dated') },
          problemsBy(specs, io.cwd),
        );
  if (made.taken > 0) await put(io, given, made.text);
  report(io, shown, made, name === undefined ? ['entry', 'entries'] : ['run', 'runs']);
  return made.refused.length > 0 ? 1 : 0;
}

async function toCsv(
  io: Io,
  given: Given,
  specs: Specs,
  text: string,
  path: string,
  shown: string,
): Promise<number> {
  const { check } = await specs.checkText(path, text);
  const broken = check.problems.find(one => one.severity === 'error' && one.code !== 'text/import');
  if (broken)
    throw new CannotRun(
      `${shown} cannot be read whole, and what cannot be read would be lost: ${broken.message}`,
    );
  const kind = textOf(given, 'kind');
  const entries = check.entries
    .map(one => one.reading)
    .filter(one => kind === undefined || one.kind === kind);
  if (entries.length === 0)
    throw new CannotRun(`${shown} has no catalogue entry${kind === undefined ? '' : ` of kind ${kind}`}`);
  const vessels = check.vessels.map(one => placeOf(one.vessel.origin));
  const all = check.entries.map(one => one.reading);
  const comments = commentsByEntry(text, all, vessels);
  const { head, rows } = tableOf(entries, () => text, comments);
  await put(io, given, writeCsv(head, rows));
  const left = check.vessels.length;
  io.complain(
    `${count(rows.length, 'entry', 'entries')} of ${shown}` +
      `${left > 0 ? `; ${count(left, 'vessel')} stays, a table holds parts only` : ''}` +
      `${head.includes(COMMENTS) ? `; comments stand in the column "${COMMENTS}", and before their entry when they come back` : ''}`,
  );
  return 0;
}

async function put(io: Io, given: Given, text: string): Promise<void> {
  const out = textOf(given, 'out');
  if (out === undefined) io.print(text);
  else await writeWhole(resolve(io.cwd, out), text, out);
}

function report(
  io: Io,
  shown: string,
  { taken, refused }: Converted,
  [one, many]: readonly [string, string],
): void {
  const rows = refused.map(
    ({ line, column, why }) => `\n  line ${line}${column ? `, ${column}` : ''}: ${why}`,
  );
  io.complain(
    `${shown}: ${count(taken, one, many)} taken, ${count(refused.length, 'row')} refused${rows.join('')}`,
  );
}

/** What the language says of a text: what cannot be read, and quantities that have no unit. */
function problemsBy(specs: Specs, cwd: string) {
  let texts = 0;
  return async (text: string): Promise<Pick<Problem, 'start' | 'end' | 'severity' | 'message'>[]> => {
    texts += 1;
    const { check } = await specs.checkText(resolve(cwd, `.converted-${texts}${EXTENSION}`), text);
    const units = [...check.entries, ...check.vessels].flatMap(one =>
      one.verdicts.flatMap(verdict =>
        verdict.outcome === 'fails' && verdict.severity === 'error' && verdict.rule.startsWith('units/')
          ? [{ ...placeOf(verdict.place), severity: 'error' as const, message: verdict.message }]
          : [],
      ),
    );
    return [...check.problems, ...units];
  };
}

function only(given: Given, name: 'of' | 'dated'): { of?: string; dated?: string } {
  const value = textOf(given, name);
  if (value === undefined) return {};
  const good = name === 'dated' ? /^\d{4}-\d{2}-\d{2}$/ : /^[\p{L}\d][\p{L}\d_.-]*$/u;
  if (!good.test(value))
    throw new CannotRun(
      `--${name} is ${name === 'dated' ? 'a date such as 2026-03-02' : 'the name of an arrangement'}, not "${value}"`,
    );
  return { [name]: value };
}
