import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { startBrowser } from './browser.js';
import { startCodeServer } from './code-server.js';
import { handsOn } from './hands.js';
import { prepareCodeServer } from './prepare-code-server.js';
import { processesBelow, type RunningProcess } from './process-tree.js';
import { screenshotPath } from './screenshots.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

export interface DesktopOptions {
  readonly vsix: string;
  /** Text by path, relative to the workspace folder. */
  readonly files: Readonly<Record<string, string>>;
  /** Commits the files as they are, so that the folder is a git repository. */
  readonly committed?: boolean;
}

/** A workbench whose extensions run in Node and whose files lie on a disk, as on a desktop. */
export interface DesktopWorkbench extends Workbench {
  readonly folder: string;
  readonly extensions: readonly string[];
  /** Hosts other than the server's that were asked for something over the network. */
  readonly otherHosts: ReadonlySet<string>;
  processes(): readonly RunningProcess[];
}

export async function startDesktop(options: DesktopOptions): Promise<DesktopWorkbench> {
  prepareCodeServer();
  const home = mkdtempSync(join(tmpdir(), 'tailshaft-desktop-'));
  const folder = join(home, 'repower');
  for (const [path, text] of Object.entries(options.files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  if (options.committed) commitAll(folder);
  const socket = join(home, 'commands.socket');
  const server = await startCodeServer(home, options.vsix, socket);
  const browser = await startBrowser();
  const close = async () => {
    await browser.close();
    await server.close();
    rmSync(home, { recursive: true, force: true, maxRetries: 5 });
  };
  const otherHosts = new Set<string>();
  const note = (address: string) => {
    const { protocol, host } = new URL(address);
    if (/^(http|ws)/.test(protocol) && host !== `127.0.0.1:${server.port}`) otherHosts.add(host);
  };
  // Files of a web view have the address of a host that is never asked: the page's own worker answers.
  const context = browser.page.context();
  context.on('response', answer => {
    if (!answer.fromServiceWorker()) note(answer.url());
  });
  context.on('requestfailed', asked => note(asked.url()));
  try {
    const hands = handsOn(browser.page, close, (command, ...given) => send(socket, { command, given }));
    await browser.page.goto(`http://127.0.0.1:${server.port}/?folder=${encodeURIComponent(folder)}`);
    await browser.page
      .locator('.explorer-folders-view .monaco-list-row')
      .first()
      .waitFor({ timeout: 120_000 });
    await until(
      'the extension host',
      () => hands.run('test.extension', 'test.test-file-system').catch(problem => String(problem)),
      answer => answer === true,
    );
    return {
      ...hands,
      folder,
      extensions: server.extensions,
      otherHosts,
      processes: () => processesBelow(server.pid),
    };
  } catch (problem) {
    await browser.page.screenshot({ path: screenshotPath('desktop-start-failed') }).catch(() => undefined);
    await close();
    throw problem;
  }
}

function commitAll(folder: string): void {
  for (const words of [
    ['init', '-q'],
    ['add', '.'],
    ['commit', '-q', '-m', 'As found'],
  ]) {
    const done = spawnSync('git', ['-c', 'user.name=test', '-c', 'user.email=test@localhost', ...words], {
      cwd: folder,
      encoding: 'utf8',
    });
    if (done.status !== 0) throw new Error(`git ${words.join(' ')} failed:\n${done.stderr}`);
  }
}

/** Has a command run in the extension host. */
function send(socketPath: string, call: { command: string; given: readonly unknown[] }): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const asked = request({ socketPath, method: 'POST' }, async response => {
      let text = '';
      for await (const part of response.setEncoding('utf8')) text += part;
      const answer = JSON.parse(text);
      if ('problem' in answer) reject(new Error(`${call.command}: ${answer.problem}`));
      else resolve(answer.result);
    });
    asked.once('error', reject);
    asked.end(JSON.stringify(call));
  });
}
