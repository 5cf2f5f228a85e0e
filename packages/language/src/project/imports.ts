import { type FileSystemProvider, type URI, UriUtils } from 'langium';
import type { ImportReading } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import { isLink, realPath } from './links.js';
import { type Spelled, spelledOnDisk } from './spelled-on-disk.js';

/** Files that an import brings in, or why it brings none. */
export interface ImportOutcome {
  readonly files: readonly URI[];
  readonly problem?: Problem;
}

export const EXTENSION = '.shaft';

/** Where an import points, whether or not anything is there. */
export function importTarget(from: URI, wanted: ImportReading): URI {
  return UriUtils.resolvePath(UriUtils.dirname(from), wanted.path.replace(/\\/g, '/'));
}

/** Finds what an import names: a file, or every spec of a folder. Never leaves the given roots. */
export async function resolveImport(
  files: FileSystemProvider,
  from: URI,
  wanted: ImportReading,
  roots: readonly URI[],
): Promise<ImportOutcome> {
  const fail = (message: string): ImportOutcome => ({
    files: [],
    problem: {
      code: 'text/import',
      start: wanted.place.start,
      end: wanted.place.end,
      severity: 'error',
      message,
    },
  });
  if (wanted.path.trim() === '') return fail('State what to import: a file or a folder beside this file.');
  if (/^([a-z][a-z0-9+.-]*:|[/\\])/i.test(wanted.path)) {
    return fail(
      `Imports are relative to this file, so that the spec means the same on every machine: "${wanted.path}" is not.`,
    );
  }
  const target = importTarget(from, wanted);
  if (roots.length > 0 && !roots.some(root => isWithin(root, target))) {
    return fail(
      `"${wanted.path}" is outside the workspace, where nothing is read. Move the catalogue into it, or open the folder that holds both; on the command line, name it with --root.`,
    );
  }
  try {
    for (const candidate of [target, target.with({ path: `${target.path}${EXTENSION}` })]) {
      if (!(await files.exists(candidate))) continue;
      const node = await files.stat(candidate);
      if (!(await reallyWithin(files, roots, candidate))) return fail(leadsOut(wanted.path));
      // A disk that does not tell large letters from small ones finds a file under any spelling; it is one file all the same.
      const spelled = await spelledOnDisk(files, candidate, wanted.path);
      const misspelt = spelled && { problem: otherSpelling(wanted, spelled) };
      const target = spelled?.uri ?? candidate;
      if (node.isFile) return { files: [target], ...misspelt };
      const inside = (await files.readDirectory(target)).filter(
        one => one.isFile && one.uri.path.endsWith(EXTENSION),
      );
      for (const one of inside)
        if (isLink(one) && !(await reallyWithin(files, roots, one.uri)))
          return fail(leadsOut(`${wanted.path}/${UriUtils.basename(one.uri)}`));
      if (inside.length === 0) return fail(`The folder "${wanted.path}" holds no ${EXTENSION} file.`);
      return { files: inside.map(one => one.uri).sort((a, b) => (a.path < b.path ? -1 : 1)), ...misspelt };
    }
  } catch (error) {
    return fail(
      `"${wanted.path}" could not be read: ${error instanceof Error ? firstLine(error.message) : 'unknown reason'}.`,
    );
  }
  return fail(`There is no file or folder "${wanted.path}" beside this file.`);
}

function otherSpelling({ path, place: { start, end } }: ImportReading, { written }: Spelled): Problem {
  return {
    code: 'text/import',
    start,
    end,
    severity: 'warning',
    message: `"${path}" is spelled "${written}" on this disk. Write it so: other disks tell large letters from small ones, and find nothing there.`,
    choices: [{ title: `Write ${written}`, text: `"${written}"` }],
  };
}

/** Whether a path lies in a root when all symbolic links are followed, of the path and of the root itself. */
async function reallyWithin(files: FileSystemProvider, roots: readonly URI[], target: URI): Promise<boolean> {
  if (roots.length === 0) return true;
  const real = await realPath(files, target);
  if (sameDrive(real.path) === sameDrive(target.path)) return true;
  for (const root of roots) if (isWithin(await realPath(files, root), real)) return true;
  return false;
}

function leadsOut(path: string): string {
  return `"${path}" leads outside the workspace by a symbolic link, where nothing is read. Move its target into the workspace, or open the folder that holds both; on the command line, name it with --root.`;
}

/** Whether a file or folder lies in a folder. */
export function isWithin(root: URI, target: URI): boolean {
  const [from, to] = [sameDrive(root.path), sameDrive(target.path)];
  const base = from.endsWith('/') ? from : `${from}/`;
  return root.scheme === target.scheme && (to === from || to.startsWith(base));
}

/** Programs write the letter of a drive large or small as they like, some of them otherwise from one message to the next. */
function sameDrive(path: string): string {
  return path.replace(/^\/[A-Z](?=:)/, letter => letter.toLowerCase());
}

/** The way from a folder to a file or folder, as an import writes it. */
export function relativePath(folder: string, target: string): string {
  const from = sameDrive(folder).split('/').filter(Boolean);
  const to = sameDrive(target).split('/').filter(Boolean);
  let same = 0;
  while (same < from.length && same < to.length && from[same] === to[same]) same += 1;
  return [...from.slice(same).map(() => '..'), ...to.slice(same)].join('/') || '.';
}

export function withoutExtension(path: string): string {
  return path.endsWith(EXTENSION) ? path.slice(0, -EXTENSION.length) : path;
}

/** The reason without paths of the machine behind it. */
function firstLine(message: string): string {
  return message.split('\n')[0]!.replace(/^([A-Z]+): ([^,]*),.*$/, '$2 ($1)');
}
