import { element, Markup } from '../document/markup.js';
import { blocksHtml, textHtml } from '../document/to-html.js';
import { blocksMarkdown, escapeMarkdown } from '../document/to-markdown.js';
import { SHEET_STYLE } from '../style.js';
import type { Paper } from './paper.js';

/** A paper as one page that prints: page numbers, vessel and revision stand on every sheet of it. */
export function paperHtml(paper: Paper): string {
  const page = element(
    'html',
    { lang: 'en' },
    element(
      'head',
      {},
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      element('meta', { name: 'color-scheme', content: 'light dark' }),
      element('title', {}, `${paper.running}: ${paper.title}`),
      element('style', {}, new Markup(`${SHEET_STYLE}${ON_PAPER}${marginBoxes(paper)}`)),
    ),
    element(
      'body',
      {},
      element(
        'main',
        { class: `sheet paper-${paper.word}` },
        element(
          'header',
          {},
          element('p', { class: 'kind' }, paper.title),
          element('h1', {}, paper.vessel),
          element('p', {}, textHtml(paper.standing)),
          element('p', { class: 'caution' }, paper.caution),
        ),
        blocksHtml(paper.blocks, { level: 2, open: true }),
        element('footer', {}, `${paper.running}. ${paper.caution}`),
      ),
    ),
  );
  return `<!doctype html>\n${page.source}\n`;
}

export function paperMarkdown(paper: Paper): string {
  return `# ${escapeMarkdown(`${paper.vessel}: ${paper.title}`)}\n\n> ${escapeMarkdown(paper.caution)}\n\n${blocksMarkdown(paper.blocks, 2)}\n`;
}

/** A paper is for the printer first: what a screen has room for stands closer. */
const ON_PAPER = `
@media print {
  .sheet header { padding: 3mm 4mm 2mm; } .sheet dl.terms { font-size: 8pt; gap: 0 5mm; margin: 2mm 0; }
  .sheet dl.terms > div { padding: 0.3mm 0; } .sheet dt { flex-basis: 24mm; }
  .sheet section.standing > p > .verdict { font-size: inherit; }
  .sheet h2 { margin: 9pt 0 4pt; padding-bottom: 1pt; } .sheet p { margin: 1mm 0; } .sheet figure { margin: 2mm 0; }
  .sheet .scroll { margin: 1.5mm 0 2.5mm; } .sheet table.form td, .sheet table.form th[scope=row] { height: 8mm; }
  .sheet.paper-summary svg, .sheet.paper-trial-form svg { max-width: 105mm; }
}
`;

/** Running head and foot. Where a browser draws no margin boxes, the title block and the footer say the same once. */
function marginBoxes({ running, title }: Paper): string {
  return `
@page {
  margin: 19mm 14mm 18mm;
  @top-left { content: ${cssText(running)}; font: 8pt sans-serif; color: #333; }
  @top-right { content: ${cssText(title)}; font: 8pt sans-serif; color: #333; }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt sans-serif; color: #333; }
}
`;
}

/** Text in a style sheet that stands inside HTML: whatever could end either of them is written by its number. */
function cssText(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} .,:·()-]/gu, sign => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
}
