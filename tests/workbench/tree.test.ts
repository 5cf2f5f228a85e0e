import { findRule } from '@tailshaft/drivetrain';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const all = exampleFiles();
const catalogue = Object.fromEntries(Object.entries(all).filter(([path]) => path.startsWith('catalogue/')));
const spec = all[exampleSpec]!;
const { text: mistaken } = withWrongHand(spec);
/** A hundred vessels in five folders; every seventh has its propeller of the wrong hand. */
const fleet = Object.fromEntries(
  Array.from({ length: 100 }, (_, index) => {
    const text = (index % 7 === 3 ? mistaken : spec).replace(/\bTernhaven\b/g, `Ternhaven-${index + 1}`);
    return [`fleet-${index % 5}/vessel-${index + 1}.shaft`, text] as const;
  }),
);

describe('the tree of a hundred vessels', () => {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...catalogue, ...fleet },
    });
  });
  afterAll(() => workbench?.close());

  const rows = () => workbench.page.locator('.pane-body .monaco-list-row');
  const listed = async () => (await rows().allInnerTexts()).map(text => text.replace(/\s+/g, ' ').trim());

  it('groups them by folder, and says how many stand how', async () => {
    await workbench.run('tailshaft.vessels.focus');
    const words = await until(
      'the folders',
      listed,
      found => found.filter(one => one.includes('20 vessels')).length === 5,
      90_000,
    );
    expect(words.every(one => /^fleet-\d ?20 vessels: /.test(one))).toBe(true);
    expect(words.join('\n')).toMatch(/[23] failing/);
    await workbench.screenshot('tree-100');
  });

  it('opens to the vessels, each with its file', async () => {
    await rows().first().click();
    const words = await until('the vessels', listed, found =>
      found.some(one => one.includes('vessel-1.shaft')),
    );
    expect(words.find(one => one.startsWith('Ternhaven-1'))).toMatch(
      /^Ternhaven-1 ?vessel-1\.shaft · .*holding$/,
    );
    for (const theme of [
      'Light Modern',
      'Dark Modern',
      'Default High Contrast',
      'Default High Contrast Light',
    ]) {
      await workbench.run('test.set', 'workbench.colorTheme', theme);
      await new Promise(resolve => setTimeout(resolve, 600));
      await workbench.screenshot(`tree-100-${theme.replace(/ /g, '-').toLowerCase()}`);
    }
  });

  it('shows the page of a rule in one column, whichever rule it is', async () => {
    const { page } = workbench;
    await workbench.openFile('fleet-0/vessel-1.shaft');
    for (const rule of ['rotation/propeller-hand', 'shafting/diameter', 'capacity/gear-input-torque']) {
      await workbench.run('workbench.action.focusFirstEditorGroup');
      await workbench.run('tailshaft.explainRule', rule);
      await workbench
        .webview()
        .locator('h1', { hasText: findRule(rule)!.title })
        .waitFor();
      expect(await page.locator('.editor-group-container').count()).toBe(2);
    }
    const body = workbench.webview();
    expect(await body.locator('pre .keyword').count()).toBeGreaterThan(0);
    expect(await body.locator('pre .property').count()).toBeGreaterThan(0);
    for (const theme of [
      'Light Modern',
      'Dark Modern',
      'Default High Contrast',
      'Default High Contrast Light',
    ]) {
      await workbench.run('test.set', 'workbench.colorTheme', theme);
      await new Promise(resolve => setTimeout(resolve, 600));
      await workbench.screenshot(`rule-page-${theme.replace(/ /g, '-').toLowerCase()}`);
    }
  });

  it('leads from the code of a finding to that page', async () => {
    const { page } = workbench;
    await workbench.run('workbench.action.closeAllEditors');
    await workbench.openFile('fleet-3/vessel-4.shaft');
    await workbench.problems();
    const link = page.locator('.markers-panel a[href*="rotation/propeller-hand.md"]').first();
    await link.waitFor();
    await link.click({ modifiers: ['Control'] });
    const { title } = findRule('rotation/propeller-hand')!;
    await workbench.webview().locator('h1', { hasText: title }).waitFor();
    await workbench.screenshot('rule-page-from-problems');
  });

  it('leaves no error in the console', () => {
    expect(workbench.consoleErrors).toEqual([]);
  });
});
