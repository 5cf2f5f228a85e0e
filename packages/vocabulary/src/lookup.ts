import { headerRow } from './header.js';
import type { BlockRow, Row, Vocabulary } from './kinds.js';

/** The row of a block that fills this field of the model: a property, or one that stands in the header of a part. */
export function rowOf(vocabulary: Vocabulary | undefined, field: string): Row | undefined {
  return vocabulary?.rows.find(one => one.field === field) ?? headerRow(field);
}

/** The block inside a block that fills this field. */
export function blockOf(vocabulary: Vocabulary | undefined, field: string): BlockRow | undefined {
  return vocabulary?.blocks.find(one => one.field === field);
}

/** What a field of the model is called in the language. What no row fills goes by its own name. */
export function wordsOf(vocabulary: Vocabulary | undefined, field: string): string {
  const row = rowOf(vocabulary, field);
  // The first value that may stand bare usually does: `rated medium 0.112 kW/rpm`.
  if (row?.bare && vocabulary?.rows.find(one => one.bare) === row) return '';
  return (row ?? blockOf(vocabulary, field))?.words ?? field;
}
