import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Frame, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faintInDrawings } from './drawing-contrast.js';
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

const themes = [
  ['Light Modern', 'vscode-light'],
  ['Dark Modern', 'vscode-dark'],
  ['Default High Contrast', 'vscode-high-contrast'],
  ['Default High Contrast Light', 'vscode-high-contrast-light'],
] as const;

/** Two arrangements with what changes; every chart; what cannot be told and what was accepted. */
const shown = [
  { spec: exampleSpec, command: 'tailshaft.compareArrangements', drawings: 11 },
  { spec: 'ferry/brackle.shaft', command: 'tailshaft.showSheet', drawings: 8 },
  { spec: 'motor-launch/reedmouth.shaft', command: 'tailshaft.showSheet', drawings: 6 },
] as const;

describe.each(shown)('$command of $spec in every theme', ({ spec, command, drawings }) => {
  const files = exampleFiles();
  const { text: mistaken } = withWrongHand(files[exampleSpec]!);
  const name = spec.split('/').at(-1)!.replace('.shaft', '');
  let workbench: Workbench;
  let sheet: Locator;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [exampleSpec]: mistaken },
      open: spec,
    });
    await workbench.run('workbench.action.closeSidebar');
    await workbench.run(command);
    sheet = workbench.webview();
    await sheet.locator('section.arrangement').first().waitFor();
    for (const fold of await sheet.locator('summary').all()) await fold.click();
  });
  afterAll(() => workbench?.close());

  it('draws all there is to draw, each with a name for those who do not see it', async () => {
    const named = await sheet.locator('svg').evaluateAll(all =>
      all.map(svg =>
        svg
          .getAttribute('aria-labelledby')!
          .split(' ')
          .map(id => svg.ownerDocument.getElementById(id)?.textContent ?? ''),
      ),
    );
    expect(named.length).toBeGreaterThanOrEqual(drawings);
    for (const [title, description] of named) {
      expect(title).not.toBe('');
      expect(description).not.toBe('');
    }
    expect(new Set(named.map(([title]) => title)).size).toBe(named.length);
  });

  it.each(themes)('%s: follows it, and axe finds nothing', async (theme, kind) => {
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
    await workbench.screenshot(`theme-${name}-${kind}`);
    expect(await violations()).toEqual([]);
    expect(await faintInDrawings(sheet)).toEqual([]);
  });

  it('would find words and shapes that are too faint', async () => {
    const paint = (value: string) =>
      sheet.evaluate((body, given) => body.style.setProperty('--ink', given), value);
    await paint('color-mix(in srgb, var(--vscode-editor-foreground) 20%, var(--paper))');
    expect(await faintInDrawings(sheet)).not.toEqual([]);
    await paint('');
    expect(await faintInDrawings(sheet)).toEqual([]);
  });

  it('leads by the keyboard through switches, checks and parts, and shows where it is', async () => {
    await sheet.locator('#controls select:visible').first().focus();
    const order: string[] = [];
    for (let step = 0; step < 60 && !order.includes('followed'); step++) {
      order.push(await sheet.evaluate(focusedPart));
      await workbench.page.keyboard.press('Tab');
    }
    expect(order).toContain('select');
    expect(order).toContain('keep');
    expect(order).toContain('followed');
    expect(order).not.toContain('body');
    expect(order.filter(one => one.endsWith('without outline'))).toEqual([]);
  });

  it('stays readable at 200 %: nothing is cut off, and nothing scrolls sideways', async () => {
    await sheet.evaluate(body => {
      body.ownerDocument.documentElement.style.zoom = '2';
    });
    const width = await sheet.evaluate(body => {
      const root = body.ownerDocument.documentElement;
      return [root.scrollWidth, root.clientWidth];
    });
    await workbench.screenshot(`theme-${name}-200-percent`);
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

/** What has the focus, in one word; said when nothing shows it. */
function focusedPart(body: SVGElement | HTMLElement): string {
  const active = body.ownerDocument.activeElement!;
  const named = active.classList[0] ?? active.tagName.toLowerCase();
  const { outlineStyle, outlineWidth } = getComputedStyle(active);
  const isShown = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0;
  return active === body || isShown ? named : `${named} without outline`;
}
