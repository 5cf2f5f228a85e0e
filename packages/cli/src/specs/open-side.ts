import { relative } from 'node:path';
import {
  type Comparison,
  compareSpecs,
  comparingAlone,
  type Judged,
  type VesselComparison,
} from '@tailshaft/drivetrain';
import { CannotRun } from '../cannot-run.js';
import type { Io } from '../terminal/io.js';
import { shownPath } from './find.js';
import { brokenIn, comparable, entriesIn, judgedOf, type NamedSet } from './spec-set.js';
import type { CheckedSpec, SeenSpec, Specs } from './specs.js';

/** One side of a comparison before anything of it is judged. */
export interface OpenSide {
  readonly label: string;
  /** The folder or file that was named: specs go by their path below it. */
  readonly base: string;
  readonly specs: Specs;
  readonly paths: readonly string[];
  /** Specs that could not be opened at all, in a sentence each. */
  readonly refused: readonly string[];
  /** Why it holds no spec, where it holds none. */
  readonly absent?: string;
  /** What was judged already: a text on standard input, which is at no path. */
  readonly judged?: readonly CheckedSpec[];
}

/**
 * Both sides compared. A spec that reads the same on both, with all that it imports, gives the same verdicts: it is read, so
 * that what is broken in it is told, and not judged. One whose vessels are the same on both sides by their names is compared
 * by itself and let go of, so that a thousand of them need no more room than a few.
 */
export async function comparedSides(io: Io, before: OpenSide, after: OpenSide): Promise<Comparison> {
  const { same, alone } = await seenOnBoth(io, before, after);
  const rest = (side: OpenSide) => ({
    ...side,
    paths: side.paths.filter(one => !alone.has(relative(side.base, one))),
  });
  const sets = [
    await judgedSide(io, rest(before), new Map([...same].map(([name, [was]]) => [name, was]))),
    await judgedSide(io, rest(after), new Map([...same].map(([name, [, is]]) => [name, is]))),
  ] as const;
  const oneByOne = new OneByOne(before, after, comparingAlone(entriesIn(sets[0]), entriesIn(sets[1])));
  const [old, now] = [[...sets[0].specs], [...sets[1].specs]];
  let at = 0;
  for (const [was, is] of alone.values()) {
    at += 1;
    if (alone.size > 20) io.progress(`${at} of ${alone.size}: ${shownPath(is, io.cwd)}`);
    try {
      const left = await oneByOne.compare(was, is);
      if (!left) continue;
      old.push(left[0]);
      now.push(left[1]);
    } catch (error) {
      if (!(error instanceof CannotRun)) throw error;
      oneByOne.unread[1].push(error.message);
    }
  }
  io.progress('');
  const whole = comparable({ ...sets[0], specs: old }, { ...sets[1], specs: now });
  const [unreadBefore, unreadAfter] = oneByOne.unread;
  return compareSpecs(
    { ...whole.before, unread: [...(whole.before.unread ?? []), ...unreadBefore] },
    { ...whole.after, unread: [...(whole.after.unread ?? []), ...unreadAfter] },
    oneByOne.compared,
  );
}

/** Specs compared one after the other, each let go of before the next one is judged. */
class OneByOne {
  readonly compared: VesselComparison[] = [];
  readonly unread: readonly [string[], string[]] = [[], []];

  constructor(
    private readonly before: OpenSide,
    private readonly after: OpenSide,
    private readonly alone: (was: Judged, is: Judged) => VesselComparison | undefined,
  ) {}

  /** Both, where they must be compared with all the others. */
  async compare(before: string, after: string): Promise<readonly [CheckedSpec, CheckedSpec] | undefined> {
    const was = await this.before.specs.check(before);
    const is = await this.after.specs.check(after);
    const compared = was.check.vessels.map(one => {
      const other = is.check.vessels.find(({ vessel }) => vessel.name === one.vessel.name);
      return other && this.alone(judgedOf(one), judgedOf(other));
    });
    if (compared.includes(undefined)) return [was, is];
    this.compared.push(...compared.filter(one => one !== undefined));
    this.unread[0].push(...brokenIn(this.before.label, was));
    this.unread[1].push(...brokenIn(this.after.label, is));
    this.before.specs.rest(before);
    this.after.specs.rest(after);
    return undefined;
  }
}

