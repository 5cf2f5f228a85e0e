import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * Where compiled code is kept: in the caches of the person, never in a folder that others can write to, since what lies
 * there is run. TAILSHAFT_CACHE names another folder; empty, nothing is kept.
 */
export function cacheFolder(
  env: Readonly<Record<string, string | undefined>>,
  platform: string,
  home: string = homedir(),
): string | undefined {
  if (env.TAILSHAFT_CACHE !== undefined) return env.TAILSHAFT_CACHE || undefined;
  if (platform === 'win32')
    return env.LOCALAPPDATA ? join(env.LOCALAPPDATA, 'tailshaft', 'cache') : undefined;
  if (platform === 'darwin') return home ? join(home, 'Library', 'Caches', 'tailshaft') : undefined;
  const base = env.XDG_CACHE_HOME || (home ? join(home, '.cache') : '');
  return base ? join(base, 'tailshaft') : undefined;
}
