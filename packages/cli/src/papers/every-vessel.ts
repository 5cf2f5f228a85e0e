import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { EXTENSION, type JudgedVessel } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { CannotRun, reasonOf } from '../cannot-run.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { writePaper } from './write-paper.js';

/** What is written of every vessel, and where. */
export interface Every {
  readonly folder: string;
  /** What follows the name of the vessel: `-summary.pdf`. */
  readonly ending: string;
  /** The vessel that is wanted; all when absent. */
  readonly wanted?: string;
  readonly make: (spec: CheckedSpec, chosen: JudgedVessel) => Promise<string | Uint8Array>;
}

/** Writes one paper of every vessel that the words lead to. One spec that cannot be read keeps none of the others back. */
export async function everyVessel(
  io: Io,
  specs: Specs,
  words: readonly string[],
  { folder, ending, wanted, make }: Every,
): Promise<number> {
  const { paths, links } = await findSpecs(words, io.cwd);
  let failed = links.length > 0;
  if (failed) io.complain(linksTold(links));
  const into = resolve(io.cwd, folder);
  const told = shownPath(into, io.cwd);
  if (into.toLowerCase().endsWith(EXTENSION))
    throw new CannotRun(`--out ${told} has the name of a spec: papers of several vessels go to a folder`);
  const names = new Names(io.cwd);
  let written = 0;
  for (const [index, path] of paths.entries()) {
    if (paths.length > 20) io.progress(`${index + 1} of ${paths.length}: ${shownPath(path, io.cwd)}`);
    try {
      const spec = await specs.check(path);
      for (const chosen of spec.check.vessels) {
        if (wanted !== undefined && chosen.vessel.name !== wanted) continue;
        const content = await make(spec, chosen);
        await made(into, told);
        const name = names.of(spec, chosen.vessel.name);
        await writePaper(io.cwd, specs, spec, 'out', join(into, `${name}${ending}`), content);
        written += 1;
      }
      specs.drop(spec);
    } catch (error) {
      if (!(error instanceof CannotRun)) throw error;
      failed = true;
      io.complain(error.message);
    }
  }
  io.progress('');
  if (written === 0 && !failed)
    throw new CannotRun(
      wanted === undefined
        ? `no vessel stands in ${words.join(', ')}, so there is no paper to write`
        : `no vessel is called ${wanted} in ${words.join(', ')}`,
    );
  if (written > 0) io.complain(`wrote ${count(written, 'paper')} to ${told}`);
  return failed ? 2 : 0;
}

async function made(folder: string, told: string): Promise<void> {
  await mkdir(folder, { recursive: true }).catch(error => {
    throw new CannotRun(`${told} cannot be made: ${reasonOf(error)}`);
  });
}

/** A vessel's paper goes by its name; where another file has one of that name, in whatever letters, by its file as well. */
class Names {
  private readonly taken = new Set<string>();

  constructor(private readonly cwd: string) {}

  of(spec: CheckedSpec, vessel: string): string {
    const path = shownPath(spec.path, this.cwd)
      .slice(0, -EXTENSION.length)
      .replaceAll(/[^\p{L}\d-]+/gu, '-');
    const name = [vessel, `${vessel}-${path}`].find(one => !this.taken.has(one.toLowerCase()));
    if (name === undefined)
      throw new CannotRun(
        `${spec.shown} holds a vessel ${vessel} whose paper would take the place of another`,
      );
    this.taken.add(name.toLowerCase());
    return name;
  }
}
