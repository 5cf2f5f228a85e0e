import { withArticle } from '@tailshaft/mechanics';
import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import { paragraphs } from './markdown.js';

/** What a property means, what its value looks like, and an example. */
export function propertyHover(row: Row, vocabulary: Vocabulary): string {
  return paragraphs(
    `**${row.words}** · ${vocabulary.title}`,
    row.doc,
    `Value: ${formWords(row)}${row.many ? '; may stand more than once' : ''}. \`unknown\` marks an open question.`,
    `\`\`\`tailshaft\n${row.example}\n\`\`\``,
  );
}

export function blockHover(row: BlockRow): string {
  return paragraphs(
    `**${row.words}** · ${row.block.title}`,
    row.doc,
    `\`\`\`tailshaft\n${row.example}\n\`\`\``,
  );
}

/** The form of a value in words. */
export function formWords({ kind }: Pick<Row, 'kind'>): string {
  switch (kind.form) {
    case 'quantity':
      return kind.dimension === 'number' ? 'a number' : `${withArticle(kind.dimension)} with its unit`;
    case 'span':
      return `a range of ${kind.dimension}, as \`20 .. 24\` with its unit`;
    case 'point':
      return `${withArticle(kind.of)} at ${withArticle(kind.at)}`;
    case 'ratio':
      return 'a ratio, input to output, as `2.04:1`';
    case 'per year':
      return 'hours per year';
    case 'word':
      return kind.words.map(word => `\`${word}\``).join(', ');
    case 'any word':
      return withArticle(kind.what);
    case 'name':
      return `the name of a ${kind.of}`;
    case 'text':
      return 'words in quotes';
    case 'source':
      return 'a document in quotes, and `dated` with its date';
    case 'rotation':
      return '`standard`, `opposite`, `clockwise`, `counter-clockwise` or `either`, and from where it is `viewed`';
    case 'output sense':
      return '`same` or `opposite`, and where the line turns back, from where it is `seen`';
    case 'layout':
      return 'how the output lies, with its angle';
    case 'bolts':
      return 'number and size of bolts, as `4 x 1/2 in`';
    case 'pilot':
      return 'a diameter, and `male` or `female`';
    case 'date':
      return 'a date, as `2026-05-01`';
    case 'shaft criterion':
      return '`small-craft formula` with its `factor`, or `class formula`';
    case 'mesh':
      return 'two wheels with their tooth counts, driver first, and `on` the member that carries a planet';
    case 'lock':
      return 'two members joined by `with`';
    case 'variation':
      return 'a part or a property of it, and its values: `a, b, c`, `a .. b by step` or `any`';
    case 'rule name':
      return 'the name of a check, or `every check`';
    case 'ranking':
      return 'a computed quantity, `at` its condition, and `highest first` or `lowest first`';
  }
}
