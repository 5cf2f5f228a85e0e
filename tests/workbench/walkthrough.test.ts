import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { errorsButOfLeaving } from './reloaded.js';
import { extensionUnderTest } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const folder = extensionUnderTest();
const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
const words = JSON.parse(readFileSync(join(folder, 'package.nls.json'), 'utf8')) as Record<string, string>;
const steps = (
  manifest.contributes.walkthroughs[0].steps as { id: string; title: string; description: string }[]
).map(({ id, title, description }) => ({
  id,
  title: words[title.replace(/%/g, '')]!,
  button: /\[([^\]]+)\]\(command:/.exec(words[description.replace(/%/g, '')]!)![1]!,
}));

// From the first to the last, and from the last to the first: no step needs the one before it.
describe.each([
  ['in order', steps],
  ['in reverse', [...steps].reverse()],
] as const)('the walkthrough, in a folder without a spec, %s', (order, inOrder) => {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await startWorkbench({ extensionFolder: folder, files: { 'notes.txt': 'Nothing yet.\n' } });
  });
  afterAll(() => workbench?.close());

  /** What shows that the button did what it says. */
  const done: Readonly<Record<string, () => Promise<unknown>>> = {
    example: () => workbench.page.locator('.statusbar-item', { hasText: /holding/ }).waitFor(),
    mistake: () =>
      workbench.page
        .locator('.action-widget .monaco-list-row.action', { hasText: /hand/i })
        .first()
        .waitFor(),
    sheet: () => workbench.webview().locator('main.panel svg').first().waitFor(),
    compare: () => workbench.webview().locator('.beside > section').nth(1).waitFor(),
    rules: () => question('Which rule?'),
    own: () => question('How many shaft lines has the vessel?'),
  };
  const question = (text: string) =>
    workbench.page.locator(`.quick-input-widget input[placeholder*="${text}"]`).waitFor();

  it('has a button in each step', () => {
    expect(Object.keys(done)).toEqual(steps.map(one => one.id));
  });

  it.each(inOrder)('$title: its button works', async ({ id, title, button }) => {
    const { page } = workbench;
    await workbench.run(
      'workbench.action.openWalkthrough',
      'tailshaft.tailshaft-drivetrain#firstRepower',
      false,
    );
    const guide = page.locator('.gettingStartedContainer');
    await guide.locator('.step-title', { hasText: title }).first().click();
    const clicked = guide.locator('.monaco-button', { hasText: button }).first();
    await clicked.waitFor();
    if (order === 'in order') await workbench.screenshot(`walkthrough-${id}`);
    // The page of the guide may draw itself anew under the mouse; a person whose click did nothing clicks again.
    await until(
      'the effect',
      async () => {
        if (await clicked.isVisible()) await clicked.click();
        return done[id]!().then(
          () => true,
          () => false,
        );
      },
      found => found,
    );
    if (order === 'in order') await workbench.screenshot(`walkthrough-${id}-done`);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('leaves no error in the console', () => {
    expect(errorsButOfLeaving(workbench.consoleErrors)).toEqual([]);
  });
});
