import { realpath, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun } from '../cannot-run.js';
import { shownPath } from '../specs/find.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';

/** Writes what was made of a spec, and never over a spec. */
export async function writePaper(
  cwd: string,
  specs: Specs,
  spec: CheckedSpec,
  option: string,
  file: string,
  content: string | Uint8Array,
): Promise<string> {
  const full = resolve(cwd, file);
  const shown = shownPath(full, cwd);
  if (full === spec.path) throw new CannotRun(`--${option} ${shown} is the spec itself`);
  await refuseSpec(full, `--${option} ${shown}`, specs);
  await writeWhole(full, content, shown);
  return shown;
}

/** A sheet is never written over what it was made from, nor over any other spec, under whatever name. */
async function refuseSpec(path: string, shown: string, specs: Specs): Promise<void> {
  const real = await realpath(path).catch(() => path);
  const is = [path, real].some(one => one.toLowerCase().endsWith(EXTENSION));
  if (is) throw new CannotRun(`${shown} has the name of a spec: a sheet is never written over one`);
  const there = await stat(real).catch(() => undefined);
  if (!there) return;
  for (const read of specs.filesRead()) {
    if ((await identityOf(specs, read)) === `${there.dev} ${there.ino}`)
      throw new CannotRun(`${shown} is a file that the sheet is made from`);
  }
}

/** What a file that was read is on the disk: asked once, for a thousand papers are made from one catalogue. */
async function identityOf(specs: Specs, path: string): Promise<string | undefined> {
  const known = KNOWN.get(specs) ?? new Map<string, string | undefined>();
  KNOWN.set(specs, known);
  if (!known.has(path)) {
    const there = await stat(path).catch(() => undefined);
    known.set(path, there && `${there.dev} ${there.ino}`);
  }
  return known.get(path);
}

const KNOWN = new WeakMap<Specs, Map<string, string | undefined>>();
