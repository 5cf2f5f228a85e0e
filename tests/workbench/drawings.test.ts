import '../../packages/language/scripts/group-by.mjs';
import { sheetPanel } from '@tailshaft/sheet';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { panelStyle } from '../../packages/vscode/src/webview/panel-style.js';
import { sheetOfExample, sheetOfText } from '../sheet/sheet-of.js';
import { exampleSpecs } from '../support/examples.js';
import { startBrowser } from './browser.js';
import { exampleFiles, exampleSpec, withWrongHand } from './subject.js';

const specs = exampleSpecs;

/** Only a browser knows how wide words are. */
describe('the drawings of the panel', () => {
  let browser: { page: Page; close(): Promise<void> };

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser?.close());

  it('finds words that meet, and words that are cut off', async () => {
    const text = (x: number, words: string) => `<text x="${x}" y="20">${words}</text>`;
    await show(
      `<svg viewBox="0 0 200 40"><title>T</title>${text(0, 'one word')}${text(20, 'other')}${text(190, 'long')}</svg>`,
    );
    expect(await troubles()).toEqual(['T: "long" is cut off', 'T: "one word" meets "other"']);
  });

  it.each(specs)('%s: no word is cut off, and none meets another', async path => {
    const input = await sheetOfExample(path);
    for (const arrangement of sheetPanel(input, {}).choices.arrangements)
      for (const direction of ['ahead', 'astern'] as const) {
        await show(sheetPanel(input, { arrangement, direction }).html);
        expect(await troubles()).toEqual([]);
      }
  });

  it('a propeller of the wrong hand has room for its warning', async () => {
    const files = exampleFiles();
    const catalogue = Object.keys(files).filter(path => path.startsWith('catalogue/'));
    const { text } = withWrongHand(files[exampleSpec]!);
    const alone = [...catalogue.map(path => files[path]!), text.replace(/^import .*$/m, '')].join('\n');
    const { html } = sheetPanel(await sheetOfText(alone), {});
    expect(html).toContain('drives ASTERN');
    await show(html);
    expect(await troubles()).toEqual([]);
  });

  it.each([360, 700, 1400])('nothing but tables is wider than a panel of %i pixels', async width => {
    const input = await sheetOfExample('pilot-cutter/ternhaven.shaft');
    await browser.page.setViewportSize({ width, height: 900 });
    await show(sheetPanel(input, { arrangement: 'proposed', beside: 'existing' }).html);
    const over = await browser.page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);
    const letters = await browser.page.evaluate(() =>
      [...document.querySelectorAll('svg')].map(svg => (13 * svg.clientWidth) / svg.viewBox.baseVal.width),
    );
    // Letters of 13 px may shrink with the drawing, but not below what can be read.
    expect(Math.min(...letters)).toBeGreaterThan(7.5);
  });

  async function show(html: string): Promise<void> {
    await browser.page.setContent(
      `<!doctype html><style>${panelStyle()}</style><body class="vscode-body vscode-light">${html}`,
    );
  }

  function troubles(): Promise<string[]> {
    return browser.page.evaluate(() => {
      const found: string[] = [];
      for (const svg of document.querySelectorAll('svg')) {
        const title = svg.querySelector('title')!.textContent;
        const { width, height } = svg.viewBox.baseVal;
        const texts = [...svg.querySelectorAll('text')].map(one => ({
          words: one.textContent,
          box: one.getBBox(),
        }));
        for (const { words, box } of texts)
          if (box.x < -1 || box.y < -1 || box.x + box.width > width + 1 || box.y + box.height > height + 1)
            found.push(`${title}: "${words}" is cut off`);
        texts.forEach((one, index) => {
          for (const other of texts.slice(index + 1)) {
            const reach = (from: 'x' | 'y', size: 'width' | 'height') =>
              Math.min(one.box[from] + one.box[size], other.box[from] + other.box[size]) -
              Math.max(one.box[from], other.box[from]);
            // The boxes of two rows overlap a little: letters do not fill theirs.
            if (reach('x', 'width') > 1 && reach('y', 'height') > 4)
              found.push(`${title}: "${one.words}" meets "${other.words}"`);
          }
        });
      }
      return found;
    });
  }
});
