import { existsSync, realpathSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';

/** What a tool is not given: a path that leads out of the workspace. */
export class OutOfReach extends Error {}

/** A path inside the folder, relative to it. Links are followed first, so that none leads out. */
export function confined(root: string, path: string): string {
  const wanted = resolve(root, path);
  const inside = relative(root, real(wanted));
  if (inside === '') return '.';
  if (inside === '..' || inside.startsWith(`..${sep}`) || isAbsolute(inside))
    throw new OutOfReach(`${path} lies outside of the workspace folder, and nothing there is read`);
  // A name that begins like an option stays a name.
  return inside.startsWith('-') ? `.${sep}${inside}` : inside;
}

/** The path with its links followed, as far as it exists. */
function real(path: string): string {
  if (existsSync(path)) return realpathSync(path);
  const folder = dirname(path);
  return folder === path ? path : join(real(folder), basename(path));
}
