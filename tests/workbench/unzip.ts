import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve, sep } from 'node:path';
import { unzipSync } from 'fflate';

/** The files of a zip archive, which is what a VSIX is, by their path. */
export function filesOf(archive: string): Readonly<Record<string, Uint8Array>> {
  const all = Object.entries(unzipSync(readFileSync(archive)));
  return Object.fromEntries(all.filter(([path]) => !path.endsWith('/')));
}

export function unzip(archive: string, folder: string): void {
  for (const [path, bytes] of Object.entries(filesOf(archive))) {
    const target = resolve(folder, path);
    if (!target.startsWith(resolve(folder) + sep)) throw new Error(`${archive} reaches outside: ${path}`);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, bytes);
  }
}
