import type { Rule } from '@tailshaft/drivetrain';
import { citeSource, type FormulaSpec } from '@tailshaft/mechanics';
import { anchorOf, fenced, fileName } from './markdown.js';
import { galleryPath, METHODS_PATH, upFrom } from './places.js';
import { type ShownExample, shownExamples } from './shown-example.js';

/** What a page says of a formula; the page of methods says the rest. */
export type PageFormula = Pick<FormulaSpec<never, never>, 'name' | 'symbol' | 'text'>;

/** More formulas than these are left to the page of methods, from where the first ones come. */
const MOST_FORMULAS = 6;

/** The page of one rule in Markdown: code sites, the editor and the link of a finding show it. */
export function rulePage(rule: Rule, formulas: readonly PageFormula[]): string {
  const up = upFrom(rule.id);
  return `${[
    `# ${rule.title}`,
    `\`${rule.id}\`: ${[rule.severity, ...rule.mistakes.map(number => `[mistake ${number}](${up}packages/drivetrain/RULES.md#${number.toLowerCase()})`), `[a spec that fails](${up}${galleryPath(rule.id)})`].join(', ')}`,
    rule.manual,
    [
      `- **Compared:** ${rule.criterion}.`,
      ...methods(formulas, up),
      `- **Source:** ${citeSource(rule.source)}.`,
      `- **Limits:** ${rule.caution}`,
      ...(rule.noCure ? [`- **Fixes:** ${rule.noCure}`] : []),
    ].join('\n'),
    // No blank line is needed behind a fence, and three examples a page make many.
    shownExamples(rule.examples())
      .map(one => exampleSection(one, up))
      .join('\n\n')
      .replaceAll('```\n\n', '```\n'),
  ].join('\n\n')}\n`;
}

function methods(formulas: readonly PageFormula[], up: string): string[] {
  if (formulas.length === 0) return [];
  const shown = formulas.slice(0, MOST_FORMULAS);
  const more = formulas.length - shown.length;
  return [
    '- **Computed by:**',
    ...shown.map(
      one => `  - [${one.name}](${up}${METHODS_PATH}#${anchorOf(one.name)}): \`${equation(one)}\``,
    ),
    ...(more > 0 ? [`  - and ${more} more behind these`] : []),
  ];
}

/** The equation, with its symbol in front where the text is the right side only. */
export function equation({ symbol, text }: Pick<PageFormula, 'symbol' | 'text'>): string {
  return text.includes('=') ? text : `${symbol} = ${text}`;
}

/** One example with its lines. */
function exampleSection({ title, like, lines, sentence }: ShownExample, up: string): string {
  if (sentence !== undefined) return `**${title}:** ${sentence}`;
  const known = like?.base
    ? `[${like.words}](${up}examples/mistakes/bases/${fileName(like.base)}.shaft)`
    : like?.words;
  if (!known)
    return `**${title}:**\n${fenced(
      'tailshaft',
      lines.map(line => line.text),
    )}`;
  if (lines.length === 0) return `**${title}:** ${known}, as it stands.`;
  return `**${title}:** ${known}, changed:\n${fenced(
    'diff',
    lines.map(line => `${line.sign}${line.text}`),
  )}`;
}
