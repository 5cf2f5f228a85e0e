import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type DesktopWorkbench, startDesktop } from './desktop-harness.js';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, packedVsix, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const spec = exampleSpec;
const kept = /^catalogue\/|ternhaven/;
const files = Object.fromEntries(Object.entries(exampleFiles()).filter(([path]) => kept.test(path)));
const { text: mistaken, place, wrong, right } = withWrongHand(files[spec]!);
const around = mistaken.slice(place - 120, place);
const rule = 'rotation/propeller-hand';
const importLine = /^import .*$/m.exec(mistaken)![0];

interface Judged {
  readonly address: string;
  readonly findings: number;
}
const judged = (workbench: Workbench) => workbench.run('test.judged') as Promise<readonly Judged[]>;
const isFound = async (workbench: Workbench) =>
  (await workbench.diagnostics(spec)).some(one => one.code === rule);

describe('a folder opened in a browser', () => {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [spec]: mistaken },
    });
  });
  afterAll(() => workbench?.close());

  it('has its findings before a spec is opened', async () => {
    await until(
      'the finding',
      () => isFound(workbench),
      found => found,
    );
    expect(await workbench.page.locator('.tab').count()).toBe(0);
  });
});

describe('a folder opened on the extension host of a desktop', () => {
  let workbench: DesktopWorkbench;
  beforeAll(async () => {
    workbench = await startDesktop({
      vsix: process.env.TAILSHAFT_EXTENSION ?? packedVsix(),
      files: { ...files, [spec]: mistaken },
      committed: true,
    });
  }, 300_000);
  afterAll(() => workbench?.close());

  it('has its findings before a spec is opened', async () => {
    await until(
      'the finding',
      () => isFound(workbench),
      found => found,
    );
    expect(await workbench.page.locator('.tab').count()).toBe(0);
  });

  it('is judged as it is, and not as it was, where a comparison with git shows both', async () => {
    const { page } = workbench;
    await workbench.openFile(spec);
    await workbench.placeCursor(spec, around + wrong, { at: around.length, select: true });
    await workbench.typeText(right);
    await until(
      'no finding',
      () => isFound(workbench),
      found => !found,
    );
    await page.keyboard.press('Control+s');
    await until(
      'the comparison',
      async () => {
        await workbench.run('git.openChange').catch(() => undefined);
        return page.locator('.monaco-diff-editor .editor.original .view-line').count();
      },
      lines => lines > 3,
    );
    const texts = (await workbench.run('test.openTexts')) as { address: string; language: string }[];
    expect(texts.filter(one => one.address.startsWith('git:')).map(one => one.language)).toEqual([
      'tailshaft',
    ]);
    // As long as the findings of the text beside it took.
    await new Promise(resolve => setTimeout(resolve, 3_000));
    await workbench.screenshot('git-comparison');
    // What stands there now does not fail; what stood there did.
    expect((await judged(workbench)).filter(one => !one.address.startsWith('file:'))).toEqual([]);
    expect(await isFound(workbench)).toBe(false);
    expect(await workbench.problems()).not.toContainEqual(expect.stringContaining(rule));
  });

  it('is compared with a revision, in a browser window whose extensions run beside the files', async () => {
    const { page } = workbench;
    const running = workbench.run('tailshaft.compareWithRevision');
    const input = page.locator('.quick-input-widget input');
    await input.waitFor();
    await page.keyboard.press('Enter');
    await running;
    await workbench.webview().locator('h1', { hasText: 'ternhaven' }).waitFor();
    expect(await workbench.webview().locator('main').textContent()).toContain(rule);
    await workbench.screenshot('comparison-page');
  });

  it('reads what the revision imported, whatever the text imports now', async () => {
    const { page } = workbench;
    await workbench.placeCursor(spec, importLine, { select: true });
    await page.keyboard.press('Delete');
    await until(
      'the text without its import',
      () => workbench.text(spec),
      text => !text.includes(importLine),
    );
    const running = workbench.run('tailshaft.compareWithRevision');
    await page.locator('.quick-input-widget input').waitFor();
    await page.keyboard.press('Enter');
    await running;
    const told = await until(
      'the comparison',
      async () => (await workbench.webview().locator('main').textContent()) ?? '',
      text => text.includes('could not be read whole'),
    );
    expect(told).toContain('1 text could not be read whole');
    await workbench.run('test.open', spec);
    await workbench.run('workbench.action.files.revert');
    expect(await workbench.text(spec)).toContain(importLine);
  });

  it('keeps nothing of the comparison when it closes', async () => {
    await workbench.run('workbench.action.closeAllEditors');
    await new Promise(resolve => setTimeout(resolve, 1_000));
    const left = await judged(workbench);
    expect(left.filter(one => !one.address.startsWith('file:'))).toEqual([]);
    expect(await isFound(workbench)).toBe(false);
  });
});
