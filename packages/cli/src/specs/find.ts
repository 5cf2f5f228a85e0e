import { type Dirent, existsSync } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun, reasonOf } from '../cannot-run.js';

/** A path as a person in this folder would type it. */
export function shownPath(path: string, cwd: string): string {
  const short = relative(cwd, path);
  if (short === '') return '.';
  return short.split(sep).join('/');
}

/** The spec files that paths name: files as they are, folders with all specs inside, each once, in stable order. */
export async function findSpecs(paths: readonly string[], cwd: string): Promise<string[]> {
  const found = new Set<string>();
  for (const path of paths) {
    const full = resolve(cwd, path);
    const shown = shownPath(full, cwd);
    const node = await stat(full).catch(error => {
      throw new CannotRun(`${shown} cannot be read: ${reasonOf(error)}`);
    });
    if (!node.isDirectory()) {
      found.add(full);
      continue;
    }
    const inside = await specsIn(full, shown);
    if (inside.length === 0) throw new CannotRun(`the folder ${shown} holds no ${EXTENSION} file`);
    for (const one of inside) found.add(one);
  }
  return [...found].sort();
}

async function specsIn(folder: string, shown: string): Promise<string[]> {
  let entries: Dirent[];
  try {
    entries = await readdir(folder, { withFileTypes: true });
  } catch (error) {
    throw new CannotRun(`the folder ${shown} cannot be read: ${reasonOf(error)}`);
  }
  const found: string[] = [];
  for (const entry of entries) {
    if (entry.isFile() && entry.name.endsWith(EXTENSION)) found.push(join(folder, entry.name));
    else if (entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules') {
      found.push(...(await specsIn(join(folder, entry.name), `${shown}/${entry.name}`)));
    }
  }
  return found;
}

/** The folder outside which a file imports nothing: its git repository, else the current folder, else its own. */
export function rootOf(path: string, cwd: string): string {
  for (let folder = dirname(path); ; folder = dirname(folder)) {
    if (existsSync(join(folder, '.git'))) return folder;
    if (folder === dirname(folder)) break;
  }
  const short = relative(cwd, path);
  return short.startsWith('..') || isAbsolute(short) ? dirname(path) : cwd;
}