export async function judgedSide(
  io: Io,
  { label, base, specs, paths, refused, judged = [] }: OpenSide,
  same: ReadonlyMap<string, SeenSpec> = new Map(),
): Promise<NamedSet> {
  const below = (path: string) => relative(base, path);
  const checked = [...judged];
  const told = [...refused];
  const touched = paths.filter(one => !same.has(below(one)));
  for (const [index, path] of touched.entries()) {
    if (touched.length > 20) io.progress(`${index + 1} of ${touched.length}: ${shownPath(path, io.cwd)}`);
    try {
      checked.push(await specs.check(path));
      specs.rest(path);
    } catch (error) {
      // Where others can be compared, one that cannot be opened is told with them; alone it is the whole answer.
      if (!(error instanceof CannotRun) || paths.length === 1) throw error;
      told.push(error.message);
    }
  }
  io.progress('');
  return { label, below, specs: checked, refused: told, untouched: [...same.values()] };
}

interface OnBoth {
  /** By their path below what was named: the specs that read the same on both sides. */
  readonly same: ReadonlyMap<string, readonly [SeenSpec, SeenSpec]>;
  /** The paths of those that hold vessels of the same names, which no other spec of a side has, and no entries. */
  readonly alone: ReadonlyMap<string, readonly [before: string, after: string]>;
}

async function seenOnBoth(io: Io, before: OpenSide, after: OpenSide): Promise<OnBoth> {
  const same = new Map<string, readonly [SeenSpec, SeenSpec]>();
  const other = new Map<string, readonly [SeenSpec, SeenSpec]>();
  const earlier = new Map(before.paths.map(path => [relative(before.base, path), path]));
  const [namesBefore, namesAfter] = [new Tally(), new Tally()];
  for (const one of before.judged ?? []) namesBefore.addAll(one.check.vessels.map(each => each.vessel.name));
  for (const one of after.judged ?? []) namesAfter.addAll(one.check.vessels.map(each => each.vessel.name));
  for (const [index, path] of after.paths.entries()) {
    const name = relative(after.base, path);
    const there = earlier.get(name);
    if (after.paths.length > 20)
      io.progress(`${index + 1} of ${after.paths.length}: ${shownPath(path, io.cwd)}`);
    const is = await seen(after.specs, path, namesAfter);
    const was = there === undefined ? undefined : await seen(before.specs, there, namesBefore);
    earlier.delete(name);
    if (was && is) {
      const isOne = isSame(read(was, before.base), read(is, after.base));
      (isOne ? same : other).set(name, [was, is]);
    }
    if (is) after.specs.rest(path);
    if (was) before.specs.rest(there!);
  }
  for (const path of earlier.values()) {
    if (await seen(before.specs, path, namesBefore)) before.specs.rest(path);
  }
  io.progress('');
  const alone = [...other].filter(
    ([, [was, is]]) =>
      was.vessels.length > 0 &&
      was.entries + is.entries === 0 &&
      sorted(was.vessels) === sorted(is.vessels) &&
      was.vessels.every(one => namesBefore.of(one) === 1 && namesAfter.of(one) === 1),
  );
  return { same, alone: new Map(alone.map(([name, [was, is]]) => [name, [was.spec.path, is.spec.path]])) };
}

const sorted = (names: readonly string[]) => [...names].sort().join(' ');

/** Undefined where a spec cannot be opened: that is told when it is judged. */
async function seen(specs: Specs, path: string, names: Tally): Promise<SeenSpec | undefined> {
  try {
    const found = await specs.seen(path);
    names.addAll(found.vessels);
    return found;
  } catch (error) {
    if (!(error instanceof CannotRun)) throw error;
    return undefined;
  }
}

/** How often each name stands on a side. */
class Tally {
  private readonly counts = new Map<string, number>();

  addAll(names: readonly string[]): void {
    for (const one of names) this.counts.set(one, this.of(one) + 1);
  }

  of(name: string): number {
    return this.counts.get(name) ?? 0;
  }
}

/** Texts by their paths as seen from what was named; line ends mean nothing. */
function read({ texts }: SeenSpec, base: string): Map<string, string> {
  return new Map([...texts].map(([path, text]) => [relative(base, path), text.replaceAll('\r\n', '\n')]));
}

function isSame(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): boolean {
  return one.size === other.size && [...one].every(([path, text]) => other.get(path) === text);
}
