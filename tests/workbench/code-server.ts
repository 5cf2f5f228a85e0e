import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { codeServerFolder, codeServerNode } from './large-tools.js';
import { quietSettings } from './quiet.js';
import { until } from './until.js';

export interface CodeServer {
  readonly pid: number;
  readonly port: number;
  /** Extensions as the server lists them, `publisher.name@version`. */
  readonly extensions: readonly string[];
  close(): Promise<void>;
}

/** Starts code-server on a free port of this machine only, with the VSIX installed. All it writes is in `home`. */
export async function startCodeServer(home: string, vsix: string, socket: string): Promise<CodeServer> {
  const folder = { extensions: join(home, 'extensions'), data: join(home, 'data') };
  mkdirSync(join(folder.data, 'User'), { recursive: true });
  writeFileSync(join(folder.data, 'User/settings.json'), JSON.stringify(quietSettings));
  // A folder that lies there before the first start counts as installed.
  cpSync(join(import.meta.dirname, 'file-system'), join(folder.extensions, 'test.test-file-system-1.0.0'), {
    recursive: true,
  });

  const node = join(codeServerNode(), 'bin/node');
  const entry = join(codeServerFolder(), 'out/node/entry.js');
  const where = ['--extensions-dir', folder.extensions, '--user-data-dir', folder.data];
  // Nothing of the test's own environment reaches the server; an empty gallery keeps it from asking outside.
  const env = {
    PATH: process.env.PATH,
    HOME: home,
    LANG: 'C.UTF-8',
    EXTENSIONS_GALLERY: '{"serviceUrl":""}',
    TAILSHAFT_TEST_SOCKET: socket,
  };
  const manage = (...words: string[]): string => {
    const done = spawnSync(node, [entry, ...where, ...words], { env, encoding: 'utf8' });
    if (done.status !== 0) throw new Error(`${words.join(' ')} failed:\n${done.stdout}${done.stderr}`);
    return done.stdout;
  };
  manage('--install-extension', vsix);
  const listed = manage('--list-extensions', '--show-versions').match(/^[\w-]+\.[\w-]+@[\d.]+$/gm);

  const served = spawn(
    node,
    [
      ...[entry, ...where, '--bind-addr', '127.0.0.1:0', '--auth', 'none', '--disable-telemetry'],
      ...['--disable-update-check', '--disable-workspace-trust', '--disable-getting-started-override'],
    ],
    { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  const close = () => end(served);
  try {
    return { pid: served.pid!, port: await portOf(served), extensions: listed ?? [], close };
  } catch (problem) {
    await close();
    throw problem;
  }
}

async function portOf(served: ChildProcess): Promise<number> {
  let printed = '';
  for (const stream of [served.stdout!, served.stderr!])
    stream.setEncoding('utf8').on('data', text => {
      printed += text;
    });
  const port = () => /listening on http:\/\/127\.0\.0\.1:(\d+)/.exec(printed)?.[1];
  await until(
    'the server',
    () => printed,
    () => port() !== undefined,
  );
  return Number(port());
}

/** The server is asked to stop, and what has not stopped in time is ended: it has a process group of its own. */
async function end(served: ChildProcess): Promise<void> {
  const ended = new Promise(resolve => served.once('exit', resolve));
  const signal = (name: NodeJS.Signals) => {
    try {
      process.kill(-served.pid!, name);
    } catch {
      // The group is gone.
    }
  };
  if (served.exitCode === null && served.signalCode === null) {
    signal('SIGTERM');
    await Promise.race([ended, new Promise(resolve => setTimeout(resolve, 5_000))]);
  }
  signal('SIGKILL');
}
