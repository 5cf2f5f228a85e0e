import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Block, Paper, Text } from '@tailshaft/sheet';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { pdfOf } from '../../packages/cli/src/papers/pdf/main.js';

const fromCli = createRequire(join(import.meta.dirname, '../../packages/cli/package.json'));
const font = (name: string) => readFileSync(fromCli.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

export const FONTS = { regular: font('DejaVuSansCondensed'), bold: font('DejaVuSansCondensed-Bold') };

/** Specs of the examples, one vessel each. */
export const EXAMPLES = [
  'pilot-cutter/ternhaven.shaft',
  'ferry/brackle.shaft',
  'motor-launch/reedmouth.shaft',
  'service-vessel/skerrowby.shaft',
  'sport-boat/quickgrass.shaft',
  'survey-tender/wadebeck.shaft',
  'workboat/saltmarsh.shaft',
  'harbour-tug/wrack.shaft',
  'hybrid-ferry/teasel.shaft',
  'triple-screw/strand.shaft',
  'tutorial/lapwater.shaft',
  'twin-engine/sandwort.shaft',
  'sailing-auxiliary/seaholly.shaft',
];

export const pdfBytes = (paper: Paper) => pdfOf(paper, FONTS);

const standardFonts = `${pathToFileURL(join(dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json')), 'standard_fonts'))}/`;

/** A PDF as a parser reads it that had no part in writing it. */
export async function readPdf(bytes: Uint8Array) {
  const document = await getDocument({
    data: new Uint8Array(bytes),
    standardFontDataUrl: standardFonts,
    verbosity: 0,
  }).promise;
  const pages = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push({ page, text: items.map(one => ('str' in one ? one.str : '')).join(' ') });
  }
  return { document, pages };
}

/** Words without what breaks them on paper. */
export const squeezed = (text: string) => text.replace(/\s+/g, '');

/** All words of blocks, as far down as they go. */
export function wordsIn(blocks: readonly Block[]): string {
  return blocks.map(wordsOfBlock).join('\n');
}

function wordsOfBlock(block: Block): string {
  switch (block.block) {
    case 'paragraph':
      return plain(block.text);
    case 'list':
      return block.items.map(plain).join('\n');
    case 'terms':
      return block.items.map(([label, value]) => `${label}: ${plain(value)}`).join('\n');
    case 'table':
      return [
        block.caption,
        block.columns.map(one => one.title).join(' '),
        ...block.groups.flatMap(group => [
          group.title ? plain(group.title) : '',
          ...group.rows.map(row => row.map(plain).join(' | ')),
        ]),
      ].join('\n');
    case 'figure':
      return `${block.svg.source} ${plain(block.caption)}`;
    case 'row':
      return block.figures.map(wordsOfBlock).join('\n');
    case 'details':
      return `${plain(block.summary)}\n${wordsIn(block.blocks)}`;
    case 'section':
      return `${block.title}\n${wordsIn(block.blocks)}`;
  }
}

function plain(text: Text): string {
  if (typeof text === 'string') return text;
  if (!('as' in text)) return text.map(plain).join('');
  if (text.as === 'verdict') return text.outcome;
  return text.as === 'break' ? '\n' : plain(text.text);
}
