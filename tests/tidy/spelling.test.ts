import {
  ASSUMABLE,
  type BlockRow,
  ENTRY_VOCABULARY,
  HEADER_ROWS,
  leadOf,
  PLACE_VOCABULARY,
  partsOf,
  STATEMENTS,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import {
  isArrayLiteralExpression,
  isBinaryExpression,
  isCallExpression,
  isCaseClause,
  isNoSubstitutionTemplateLiteral,
  isStringLiteral,
  isTemplateHead,
  isTemplateMiddle,
  isTemplateTail,
  type Node,
  type StringLiteral,
} from 'typescript/unstable/ast';
import { type Checker, type Type, TypeFlags, type UnionType } from 'typescript/unstable/sync';
import { expect, it } from 'vitest';
import { nodesOf, withSources } from './sources.js';

/** Words and phrases that begin properties and statements, and the words that a property may be. */
function spellings(): Set<string> {
  const words = new Set<string>(ASSUMABLE.map(one => one.words));
  const seen = new Set<Vocabulary>();
  const add = (vocabulary: Vocabulary): void => {
    if (seen.has(vocabulary)) return;
    seen.add(vocabulary);
    for (const row of vocabulary.rows) {
      words.add(row.words);
      if (row.kind.form === 'word') for (const word of row.kind.words) words.add(word);
    }
    for (const block of vocabulary.blocks as readonly BlockRow[]) {
      words.add(block.words);
      add(block.block);
    }
  };
  for (const table of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
    for (const [kind, vocabulary] of Object.entries(table)) {
      words.add(kind);
      add(vocabulary);
    }
  for (const row of Object.values(HEADER_ROWS)) words.add(row.words);
  for (const one of STATEMENTS) {
    words.add(leadOf(one));
    for (const part of partsOf(one)) if ('word' in part) words.add(part.word);
  }
  return words;
}

/** Files that say such words of something else, and why they may. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'packages/language/src/server/standards/':
    'heads of the columns of published tables, and the blocks that these are offered in',
  'packages/language/src/reading/forms/symbol.ts': 'kinds of quantity',
  'packages/language/src/names/': 'kinds of names that can be changed',
  'packages/language/src/manual/text-findings.ts': 'an example spec takes the line away',
  'packages/language/src/server/hover/hover.ts': 'fields of the model, not words of the text',
  'packages/sheet/src/sections/charts.ts': 'names of curves and axes',
  'packages/sheet/src/sections/torsional-stress.ts': 'names of curves and axes',
  'packages/sheet/src/sections/trials.ts': 'rows of the trial sheet, by what an inspector asks',
  'packages/sheet/src/papers/belongs.ts': 'families of rules',
  'packages/sheet/src/papers/trial-form.ts': 'names of operating points and of runs',
  'packages/sheet/src/sections/criticals.ts: engine speed': 'names of curves and axes',
  'packages/sheet/src/sections/operating-points.ts: shaft power': 'names of computed figures',
  'packages/sheet/src/papers/propeller-order.ts': 'names of computed figures',
  'packages/sheet/src/sections/not-checked.ts: not checked': 'a heading on what the checks leave out',
  'packages/sheet/src/sections/standing.ts: not checked': 'a heading on what the checks leave out',
  'packages/sheet/src/sections/requirements.ts: required by': 'who sets a requirement, whatever its words',
  'packages/sheet/src/sections/study.ts: limited by': 'the check that limits a candidate',
  'packages/cli/src/report/vessel-lines.ts: holds': 'the outcome of a check',
  'packages/cli/src/commands/compare.ts: none': 'English of a message',
  'packages/language/src/server/document-symbols.ts: vessel':
    'what the outline calls it where it has no title',
};

it('spells no word of the language in two places', () => {
  const words = spellings();
  const found = withSources(({ checker, files }) =>
    files(/^packages\/(language|cli|vscode|sheet)\/src\/(?!generated)/).flatMap(({ path, source }) => {
      const own = new Set<string>();
      for (const node of nodesOf(source)) {
        const said = phraseOf(node);
        if (said?.includes(' ') && words.has(said)) {
          if (!isStringLiteralLike(node) || !isHeld(node, checker)) own.add(`${path}: ${said}`);
        } else if (isStringLiteralLike(node) && words.has(node.text)) {
          const counts = isCompared(node) || listsWords(node.parent, words);
          if (counts && !isHeld(node, checker)) own.add(`${path}: ${node.text}`);
        }
      }
      return [...own];
    }),
  );
  const left = found.filter(one => !Object.keys(ELSEWHERE).some(start => one.startsWith(start)));
  expect(left).toEqual([]);
  const unused = Object.keys(ELSEWHERE).filter(start => !found.some(one => one.startsWith(start)));
  expect(unused, 'exceptions that nothing needs').toEqual([]);
});

/** What a literal, or one piece of a template between its numbers, says: as a label writes it too, with a capital or a colon. */
function phraseOf(node: Node): string | undefined {
  const isPiece = isTemplateHead(node) || isTemplateMiddle(node) || isTemplateTail(node);
  if (!isPiece && !isStringLiteralLike(node)) return undefined;
  const bare = (node as unknown as { text: string }).text
    .replace(/[*_`"]/g, '')
    .replace(/[\s:,=]+$/, '')
    .trim();
  return bare.charAt(0).toLowerCase() + bare.slice(1);
}

function isStringLiteralLike(node: Node): node is StringLiteral {
  return isStringLiteral(node) || isNoSubstitutionTemplateLiteral(node);
}

/** Compared with what stands in a text, or looked up in it. */
function isCompared(node: Node): boolean {
  const { parent } = node;
  // A field of the model has a name of its own.
  if (isBinaryExpression(parent) && /\.field\b/.test(parent.getText())) return false;
  return (
    isBinaryExpression(parent) ||
    isCaseClause(parent) ||
    (isCallExpression(parent) && /^(includes|indexOf|takeWords)$/.test(calleeOf(parent)))
  );
}

function calleeOf(call: Node): string {
  const { expression } = call as unknown as { expression: Node & { name?: { text: string } } };
  return expression.name?.text ?? '';
}

/** Three such words in one list are a table of its own. */
function listsWords(parent: Node, words: ReadonlySet<string>): boolean {
  if (!isArrayLiteralExpression(parent)) return false;
  return parent.elements.filter(one => isStringLiteralLike(one) && words.has(one.text)).length > 2;
}

/** The compiler holds it to the tables: a word that is renamed there no longer compiles here. */
function isHeld(node: Node, checker: Checker): boolean {
  const { parent } = node;
  if (isBinaryExpression(parent))
    return isNarrow(checker.getTypeAtLocation(parent.left === node ? parent.right : parent.left));
  if (isCaseClause(parent))
    return isNarrow(
      checker.getTypeAtLocation((parent.parent.parent as unknown as { expression: Node }).expression),
    );
  return isNarrow(checker.getContextualType(node as never));
}

function isNarrow(type: Type | undefined): boolean {
  if (!type) return false;
  const wide = TypeFlags.String | TypeFlags.Any | TypeFlags.Unknown;
  const types = (type as Partial<UnionType>).getTypes?.() ?? [type];
  return types.every(one => (one.flags & wide) === 0);
}
