import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { startBrowser } from './browser.js';
import { handsOn } from './hands.js';
import { workbenchFolder } from './large-tools.js';
import { quietSettings, quietWorkbench } from './quiet.js';
import { screenshotPath } from './screenshots.js';
import { serveFolders } from './static-server.js';
import type { Workbench, WorkbenchOptions } from './workbench.js';

const here = import.meta.dirname;

export async function startWorkbench(options: WorkbenchOptions): Promise<Workbench> {
  const settings = {
    folder: 'vscode-vfs://yard/repower',
    extensions: ['/helper', '/extension'],
    workbench: { ...quietWorkbench, configurationDefaults: { ...quietSettings, ...options.settings } },
  };
  const json = 'application/json';
  const server = await serveFolders({
    '/': { text: readFileSync(join(here, 'page.html'), 'utf8'), type: 'text/html' },
    '/settings.json': { text: JSON.stringify(settings), type: json },
    '/code/': { folder: workbenchFolder() },
    '/helper/': { folder: join(here, 'file-system') },
    '/helper/files.json': { text: JSON.stringify(options.files), type: json },
    '/extension/': { folder: options.extensionFolder },
  });
  const browser = await startBrowser();
  const close = async () => {
    await browser.close();
    await server.close();
  };
  try {
    const workbench = handsOn(browser.page, close);
    await browser.page.goto(`http://workbench.yard.localhost:${server.port}/`);
    await browser.page
      .locator('.explorer-folders-view .monaco-list-row')
      .first()
      .waitFor({ timeout: 120_000 });
    if (options.open) await workbench.openFile(options.open);
    return workbench;
  } catch (problem) {
    await browser.page.screenshot({ path: screenshotPath('start-failed') }).catch(() => undefined);
    await close();
    throw problem;
  }
}
