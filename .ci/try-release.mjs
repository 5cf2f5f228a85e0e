// Tries what is handed out as somebody would who has nothing else: each archive in an empty folder, without a network.
import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { root } from './install.mjs';

const from = process.argv[2] ?? join(fileURLToPath(root), '.release');
const empty = mkdtempSync(join(tmpdir(), 'tailshaft-tried-'));
const failed = [];
const SPEC = 'gear Alder-63 {\n  source "Alder 63 sheet" dated 2025-02-10\n  mass 9\n}\n';

try {
  const archive = readdirSync(from).find(one => one.endsWith('.tgz'));
  tryCommandLine(join(from, archive));
  await tryExtension(join(from, 'tailshaft.vsix'));
} finally {
  rmSync(empty, { recursive: true, force: true });
}
console.log(
  failed.length === 0 ? 'Everything that is handed out works in empty folders.' : failed.join('\n'),
);
process.exitCode = failed.length === 0 ? 0 : 1;

function tryCommandLine(archive) {
  const folder = join(empty, 'cli');
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  const installed = inFolder(folder, 'npm', ['install', '--offline', '--no-audit', '--no-fund', archive]);
  expect('the npm archive installs without a network', installed.status === 0, installed.stderr);
  const home = join(folder, 'node_modules/tailshaft');
  for (const name of [
    'LICENSE',
    'dist/THIRD-PARTY-NOTICES.txt',
    'dist/sbom.cdx.json',
    'schema/check.schema.json',
  ])
    expect(`the npm archive holds ${name}`, existsSync(join(home, name)));
  writeFileSync(join(folder, 'spec.shaft'), SPEC);
  tryGlobally(archive, folder);
  tryLibrary(folder);
  for (const [words, status, says] of [
    [['--version'], 0, /^tailshaft \d/],
    [['check', 'spec.shaft'], 1, /has no unit/],
    [['check', '--json', 'spec.shaft'], 1, /"findings"/],
    [['explain', 'rotation/propeller-hand'], 0, /hand/],
    [['format', '--check', 'spec.shaft'], 0, /^$/],
  ]) {
    const answer = inFolder(folder, join(folder, 'node_modules/.bin/tailshaft'), words);
    expect(
      `tailshaft ${words.join(' ')}`,
      answer.status === status && says.test(answer.stdout),
      answer.stdout + answer.stderr,
    );
  }
}

/** On the search path of everybody, and for one run. */
function tryGlobally(archive, folder) {
  const prefix = join(empty, 'global');
  const quiet = ['--offline', '--no-audit', '--no-fund'];
  const installed = inFolder(folder, 'npm', ['install', '--global', '--prefix', prefix, ...quiet, archive]);
  expect('npm install --global', installed.status === 0, installed.stderr);
  const bin = process.platform === 'win32' ? prefix : join(prefix, 'bin');
  for (const [what, program, words] of [
    ['tailshaft, installed for all', join(bin, 'tailshaft'), []],
    ['npx', 'npx', ['--yes', '--offline', '--package', archive, 'tailshaft']],
  ]) {
    const answer = inFolder(join(empty, 'global'), program, [...words, 'check', join(folder, 'spec.shaft')]);
    expect(what, answer.status === 1 && /has no unit/.test(answer.stdout), answer.stdout + answer.stderr);
  }
}

/** What other programs import, with its types. */
function tryLibrary(folder) {
  const script = `import { check, version } from 'tailshaft';
const { files } = await check(${JSON.stringify(SPEC)});
console.log(version, files[0].findings[0].message);`;
  const answer = inFolder(folder, process.execPath, ['--input-type=module', '--eval', script]);
  expect('import tailshaft', answer.status === 0 && /has no unit/.test(answer.stdout), answer.stderr);
  expect('its types', existsSync(join(folder, 'node_modules/tailshaft/dist/index.d.ts')));
}

async function tryExtension(archive) {
  const folder = join(empty, 'vsix');
  for (const [name, bytes] of Object.entries(unzipSync(readFileSync(archive)))) {
    if (name.endsWith('/')) continue;
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
  }
  const home = join(folder, 'extension');
  const manifest = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  for (const name of [
    manifest.main,
    manifest.browser,
    manifest.icon,
    'dist/THIRD-PARTY-NOTICES.txt',
    'dist/sbom.cdx.json',
  ])
    expect(`the extension holds ${name}`, existsSync(join(home, name)));
  const answer = await helloOf(join(home, 'dist/server.js'), folder);
  expect('the server of the extension says hello', /"serverInfo":\{"name":"tailshaft"/.test(answer), answer);
}

/** The first answer of a server. */
function helloOf(server, cwd) {
  const child = spawn(process.execPath, [server, '--stdio'], { cwd, stdio: ['pipe', 'pipe', 'inherit'] });
  const hello = JSON.stringify({
    jsonrpc: '2.0',
    id: 1,
    method: 'initialize',
    params: { processId: null, rootUri: null, capabilities: {} },
  });
  child.stdin.write(`Content-Length: ${hello.length}\r\n\r\n${hello}`);
  return new Promise(done => {
    let said = '';
    const end = () => {
      child.kill();
      done(said);
    };
    const timer = setTimeout(end, 30_000);
    child.stdout.on('data', piece => {
      said += piece;
      if (said.includes('serverInfo')) {
        clearTimeout(timer);
        end();
      }
    });
  });
}

function inFolder(cwd, program, words) {
  const env = { ...process.env, npm_config_cache: join(empty, 'cache'), NO_COLOR: '1' };
  return spawnSync(program, words, { cwd, env, encoding: 'utf8', shell: process.platform === 'win32' });
}

function expect(what, holds, said = '') {
  console.log(`${holds ? 'ok    ' : 'FAILED'}  ${what}`);
  if (!holds) failed.push(`${what}: ${said.slice(0, 2000)}`);
}
