import { block, date, row, text, vocabulary } from './kinds.js';

export const SIGNATURE = vocabulary({
  title: 'signature',
  rows: [
    row('role', 'as', text, 'Role in which the person signs.', 'as "naval architect"', {
      absent: 'no role is named',
    }),
    row('dated', 'dated', date, 'Day of the signature.', 'dated 2026-03-02', {
      absent: 'the day of the revision',
    }),
  ],
  blocks: [],
});

const name = { field: 'name', kind: text } as const;

export const REVISION = vocabulary({
  title: 'revision',
  rows: [],
  blocks: [
    block(
      'prepared',
      'prepared by',
      SIGNATURE,
      'Who prepared the revision, and in which role.',
      'prepared by "drawing office" as "naval architect" dated 2026-03-01',
      { many: true, head: name, absent: 'nobody is named', again: 'freely' },
    ),
    block(
      'checked',
      'checked by',
      SIGNATURE,
      'Who checked the revision: another person than the one who prepared it.',
      'checked by "second office" as "checker" dated 2026-03-02',
      { many: true, head: name, absent: 'nobody is named', again: 'freely' },
    ),
    block(
      'approved',
      'approved by',
      SIGNATURE,
      'Who approved the revision for use, and in which role.',
      'approved by "head of office" as "principal" dated 2026-03-03',
      { many: true, head: name, absent: 'nobody is named', again: 'freely' },
    ),
  ],
});

export const MATTER = vocabulary({
  title: 'open matter',
  rows: [
    row('owner', 'for', text, 'Who is to answer or to act.', 'for "yard engineer"', {
      absent: 'nobody is named',
    }),
    row('due', 'due', date, 'Last day for the answer or the action.', 'due 2026-04-01', {
      absent: 'no day is set',
    }),
    row('done', 'done', date, 'Day on which it was answered or done.', 'done 2026-03-28', {
      absent: 'not yet done',
    }),
  ],
  blocks: [],
});

const what = { field: 'what', kind: text } as const;

export const PROJECT = vocabulary({
  title: 'project',
  rows: [
    row('number', 'project number', text, 'Number that the work is filed under.', 'project number "R-214"', {
      absent: 'no number',
    }),
    row(
      'drawing',
      'drawing number',
      text,
      'Number of the drawing or of this document.',
      'drawing number "R-214-01"',
      {
        absent: 'no drawing number',
      },
    ),
    row('client', 'client', text, 'Who ordered the work.', 'client "harbour authority"', {
      absent: 'no client is named',
    }),
    row('practice', 'practice', text, 'Office that does the work.', 'practice "design office"', {
      absent: 'no practice is named',
    }),
  ],
  blocks: [
    block(
      'questions',
      'question',
      MATTER,
      'An open question, with its owner and due date.',
      'question "Which bore has the coupling?" for "yard engineer" due 2026-04-01',
      { many: true, head: what, absent: 'no question is open', again: 'freely' },
    ),
    block(
      'actions',
      'action',
      MATTER,
      'An open action, with its owner and due date.',
      'action "Measure the stern tube" for "yard engineer" due 2026-04-01',
      { many: true, head: what, absent: 'no action is open', again: 'freely' },
    ),
  ],
});
