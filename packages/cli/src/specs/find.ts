import { type Dirent, existsSync } from 'node:fs';
import { readdir, realpath, stat } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun, reasonOf } from '../cannot-run.js';
import { isPattern, matcherOf, patternBase } from './pattern.js';

/** A path as a person in this folder would type it. */
export function shownPath(path: string, cwd: string): string {
  const short = relative(cwd, path);
  if (short === '') return '.';
  return short.split(sep).join('/');
}

/** Specs, and what stands among them under another name: a symbolic link is not followed out of the folder named. */
export interface Found {
  readonly paths: readonly string[];
  /** Links to a file that is not judged; shown as a person would type them. */
  readonly links: readonly string[];
}

/**
 * The spec files that words name: files as they are, folders with all specs inside, patterns with what they match, each
 * once, in stable order. A word that begins with ! leaves out what it matches; a name on the disk is never a pattern.
 */
export async function findSpecs(words: readonly string[], cwd: string): Promise<Found> {
  const found = new Set<string>();
  const links: string[] = [];
  const away = words.filter(one => one.startsWith('!')).map(one => leavesOut(one.slice(1), cwd));
  const isOut = (path: string) => away.some(one => one(path));
  for (const word of words) {
    if (word.startsWith('!')) continue;
    const full = resolve(cwd, word);
    const shown = shownPath(full, cwd);
    const pattern = isPattern(word) && !existsSync(full);
    const folder = pattern ? resolve(cwd, patternBase(word)) : full;
    const node = await stat(folder).catch(error => {
      throw new CannotRun(`${shown} cannot be read: ${reasonOf(error)}`);
    });
    if (!node.isDirectory()) {
      if (!isOut(full)) found.add(full);
      continue;
    }
    const inside = await specsIn(folder, shownPath(folder, cwd));
    const matches = pattern ? matching(word, folder) : () => true;
    const wanted = (path: string) => matches(path) && !isOut(path);
    const paths = inside.paths.filter(wanted);
    const leading = (await leadingOut(inside.links, folder)).filter(wanted);
    if (pattern && paths.length + leading.length === 0)
      throw new CannotRun(`no ${EXTENSION} file matches ${word}`);
    if (inside.paths.length + leading.length === 0)
      throw new CannotRun(`the folder ${shown} holds no ${EXTENSION} file`);
    for (const one of paths) found.add(one);
    links.push(...leading.map(one => shownPath(one, cwd)));
  }
  return { paths: [...found].sort(), links: links.sort() };
}

/** A pattern, a file, or a folder with all inside. */
function leavesOut(word: string, cwd: string): (path: string) => boolean {
  const full = resolve(cwd, word);
  if (!isPattern(word) || existsSync(full)) return path => path === full || isInside(full, path);
  return matching(word, resolve(cwd, patternBase(word)));
}

function matching(pattern: string, base: string): (path: string) => boolean {
  const matches = matcherOf(pattern);
  return path => isInside(base, path) && matches(relative(base, path).split(sep).join('/'));
}

/** What a command says of links that it does not follow. */
export function linksTold(links: readonly string[]): string {
  const named = links.slice(0, 5).join(', ');
  const more = links.length > 5 ? ` and ${links.length - 5} more` : '';
  const [are, them] =
    links.length === 1 ? ['is a symbolic link', 'it leads'] : ['are symbolic links', 'they lead'];
  return `${named}${more} ${are} out of the folder, and not followed: name what ${them} to`;
}

/** Links that lead nowhere, or to what is not found in the folder under a name of its own. */
async function leadingOut(links: readonly string[], folder: string): Promise<string[]> {
  const home = await realpath(folder);
  const away: string[] = [];
  for (const link of links) {
    const target = await realpath(link).catch(() => undefined);
    const node = target === undefined ? undefined : await stat(target).catch(() => undefined);
    // A link to some other folder, as build tools make, concerns nobody unless it has the name of a spec.
    if (node?.isDirectory() && !link.endsWith(EXTENSION) && !(await holdsSpecs(target!))) continue;
    if (!node && !link.endsWith(EXTENSION)) continue;
    if (node?.isFile() && !link.endsWith(EXTENSION)) continue;
    if (!target || !isInside(home, target)) away.push(link);
  }
  return away;
}

async function holdsSpecs(folder: string): Promise<boolean> {
  const names = await readdir(folder).catch(() => []);
  return names.some(one => one.endsWith(EXTENSION));
}

function isInside(folder: string, path: string): boolean {
  const short = relative(folder, path);
  return !short.startsWith('..') && !isAbsolute(short);
}

async function specsIn(folder: string, shown: string): Promise<{ paths: string[]; links: string[] }> {
  let entries: Dirent[];
  try {
    entries = await readdir(folder, { withFileTypes: true });
  } catch (error) {
    throw new CannotRun(`the folder ${shown} cannot be read: ${reasonOf(error)}`);
  }
  const paths: string[] = [];
  const links: string[] = [];
  for (const entry of entries) {
    const path = join(folder, entry.name);
    const skipped = entry.name.startsWith('.') || entry.name === 'node_modules';
    if (entry.isFile() && entry.name.endsWith(EXTENSION)) paths.push(path);
    else if (entry.isSymbolicLink() && !skipped) links.push(path);
    else if (entry.isDirectory() && !skipped) {
      const inside = await specsIn(path, `${shown}/${entry.name}`);
      paths.push(...inside.paths);
      links.push(...inside.links);
    }
  }
  return { paths, links };
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
