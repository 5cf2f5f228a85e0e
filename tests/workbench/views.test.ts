import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const spec = exampleSpec;

interface OpenText {
  readonly address: string;
  readonly language: string;
  readonly text: string;
}

describe('tree, status bar and pages', () => {
  // Three vessels: the tree shows no more rows than fit.
  const kept = /^catalogue\/|ternhaven|quickgrass|saltmarsh/;
  const files = Object.fromEntries(Object.entries(exampleFiles()).filter(([path]) => kept.test(path)));
  const { text: mistaken, wrong } = withWrongHand(files[spec]!);
  let workbench: Workbench;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [spec]: mistaken },
      open: spec,
    });
  });
  afterAll(() => workbench?.close());

  it('says in the status bar how the checks of the open spec stand', async () => {
    const item = workbench.page.locator('.statusbar-item', { hasText: 'failing' });
    await item.waitFor();
    expect(await item.textContent()).toMatch(/1 failing, .*\d+ holding/);
  });

  it('lists vessels, arrangements, lines and checks, the worst in the open', async () => {
    await workbench.run('tailshaft.vessels.focus');
    const rows = workbench.page.locator('.pane-body .monaco-list-row');
    await rows.filter({ hasText: 'Ternhaven' }).first().waitFor();
    const listed = await until(
      'the tree',
      () => rows.allInnerTexts(),
      texts =>
        ['The propeller drives ahead', 'Quickgrass', 'Saltmarsh'].every(wanted =>
          texts.some(text => text.includes(wanted)),
        ),
    );
    const words = listed.map(text => text.replace(/\s+/g, ' ').trim());
    expect(words.filter(text => /^(Ternhaven|Quickgrass|Saltmarsh)/.test(text))).toHaveLength(3);
    const at = (start: string) => words.findIndex(text => text.startsWith(start));
    expect(words[at('proposed')]).toMatch(/1 failing/);
    // Each row stands below what it belongs to.
    const order = [
      'Ternhaven',
      'existing',
      'proposed',
      'The propeller drives ahead',
      'Quickgrass',
      'Saltmarsh',
    ];
    expect(order.map(at)).toEqual(order.map(at).sort((one, other) => one - other));
    // As found is a record: it stands folded above what is proposed.
    expect(words.slice(at('existing') + 1, at('proposed'))).toEqual([]);
    await workbench.screenshot('7-tree');
  });

  it('leads from a check in the tree to its text', async () => {
    const rows = workbench.page.locator('.pane-body .monaco-list-row');
    await rows.filter({ hasText: 'The propeller drives ahead' }).first().click();
    await until(
      'the cursor',
      () => workbench.run('test.selected'),
      text => text === wrong,
    );
  });

  it('explains a rule on a page', async () => {
    await workbench.run('tailshaft.explainRule', 'rotation/propeller-hand');
    const page = await until('the page', openTexts, texts =>
      texts.some(one => one.address.startsWith('tailshaft-rule:')),
    );
    const found = page.find(one => one.address.startsWith('tailshaft-rule:'))!;
    expect(found.text).toContain('`rotation/propeller-hand`');
    expect(found.text).toMatch(/Fails:[\s\S]*```diff/);
    await workbench.webview().locator('h1', { hasText: 'The propeller drives ahead' }).waitFor();
    await workbench.screenshot('8-rule-page');
    await workbench.run('workbench.action.closeActiveEditor');
  });

  it('opens the walkthrough, and the example as a new text that holds', async () => {
    await workbench.run(
      'workbench.action.openWalkthrough',
      'tailshaft.tailshaft-drivetrain#firstRepower',
      false,
    );
    const page = workbench.page.locator('.gettingStartedContainer');
    await page.locator('text=Start from an example').first().waitFor();
    await workbench.screenshot('9-walkthrough');
    await workbench.run('tailshaft.openExample');
    const texts = await until('the example', openTexts, all =>
      all.some(one => one.address.startsWith('untitled:')),
    );
    const example = texts.find(one => one.address.startsWith('untitled:'))!;
    expect(example.language).toBe('tailshaft');
    const item = workbench.page.locator('.statusbar-item', {
      hasText: /^(?!.*\d failing(?! as found)).*holding/,
    });
    await item.waitFor();
  });

  it('leaves no error in the console', () => {
    expect(workbench.consoleErrors).toEqual([]);
  });

  async function openTexts(): Promise<readonly OpenText[]> {
    return (await workbench.run('test.openTexts')) as readonly OpenText[];
  }
});
