import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Frame, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

/** axe-core by Deque Systems checks against WCAG 2.2, levels A and AA. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');
const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};

describe('the sheet in every theme', () => {
  const files = exampleFiles();
  const { text: mistaken } = withWrongHand(files[exampleSpec]!);
  let workbench: Workbench;
  let sheet: Locator;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [exampleSpec]: mistaken },
      open: exampleSpec,
    });
    await workbench.run('workbench.action.closeSidebar');
    await workbench.run('tailshaft.compareArrangements');
    sheet = workbench.webview();
    await sheet.locator('.beside > section').nth(1).waitFor();
    for (const fold of await sheet.locator('summary').all()) await fold.click();
  });
  afterAll(() => workbench?.close());

  it.each([
    ['Light Modern', 'vscode-light'],
    ['Dark Modern', 'vscode-dark'],
    ['Default High Contrast', 'vscode-high-contrast'],
    ['Default High Contrast Light', 'vscode-high-contrast-light'],
  ])('%s: follows it, and axe finds nothing', async (theme, kind) => {
    await workbench.run('test.set', 'workbench.colorTheme', theme);
    await until(
      'the theme',
      () => sheet.getAttribute('class'),
      classes => classes?.split(' ').includes(kind) ?? false,
    );
    const paper = await sheet.evaluate(body => getComputedStyle(body).backgroundColor);
    const editor = await workbench.page
      .locator('.monaco-editor-background')
      .first()
      .evaluate(element => getComputedStyle(element).backgroundColor);
    expect(paper).toBe(editor);
    await workbench.screenshot(`theme-${kind}`);
    expect(await violations()).toEqual([]);
  });

  it('stays readable at 200 %: nothing is cut off, and nothing scrolls sideways', async () => {
    await sheet.evaluate(body => {
      body.ownerDocument.documentElement.style.zoom = '2';
    });
    const width = await sheet.evaluate(body => {
      const root = body.ownerDocument.documentElement;
      return [root.scrollWidth, root.clientWidth];
    });
    await workbench.screenshot('theme-200-percent');
    expect(width[0]).toBeLessThanOrEqual(width[1]! + 1);
  });

  async function violations(): Promise<string[]> {
    const frame = (await (await sheet.elementHandle())!.ownerFrame()) as Frame;
    await frame.evaluate(axe);
    const found = (await frame.evaluate(`axe.run(document, ${JSON.stringify(options)})`)) as AxeResults;
    return found.violations.map(
      one =>
        `${one.id}: ${one.help} (${one.nodes
          .map(node => `${node.html.slice(0, 120)} ${node.failureSummary?.slice(0, 200)}`)
          .slice(0, 3)
          .join(' | ')})`,
    );
  }
});
