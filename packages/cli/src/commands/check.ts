import { resolve } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import { ACCEPTANCES, type Command, dayOf, type Given, oneOf, ROOT, TODAY, textOf } from '../command.js';
import { formOf, specsFor } from '../forms/form-of.js';
import { Baseline, baselineText, knownOf } from '../report/baseline.js';
import { SEVERITIES } from '../report/severity.js';
import { addAll, emptyTally } from '../report/tally.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import { decodeSpec, readBytes } from '../specs/read-text.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';
import type { ThreadTask } from '../threads/check-thread.js';
import { inThreads, threadsFor } from '../threads/in-threads.js';
import { pieceOf, type SpecPiece } from '../threads/piece.js';
import { againWhenChanged } from './watch.js';

export const check: Command = {
  usage: ['tailshaft check [paths...] [options]', 'tailshaft check --stdin [--stdin-name <path>] [options]'],
  about:
    'Checks every vessel and every catalogue entry of the given files and folders, or of the current folder. ' +
    'Imported files are read, but not reported on. A path may be a pattern such as "specs/**/*.shaft"; ' +
    'one that begins with ! leaves out what it matches.',
  options: [
    { name: 'all', means: 'Print every list in full, and what each finding covers.' },
    { name: 'quiet', means: 'Print findings only.' },
    { name: 'summary', means: 'Print one line for each vessel, the worst first.' },
    { name: 'verdicts', means: 'Also print every verdict with its margin, capacity and demand.' },
    { name: 'json', means: 'Print JSON, as schema/check.schema.json describes it.' },
    { name: 'csv', means: 'Print every verdict with its margin as a table for spreadsheets.' },
    {
      name: 'junit',
      means: 'Print JUnit XML: a case for each check; a check that cannot tell is skipped, never passed.',
    },
    { name: 'sarif', means: 'Print SARIF 2.1.0, for sites that show findings in a review.' },
    {
      name: 'annotations',
      means: 'Print workflow commands of GitHub Actions, which show findings beside the lines of a change.',
    },
    {
      name: 'code-quality',
      means: 'Print a Code Quality report, which GitLab shows in a merge request.',
    },
    {
      name: 'baseline',
      takes: '<file>',
      means:
        'Findings in this file are reported as known and do not change the status until they get worse. They are not accepted.',
    },
    {
      name: 'write-baseline',
      takes: '<file>',
      means: 'Write the present findings to this file, for --baseline, instead of a report.',
    },
    { name: 'watch', means: 'Check again whenever a file that was read changes, until Ctrl-C.' },
    {
      name: 'severity',
      takes: '<level>',
      words: SEVERITIES,
      means:
        'End with status 1 from this level on: error (the default), warning, note, or information, which counts checks ' +
        'that cannot tell for lack of data.',
    },
    { name: 'stdin', means: 'Judge the spec on standard input; the path - does the same.' },
    {
      name: 'stdin-name',
      takes: '<path>',
      means: 'The path that the spec on standard input belongs to: its imports are found from there.',
    },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: [
    'Status: 0 no finding of the chosen level, 1 findings, 2 something could not be read.',
    'Order of the report: the state of each vessel; errors, warnings and notes, the largest shortfall first; the data that ' +
      'checks need, the most needed first; margins. One cause is one finding; --json includes what it covers.',
    'A check that lacks data is neither passed nor failed: it cannot tell, and is listed by the datum that is missing.',
    'What fails of an arrangement as found, one that revises nothing and is revised, is listed apart and changes no status.',
  ],
  run,
};

const FORMS = ['json', 'csv', 'sarif', 'junit', 'annotations', 'code-quality'] as const;

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const forms = FORMS.filter(one => given[one]);
  if (forms.length > 1)
    throw new CannotRun(`--${forms[0]} and --${forms[1]} are two forms of one answer: choose one`);
  if (!given.watch) return (await once(io, given, words)).status;
  if (given.stdin || words.includes('-') || given['write-baseline'] !== undefined)
    throw new CannotRun('--watch looks at files: it takes neither standard input nor --write-baseline');
  return againWhenChanged(io, words.length > 0 ? words : ['.'], () => once(io, given, words));
}

