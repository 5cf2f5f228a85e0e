import { minusSign, wordsOfKey } from '@tailshaft/mechanics';
import type { Range, Row } from '@tailshaft/vocabulary';

/** What a value looks like, in a word that the section on values explains, or the words that it may be. */
export function formOf(row: Row): string {
  const { kind } = row;
  const many = row.many ? ', may be repeated' : '';
  switch (kind.form) {
    case 'quantity':
      return kind.dimension + many;
    case 'span':
      return `range of ${kind.dimension}${many}`;
    case 'point':
      return `${kind.of} at ${kind.at}${many}`;
    case 'word':
      return kind.words.map(word => `\`${word}\``).join(', ') + many;
    case 'any word':
      return kind.what + many;
    case 'name':
      return `name of a ${kind.of}${many}`;
    default:
      return kind.form + many;
  }
}

/** What a row says beside its form and its meaning. */
export function remarksOf(row: Row): string {
  return [
    boundOf(row.range),
    ...(row.absent
      ? [`if absent: ${row.absent}${row.estimated ? ' (an estimate, also for unknown)' : ''}`]
      : []),
    ...(row.bound === 'at least' ? ['a least value'] : row.bound === 'at most' ? ['a greatest value'] : []),
    ...(row.handed ? ['handed'] : []),
    ...(row.measuredWith ? [`measured with ${row.measuredWith.map(wordsOfField).join(', ')}`] : []),
    ...(row.evidence === 'strict' ? ['hearsay or assumption does not settle it'] : []),
  ]
    .filter(Boolean)
    .join('; ');
}

/** What a number may lie between. */
export function boundOf(range: Range | undefined): string {
  if (!range) return '';
  return minusSign(
    `${range.whole ? 'a whole number, ' : ''}${range.low} to ${range.high}${range.at ? `, at ${range.at.low} to ${range.at.high}` : ''}`,
  );
}

/** `propeller.effectivePitch`, or `^length` of the part around a block, as a person reads it. */
function wordsOfField(field: string): string {
  return wordsOfKey(field).replace('.', ' ').replace('^', 'its part’s ');
}
