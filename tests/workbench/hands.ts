import type { Page } from 'playwright-core';
import { screenshotPath } from './screenshots.js';
import { until } from './until.js';
import type { Diagnostic, Workbench } from './workbench.js';

/** Turns what a person does in the workbench into clicks and keys, and reads what a person would see. */
export function handsOn(page: Page, close: () => Promise<void>, run: Run = runInPage(page)): Workbench {
  const consoleErrors: string[] = [];
  page.setDefaultTimeout(20_000);
  page.on('console', line => {
    // The workbench asks for a translation that not every extension has, and for a module that is in no
    // open build.
    if (/\/package\.nls\.json$|\/node_modules\/vsda\//.test(line.location().url)) return;
    if (line.type() === 'error') consoleErrors.push(line.text());
  });
  page.on('pageerror', problem => consoleErrors.push(String(problem)));

  const editor = page.locator('.editor-group-container.active .monaco-editor').first();
  const menu = page.locator('.action-widget:not(.action-list-submenu-panel)');

  const squiggles = async (): Promise<string[]> => {
    const marks = await editor.locator('.view-overlays .cdr[class*=squiggly-]').all();
    const found: string[] = [];
    for (const mark of marks) {
      const classes = (await mark.getAttribute('class', { timeout: 1_000 }).catch(() => null)) ?? '';
      const severity = /squiggly-(error|warning|info|hint)/.exec(classes)?.[1];
      if (severity) found.push(severity);
    }
    return found;
  };

  const openMenu = async () => {
    await editor.locator('.native-edit-context, textarea.inputarea').first().focus();
    await page.keyboard.press('Control+.');
    await menu.locator('.monaco-list-row').first().waitFor();
  };

  const workbench: Workbench = {
    page,
    consoleErrors,
    run,
    close,
    squiggles,
    async openFile(path) {
      await run('test.open', path);
      const name = path.split('/').at(-1)!;
      await page.locator('.tab.active', { hasText: name }).waitFor();
      await editor.locator('.view-line').first().waitFor();
    },
    async placeCursor(path, text, { select = false, at = 0 } = {}) {
      const whole = await workbench.text(path);
      const offset = whole.indexOf(text);
      if (offset < 0) throw new Error(`"${text}" is not in ${path}.`);
      const wanted = select ? text.slice(at) : '';
      await run('test.placeCursor', path, offset + at, wanted.length);
      await editor.locator('.cursors-layer .cursor').first().waitFor();
      // A text that is opened anew still gets the focus, and its view its place, a moment later.
      await until(
        'the cursor in its place',
        () => run('test.cursor') as Promise<{ offset: number; selected: string }>,
        found => found.offset === offset + at && found.selected === wanted,
      );
    },
    async typeText(text) {
      await editor.locator('.native-edit-context, textarea.inputarea').first().focus();
      await page.keyboard.type(text, { delay: 15 });
    },
    text: path => run('test.text', path) as Promise<string>,
    diagnostics: path => run('test.diagnostics', path) as Promise<readonly Diagnostic[]>,
    waitForSquiggles: wanted => until('the wavy lines', squiggles, wanted),
    async problems() {
      await run('workbench.panel.markers.view.focus');
      const rows = page.locator('.markers-panel .monaco-list-row .marker-message-details-container');
      await page.locator('.markers-panel').first().waitFor();
      return (await rows.allInnerTexts()).map(each => each.replace(/\s+/g, ' ').trim());
    },
    waitForProblems: wanted => until('the Problems view', workbench.problems, wanted),
    async hoverAt(path, text, { at = Math.min(1, text.length - 1) } = {}) {
      const hover = page.locator('.monaco-hover:not(.hidden) .hover-row');
      await workbench.placeCursor(path, text, { at });
      // A text that scrolls into view under a still mouse shows nothing: a person would move it again.
      await until(
        'the hover to open',
        async () => {
          await page.mouse.move(700, 5);
          await hover.first().waitFor({ state: 'hidden' });
          const box = await editor.locator('.cursors-layer .cursor').first().boundingBox();
          if (!box || box.y <= 0) return false;
          await page.mouse.move(box.x + 2, box.y + box.height / 2, { steps: 4 });
          return hover
            .first()
            .waitFor({ timeout: 5_000 })
            .then(() => true)
            .catch(() => false);
        },
        shown => shown,
      );
      return until(
        'the hover',
        async () => (await hover.allInnerTexts()).join('\n').trim(),
        found => found !== '' && !/^Loading/.test(found),
      );
    },
    async quickFixes() {
      await openMenu();
      const titles = await menu.locator('.monaco-list-row.action .title').allInnerTexts();
      await page.keyboard.press('Escape');
      await menu.waitFor({ state: 'hidden' });
      return titles;
    },
    async quickFix(title) {
      await openMenu();
      // Until the mouse moves, the menu lies under a shield that keeps a click meant for the text off it.
      await page.mouse.move(5, 5);
      await page.locator('.context-view-pointerBlock').waitFor({ state: 'detached' });
      await menu.locator('.monaco-list-row.action', { hasText: title }).first().click();
      await menu.waitFor({ state: 'hidden' });
    },
    async clickInExplorer(path) {
      await run('workbench.view.explorer');
      const tree = page.locator('.explorer-folders-view');
      const parts = path.split('/');
      for (const depth of parts.keys()) {
        // The label is the path, and words such as "Contains problems" may follow it.
        const label = `~/${parts.slice(0, depth + 1).join('/')}`;
        const row = tree
          .locator('.monaco-list-row')
          .filter({ has: page.locator(`[aria-label="${label}"], [aria-label^="${label} "]`) });
        await row.waitFor();
        if ((await row.getAttribute('aria-expanded')) !== 'true') await row.click();
      }
      await page.locator('.tab.active', { hasText: parts.at(-1)! }).waitFor();
    },
    webview: () =>
      page.frameLocator('iframe.webview.ready').first().frameLocator('iframe#active-frame').locator('body'),
    async screenshot(name) {
      const path = screenshotPath(name);
      await page.screenshot({ path });
      return path;
    },
  };
  return workbench;
}

type Run = Workbench['run'];

/** Our own page hands the workbench's commands to the test. */
function runInPage(page: Page): Run {
  return (command, ...given) =>
    page.evaluate(`runCommand(${[command, ...given].map(each => JSON.stringify(each)).join(',')})`);
}
