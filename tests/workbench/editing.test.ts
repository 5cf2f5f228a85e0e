import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const spec = exampleSpec;
const gears = 'catalogue/gears.shaft';

describe('writing in the workbench', () => {
  const files = exampleFiles();
  let workbench: Workbench;

  beforeAll(async () => {
    workbench = await startWorkbench({ extensionFolder: extensionUnderTest(), files, open: spec });
    await workbench.page.locator('.statusbar-item', { hasText: 'holding' }).waitFor();
  });
  afterAll(() => workbench?.close());

  it('completes a part from the catalogue', async () => {
    await workbench.placeCursor(spec, 'replace gear Alder-63', { at: 'replace gear '.length, select: true });
    await workbench.page.keyboard.press('Delete');
    await workbench.run('editor.action.triggerSuggest');
    const rows = workbench.page.locator('.suggest-widget.visible .monaco-list-row');
    await rows.filter({ hasText: 'Alder-63' }).first().waitFor();
    await workbench.screenshot('a-completion');
    await workbench.typeText('Alder-63');
    await workbench.page.keyboard.press('Escape');
    expect(await workbench.text(spec)).toBe(files[spec]);
  });

  it('goes to the declaration of a part in its catalogue', async () => {
    await workbench.placeCursor(spec, 'replace gear Alder-63', { at: 'replace gear '.length + 2 });
    await workbench.run('editor.action.revealDefinition');
    await workbench.page.locator('.tab.active', { hasText: 'gears.shaft' }).waitFor();
  });

  it('renames an entry in every file that names it', async () => {
    await workbench.placeCursor(spec, 'replace gear Alder-63', { at: 'replace gear '.length + 2 });
    // The command is done only when the name is given.
    const renaming = workbench.run('editor.action.rename');
    const box = workbench.page.locator('.rename-box input, .rename-input');
    await box.first().waitFor();
    await box.first().fill('Alder-63-B');
    await box.first().press('Enter');
    await renaming;
    await until(
      'the spec',
      () => workbench.text(spec),
      text => text.includes('gear Alder-63-B'),
    );
    await until(
      'the catalogue',
      () => workbench.text(gears),
      text => text.includes('gear Alder-63-B '),
    );
    for (const path of [spec, gears]) expect(await workbench.text(path)).not.toMatch(/Alder-63(?!-B)\b/);
    const wrong = (await workbench.diagnostics(spec)).filter(each => each.severity === 'error');
    expect(wrong).toEqual([]);
  });

  it('compares with another spec by consequence', async () => {
    await workbench.openFile(spec);
    const running = workbench.run('tailshaft.compareWithFile');
    const input = workbench.page.locator('.quick-input-widget input');
    await input.waitFor();
    await workbench.page.keyboard.type('saltmarsh');
    await workbench.page.keyboard.press('Enter');
    await running;
    const texts = await until(
      'the comparison',
      async () => (await workbench.run('test.openTexts')) as { address: string; text: string }[],
      all => all.some(one => one.address.startsWith('tailshaft-comparison:')),
    );
    const page = texts.find(one => one.address.startsWith('tailshaft-comparison:'))!;
    expect(page.text).toContain('**Vessel added**: Ternhaven');
    expect(page.text).toContain('**Vessels taken out**: Saltmarsh');
    await workbench.run('workbench.action.closeActiveEditor');
  });

  it('starts the server anew and goes on', async () => {
    await workbench.run('tailshaft.restartServer');
    await workbench.openFile(spec);
    await workbench.placeCursor(spec, 'diameter 28.5 in', { at: 'diameter '.length, select: true });
    await workbench.typeText('28.5 kg');
    await until(
      'a finding',
      () => workbench.diagnostics(spec),
      all => all.some(one => one.severity === 'error'),
    );
  });

  it('leaves no error in the console', () => {
    expect(workbench.consoleErrors).toEqual([]);
  });
});
