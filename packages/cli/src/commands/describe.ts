import { basename, join, resolve } from 'node:path';
import { describeEntry, describeVessel } from '@tailshaft/drivetrain';
import { count } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import { type Command, dayOf, type Given, ROOT, TODAY, textOf } from '../command.js';
import { severityOf } from '../report/severity.js';
import { findSpecs } from '../specs/find.js';
import { decodeSpec, readBytes } from '../specs/read-text.js';
import { judgedOf } from '../specs/spec-set.js';
import { Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';

export const describe: Command = {
  usage: ['tailshaft describe <path> [options]', 'tailshaft describe - [options]'],
  about:
    'Prints what a spec means, one fact a line, always in the same order: facts as written, computed values, ' +
    'verdicts with their margins. Made for tools that compare line by line, such as a textconv of git.',
  options: [
    {
      name: 'in',
      takes: '<folder>',
      means:
        'Read the spec as if it stood in this folder, so that its imports are found: git passes temporary copies.',
    },
    TODAY,
    ROOT,
  ],
  notes: [
    'For git: git config diff.tailshaft.textconv "tailshaft describe --in specs", and *.shaft diff=tailshaft in .gitattributes.',
    'Status: 0 described, 2 something could not be read. A text that cannot be read whole is reported in the first line.',
  ],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const [word, ...more] = words;
  if (word === undefined || more.length > 0) throw new CannotRun('describe takes one path, or -');
  const root = textOf(given, 'root');
  const specs = new Specs({ cwd: io.cwd, today: dayOf(given), ...(root === undefined ? {} : { root }) });
  const within = textOf(given, 'in');
  const checked = [];
  if (word === '-' || within !== undefined) {
    const text =
      word === '-'
        ? decodeSpec(await io.readStdin(), 'standard input')
        : decodeSpec(await readBytes(resolve(io.cwd, word), word), word);
    const name = word === '-' ? 'stdin.shaft' : `${basename(word).replace(/\.shaft$/, '')}.shaft`;
    checked.push(await specs.checkText(join(resolve(io.cwd, within ?? '.'), name), text));
  } else for (const path of (await findSpecs([word], io.cwd)).paths) checked.push(await specs.check(path));
  for (const { findings, check } of checked) {
    const errors = findings.filter(one => one.problem && severityOf(one) === 'error');
    // What cannot be read is told by nothing below: then the text itself stands there.
    if (errors.length > 0)
      io.out(
        `NOT READ WHOLE: ${count(errors.length, 'error')} in the text, which follows\n${specs.textOf(check.uri)}`,
      );
    for (const one of check.vessels) io.out(describeVessel(judgedOf(one)).join('\n'));
    const entries = check.entries.flatMap(({ reading, verdicts }) => [
      ...describeEntry({ kind: reading.kind, name: reading.name, facts: reading.facts.fields }),
      ...verdicts.map(one => `${reading.kind} ${reading.name} verdict ${one.rule}: ${one.outcome}`),
    ]);
    if (entries.length > 0) io.out([...entries].sort().join('\n'));
  }
  return 0;
}
