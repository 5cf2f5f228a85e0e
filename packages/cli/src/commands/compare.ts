import { statSync } from 'node:fs';
import { realpath } from 'node:fs/promises';
import { dirname, relative, resolve } from 'node:path';
import {
  type Comparison,
  compareArrangements,
  compareSpecs,
  comparisonMarkdown,
  isWorse,
} from '@tailshaft/drivetrain';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun } from '../cannot-run.js';
import { ACCEPTANCES, type Command, dayOf, type Given, policyOf, ROOT, TODAY, textOf } from '../command.js';
import { comparisonJson } from '../report/compare-json.js';
import { comparisonText } from '../report/compare-text.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import { RevisionFiles, repositoryOf } from '../specs/git-files.js';
import { comparable, judgedOf, type NamedSet, unreadable } from '../specs/spec-set.js';
import { Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { count } from '../terminal/layout.js';
import { jsonText } from '../terminal/visible.js';

export const compare: Command = {
  usage: [
    'tailshaft compare <before> <after>',
    'tailshaft compare [path] --git <revision> [<revision>]',
    'tailshaft compare <file> --arrangements <before> <after> [--vessel <name>]',
  ],
  about:
    'Compares specs by what follows from them, the gravest first: verdicts and margins that moved, speeds, torques and ' +
    'senses before and after, parts kept, replaced or moved, and changes that are easily missed. Order, comments and ' +
    'layout make no difference. With one revision, the working files are compared with it.',
  options: [
    { name: 'git', takes: '<revision>', means: 'Compare with a git revision, or two of them: A..B, or A B.' },
    {
      name: 'arrangements',
      takes: '<before>',
      means: 'Compare two arrangements of one vessel, as found and proposed.',
    },
    { name: 'vessel', takes: '<name>', means: 'Which vessel of the file, where it holds several.' },
    { name: 'markdown', means: 'Print Markdown, for a review comment.' },
    { name: 'json', means: 'Print JSON, as schema/compare.schema.json describes it.' },
    {
      name: 'exit-code',
      means: 'End with status 1 where something newly fails, fails by more, or can no longer be told.',
    },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: [
    'Status: 0 compared, 1 with --exit-code where the later one is worse, 2 something could not be read or asked.',
  ],
  run,
};

interface Compared {
  readonly before: string;
  readonly after: string;
  readonly comparison: Comparison;
  readonly notes: readonly string[];
}

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  if (given.markdown && given.json)
    throw new CannotRun('--markdown and --json are two forms of one answer: choose one');
  const compared =
    given.arrangements !== undefined
      ? await betweenArrangements(io, given, words)
      : given.git !== undefined
        ? await betweenRevisions(io, given, words)
        : await betweenPaths(io, given, words);
  const { before, after, comparison, notes } = compared;
  if (given.json) io.out(jsonText(comparisonJson(before, after, comparison, notes)));
  else {
    for (const note of notes) io.complain(note);
    io.out(given.markdown ? comparisonMarkdown(comparison) : comparisonText(io, comparison));
  }
  return given['exit-code'] && gotWorse(comparison) ? 1 : 0;
}

function gotWorse({ vessels, addedVessels }: Comparison): boolean {
  return (
    vessels.some(isWorse) ||
    addedVessels.some(one => one.verdicts.some(verdict => verdict.outcome === 'fails'))
  );
}

async function betweenPaths(io: Io, given: Given, words: readonly string[]): Promise<Compared> {
  const [one, other, ...more] = words;
  if (one === undefined || other === undefined || more.length > 0) {
    throw new CannotRun(
      'compare takes two paths, or --git, or --arrangements. See: tailshaft compare --help',
    );
  }
  return finish(await setOnDisk(io, given, one), await setOnDisk(io, given, other));
}

async function betweenRevisions(io: Io, given: Given, words: readonly string[]): Promise<Compared> {
  const [first = '', ...range] = textOf(given, 'git')!.split(/\.{2,3}/);
  const rest = [...words];
  // A word that is there on the disk is the path; the other one is the second revision.
  const at = rest.findIndex(word => word.endsWith(EXTENSION) || existsOnDisk(resolve(io.cwd, word)));
  const path =
    at < 0 ? (range.length === 0 && rest.length > 1 ? rest.shift()! : '.') : rest.splice(at, 1)[0]!;
  const second = range[0] || rest.shift();
  if (rest.length > 0 || range.length > 1) {
    throw new CannotRun(
      'compare --git takes one path and at most two revisions. See: tailshaft compare --help',
    );
  }
  const full = resolve(io.cwd, path);
  const folder = isFolder(full) ? full : dirname(full);
  if (!isFolder(folder)) throw new CannotRun(`${shownPath(full, io.cwd)} is not in a folder that exists`);
  const top = repositoryOf(folder, shownPath(full, io.cwd));
  const inside = resolve(await realpath(folder), full === folder ? '.' : relative(folder, full));
  const before = await setOfRevision(io, given, top, first, inside);
  const after =
    second === undefined
      ? await setOnDisk(io, given, path)
      : await setOfRevision(io, given, top, second, inside);
  return finish(before, after);
}

async function betweenArrangements(io: Io, given: Given, words: readonly string[]): Promise<Compared> {
  // The words may come in either order: the one that is there on the disk is the file.
  const at = words.findIndex(word => existsOnDisk(resolve(io.cwd, word)));
  const [path, after, ...more] = at > 0 ? [words[at], ...words.filter((_, index) => index !== at)] : words;
  const before = textOf(given, 'arrangements')!;
  if (path === undefined || after === undefined || more.length > 0) {
    throw new CannotRun(
      'name the file and both arrangements: tailshaft compare spec.shaft --arrangements existing proposed',
    );
  }
  const set = await setOnDisk(io, given, path);
  const all = set.specs.flatMap(spec => spec.check.vessels);
  const wanted = textOf(given, 'vessel');
  const vessels = wanted === undefined ? all : all.filter(one => one.vessel.name === wanted);
  const known = all.map(one => one.vessel.name).join(', ');
  if (vessels.length === 0)
    throw new CannotRun(
      all.length ? `no vessel is called ${wanted}: there are ${known}` : `${path} holds no vessel`,
    );
  if (vessels.length > 1)
    throw new CannotRun(`${path} holds several vessels: choose one of ${known} with --vessel`);
  const judged = judgedOf(vessels[0]!);
  const find = (name: string) => {
    const { arrangements } = judged.vessel;
    const found = arrangements.find(one => one.name === name);
    const known = arrangements.map(one => one.name).join(', ');
    if (!found)
      throw new CannotRun(`${judged.vessel.name} has no arrangement "${name}": there are ${known || 'none'}`);
    return found;
  };
  const compared = compareArrangements(judged, find(before), find(after));
  const comparison = { vessels: [compared], addedVessels: [], removedVessels: [], entries: [] };
  return { before, after, comparison, notes: notesOn(set) };
}

function finish(before: NamedSet, after: NamedSet): Compared {
  const sets = comparable(before, after);
  return {
    before: before.label,
    after: after.label,
    comparison: compareSpecs(sets.before, sets.after),
    notes: [...notesOn(before), ...notesOn(after)],
  };
}

function notesOn(set: NamedSet): string[] {
  const errors = unreadable(set);
  return errors > 0
    ? [`${set.label} has ${count(errors, 'error')} in its text: what cannot be read is not compared`]
    : [];
}

async function setOnDisk(io: Io, given: Given, path: string): Promise<NamedSet> {
  const { paths, links } = await findSpecs([path], io.cwd);
  if (links.length > 0) io.complain(linksTold(links));
  const specs = new Specs(optionsOf(io, given));
  return { label: path, specs: await checkAll(io, specs, paths) };
}

async function setOfRevision(
  io: Io,
  given: Given,
  top: string,
  revision: string,
  path: string,
): Promise<NamedSet> {
  const files = new RevisionFiles(top, revision);
  const specs = new Specs({ ...optionsOf(io, given), root: top, files });
  const paths = files.specsUnder(path);
  if (paths.length === 0)
    throw new CannotRun(`at ${revision} there is no spec in ${shownPath(path, io.cwd)}`);
  return { label: revision, specs: await checkAll(io, specs, paths) };
}

async function checkAll(io: Io, specs: Specs, paths: readonly string[]) {
  const checked = [];
  for (const [index, path] of paths.entries()) {
    if (paths.length > 20) io.progress(`${index + 1} of ${paths.length}: ${shownPath(path, io.cwd)}`);
    checked.push(await specs.check(path));
  }
  io.progress('');
  return checked;
}

function optionsOf(io: Io, given: Given) {
  const root = textOf(given, 'root');
  return {
    cwd: io.cwd,
    today: dayOf(given),
    policy: policyOf(given),
    ...(root === undefined ? {} : { root }),
  };
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
}

function existsOnDisk(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false }) !== undefined;
}
