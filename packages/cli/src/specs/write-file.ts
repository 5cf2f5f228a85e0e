import { randomBytes } from 'node:crypto';
import { chmod, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { CannotRun, reasonOf } from '../cannot-run.js';

/** Writes a whole file or nothing: beside it first, then in its place. Keeps its permissions. */
export async function writeWhole(wanted: string, text: string | Uint8Array, shown: string): Promise<void> {
  // A link stays a link: what it leads to is written.
  const path = await realpath(wanted).catch(() => wanted);
  const beside = join(dirname(path), `.${basename(path)}.${randomBytes(4).toString('hex')}`);
  try {
    const mode = await stat(path).then(
      node => node.mode,
      () => undefined,
    );
    await writeFile(beside, text, { flag: 'wx' });
    if (mode !== undefined) await chmod(beside, mode);
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw new CannotRun(`${shown} cannot be written: ${reasonOf(error)}`);
  }
}
