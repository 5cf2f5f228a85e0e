import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { codeServerFolder, codeServerNode } from './large-tools.js';

/**
 * Does what the install script of code-server would do, without its downloads: the dependencies of the
 * workbench, the two compiled modules that an extension host loads, and the system's ripgrep for the search.
 * The terminal and Kerberos stay uncompiled, and are not used. The result stays in the cache.
 */
export function prepareCodeServer(): void {
  const folder = join(codeServerFolder(), 'lib/vscode');
  const modules = join(folder, 'node_modules');
  const compiled = [
    'native-watchdog/build/Release/watchdog.node',
    '@vscode/spdlog/build/Release/spdlog.node',
  ];
  const search = join(modules, '@vscode/ripgrep/bin/rg');
  const needed = [...compiled.map(each => join(modules, each)), search];
  if (needed.every(each => existsSync(each))) return;

  const ripgrep = onPath('rg');
  npm(folder, 'install', '--ignore-scripts', '--omit=dev');
  npm(folder, 'rebuild', 'native-watchdog', '@vscode/spdlog', `--nodedir=${codeServerNode()}`);
  // Code looks for some modules in the archive that a desktop keeps them in.
  link('node_modules', join(folder, 'node_modules.asar'));
  mkdirSync(join(search, '..'), { recursive: true });
  link(ripgrep, search);
  for (const each of needed)
    if (!existsSync(each)) throw new Error(`${each} is missing. It takes python3, make and g++ to compile.`);
}

function npm(folder: string, ...words: readonly string[]): void {
  const done = spawnSync('npm', [...words, '--no-audit', '--no-fund'], { cwd: folder, encoding: 'utf8' });
  if (done.status !== 0) throw new Error(`npm ${words.join(' ')} failed:\n${done.stderr}`);
}

function link(target: string, path: string): void {
  rmSync(path, { force: true });
  symlinkSync(target, path);
}

function onPath(program: string): string {
  const found = (process.env.PATH ?? '')
    .split(delimiter)
    .map(folder => join(folder, program))
    .find(path => existsSync(path));
  if (!found) throw new Error(`${program} is missing. On Debian: apt-get install ripgrep`);
  return found;
}
