import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Paper } from '@tailshaft/sheet';
import { CannotRun } from '../cannot-run.js';
import type { pdfOf as PdfOf } from './pdf/main.js';

/** A paper as a PDF. What that takes lies in a bundle of its own with its fonts, and is loaded when it is asked for. */
export async function pdfFile(paper: Paper): Promise<Uint8Array> {
  const bundle = join(__dirname, 'pdf.cjs');
  if (!existsSync(bundle)) throw new CannotRun('pdf.cjs is missing beside this program: install it whole');
  // The program may run from code that was compiled before, which knows no import of modules.
  const { pdfOf } = createRequire(bundle)(bundle) as { pdfOf: typeof PdfOf };
  const font = (name: string) => readFileSync(join(__dirname, 'fonts', name));
  return pdfOf(paper, {
    regular: font('DejaVuSansCondensed.ttf'),
    bold: font('DejaVuSansCondensed-Bold.ttf'),
  });
}
