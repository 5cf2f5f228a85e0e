import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startDesktop } from './desktop-harness.js';
import { startWorkbench } from './harness.js';
import { exampleFiles, extensionUnderTest, packedVsix } from './subject.js';
import { TYPED_SPEC, typedLines } from './typed-spec.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const written = 'new/sandpiper.shaft';
const catalogue = Object.fromEntries(
  Object.entries(exampleFiles()).filter(([path]) => path.startsWith('catalogue/')),
);
const files = { ...catalogue, [written]: '', 'new/words.shaft': '' };

const hosts: Readonly<Record<string, () => Promise<Workbench>>> = {
  'in a browser': () => startWorkbench({ extensionFolder: extensionUnderTest(), files }),
  'on the extension host of a desktop': () =>
    startDesktop({ vsix: process.env.TAILSHAFT_EXTENSION ?? packedVsix(), files }),
};

describe.each(Object.entries(hosts))('a spec typed at speed, %s', (_where, start) => {
  let workbench: Workbench;
  beforeAll(async () => {
    workbench = await start();
  }, 300_000);
  afterAll(() => workbench?.close());

  it('says at the end what the keys said, and nothing else', async () => {
    const { page } = workbench;
    await workbench.openFile(written);
    await page
      .locator(
        '.editor-group-container.active .native-edit-context, .editor-group-container.active textarea.inputarea',
      )
      .first()
      .focus();
    const lines = typedLines(TYPED_SPEC);
    expect(lines).toHaveLength(40);
    const longest: number[] = [];
    for (const [index, line] of lines.entries()) {
      const began = performance.now();
      await page.keyboard.type(line, { delay: 8 });
      if (index < lines.length - 1) await page.keyboard.press('Enter');
      longest.push((performance.now() - began) / (line.length + 1));
    }
    const text = await until(
      'the text',
      () => workbench.text(written),
      now => now.includes('"Diesel repower"\n}'),
    ).catch(() => workbench.text(written));
    await workbench.screenshot('typed');
    expect(
      text
        .trimEnd()
        .split('\n')
        .map(line => line.trimEnd()),
    ).toEqual(TYPED_SPEC.trimEnd().split('\n'));
    // No stall: a person would notice a key that takes a fifth of a second.
    expect(Math.max(...longest)).toBeLessThan(200);
  });

  it.each(['vessel', 'vess', 'gear', 'shaft'])(
    'adds nothing but space to "%s" when Tab or Enter ends it',
    async word => {
      const { page } = workbench;
      await workbench.openFile('new/words.shaft');
      const input = '.editor-group-container.active :is(.native-edit-context, textarea.inputarea)';
      await page.locator(input).first().focus();
      for (const key of ['Tab', 'Enter']) {
        await page.keyboard.press('Control+a');
        await page.keyboard.type(word, { delay: 20 });
        await page.locator('.suggest-widget.visible .monaco-list-row').first().waitFor();
        await page.keyboard.press(key);
        // The extension host learns of a key a little later.
        const text = await until(
          'the word',
          () => workbench.text('new/words.shaft'),
          now => (key === 'Tab' ? /[ \t]$/ : /\n$/).test(now),
        ).catch(() => workbench.text('new/words.shaft'));
        expect(text.trimEnd()).toBe(word);
      }
    },
  );
});
