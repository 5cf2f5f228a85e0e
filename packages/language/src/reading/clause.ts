import { UNKNOWN } from '@tailshaft/vocabulary';
import { type AstNode, GrammarUtils } from 'langium';
import { propertyPlace, type ReadContext } from './context.js';
import { unquoted } from './forms/words.js';

/** A date behind `dated` or `until`; nothing where it is unknown, or is none, which is told. */
export function dateIn(
  context: ReadContext,
  node: AstNode,
  property: string,
  text: string | undefined,
): string | undefined {
  if (text === undefined || text === UNKNOWN) return undefined;
  if (/^\d/.test(text)) return text;
  const { start, end } = propertyPlace(context, node, property);
  context.problems.push({
    code: 'text/date',
    start,
    end,
    severity: 'error',
    message: `"${text}" is not a date: write it year-month-day, as 2026-05-01, or "unknown".`,
  });
  return undefined;
}

/** Words in quotes behind `because` or `by`; nothing where they are unknown. */
export function wordsIn(
  context: ReadContext,
  node: AstNode,
  property: string,
  text: string | undefined,
): string | undefined {
  if (text === undefined) return undefined;
  const quoted = GrammarUtils.findNodeForProperty(node.$cstNode, property)?.text;
  if (quoted?.startsWith('"')) return unquoted(text);
  if (text === UNKNOWN) return undefined;
  const { start, end } = propertyPlace(context, node, property);
  context.problems.push({
    code: 'text/value',
    start,
    end,
    severity: 'error',
    message: `Put the words in quotes: "${text} ...", or write unknown.`,
  });
  return undefined;
}
