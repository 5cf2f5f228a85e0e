import { readFile, stat } from 'node:fs/promises';
import { LARGEST_SPEC, megabytes } from '@tailshaft/language';
import { CannotRun, reasonOf } from '../cannot-run.js';

/** In bytes. */
export const LARGEST = LARGEST_SPEC;

/** The text of a spec file; `shown` is its name in complaints. */
export async function readSpec(path: string, shown: string): Promise<string> {
  return decodeSpec(await readBytes(path, shown), shown);
}

/** The bytes of a file that may be a spec. */
export async function readBytes(path: string, shown: string): Promise<Buffer> {
  try {
    const node = await stat(path);
    if (node.isDirectory()) throw new CannotRun(`${shown} is a folder, not a spec`);
    if (!node.isFile()) throw new CannotRun(`${shown} is not a file that can be read as a spec`);
    if (node.size > LARGEST) throw tooLarge(shown, node.size);
    return await readFile(path);
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(`${shown} cannot be read: ${reasonOf(error)}`);
  }
}

/** Bytes as text. What is not UTF-8 would be judged by its garbage, so it is refused. */
export function decodeSpec(bytes: Uint8Array, shown: string): string {
  if (bytes.length > LARGEST) throw tooLarge(shown, bytes.length);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new CannotRun(`${shown} is written in UTF-16: save it as UTF-8`);
  }
  if (bytes.includes(0)) throw new CannotRun(`${shown} is not text: it holds zero bytes`);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new CannotRun(`${shown} is not UTF-8 text: save it as UTF-8`);
  }
  return text;
}

function tooLarge(shown: string, size: number): CannotRun {
  return new CannotRun(
    `${shown} is ${megabytes(size)} MB, and a spec of more than ${megabytes(LARGEST)} MB is not read: split it, and import the parts`,
  );
}

/** Read as text it is gone; the file gets it back. */
export function byteOrderMark(bytes: Uint8Array): string {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\u{feff}' : '';
}
