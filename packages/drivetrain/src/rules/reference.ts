import { citeSource } from '@tailshaft/mechanics';
import { RULES } from './index.js';
import type { Rule } from './rule.js';

/** The manual page of one rule in Markdown: hover, `explain` and the reference are made from it. */
export function ruleManual(rule: Rule): string {
  const { id, title, severity, criterion, source, manual, caution, examples, mistakes } = rule;
  const third = examples.cannotTell.includes('{')
    ? `Cannot tell:\n\n${fenced(examples.cannotTell)}`
    : `Cannot tell: ${examples.cannotTell}`;
  return [
    `## ${id}`,
    `**${title}.** ${weight(severity)}${mistakes.length > 0 ? `; mistake ${mistakes.join(', ')}` : ''}.`,
    manual,
    `Criterion: ${criterion}.`,
    `Source: ${citeSource(source)}.`,
    `Caution: ${caution}`,
    `Fails:\n\n${fenced(examples.failing)}`,
    `Holds:\n\n${fenced(examples.passing)}`,
    third,
  ].join('\n\n');
}

/** All rules, with the table of mistakes in front. */
export function rulesReference(): string {
  const rows = RULES.flatMap(rule => rule.mistakes.map(mistake => [mistake, rule] as const)).sort(
    ([a], [b]) => (a < b ? -1 : a > b ? 1 : 0),
  );
  return `${[
    '# The rules',
    'Made from the rule modules in `src/rules`: change them there, then run `npm run docs`. Every example is a whole spec and is tested.',
    'Every verdict screens; none certifies. Part makers, local codes, class, flag and licensed practice come first.',
    '## Mistakes and the rules that catch them',
    [
      '| mistake | rule | what it holds | weight |',
      '| --- | --- | --- | --- |',
      ...rows.map(
        ([mistake, rule]) =>
          `| ${mistake} | [${rule.id}](#${anchor(rule.id)}) | ${rule.title} | ${rule.severity} |`,
      ),
    ].join('\n'),
    ...RULES.map(ruleManual),
  ].join('\n\n')}\n`;
}

function weight(severity: Rule['severity']): string {
  return { error: 'An error', warning: 'A warning', note: 'A note' }[severity];
}

function anchor(id: string): string {
  return id.replace('/', '');
}

function fenced(spec: string): string {
  return `\`\`\`tailshaft\n${spec.trim()}\n\`\`\``;
}
