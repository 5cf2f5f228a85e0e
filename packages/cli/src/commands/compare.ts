import { statSync } from 'node:fs';
import { realpath } from 'node:fs/promises';
import { dirname, relative, resolve } from 'node:path';
import {
  type Comparison,
  compareArrangements,
  comparisonMarkdown,
  LEVELS,
  type Level,
  levelsOf,
} from '@tailshaft/drivetrain';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun } from '../cannot-run.js';
import { ACCEPTANCES, type Command, dayOf, type Given, policyOf, ROOT, TODAY, textOf } from '../command.js';
import { comparisonJson } from '../report/compare-json.js';
import { comparisonText, summaryText } from '../report/compare-text.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import { isRevision, mergeBaseOf, RevisionFiles, repositoryOf, STAGED } from '../specs/git-files.js';
import { comparedSides, judgedSide, type OpenSide } from '../specs/open-side.js';
import { isPattern, patternBase } from '../specs/pattern.js';
import { decodeSpec } from '../specs/read-text.js';
import { judgedOf, unread } from '../specs/spec-set.js';
import { Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { jsonText } from '../terminal/visible.js';

/** What the process ends with; 2 always means that something could not be read. */
const STATUS: Readonly<Record<Level, number>> = {
  'not read whole': 2,
  'newly fails': 1,
  'newly accepted': 3,
  'acceptance weakened': 4,
  'criterion relaxed': 5,
  'margin lost': 6,
  'newly unknown': 7,
};

export const compare: Command = {
  usage: [
    'tailshaft compare <before> <after>',
    'tailshaft compare <revision>..<revision> [path]',
    'tailshaft compare <revision>...<revision> [path]',
    'tailshaft compare --staged [path]',
    'tailshaft compare [path] --git <revision> [<revision>]',
    'tailshaft compare <file> --arrangements <before> <after> [--vessel <name>]',
  ],
  about:
    'Compares specs by consequence, the most serious first: verdicts and margins that moved, speeds, torques and ' +
    'senses before and after, parts kept, replaced or moved, acceptances, and changes that are easily missed. Order, ' +
    'comments, layout and names make no difference. Either side is a file, a folder, a git revision, ' +
    '<revision>:<path>, or - for standard input.',
  options: [
    {
      name: 'git',
      takes: '<revision>',
      means:
        'Compare with a git revision, or two of them: A..B, or A B; A...B compares B with the point where the two part. With one revision, ' +
        'the working files are compared with it.',
    },
    { name: 'staged', means: 'Compare what is staged with the last commit.' },
    {
      name: 'arrangements',
      takes: '<before>',
      means: 'Compare two arrangements of one vessel, as found and proposed.',
    },
    { name: 'vessel', takes: '<name>', means: 'Which vessel of the file, where it holds several.' },
    { name: 'summary', means: 'Print the headline and one line for each vessel.' },
    { name: 'markdown', means: 'Print Markdown, for a review comment.' },
    {
      name: 'limit',
      takes: '<characters>',
      means: 'With --markdown: maximum length; what does not fit is counted.',
    },
    { name: 'json', means: 'Print JSON, as schema/compare.schema.json describes it.' },
    {
      name: 'exit-code',
      means: 'End with the status of the most serious change that needs review, as listed below.',
    },
    {
      name: 'margin',
      takes: '<percent>',
      means: 'With --exit-code: a margin that shrinks by this many points counts as lost; 10 by default.',
    },
    { name: 'stdin-name', takes: '<path>', means: 'The path that the spec on standard input belongs to.' },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: [
    `Status: 0 compared, 2 something could not be read or asked. With --exit-code: ${LEVELS.map(one => `${STATUS[one]} ${one}`).join(', ')}.`,
    'A text that cannot be read whole is reported first in every form, and never as no change.',
  ],
  run,
};

interface Compared {
  readonly before: string;
  readonly after: string;
  readonly comparison: Comparison;
}

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const forms = (['markdown', 'json', 'summary'] as const).filter(one => given[one]);
  if (forms.length > 1)
    throw new CannotRun(`--${forms[0]} and --${forms[1]} are two forms of one answer: choose one`);
  const marginLost = numberOf(given, 'margin', 10) / 100;
  const limit = given.limit === undefined ? undefined : numberOf(given, 'limit', 0);
  const compared =
    given.arrangements !== undefined
      ? await betweenArrangements(io, given, words)
      : given.git !== undefined || given.staged
        ? await betweenRevisions(io, given, words)
        : await betweenSides(io, given, words);
  const { before, after, comparison } = compared;
  if (given.json) io.out(jsonText(comparisonJson(before, after, comparison, marginLost)));
  else if (given.markdown)
    io.out(comparisonMarkdown(comparison, { marginLost, ...(limit === undefined ? {} : { limit }) }));
  else io.out((given.summary ? summaryText : comparisonText)(io, comparison, marginLost));
  const [level] = levelsOf(comparison, marginLost);
  return given['exit-code'] && level ? STATUS[level] : 0;
}

function numberOf(given: Given, name: string, usual: number): number {
  const text = textOf(given, name);
  if (text === undefined) return usual;
  const number = Number(text.replace(/\s*%$/, ''));
  if (!Number.isFinite(number) || number < 0) throw new CannotRun(`--${name} is a number, not "${text}"`);
  return number;
}

/** Two sides, each a file, a folder, a revision or standard input. */
async function betweenSides(io: Io, given: Given, words: readonly string[]): Promise<Compared> {
  const [one, other, ...more] = words;
  if (one !== undefined && isRange(io, one))
    return betweenRevisions(io, { ...given, git: one }, words.slice(1));
  if (one === undefined || other === undefined || more.length > 0) {
    throw new CannotRun(
      'compare takes two sides, or --git, or --staged, or --arrangements. See: tailshaft compare --help',
    );
  }
  if (one === '-' && other === '-') throw new CannotRun('only one side can come from standard input');
  return finish(io, await sideOf(io, given, one), await sideOf(io, given, other));
}

function isRange(io: Io, word: string): boolean {
  return /[^./]\.{2,3}($|[^./])/.test(word) && !existsOnDisk(resolve(io.cwd, word));
}

async function sideOf(io: Io, given: Given, word: string): Promise<OpenSide> {
  if (word === '-') return setOfStdin(io, given);
  if (existsOnDisk(resolve(io.cwd, word))) return setOnDisk(io, given, word);
  const [revision = '', path] = word.split(/:(.*)/s);
  let top: string | undefined;
  try {
    top = repositoryOf(io.cwd, '.');
  } catch {
    top = undefined;
  }
  if (top === undefined || !isRevision(top, revision)) return setOnDisk(io, given, word);
  const inside = path === undefined || path === '' ? top : resolve(top, path);
  return setOfRevision(io, given, top, revision, inside);
}

async function betweenRevisions(io: Io, given: Given, words: readonly string[]): Promise<Compared> {
  const word = textOf(given, 'git');
  if (given.staged && word?.includes('..')) throw new CannotRun('--staged takes one revision at most');
  const [, first = '', dots, last = ''] = /^(.*?)(\.{2,3})(.*)$/.exec(word ?? '') ?? ['', word ?? 'HEAD'];
  const rest = [...words];
  // A word that is there on the disk is the path; the other one is the second revision.
  const at = rest.findIndex(one => one.endsWith(EXTENSION) || existsOnDisk(resolve(io.cwd, one)));
  // Where both sides are named already, or there is a word too many, the word is a path that only a revision has.
  const isPath = dots !== undefined || given.staged === true || rest.length > 1;
  const path = at < 0 ? ((isPath ? rest.shift() : undefined) ?? '.') : rest.splice(at, 1)[0]!;
  const second = given.staged ? STAGED : dots === undefined ? rest.shift() : last || 'HEAD';
  if (rest.length > 0 || last.includes('..')) {
    throw new CannotRun(
      'compare --git takes one path and at most two revisions. See: tailshaft compare --help',
    );
  }
  const full = resolve(io.cwd, path);
  const folder = isFolder(full) ? full : dirname(full);
  if (!isFolder(folder)) throw new CannotRun(`${shownPath(full, io.cwd)} is not in a folder that exists`);
  const top = repositoryOf(folder, shownPath(full, io.cwd));
  const inside = resolve(await realpath(folder), full === folder ? '.' : relative(folder, full));
  const from = first || 'HEAD';
  const base = dots === '...' ? mergeBaseOf(top, from, second!) : from;
  // Before the first commit there is nothing that what is staged could be compared with: all of it is added.
  const unborn = given.staged === true && word === undefined && !isRevision(top, base);
  const before = unborn ? setOfNothing(io, given, inside) : setOfRevision(io, given, top, base, inside);
  if (second === undefined && before.absent !== undefined && !existsOnDisk(full))
    throw new CannotRun(before.absent);
  return finish(
    io,
    before,
    second === undefined ? await setOnDisk(io, given, path) : setOfRevision(io, given, top, second, inside),
  );
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
  const set = await judgedSide(io, await setOnDisk(io, given, path));
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
  const comparison: Comparison = {
    vessels: [compared],
    addedVessels: [],
    removedVessels: [],
    entries: [],
    unread: unread(set),
  };
  return { before, after, comparison };
}

async function finish(io: Io, before: OpenSide, after: OpenSide): Promise<Compared> {
  // What only one side has was added or taken out; a path that neither knows is a slip.
  if (before.absent !== undefined && after.absent !== undefined) throw new CannotRun(before.absent);
  const comparison = await comparedSides(io, before, after);
  return { before: before.label, after: after.label, comparison };
}

async function setOnDisk(io: Io, given: Given, path: string): Promise<OpenSide> {
  const { paths, links } = await findSpecs([path], io.cwd);
  if (links.length > 0) io.complain(linksTold(links));
  return {
    label: path,
    base: resolve(io.cwd, isPattern(path) ? patternBase(path) : path),
    specs: new Specs(optionsOf(io, given)),
    paths,
    refused: [],
  };
}

async function setOfStdin(io: Io, given: Given): Promise<OpenSide> {
  const path = resolve(io.cwd, textOf(given, 'stdin-name') ?? 'stdin.shaft');
  const specs = new Specs(optionsOf(io, given));
  const text = decodeSpec(await io.readStdin(), 'standard input');
  const judged = [await specs.checkText(path, text)];
  return { label: '-', base: path, specs, paths: [], refused: [], judged };
}

function setOfRevision(io: Io, given: Given, top: string, revision: string, path: string): OpenSide {
  const files = new RevisionFiles(top, revision);
  const specs = new Specs({ ...optionsOf(io, given), root: top, files });
  const paths = files.specsUnder(path);
  const refused = files.withheldUnder(path);
  const side = { label: revision, base: path, specs, paths, refused };
  return paths.length + refused.length > 0
    ? side
    : { ...side, absent: `at ${revision} there is no spec in ${shownPath(path, io.cwd)}` };
}

function setOfNothing(io: Io, given: Given, path: string): OpenSide {
  const absent = `nothing is committed yet, and no spec is staged in ${shownPath(path, io.cwd)}`;
  return {
    label: 'nothing',
    base: path,
    specs: new Specs(optionsOf(io, given)),
    paths: [],
    refused: [],
    absent,
  };
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
