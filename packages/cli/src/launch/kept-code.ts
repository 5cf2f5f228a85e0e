import { createHash } from 'node:crypto';
import {
  closeSync,
  fstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';

const ENDING = '.code';
const DAY = 24 * 60 * 60 * 1000;
/** Code of programs that are used no more goes after this time; one that is used still is made anew. */
const KEPT_DAYS = 60;

/** The kept code, or nothing when there is none, somebody else could have written it, or it is not whole. */
export function readKept(folder: string, name: string): Buffer | undefined {
  try {
    if (!isOurs(statSync(folder))) return undefined;
    const file = openSync(join(folder, name + ENDING), 'r');
    try {
      if (!isOurs(fstatSync(file))) return undefined;
      const bytes = readFileSync(file);
      const [sum, code] = [bytes.subarray(0, 32), bytes.subarray(32)];
      return sumOf(code).equals(sum) ? code : undefined;
    } finally {
      closeSync(file);
    }
  } catch {
    return undefined;
  }
}

/** Keeps code for the next start. Where that cannot be, the next start compiles again. */
export function keep(folder: string, name: string, code: Buffer): void {
  const beside = join(folder, `${name}.${process.pid}.new`);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    if (!isOurs(statSync(folder))) return;
    writeFileSync(beside, Buffer.concat([sumOf(code), code]), { mode: 0o600, flag: 'wx' });
    renameSync(beside, join(folder, name + ENDING));
    forgetOld(folder);
  } catch {
    forget(beside);
  }
}

function forget(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // Where nothing can be written there is nothing to take away.
  }
}

function forgetOld(folder: string): void {
  const limit = Date.now() - KEPT_DAYS * DAY;
  for (const name of readdirSync(folder)) {
    if (!name.endsWith(ENDING) && !name.endsWith('.new')) continue;
    const path = join(folder, name);
    if (statSync(path).mtimeMs < limit) forget(path);
  }
}

/** Whether nobody else can have put it there. Windows keeps others out of a person's own folders itself. */
function isOurs({ uid, mode }: { readonly uid: number; readonly mode: number }): boolean {
  return process.getuid === undefined || (uid === process.getuid() && (mode & 0o022) === 0);
}

const sumOf = (code: Buffer) => createHash('sha256').update(code).digest();
