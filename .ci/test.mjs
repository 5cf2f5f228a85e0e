// Everything that needs neither a browser nor an editor: build, lint, types, unit suites.
// `--report <file>` also writes the counts of the suites as JSON.
import { installIfNeeded, run, statusOf } from './install.mjs';

const at = process.argv.indexOf('--report');
const report =
  at < 0 ? [] : ['--reporter=default', '--reporter=json', `--outputFile.json=${process.argv[at + 1]}`];

installIfNeeded();
run(process.execPath, ['.ci/build.mjs']);

// Each of these says something of its own, so one that fails does not silence the next.
const failed = [
  ['lint', ['npm', 'run', '--silent', 'lint']],
  ['types', ['npm', 'run', '--silent', 'typecheck']],
  ['unit suites', ['npx', 'vitest', 'run', '--project', 'unit', ...report]],
].filter(([, [program, ...given]]) => statusOf(program, given) !== 0);

if (failed.length > 0) {
  console.error(`Not in order: ${failed.map(([name]) => name).join(', ')}.`);
  process.exit(1);
}
