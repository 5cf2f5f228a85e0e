import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { grantClipboard, pickWay, readClipboard } from './clipboard.js';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const spec = exampleSpec;

describe('the sheet beside the text', () => {
  const files = exampleFiles();
  const asWritten = files[spec]!;
  const { text: mistaken, place, right, wrong } = withWrongHand(asWritten);
  let workbench: Workbench;
  let sheet: Locator;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [spec]: mistaken },
      open: spec,
    });
    await workbench.run('workbench.action.closeSidebar');
    await workbench.run('tailshaft.showSheet');
    sheet = workbench.webview();
    await sheet.locator('main.panel').waitFor();
  });
  afterAll(() => workbench?.close());

  it('shows the proposed lines from aft and from above, with what fails', async () => {
    expect(await sheet.locator('h1').textContent()).toContain('Ternhaven');
    const pictures = sheet.locator('svg[role=group]');
    expect(await pictures.count()).toBe(2);
    expect(await pictures.first().textContent()).toContain('drives ASTERN');
    expect(await sheet.locator('.counts').textContent()).toMatch(/1 failing/);
    await workbench.screenshot('4-sheet');
  });

  it('leads from a check to its text', async () => {
    await sheet.locator('.check .go', { hasText: 'fails' }).first().click();
    await until('the cursor', selected, text => text === wrong);
  });

  it('leads from a part of the picture to its text, by mouse and by keyboard', async () => {
    await sheet.locator('svg [data-part="proposed.Port.gear"]').click();
    await until('the cursor', selected, text => text.startsWith('replace gear') || text.startsWith('gear'));
    await sheet.locator('svg [data-part="proposed.Port.engine"]').focus();
    await workbench.page.keyboard.press('Enter');
    await until('the cursor', selected, text => text.includes('engine'));
  });

  it('marks the part in which the cursor stands', async () => {
    await workbench.placeCursor(spec, 'nitrogen-stainless');
    await sheet
      .locator('[data-part="proposed.Port.shaft1"].at-cursor, [data-part="proposed.Port.shaft"].at-cursor')
      .first()
      .waitFor();
    await workbench.screenshot('5-sheet-cursor');
  });

  it('follows the text as it is typed', async () => {
    await workbench.placeCursor(spec, mistaken.slice(place - 120, place) + wrong, { at: 120, select: true });
    await workbench.typeText(right);
    await until(
      'the sheet',
      () => sheet.locator('.counts').textContent(),
      text => text !== null && !/failing/.test(text),
    );
    expect(await sheet.locator('svg').first().textContent()).not.toContain('ASTERN');
  });

  it('switches arrangement, line, operating point and direction', async () => {
    const control = (name: string) => sheet.locator(`[data-control=${name}] select`);
    const aft = sheet.locator('svg').first();
    await sheet.locator('input[value=astern]').check();
    await until(
      'astern',
      () => aft.textContent(),
      text => /clockwise astern, inward-turning/.test(text ?? ''),
    );
    await sheet.locator('input[value=ahead]').check();
    await control('line').selectOption('Port');
    await until(
      'one line',
      () => sheet.locator('svg [data-part$=".engine"]').count(),
      number => number === 1,
    );
    await control('point').selectOption('idle');
    await sheet.locator('svg .reading', { hasText: '600 rpm' }).first().waitFor();
    await control('line').selectOption('');
    await control('arrangement').selectOption('existing');
    await sheet.locator('h2', { hasText: 'Existing' }).waitFor();
    await control('arrangement').selectOption('proposed');
  });

  it('puts as found and proposed side by side', async () => {
    await workbench.run('tailshaft.compareArrangements');
    await sheet.locator('.beside > section').nth(1).waitFor();
    expect(await sheet.locator('#changes').textContent()).toMatch(/shaft torque at rated power/);
    await workbench.screenshot('6-sheet-beside');
  });

  it('keeps what was chosen while it is hidden', async () => {
    await sheet.locator('[data-control=beside] select').selectOption('');
    await sheet.locator('[data-control=line] select').selectOption('Starboard');
    await sheet.locator('.alone').waitFor();
    await workbench.run('workbench.action.focusSecondEditorGroup');
    await workbench.openFile('catalogue/gears.shaft');
    await workbench.run('workbench.action.previousEditor');
    await sheet.locator('main.panel').waitFor();
    expect(await sheet.locator('[data-control=line] select').inputValue()).toBe('Starboard');
  });

  it.each([
    ['Save as PNG', 'png', /^.PNG\r\n/],
    ['Save as SVG', 'svg', /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[\s\S]*<\/svg>$/],
    ['Save as HTML', 'html', /^<!doctype html>[\s\S]*<h1>Ternhaven/],
  ])('%s', async (way, ending, content) => {
    await pickWay(workbench, way);
    const input = workbench.page.locator('.quick-input-widget input[type=text]');
    await until(
      'the dialog',
      () => input.first().inputValue(),
      value => value.endsWith(`ternhaven.${ending}`),
    );
    await workbench.page.keyboard.press('Enter');
    const saved = () =>
      workbench.run('test.saved', `pilot-cutter/ternhaven.${ending}`).catch(() => '') as Promise<string>;
    expect(await until('the file', saved, text => text !== '')).toMatch(content);
  });

  it.each([
    ['Copy as SVG', /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[\s\S]*<\/svg>$/],
    ['Copy as HTML', /^<!doctype html>[\s\S]*<h1>Ternhaven/],
  ])('%s', async (way, content) => {
    await grantClipboard(workbench.page);
    await pickWay(workbench, way);
    await workbench.page.locator('.statusbar-item', { hasText: 'Copied.' }).waitFor();
    const { text } = await readClipboard(workbench.page);
    expect(text).toMatch(content);
    await workbench.page.locator('.statusbar-item', { hasText: 'Copied.' }).waitFor({ state: 'detached' });
  });

  it('Copy as PNG', async () => {
    await pickWay(workbench, 'Copy as PNG');
    await workbench.page.locator('.statusbar-item', { hasText: 'Copied.' }).waitFor();
    const { types, picture } = await readClipboard(workbench.page);
    expect(types).toEqual(['image/png']);
    // Twice the size of the drawing, and not all paper.
    expect(picture!.width).toBeGreaterThan(1000);
    expect(picture!.height).toBeGreaterThan(1000);
    expect(picture!.colours).toBeGreaterThan(20);
  });

  it('says so when the clipboard takes no picture, and offers to save it', async () => {
    const frame = (await (await sheet.elementHandle())!.ownerFrame())!;
    await frame.evaluate(() => {
      navigator.clipboard.write = () => Promise.reject(new Error('refused'));
    });
    await pickWay(workbench, 'Copy as PNG');
    const notice = workbench.page.locator('.notification-toast', {
      hasText: 'could not be copied to the clipboard',
    });
    await notice.waitFor();
    await notice.getByRole('button', { name: 'Save as PNG' }).click();
    const input = workbench.page.locator('.quick-input-widget input[type=text]');
    await until(
      'the dialog',
      () => input.first().inputValue(),
      value => value.endsWith('ternhaven.png'),
    );
    await workbench.page.keyboard.press('Escape');
  });

  it('leaves no error in the console', () => {
    expect(workbench.consoleErrors).toEqual([]);
  });

  async function selected(): Promise<string> {
    return (await workbench.run('test.selected')) as string;
  }
});
