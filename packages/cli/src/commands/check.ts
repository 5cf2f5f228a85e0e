import { resolve } from 'node:path';
import { CannotRun } from '../cannot-run.js';
import {
  ACCEPTANCES,
  type Command,
  dayOf,
  type Given,
  oneOf,
  policyOf,
  ROOT,
  TODAY,
  textOf,
} from '../command.js';
import { checkJson, questionJson, specJson } from '../report/check-json.js';
import { CheckReport } from '../report/check-report.js';
import { junitReport, junitSuite } from '../report/junit.js';
import { OpenQuestions } from '../report/open-questions.js';
import { sarifLog } from '../report/sarif.js';
import { counts, SEVERITIES } from '../report/severity.js';
import { addTo, emptyTally } from '../report/tally.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import { decodeSpec } from '../specs/read-text.js';
import { type CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { jsonText } from '../terminal/visible.js';

export const check: Command = {
  usage: ['tailshaft check [paths...] [options]', 'tailshaft check --stdin [--stdin-name <path>] [options]'],
  about:
    'Checks every vessel and every catalogue entry of the given files and folders, or of the current folder. ' +
    'Imported files are read, but only the given ones are reported on.',
  options: [
    { name: 'all', means: 'Print every list in full, and what each finding covers.' },
    { name: 'quiet', means: 'Print findings only.' },
    { name: 'summary', means: 'Print one line for each vessel, the worst first.' },
    { name: 'verdicts', means: 'Also print every verdict with its margin, capacity and demand.' },
    { name: 'json', means: 'Print JSON, as schema/check.schema.json describes it.' },
    {
      name: 'junit',
      means: 'Print JUnit XML: a case for each check; what cannot be told is skipped, never passed.',
    },
    { name: 'sarif', means: 'Print SARIF 2.1.0, for sites that show findings in a review.' },
    {
      name: 'severity',
      takes: '<level>',
      means:
        'End with status 1 from this level on: error (the default), warning, note, or information, which counts checks ' +
        'that could not be made for want of data.',
    },
    { name: 'stdin', means: 'Judge the spec on standard input; - in the place of a path does the same.' },
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

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const from = oneOf(given, 'severity', SEVERITIES, 'error');
  const today = dayOf(given);
  const root = textOf(given, 'root');
  const specs = new Specs({
    cwd: io.cwd,
    today,
    policy: policyOf(given),
    ...(root === undefined ? {} : { root }),
  });
  const tally = emptyTally();
  const questions = new OpenQuestions();
  const failures: string[] = [];
  const json: object[] = [];
  const suites: string[] = [];
  const kept: CheckedSpec[] = [];
  const machine = given.json === true || given.sarif === true || given.junit === true;
  const report = new CheckReport(io, specs, {
    all: given.all === true,
    quiet: given.quiet === true,
    summary: given.summary === true,
    verdicts: given.verdicts === true,
  });
  let failed = false;
  const forms = (['json', 'sarif', 'junit'] as const).filter(one => given[one]);
  if (forms.length > 1)
    throw new CannotRun(`--${forms[0]} and --${forms[1]} are two forms of one answer: choose one`);

  for await (const outcome of specsToJudge(io, given, words, specs)) {
    if (outcome instanceof CannotRun) {
      failures.push(outcome.message);
      io.complain(outcome.message);
      continue;
    }
    addTo(tally, outcome);
    failed ||= outcome.findings.some(one => !one.verdict?.asFound && counts(one, from));
    if (given.json) {
      json.push(specJson(specs, outcome));
      questions.add(specs, outcome);
    } else if (given.sarif) kept.push(outcome);
    else if (given.junit) suites.push(junitSuite(outcome));
    else report.add(outcome);
    if (!given.sarif) specs.drop(outcome);
  }
  if (given.json) {
    const asked = questions.list.map(one => questionJson(one));
    io.out(jsonText(checkJson(json, failures, tally, today, asked)));
  }
  if (given.junit) io.out(junitReport(suites));
  if (given.sarif) io.out(jsonText(sarifLog(specs, kept)));
  const text = machine || tally.files === 0 ? '' : report.text(tally);
  if (text) io.out(text);
  return failures.length > 0 ? 2 : failed ? 1 : 0;
}

/** Each spec as it is judged, or why one could not be: the others are judged all the same. */
async function* specsToJudge(
  io: Io,
  given: Given,
  words: readonly string[],
  specs: Specs,
): AsyncGenerator<CheckedSpec | CannotRun> {
  // A lone dash is the usual word for standard input.
  const dash = words.length === 1 && words[0] === '-';
  if (given.stdin || dash) {
    if (words.length > 0 && !dash)
      throw new CannotRun('--stdin takes no paths: name the spec with --stdin-name');
    const name = textOf(given, 'stdin-name') ?? 'stdin.shaft';
    const text = decodeSpec(await io.readStdin(), 'standard input');
    yield await specs.checkText(resolve(io.cwd, name), text);
    return;
  }
  if (given['stdin-name'] !== undefined) throw new CannotRun('--stdin-name belongs to --stdin');
  const paths: string[] = [];
  for (const word of words.length > 0 ? words : ['.']) {
    try {
      const found = await findSpecs([word], io.cwd);
      paths.push(...found.paths);
      if (found.links.length > 0) yield new CannotRun(linksTold(found.links));
    } catch (error) {
      yield asCannotRun(error);
    }
  }
  const each = [...new Set(paths)].sort();
  for (const [index, path] of each.entries()) {
    if (each.length > 20) io.progress(`${index + 1} of ${each.length}: ${shownPath(path, io.cwd)}`);
    try {
      yield await specs.check(path);
    } catch (error) {
      yield asCannotRun(error);
    }
  }
  io.progress('');
}

function asCannotRun(error: unknown): CannotRun {
  if (error instanceof CannotRun) return error;
  throw error;
}
