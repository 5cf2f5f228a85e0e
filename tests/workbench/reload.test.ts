import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { errorsButOfLeaving, reloaded } from './reloaded.js';
import { chooseOnSheet } from './sheet-state.js';
import { exampleFiles, exampleSpec, extensionUnderTest } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

describe('a window that is loaded anew', () => {
  let workbench: Workbench;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: exampleFiles(),
      open: exampleSpec,
    });
    await workbench.run('tailshaft.showSheet');
    await workbench.webview().locator('main.panel').waitFor();
  });
  afterAll(() => workbench?.close());

  it('brings the sheet back as it was left', async () => {
    await chooseOnSheet(workbench.webview());
    const [before, after] = await reloaded(workbench, 'Ternhaven');
    expect(after).toEqual(before);
    await workbench.screenshot('b-reloaded');
  });

  it('keeps one panel for one spec: the command shows the one that came back', async () => {
    await workbench.openFile(exampleSpec);
    await workbench.run('tailshaft.showSheet');
    expect(await workbench.page.locator('.tab', { hasText: 'Sheet of Ternhaven' }).count()).toBe(1);
  });

  it('leaves the sheet that came back alive', async () => {
    await workbench.placeCursor(exampleSpec, 'arrangement proposed');
    await workbench.webview().locator('[data-control=line] select').selectOption('');
    await workbench.webview().locator('[data-part="proposed.Port.gear"]').waitFor();
    await workbench.webview().locator('svg [data-part="proposed.Port.gear"]').click();
    await until(
      'the cursor',
      () => workbench.run('test.selected'),
      text => String(text).startsWith('replace gear') || String(text).startsWith('gear'),
    );
  });

  it('leaves no error in the console but those of the page that went', () => {
    expect(errorsButOfLeaving(workbench.consoleErrors)).toEqual([]);
  });
});
