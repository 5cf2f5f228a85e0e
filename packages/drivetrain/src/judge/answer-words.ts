import { listed } from '@tailshaft/mechanics';
import type { ByAnswer } from './verdict.js';

/** ` With engine rotation standard: a right-hand propeller is needed, as listed. With ...`. */
export function answerWords(table: readonly ByAnswer[]): string {
  return table.map(one => ` With ${listed(one.given)}: ${one.result}.`).join('');
}
