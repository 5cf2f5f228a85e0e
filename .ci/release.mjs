// Makes everything that is handed out, from the sources alone: the extension for desktop and web as one VSIX, and the
// command line as an npm archive that needs no other package; with sums to check them by. Two runs give the same bytes.
import { createHash } from 'node:crypto';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root, run } from './install.mjs';

process.umask(0o022);
const home = fileURLToPath(root);
const into = process.argv[2] ?? join(home, '.release');
rmSync(into, { recursive: true, force: true });
mkdirSync(into, { recursive: true });

run(process.execPath, ['.ci/build.mjs']);
run(process.execPath, ['packages/vscode/package.mjs']);
cpSync(join(home, 'packages/vscode/dist/tailshaft.vsix'), join(into, 'tailshaft.vsix'));
const archive = packed();

const sums = ['tailshaft.vsix', archive].map(
  name =>
    `${createHash('sha256')
      .update(readFileSync(join(into, name)))
      .digest('hex')}  ${name}`,
);
writeFileSync(join(into, 'SHA256SUMS'), `${sums.join('\n')}\n`);
console.log(sums.join('\n'));

/** The archive of the command line: its bundles, types, schemas and licences, and a manifest that asks for nothing else. */
function packed() {
  const stage = mkdtempSync(join(tmpdir(), 'tailshaft-release-'));
  try {
    const from = name => join(home, 'packages/cli', name);
    for (const name of ['dist', 'schema']) cpSync(from(name), join(stage, name), { recursive: true });
    cpSync(join(home, 'LICENSE'), join(stage, 'LICENSE'));
    cpSync(join(home, 'README.md'), join(stage, 'README.md'));
    const own = new Set(['type', 'private', 'scripts', 'dependencies', 'devDependencies']);
    const told = Object.fromEntries(
      Object.entries(JSON.parse(readFileSync(from('package.json'), 'utf8'))).filter(([key]) => !own.has(key)),
    );
    const { engines } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
    const manifest = { ...told, engines };
    const { name, version } = told;
    writeFileSync(join(stage, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
    // Who may read a file in a checkout depends on who made it.
    for (const file of readdirSync(stage, { recursive: true, withFileTypes: true }))
      chmodSync(
        join(file.parentPath ?? file.path, file.name),
        file.isDirectory() || file.name.endsWith('.cjs') ? 0o755 : 0o644,
      );
    run('npm', ['pack', '--silent', '--pack-destination', stage], { cwd: stage, stdio: 'ignore' });
    const archive = `${name}-${version}.tgz`;
    cpSync(join(stage, archive), join(into, archive));
    return archive;
  } finally {
    rmSync(stage, { recursive: true, force: true });
  }
}
