import { MISTAKE_SUBJECTS, MISTAKES, type Mistake, RULES, rulesAgainst } from '@tailshaft/drivetrain';
import { tableOf } from './markdown.js';
import { TEXT_FINDINGS } from './text-findings.js';

/** What each family of rules is about, in the order of the list. */
export const FAMILIES: Readonly<Record<string, string>> = {
  rotation: 'Rotation, hand and side',
  ratio: 'Gear ratio',
  capacity: 'Torque, power and duty',
  speed: 'Shaft, tip and vessel speed',
  propeller: 'Propeller',
  shafting: 'Shaft, bearings and coupling',
  interface: 'Interfaces, vibration and weight',
  units: 'Units',
  paper: 'Sources and acceptances',
  trace: 'Requirements',
  trial: 'Trials',
};

const WEIGHTS = ['error', 'warning', 'note'] as const;

/** The index of the rules: by family and by mistake, each with its page. */
export function rulesIndex(): string {
  return `${[
    '# The rules',
    'Each rule has a page: what goes wrong, what is compared, by which formula and source, its limits, and the lines of a spec for which it holds, fails or cannot tell. Made by `npm run docs` from the rule modules in `src/rules`.',
    'A rule screens declared data; it certifies nothing. Makers, class, flag and the responsible engineer decide.',
    '## By family',
    ...Object.entries(FAMILIES).flatMap(([family, title]) => [
      `### ${title}`,
      tableOf(
        ['rule', 'holds when', 'weight'],
        RULES.filter(rule => rule.id.startsWith(`${family}/`)).map(rule => [
          pageLink(rule.id),
          rule.title,
          rule.severity,
        ]),
      ),
    ]),
    '### The text itself',
    tableOf(
      ['finding', 'holds when', 'weight'],
      TEXT_FINDINGS.map(one => [pageLink(one.code), one.title, one.severity]),
    ),
    '## By mistake',
    'A mistake without a rule cannot show in a spec before the work is done: the sheet puts it on the checklist, for the inspector to confirm and record.',
    ...Object.entries(MISTAKE_SUBJECTS).flatMap(([letter, subject]) => [
      `### ${letter}: ${subject}`,
      tableOf(
        ['mistake', 'what goes wrong', 'found by', 'weight'],
        MISTAKES.filter(one => one.number.startsWith(letter)).map(mistakeRow),
      ),
    ]),
  ].join('\n\n')}\n`;
}

function mistakeRow(mistake: Mistake): string[] {
  const rules = rulesAgainst(mistake);
  const heaviest = WEIGHTS.find(one => rules.some(rule => rule.severity === one));
  return [
    `<a id="${mistake.number.toLowerCase()}"></a>${mistake.number}`,
    mistake.title,
    rules.map(rule => pageLink(rule.id)).join(', ') || `checklist: ${mistake.toSee ?? ''}`,
    heaviest ?? '',
  ];
}

function pageLink(code: string): string {
  return `[${code}](manual/${code}.md)`;
}
