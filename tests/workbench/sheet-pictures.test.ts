import { writeFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { difference, pictureOf } from './compare-pictures.js';
import { startWorkbench } from './harness.js';
import { screenshotPath } from './screenshots.js';
import { exampleFiles, exampleSpec, extensionUnderTest, handRoute, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

/**
 * Screenshots of the panel against each other, taken in one run: fonts differ from machine to machine, so none is kept
 * to compare with.
 */
describe('pictures of the sheet', () => {
  const files = exampleFiles();
  const { text: mistaken, place, right, wrong } = withWrongHand(files[exampleSpec]!);
  let workbench: Workbench;
  let sheet: Locator;
  let aft: Locator;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [exampleSpec]: mistaken },
      open: exampleSpec,
    });
    await workbench.run('workbench.action.closeSidebar');
    await workbench.run('tailshaft.showSheet');
    sheet = workbench.webview();
    aft = sheet.locator('figure').first();
    await aft.waitFor();
  });
  afterAll(() => workbench?.close());

  it('one state looks the same twice', async () => {
    expect(await apart(await take('same-1'), await take('same-2'))).toBe(0);
  });

  it('another theme changes nearly every pixel, and going back brings every one back', async () => {
    await theme('Dark Modern', 'vscode-dark');
    const dark = await take('dark');
    await theme('Light Modern', 'vscode-light');
    const light = await take('light');
    expect(await apart(dark, light)).toBeGreaterThan(0.9);
    await theme('Dark Modern', 'vscode-dark');
    expect(await apart(await take('dark-again'), dark)).toBe(0);
  });

  it.each(['Default High Contrast', 'Default High Contrast Light'])(
    '%s shows the same drawing in its own colours',
    async name => {
      const before = await take('before-contrast');
      await theme(name, 'vscode-high-contrast');
      const after = await take(`contrast-${name.length}`);
      expect(await apart(before, after)).toBeGreaterThan(0.01);
      await theme('Dark Modern', 'vscode-dark');
    },
  );

  it('the lever astern turns the arrows round, and ahead brings them back', async () => {
    const ahead = await take('ahead');
    await sheet.locator('input[value=astern]').check();
    await sheet.locator('h3', { hasText: 'lever astern' }).waitFor();
    const astern = await take('astern');
    // The hull stays; arrows, blades and words change.
    expect(await apart(ahead, astern)).toBeGreaterThan(0.001);
    expect(await apart(ahead, astern)).toBeLessThan(0.1);
    await sheet.locator('input[value=ahead]').check();
    await sheet.locator('h3', { hasText: 'lever ahead' }).waitFor();
    expect(await apart(await take('ahead-again'), ahead)).toBe(0);
  });

  it('the fix of a wrong hand shows, and the mistake made anew looks as before', async () => {
    const before = await take('wrong-hand');
    const around = mistaken.slice(place - 120, place);
    await workbench.placeCursor(exampleSpec, around + wrong, { at: around.length + 1 });
    await workbench.quickFix(handRoute(right));
    await told(counts => !counts.includes('failing'));
    const fixed = await take('right-hand');
    expect(await apart(before, fixed)).toBeGreaterThan(0.001);
    await workbench.placeCursor(exampleSpec, around + right, { at: around.length, select: true });
    await workbench.typeText(wrong);
    await told(counts => counts.includes('1 failing'));
    expect(await apart(await take('wrong-again'), before)).toBe(0);
  });

  /** The lines from aft, with no part of them marked by the cursor. */
  async function take(name: string): Promise<Buffer> {
    await workbench.placeCursor(exampleSpec, 'import "../catalogue"');
    await sheet.locator('svg .at-cursor').first().waitFor({ state: 'detached' });
    const picture = await pictureOf(aft);
    writeFileSync(screenshotPath(`picture-${name}`), picture);
    return picture;
  }

  function apart(one: Buffer, other: Buffer): Promise<number> {
    return difference(workbench.page, one, other);
  }

  async function theme(name: string, kind: string): Promise<void> {
    await workbench.run('test.set', 'workbench.colorTheme', name);
    await until(
      'the theme',
      () => sheet.getAttribute('class'),
      classes => classes?.split(' ').includes(kind) ?? false,
    );
  }

  async function told(wanted: (counts: string) => boolean): Promise<void> {
    await until(
      'the sheet',
      () => sheet.locator('.counts').textContent(),
      counts => counts !== null && wanted(counts),
    );
  }
});
