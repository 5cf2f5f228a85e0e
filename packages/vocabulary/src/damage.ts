import { block, date, row, text, vocabulary, word } from './kinds.js';
import { DAMAGE_PLACES, DAMAGES } from './words.js';

export const DAMAGE_RECORD = vocabulary({
  title: 'damage',
  rows: [
    row('at', 'at', word(...DAMAGE_PLACES), 'Place on the part where it was found.', 'at keyway'),
    row('dated', 'dated', date, 'When it was found.', 'dated 2025-11-03'),
    row('seenBy', 'seen by', text, 'Who saw it, in which role.', 'seen by "yard foreman"'),
    row('cause', 'cause', text, 'Probable cause.', 'cause "struck a log"', {
      absent: 'no cause is known',
      because: 'what caused it is rarely known',
    }),
    row(
      'madeGood',
      'made good',
      text,
      'What was done so that the part may stay, and how it was proven.',
      'made good "straightened, checked between centres, crack-tested"',
      { absent: 'nothing was done', because: 'nothing was done unless it is written' },
    ),
    row('madeGoodOn', 'made good on', date, 'When that was done.', 'made good on 2025-12-01', {
      absent: 'no day is recorded',
      because: 'the day is asked for where a record is held against it',
    }),
  ],
  blocks: [],
});

/** What happened to a part at its place. */
export const DAMAGE = block(
  'damages',
  'damage',
  DAMAGE_RECORD,
  'Damage to the part: what was found, where, when and by whom, and what was done about it. No check passes on the sizes of a part that was not made good.',
  'damage cracked { at keyway  dated 2025-11-03  seen by "yard foreman" }',
  {
    many: true,
    head: { field: 'what', kind: word(...DAMAGES) },
    absent: 'nothing is recorded',
    because: 'what happened to a part is written where something did',
    again: ['at', 'dated'],
  },
);
