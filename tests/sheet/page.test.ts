import { vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { exampleSpecs } from '../support/examples.js';
import { share } from '../support/share.js';
import { attribute, hasClass, parsed, within, wordsOf } from './parsed.js';
import { sheetOfExample } from './sheet-of.js';

const EXAMPLES = exampleSpecs;

describe.each(share(EXAMPLES, 3))('the sheet of %s', path => {
  it('is sound HTML', async () => {
    const { errors, elements } = parsed(vesselSheetHtml(await sheetOfExample(path)));
    expect(errors).toEqual([]);
    const ids = elements.map(one => attribute(one, 'id')).filter(id => id !== undefined);
    expect(
      ids.filter((id, index) => ids.indexOf(id) !== index),
      'ids used twice',
    ).toEqual([]);
    const links = elements.filter(one => one.tagName === 'a').map(one => attribute(one, 'href')!);
    expect(links.length).toBeGreaterThan(10);
    expect(
      links.filter(href => !ids.includes(href.slice(1))),
      'links that lead nowhere',
    ).toEqual([]);
  });

  it('needs nothing from elsewhere and runs nothing', async () => {
    const html = vesselSheetHtml(await sheetOfExample(path));
    expect(html).not.toMatch(/:\/\/|url\(|@import|<script|<link|<img|<iframe|\bsrc=|\bstyle=|\bon\w+=/i);
  });

  it('keeps its headings in order, and every table and drawing says what it is', async () => {
    const { elements } = parsed(vesselSheetHtml(await sheetOfExample(path)));
    const levels = elements.filter(one => /^h[1-6]$/.test(one.tagName)).map(one => Number(one.tagName[1]));
    expect(levels[0]).toBe(1);
    expect(levels.filter(level => level === 1)).toHaveLength(1);
    for (const [index, level] of levels.entries()) {
      if (index > 0) expect(level - levels[index - 1]!, `heading ${index}`).toBeLessThanOrEqual(1);
    }
    for (const table of elements.filter(one => one.tagName === 'table')) {
      const parts = within(table);
      expect(parts.filter(one => one.tagName === 'caption').map(wordsOf)).toEqual([
        expect.stringMatching(/\w/),
      ]);
      for (const cell of parts.filter(one => one.tagName === 'th')) {
        expect(attribute(cell, 'scope')).toMatch(/^(col|row|rowgroup)$/);
      }
    }
    const drawings = elements.filter(one => one.tagName === 'svg');
    expect(drawings.length).toBeGreaterThanOrEqual(4);
    for (const drawing of drawings) {
      const said = within(drawing).filter(one => one.tagName === 'title' || one.tagName === 'desc');
      expect(said.map(one => [one.tagName, wordsOf(one).length > 8])).toEqual([
        ['title', true],
        ['desc', true],
      ]);
    }
  });

  it('shows a verdict by sign and word, not by colour alone', async () => {
    const { elements } = parsed(vesselSheetHtml(await sheetOfExample(path)));
    const marks = elements.filter(one => hasClass(one, 'verdict'));
    expect(marks.length).toBeGreaterThan(5);
    for (const mark of marks) {
      expect(wordsOf(mark)).toMatch(/^(✓ holds|✕ fails|\? cannot tell|– does not apply|⚑ accepted)$/);
    }
  });

  it('has the same sections in Markdown, without any HTML but line breaks', async () => {
    const input = await sheetOfExample(path);
    const markdown = vesselSheetMarkdown(input);
    const { elements } = parsed(vesselSheetHtml(input));
    const titles = elements.filter(one => one.tagName === 'h2').map(wordsOf);
    expect(markdown.match(/^## .*$/gm)!.map(line => line.slice(3))).toEqual(titles);
    expect(markdown.replaceAll('<br>', '')).not.toMatch(/<[a-z/!]/i);
  });

  it('says how it stands, then what was not checked, before anything else', async () => {
    const { elements } = parsed(vesselSheetHtml(await sheetOfExample(path)));
    const titles = elements.filter(one => one.tagName === 'h2').map(wordsOf);
    expect(titles.slice(0, 2)).toEqual(['Status', 'Not checked']);
  });
});

it('puts what is proposed before what was found, and folds the parts of each line until somebody asks', async () => {
  const { elements } = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
  const titles = elements.filter(one => one.tagName === 'h2').map(wordsOf);
  expect(titles.filter(one => one.startsWith('Arrangement'))).toEqual([
    'Arrangement proposed: diesel repower',
    'Arrangement existing: as found, January 2026',
  ]);
  const folded = elements.filter(one => one.tagName === 'details' && attribute(one, 'open') === undefined);
  const captions = folded.flatMap(one =>
    within(one)
      .filter(two => two.tagName === 'caption')
      .map(wordsOf),
  );
  expect(captions.filter(one => one.startsWith('Parts of'))).toHaveLength(4);
});
