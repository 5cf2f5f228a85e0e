import { between, block, quantity, row, text, vocabulary, word } from './kinds.js';
import { CRITERIA } from './vessel.js';

const rules = { field: 'rules', kind: text } as const;

export const ACCEPTANCE_RIGHT = vocabulary({
  title: 'right to accept',
  rows: [row('by', 'by', text, 'Roles that may accept, with commas between them.', 'by "class surveyor"')],
  blocks: [],
});

export const GRAVITY = vocabulary({
  title: 'gravity of a rule',
  rows: [row('weight', 'is', word('error', 'warning'), 'Severity of its failures.', 'is error')],
  blocks: [],
});

/** Everything that a vessel may choose as its criteria, and what only an office sets for all its vessels. */
export const PRACTICE = vocabulary({
  title: 'practice',
  rows: [
    row(
      'titleBlock',
      'title block',
      text,
      'Text of the title block of every paper.',
      'title block "Design office, harbour road 4"',
      { absent: 'the name of the practice' },
    ),
    row(
      'longestAcceptance',
      'acceptances last at most',
      quantity('time'),
      'Longest term of an acceptance.',
      'acceptances last at most 2 year',
      { range: between('1 day', '20 year'), absent: 'no limit of the practice' },
    ),
    ...CRITERIA.rows,
  ],
  blocks: [
    block(
      'acceptances',
      'acceptances of',
      ACCEPTANCE_RIGHT,
      'Who may accept failures of the rules whose ids begin with this text.',
      'acceptances of "rotation/" by "class surveyor, flag surveyor"',
      { many: true, head: rules, absent: 'the usual roles' },
    ),
    block(
      'gravities',
      'gravity of',
      GRAVITY,
      'Raises the severity of the rules whose ids begin with this text; it never lowers it.',
      'gravity of "speed/tip-speed" is error',
      { many: true, head: rules, absent: 'as each rule has it' },
    ),
  ],
});
