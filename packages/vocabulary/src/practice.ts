import type { AcceptanceRight, Gravity, PracticeFacts } from './facts/index.js';
import { between, blocksFor, quantity, rowsFor, text, vocabulary, word } from './kinds.js';
import { CRITERIA } from './vessel.js';

const practice = rowsFor<PracticeFacts>();
const within = blocksFor<PracticeFacts>();
const right = rowsFor<AcceptanceRight>();
const gravity = rowsFor<Gravity>();
const rules = { field: 'rules', kind: text } as const;

/** Everything that a vessel may choose as its criteria, and what only an office sets for all its vessels. */
export const PRACTICE = vocabulary({
  title: 'practice',
  rows: [
    practice(
      'titleBlock',
      'title block',
      text,
      'What stands in the title block of every paper.',
      'title block "Design office, harbour road 4"',
      { absent: 'the name of the practice' },
    ),
    practice(
      'longestAcceptance',
      'acceptances last at most',
      quantity('time'),
      'For how long an acceptance may last.',
      'acceptances last at most 2 year',
      { range: between('1 day', '20 year'), absent: 'no limit of the practice' },
    ),
    ...CRITERIA.rows,
  ],
  blocks: [
    within(
      'acceptances',
      'acceptances of',
      vocabulary({
        title: 'right to accept',
        rows: [
          right('by', 'by', text, 'Roles that may accept, with commas between them.', 'by "class surveyor"'),
        ],
        blocks: [],
      }),
      'Who may accept failures of the rules whose ids begin so.',
      'acceptances of "rotation/" by "class surveyor, flag surveyor"',
      { many: true, head: rules, absent: 'the usual roles' },
    ),
    within(
      'gravities',
      'gravity of',
      vocabulary({
        title: 'gravity of a rule',
        rows: [gravity('weight', 'is', word('error', 'warning'), 'How much its failures weigh.', 'is error')],
        blocks: [],
      }),
      'Makes failures of the rules whose ids begin so graver, never lighter.',
      'gravity of "speed/tip-speed" is error',
      { many: true, head: rules, absent: 'as each rule has it' },
    ),
  ],
});
