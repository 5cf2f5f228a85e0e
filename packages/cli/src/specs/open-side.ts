import { relative } from 'node:path';
import { CannotRun } from '../cannot-run.js';
import type { Io } from '../terminal/io.js';
import { shownPath } from './find.js';
import type { NamedSet } from './spec-set.js';
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
  /** What was judged already: a text on standard input, which is at no path. */
  readonly judged?: readonly CheckedSpec[];
}

/**
 * Both sides judged. A spec that reads the same on both, with all that it imports, gives the same verdicts: it is read, so
 * that what is broken in it is told, and not judged.
 */
export async function judgedSides(io: Io, before: OpenSide, after: OpenSide): Promise<[NamedSet, NamedSet]> {
  const same = await untouched(io, before, after);
  return [
    await judgedSide(io, before, new Map([...same].map(([name, [was]]) => [name, was]))),
    await judgedSide(io, after, new Map([...same].map(([name, [, is]]) => [name, is]))),
  ];
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

/** By their path below what was named: the specs that read the same on both sides. */
async function untouched(
  io: Io,
  before: OpenSide,
  after: OpenSide,
): Promise<Map<string, readonly [SeenSpec, SeenSpec]>> {
  const same = new Map<string, readonly [SeenSpec, SeenSpec]>();
  const earlier = new Map(before.paths.map(path => [relative(before.base, path), path]));
  for (const [index, path] of after.paths.entries()) {
    const name = relative(after.base, path);
    const other = earlier.get(name);
    if (other === undefined) continue;
    if (after.paths.length > 20)
      io.progress(`${index + 1} of ${after.paths.length}: ${shownPath(path, io.cwd)}`);
    try {
      const [was, is] = [await before.specs.seen(other), await after.specs.seen(path)];
      if (!isSame(read(was, before.base), read(is, after.base))) continue;
      same.set(name, [was, is]);
      before.specs.rest(other);
      after.specs.rest(path);
    } catch (error) {
      // It is told when it is judged.
      if (!(error instanceof CannotRun)) throw error;
    }
  }
  io.progress('');
  return same;
}

/** Texts by their paths as seen from what was named; line ends mean nothing. */
function read({ texts }: SeenSpec, base: string): Map<string, string> {
  return new Map([...texts].map(([path, text]) => [relative(base, path), text.replaceAll('\r\n', '\n')]));
}

function isSame(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): boolean {
  return one.size === other.size && [...one].every(([path, text]) => other.get(path) === text);
}
