import { KEYWORDS, TailshaftTerminals } from '@tailshaft/language';
import { EVIDENCE_KINDS, opensBlock, partsOf, STATEMENTS, UNKNOWN } from '@tailshaft/vocabulary';

/** Numbers are those of the grammar of the language; what is measured in inches by its mark opens no text. */
const { MEASURED, MIXED, FRACTION, NUMBER } = TailshaftTerminals;
const NUMBERS = [MIXED, FRACTION, NUMBER];

/** Statements that give what they open a name of the author's own. */
const NAMED = STATEMENTS.filter(one => {
  const [, next] = partsOf(one);
  return opensBlock(one) && next && 'fill' in next && next.fill === 'name';
}).map(one => one.word);

/** The grammar that colours a spec before the server has answered, made from the keywords of the language. */
export function textMateGrammar(): object {
  const words = [...KEYWORDS].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|');
  const name = '[A-Za-z_\\u00C0-\\uD7FF][A-Za-z0-9_\\u00C0-\\uD7FF]*(?:[-.][A-Za-z0-9_]+)*';
  return {
    name: 'Tailshaft',
    scopeName: 'source.tailshaft',
    patterns: [
      { name: 'comment.block.documentation.tailshaft', match: '///.*$' },
      { name: 'comment.line.double-slash.tailshaft', match: '//.*$' },
      { name: 'comment.block.tailshaft', begin: '/\\*', end: '\\*/' },
      {
        name: 'constant.numeric.tailshaft',
        match: `(?<![A-Za-z0-9_-])${MEASURED.source}`,
      },
      { name: 'string.quoted.double.tailshaft', begin: '"', end: '"|$' },
      {
        match: `^\\s*(${NAMED.join('|')})\\s+(${name})`,
        captures: { 1: { name: 'keyword.control.tailshaft' }, 2: { name: 'entity.name.type.tailshaft' } },
      },
      {
        name: 'meta.evidence.tailshaft',
        begin: '\\[',
        end: '\\]|$',
        patterns: [
          { name: 'string.quoted.double.tailshaft', match: '"[^"]*"' },
          { name: 'constant.numeric.date.tailshaft', match: '\\b\\d{4}-\\d{2}-\\d{2}\\b' },
          {
            name: 'storage.modifier.evidence.tailshaft',
            match: `\\b(${EVIDENCE_KINDS.join('|')})\\b`,
          },
        ],
      },
      { name: 'constant.numeric.date.tailshaft', match: '\\b\\d{4}-\\d{2}-\\d{2}\\b' },
      { name: 'constant.numeric.ratio.tailshaft', match: '\\b\\d+(?:\\.\\d+)?:\\d+(?:\\.\\d+)?\\b' },
      {
        name: 'constant.numeric.tailshaft',
        match: `(?<![A-Za-z0-9_-])(?:${NUMBERS.map(({ source }) => source).join('|')})`,
      },
      { name: 'constant.language.unknown.tailshaft', match: `\\b${UNKNOWN}\\b` },
      { name: 'keyword.control.tailshaft', match: `(?<![A-Za-z0-9_.-])(?:${words})(?![A-Za-z0-9_-])` },
    ],
  };
}

/** Colours fenced blocks of specs in Markdown, such as those in the pages of the rules. */
export function markdownGrammar(): object {
  return {
    scopeName: 'markdown.tailshaft.codeblock',
    injectionSelector: 'L:text.html.markdown',
    patterns: [
      {
        begin: '(^|\\G)(\\s*)(`{3,}|~{3,})\\s*(?i:tailshaft)\\s*$',
        beginCaptures: { 3: { name: 'punctuation.definition.markdown' } },
        end: '(^|\\G)(\\2|\\s{0,3})(\\3)\\s*$',
        endCaptures: { 3: { name: 'punctuation.definition.markdown' } },
        name: 'markup.fenced_code.block.markdown',
        patterns: [
          {
            begin: '(^|\\G)(\\s*)(.*)',
            while: '(^|\\G)(?!\\s*([`~]{3,})\\s*$)',
            contentName: 'meta.embedded.block.tailshaft',
            patterns: [{ include: 'source.tailshaft' }],
          },
        ],
      },
    ],
  };
}
