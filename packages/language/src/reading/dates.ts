import { CstUtils } from 'langium';
import type * as ast from '../generated/ast.js';
import type { Problem } from './problem.js';

const DATE = /\d{4}-\d{2}-\d{2}(?!\w)/g;

/** Dates that no calendar has, such as 2026-02-30: ages and last days counted from them would be wrong in silence. */
export function impossibleDates(document: ast.Document, text: string): Problem[] {
  const root = document.$cstNode;
  if (!root) return [];
  return [...text.matchAll(DATE)].flatMap(({ 0: written, index }) => {
    if (isOnCalendar(written)) return [];
    // In a title or a comment it is none of ours.
    const leaf = CstUtils.findLeafNodeAtOffset(root, index);
    if (leaf?.offset !== index || leaf.tokenType.name !== 'DATE') return [];
    return [
      {
        code: 'text/date',
        start: index,
        end: index + written.length,
        severity: 'error' as const,
        message: `${written} is not a calendar date. A date is written year-month-day.`,
      },
    ];
  });
}

export function isOnCalendar(written: string): boolean {
  const [year, month, day] = written.split('-').map(Number) as [number, number, number];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}
