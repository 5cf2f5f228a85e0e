import type { Value } from '@tailshaft/mechanics';
import { type FactHome, valueUnnoticed } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';

/** What a figure is, with what it is a figure of: `propeller pitch`, `engine rated speed`. */
export function quantityWords(
  { property, of = '', row }: FactHome,
  { label }: Value,
  fact: Fact<unknown>,
): string {
  const part = of.replace(/ (rating|ratio)$/, '');
  const several = !('si' in (valueUnnoticed(fact) as object));
  const named = several ? label.replace(/ of the .*$/, '') : property;
  const own = named === 'from' && of.endsWith('rating') ? 'speed range' : (WORDS[named] ?? named);
  const words = row?.bound ? own.slice(0, -row.bound.length).trim() : own;
  return words === part || words.startsWith(`${part} `) ? words : `${part} ${words}`;
}

/** Properties whose words say nothing without their block. */
const WORDS: Readonly<Record<string, string>> = { at: 'place', exact: 'exact ratio', from: 'start' };
