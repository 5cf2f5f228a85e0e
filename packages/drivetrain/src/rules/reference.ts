import { citeSource } from '@tailshaft/mechanics';
import { RULES } from './index.js';
import { MISTAKE_SUBJECTS, MISTAKES, type Mistake } from './mistakes.js';
import type { Rule } from './rule.js';

/** The manual page of one rule in Markdown: hover, `explain` and the reference are made from it. */
export function ruleManual(rule: Rule): string {
  const { id, title, severity, criterion, source, manual, caution, mistakes } = rule;
  const examples = rule.examples();
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
    ...(rule.noCure ? [`Ways out: ${rule.noCure}`] : []),
    `Fails:\n\n${fenced(examples.failing)}`,
    `Holds:\n\n${fenced(examples.passing)}`,
    third,
  ].join('\n\n');
}

/** Rules that hold a mistake. */
export function rulesAgainst({ number }: Mistake): Rule[] {
  return RULES.filter(rule => rule.mistakes.includes(number));
}

/** All rules, with the table of mistakes in front: every mistake, also those that no spec can show. */
export function rulesReference(): string {
  return `${[
    '# The rules',
    'Made from the rule modules in `src/rules`: change them there, then run `npm run docs`. Every example is a whole spec and is tested.',
    'Every verdict screens; none certifies. Part makers, local codes, class, flag and licensed practice come first.',
    '## Mistakes and the rules that catch them',
    'A mistake without a rule cannot show in a spec before the work is done: the sheet prints it on its checklist, for somebody to see and record.',
    ...Object.entries(MISTAKE_SUBJECTS).flatMap(([letter, subject]) => [
      `### ${letter}: ${subject}`,
      [
        '| mistake | what goes wrong | held by | weight |',
        '| --- | --- | --- | --- |',
        ...MISTAKES.filter(one => one.number.startsWith(letter)).map(mistakeRow),
      ].join('\n'),
    ]),
    ...RULES.map(ruleManual),
  ].join('\n\n')}\n`;
}

function mistakeRow(mistake: Mistake): string {
  const rules = rulesAgainst(mistake);
  const by = rules.map(rule => `[${rule.id}](#${anchor(rule.id)})`).join(', ');
  const heaviest = (['error', 'warning', 'note'] as const).find(one =>
    rules.some(rule => rule.severity === one),
  );
  return `| ${mistake.number} | ${mistake.title} | ${by || `checklist: ${mistake.toSee ?? ''}`} | ${heaviest ?? ''} |`;
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