async function once(
  io: Io,
  given: Given,
  words: readonly string[],
): Promise<{ status: number; read: ReadonlySet<string> }> {
  const from = oneOf(given, 'severity', SEVERITIES, 'error');
  const today = dayOf(given);
  const specs = specsFor(io.cwd, given);
  const baseline = await baselineOf(io, given);
  const form = formOf(io, given, specs, baseline);
  const tally = emptyTally();
  const failures: string[] = [];
  const read = new Set<string>();
  const found: ReturnType<typeof knownOf>[number][] = [];
  let failed = false;
  const judged = (spec: CheckedSpec): SpecPiece => {
    const standings = baseline?.standingsOf(specs, spec);
    const piece = pieceOf(form, { spec, ...(standings ? { standings } : {}) }, from);
    if (given['write-baseline'] !== undefined) found.push(...knownOf(specs, spec));
    if (given.watch) for (const path of specs.filesRead()) read.add(path);
    if (!form.keepsSpecs) specs.drop(spec);
    return piece;
  };
  // What is asked of all specs together, or goes by what is kept of each, one thread answers.
  const together = baseline || given['write-baseline'] !== undefined || given.watch || form.keepsSpecs;
  const { cwd, width, colours } = io;
  const task = together ? undefined : { given: { ...given, today }, cwd, width, colours, from };
  for await (const outcome of piecesOf(io, given, words, specs, judged, task)) {
    if (outcome instanceof CannotRun) {
      failures.push(outcome.message);
      io.complain(outcome.message);
      continue;
    }
    addAll(tally, outcome.tally);
    failed ||= outcome.failed;
    form.take(outcome.said);
  }
  const wanted = textOf(given, 'write-baseline');
  if (wanted !== undefined) return { status: await writeBaseline(io, wanted, today, found, failures), read };
  const text = form.text({ tally, today, failures });
  if (text) io.out(text);
  return { status: failures.length > 0 ? 2 : failed ? 1 : 0, read };
}

async function baselineOf(io: Io, given: Given): Promise<Baseline | undefined> {
  const path = textOf(given, 'baseline');
  if (path === undefined) return undefined;
  return Baseline.read(decodeSpec(await readBytes(resolve(io.cwd, path), path), path), path);
}

/** A baseline of a part would call the rest new, so that nothing is written where anything could not be read. */
async function writeBaseline(
  io: Io,
  path: string,
  today: string,
  found: Parameters<typeof baselineText>[1],
  failures: readonly string[],
): Promise<number> {
  const full = resolve(io.cwd, path);
  const shown = shownPath(full, io.cwd);
  if (shown.endsWith(EXTENSION)) throw new CannotRun(`--write-baseline ${shown} has the name of a spec`);
  if (failures.length > 0)
    throw new CannotRun(`${shown} is not written, because not everything could be read`);
  await writeWhole(full, baselineText(today, found), shown);
  io.complain(`wrote ${shown}: ${count(found.length, 'finding')}, known from now on and not accepted`);
  return 0;
}

/** What is said of each spec, in the order of their paths, or why one could not be judged: the others are all the same. */
async function* piecesOf(
  io: Io,
  given: Given,
  words: readonly string[],
  specs: Specs,
  judged: (spec: CheckedSpec) => SpecPiece,
  task: ThreadTask | undefined,
): AsyncGenerator<SpecPiece | CannotRun> {
  // A lone dash is the usual word for standard input.
  const dash = words.length === 1 && words[0] === '-';
  if (given.stdin || dash) {
    if (words.length > 0 && !dash)
      throw new CannotRun('--stdin takes no paths: name the spec with --stdin-name');
    const name = textOf(given, 'stdin-name') ?? 'stdin.shaft';
    const text = decodeSpec(await io.readStdin(), 'standard input');
    yield judged(await specs.checkText(resolve(io.cwd, name), text));
    return;
  }
  if (given['stdin-name'] !== undefined) throw new CannotRun('--stdin-name belongs to --stdin');
  const paths: string[] = [];
  const excluded = words.filter(one => one.startsWith('!'));
  const wanted = words.filter(one => !one.startsWith('!'));
  for (const word of wanted.length > 0 ? wanted : ['.']) {
    try {
      const found = await findSpecs([word, ...excluded], io.cwd);
      paths.push(...found.paths);
      if (found.links.length > 0) yield new CannotRun(linksTold(found.links));
    } catch (error) {
      yield asCannotRun(error);
    }
  }
  const each = [...new Set(paths)].sort();
  const threads = task ? threadsFor(each.length) : 1;
  const outcomes = task && threads > 1 ? inThreads(each, task, threads) : inTurn(each, specs, judged);
  let index = 0;
  const progress = () => {
    const path = each[index];
    index += 1;
    if (each.length > 20 && path) io.progress(`${index} of ${each.length}: ${shownPath(path, io.cwd)}`);
  };
  progress();
  for await (const outcome of outcomes) {
    yield outcome;
    progress();
  }
  io.progress('');
}

async function* inTurn(
  paths: readonly string[],
  specs: Specs,
  judged: (spec: CheckedSpec) => SpecPiece,
): AsyncGenerator<SpecPiece | CannotRun> {
  for (const path of paths) {
    try {
      yield judged(await specs.check(path));
    } catch (error) {
      yield asCannotRun(error);
    }
  }
}

function asCannotRun(error: unknown): CannotRun {
  if (error instanceof CannotRun) return error;
  throw error;
}
