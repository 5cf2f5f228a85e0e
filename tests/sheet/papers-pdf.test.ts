import { join } from 'node:path';
import { galleryPath, gallerySpecs } from '@tailshaft/language/manual';
import { makePaper, PAPER_WORDS } from '@tailshaft/sheet';
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { checkFile } from '../support/check.js';
import { share } from '../support/share.js';
import { EXAMPLES, pdfBytes, readPdf, squeezed } from './papers-of.js';
import { sheetInput, sheetOfExample } from './sheet-of.js';

const root = join(import.meta.dirname, '..', '..');

describe('read by a parser that had no part in writing it', () => {
  const cases = share(
    EXAMPLES.flatMap(path => PAPER_WORDS.map(word => [path, word] as const)),
    2,
  );

  it.each(cases)(
    '%s: %s is tagged, has outlines, embedded fonts, no bitmap, and its labels',
    async (path, word) => {
      const input = await sheetOfExample(path);
      const paper = makePaper(input, word);
      const bytes = await pdfBytes(paper);
      const { document, pages } = await readPdf(bytes);
      expect((await document.getMarkInfo())?.Marked).toBe(true);
      const sections = paper.blocks.flatMap(one => (one.block === 'section' ? [one.title] : []));
      expect((await document.getOutline())?.map(one => one.title)).toEqual(sections);
      const { info } = await document.getMetadata();
      expect(info).toMatchObject({ Title: `${paper.running}: ${paper.title}`, Language: 'en' });
      for (const [index, { page, text }] of pages.entries()) {
        expect(squeezed(text)).toContain(squeezed(paper.running));
        expect(text).toContain(`Page ${index + 1} of ${pages.length}`);
        const { fnArray } = await page.getOperatorList();
        expect(fnArray).not.toContain(OPS.paintImageXObject);
        expect(fnArray).not.toContain(OPS.paintInlineImageXObject);
        expect((await page.getStructTree())?.children.length ?? 0).toBeGreaterThan(0);
      }
      // Every font of the file comes with the letters that are used of it.
      const raw = Buffer.from(bytes).toString('latin1');
      const descriptors = raw.match(/\/Type \/FontDescriptor/g)?.length ?? 0;
      expect(descriptors).toBeGreaterThan(0);
      expect(raw.match(/\/FontFile2 /g)).toHaveLength(descriptors);
      expect(raw).not.toContain('/BaseFont /Helvetica');
    },
  );

  it('gives the same bytes again', async () => {
    const input = await sheetOfExample('motor-launch/reedmouth.shaft');
    const [one, other] = [
      await pdfBytes(makePaper(input, 'summary')),
      await pdfBytes(makePaper(input, 'summary')),
    ];
    expect(Buffer.compare(one, other)).toBe(0);
  });

  it('keeps the summary to two pages and each order of a propeller to one', async () => {
    const input = await sheetOfExample('pilot-cutter/ternhaven.shaft');
    const pagesOf = async (word: 'summary' | 'propeller-order') =>
      (await readPdf(await pdfBytes(makePaper(input, word)))).document.numPages;
    expect(await pagesOf('summary')).toBeLessThanOrEqual(2);
    expect(await pagesOf('propeller-order')).toBe(2);
  });
});

describe('of the mistakes', () => {
  it.each(share(gallerySpecs(), 2, 80).map(one => [one.code, join(root, galleryPath(one.code))] as const))(
    '%s: every failure stands on the first page of the summary and of the full paper',
    async (_, path) => {
      const checked = await checkFile(path);
      if (checked.check.vessels.length === 0) return;
      const input = sheetInput(checked);
      for (const word of ['summary', 'full'] as const) {
        const { pages } = await readPdf(await pdfBytes(makePaper(input, word)));
        const first = squeezed(pages[0]!.text);
        for (const { rule, outcome } of input.verdicts)
          if (outcome === 'fails') expect(first, word).toContain(squeezed(rule));
      }
    },
  );
});

it.each(share(EXAMPLES, 1))('%s: no heading of the full paper ends its page', async path => {
  const paper = makePaper(await sheetOfExample(path), 'full');
  const { document, pages } = await readPdf(await pdfBytes(paper));
  const titles = (await outlineTitles(document)).map(squeezed);
  for (const { text } of pages.slice(0, -1)) {
    // What runs on every page is written last.
    const body = squeezed(text.slice(0, text.lastIndexOf(paper.running)));
    expect(titles.filter(title => body.endsWith(title))).toEqual([]);
  }
});

async function outlineTitles(document: Awaited<ReturnType<typeof readPdf>>['document']): Promise<string[]> {
  type Item = NonNullable<Awaited<ReturnType<typeof document.getOutline>>>[number];
  const all = (items: readonly Item[]): string[] =>
    items.flatMap(one => [one.title, ...all(one.items as Item[])]);
  return all((await document.getOutline()) ?? []);
}
