import type { Paper } from '@tailshaft/sheet';
import { drawBlocks, drawText, topPlace } from './blocks.js';
import { type Fonts, Pen } from './pen.js';

export type { Fonts } from './pen.js';

/**
 * A paper as a PDF: tagged, with outlines, its fonts embedded as far as they are used, its pictures as vectors. The same
 * paper gives the same bytes.
 */
export async function pdfOf(paper: Paper, fonts: Fonts): Promise<Uint8Array> {
  const pen = new Pen({ title: `${paper.running}: ${paper.title}`, dated: paper.dated }, fonts);
  const place = topPlace(pen);
  drawText(pen, paper.title, place, 'P', {
    look: { bold: true, colour: pen.palette.accent },
    size: 9,
    after: 0,
  });
  drawText(pen, paper.vessel, place, 'H1', { look: { bold: true }, size: 16, after: 3 });
  drawText(pen, paper.caution, place, 'P', { look: { bold: true }, size: 8 });
  drawBlocks(pen, paper.blocks, place);
  pen.furnish(paper.running, paper.title, 'Screening, not certification');
  return pen.finish();
}
