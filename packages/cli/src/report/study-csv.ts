import { LEAST_MARGIN, numbered, optionOf } from '@tailshaft/drivetrain';
import { fromSI, naturalUnit, type Unit } from '@tailshaft/mechanics';
import type { SearchedStudy } from './study-words.js';

/** Every candidate that holds or cannot be told, one a line, for a spreadsheet. */
export function studiesCsv(studies: readonly SearchedStudy[]): string {
  return studies.map(studyCsv).join('\n');
}

function studyCsv({ vessel, result }: SearchedStudy): string {
  const { study, dimensions, ranking, front } = result;
  const all = numbered(result);
  // One unit for the whole column, that of its first figure.
  const units = ranking.map(({ words }, at): Unit | undefined => {
    const value = all.map(one => one.ranks[at]).find(one => one !== undefined);
    return value && !words.endsWith('margin') ? naturalUnit(value) : undefined;
  });
  // A study that ranks by it has that column already.
  const ranked = ranking.some(one => one.words === LEAST_MARGIN);
  const head = [
    'vessel',
    'study',
    'number',
    'outcome',
    ...dimensions.map(one => one.words),
    ...ranking.map(({ words }, at) =>
      all.some(one => one.ranks[at]) ? `${words} [${units[at]?.symbol ?? '1'}]` : words,
    ),
    ...(ranked ? [] : [`${LEAST_MARGIN} [1]`]),
    'limit',
    'subject',
    'warnings',
    'non-dominated',
  ];
  const rows = all.map((one, at) => [
    vessel,
    study.name,
    String(at + 1),
    one.outcome,
    ...dimensions.map((_, index) => optionOf(result, one, index)),
    ...one.ranks.map((value, index) =>
      value ? number(units[index] ? fromSI(value.si, units[index]) : value.si) : '',
    ),
    ...(ranked ? [] : [one.limit ? number(one.limit.margin) : '']),
    one.limit?.rule ?? '',
    one.limit?.subject ?? '',
    String(one.warnings),
    front.has(one.index) ? 'yes' : 'no',
  ]);
  return [head, ...rows].map(row => `${row.map(cell).join(',')}\r\n`).join('');
}

function number(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
