import { asSpelling, isRole, statement } from '@tailshaft/vocabulary';
import type * as ast from '../generated/ast.js';
import { problem, type ReadContext, repeatsStray } from './context.js';

/** The block that a statement was found in. */
type Found = 'a vessel' | 'an arrangement' | 'a shaft line';

/** A statement that the language knows, in a block that it does not belong to: one problem, and the rest is read on. */
export function misplaced(context: ReadContext, node: ast.Misplaced, found: Found): void {
  if (repeatsStray(context, node)) return;
  const { text } = node;
  const message = `"${text}" does not belong in ${found}: ${homeOf(text)}.`;
  problem(context, node.$cstNode, 'text/misplaced', message, text.length);
}

function homeOf(word: string): string {
  const begins = asSpelling(word);
  if (begins === 'import') return 'imports go at the beginning of the file';
  if (begins === 'shaftline')
    return 'write it beside the other lines, arrangement proposed { shaftline Port { ... } }';
  if (begins === 'reason') return 'write it in the arrangement, beside its lines';
  if (isRole(word))
    return `a part goes in its line, arrangement proposed { shaftline Port { ${word} ... } }, and a catalogue entry goes outside every vessel`;
  if (statement(word, 'line')) return 'write it in its line, arrangement proposed { shaftline Port { ... } }';
  return 'write it in the vessel, outside of its arrangements';
}
