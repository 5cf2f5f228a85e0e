import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

export const root = new URL('..', import.meta.url);

/**
 * Installs the packages of the lock file, unless exactly those are there already. `toRun` leaves out what only tests, checks
 * and packing need, three quarters of it all: whoever tries the product waits for nothing else.
 */
export function installIfNeeded({ toRun = false } = {}) {
  const reason = whyInstall(toRun);
  if (!reason) return;
  console.log(`Installing packages: ${reason}.`);
  run('npm', ['ci', '--no-audit', '--no-fund', ...(toRun ? ['--omit=dev', '--prefer-offline'] : [])]);
}

/** Runs a program in the repository, shows what it prints, and ends this one when it fails. */
export function run(program, given, options = {}) {
  const status = statusOf(program, given, options);
  if (status !== 0) process.exit(status);
}

/** As `run`, for a caller that goes on whatever the exit status is. */
export function statusOf(program, given, options = {}) {
  const windows = process.platform === 'win32';
  const ended = spawnSync(program, given, { cwd: root, stdio: 'inherit', shell: windows, ...options });
  if (ended.error) console.error(`${program} could not be started: ${ended.error.message}`);
  return ended.status ?? 2;
}

function whyInstall(toRun) {
  const installedFile = new URL('node_modules/.package-lock.json', root);
  if (!existsSync(installedFile)) return 'none are installed yet';
  const wanted = packagesIn(new URL('package-lock.json', root));
  const installed = packagesIn(installedFile);
  for (const [path, { version, optional, link, dev, devOptional }] of Object.entries(wanted)) {
    if (!path.includes('node_modules/') || link || (toRun && (dev || devOptional))) continue;
    const found = installed[path]?.version;
    // Optional packages are builds for other kinds of machine, and only ours is installed.
    if (found !== version && !(optional && found === undefined))
      return `${path.replace(/^.*node_modules\//, '')} ${version} is wanted, ${found ?? 'nothing'} is there`;
  }
  return undefined;
}

function packagesIn(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}
