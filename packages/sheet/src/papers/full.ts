import type { Block } from '../document/blocks.js';
import { sectionsOf } from '../page.js';
import type { Sheet } from '../sheet.js';
import { standsSection } from './stands.js';

/**
 * Everything, for the file, with what was not assessed, the cautions and the signatures among the rest; lines that are
 * alike are told once.
 */
export function fullBlocks(sheet: Sheet): Block[] {
  return [standsSection(sheet, 'full'), ...sectionsOf(sheet)];
}
