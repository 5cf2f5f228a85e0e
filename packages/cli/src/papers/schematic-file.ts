import { extname } from 'node:path';
import { picturesFile, type SheetInput, schematicOf } from '@tailshaft/sheet';
import { CannotRun } from '../cannot-run.js';
import { dxfOf } from './dxf.js';

/** The lines seen from aft and from above, as the name of the file asks: SVG or DXF. */
export function schematicFile(input: SheetInput, path: string): string {
  const kind = extname(path).toLowerCase();
  if (kind === '.dxf') {
    const { vessel, today, digest } = input;
    const revision = vessel.revisions.at(-1);
    return dxfOf(schematicOf(input), [
      `${vessel.title ?? vessel.name}, ${revision ? `revision ${revision.name} ${revision.dated ?? ''}` : 'no revision recorded'}`,
      `Schematic, not to scale. Judged on ${today}. ${digest ?? ''}`,
      'Screening, not certification: makers, class, flag and licensed practice decide.',
    ]);
  }
  if (kind !== '.svg') throw new CannotRun(`--schematic ${path} is to end in .svg or .dxf`);
  const picture = picturesFile(input, {});
  if (!picture) throw new CannotRun('the vessel has no arrangement to draw');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${picture.svg}\n`;
}
