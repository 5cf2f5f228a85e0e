import type { Matter, Signature } from '@tailshaft/drivetrain';
import { type Block, section, table } from '../document/blocks.js';
import { lineBreak, quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Revisions, departures accepted, and who signs for what: the record that goes with the numbers. */
export function revisionsSection(sheet: Sheet): Block {
  return section('record', 'Record', [
    revisions(sheet),
    openMatters(sheet),
    acceptances(sheet),
    signatures(sheet),
  ]);
}

function revisions(sheet: Sheet): Block {
  const rows = sheet.vessel.revisions.map((one): Text[] => [
    one.name,
    one.dated ?? quiet('not dated'),
    one.text ?? '',
    signedBy(one.prepared),
    signedBy(one.checked),
    signedBy(one.approved),
    sheet.place(one.origin) ?? '',
  ]);
  return table(
    rows.length > 0 ? 'Revisions of the spec' : 'Revisions of the spec: none recorded',
    [
      { title: 'Revision' },
      { title: 'Date' },
      { title: 'What changed', wide: true },
      { title: 'Prepared' },
      { title: 'Checked' },
      { title: 'Approved' },
      { title: 'Where' },
    ],
    rows,
  );
}

function signedBy(signatures: readonly Signature[] = []): Text {
  if (signatures.length === 0) return quiet('nobody named');
  return separated(
    lineBreak,
    ...signatures.map(({ name, role, dated }) =>
      [name, role?.value ?? 'no role', dated?.value].filter(Boolean).join(', '),
    ),
  );
}

/** Questions and actions of the project, those not done first. */
function openMatters(sheet: Sheet): Block | undefined {
  const { questions = [], actions = [] } = sheet.vessel.project ?? {};
  const { today } = sheet.input;
  const all = [
    ...questions.map(one => ({ one, kind: 'question' })),
    ...actions.map(one => ({ one, kind: 'action' })),
  ].sort((a, b) => Number(!!a.one.done?.value) - Number(!!b.one.done?.value));
  if (all.length === 0) return undefined;
  const state = ({ due, done }: Matter): Text => {
    if (done?.value) return `done ${done.value}`;
    if (due?.value === undefined) return quiet('open, no day set');
    return due.value < today ? warning(`open, overdue since ${due.value}`) : `open until ${due.value}`;
  };
  return table(
    'Open questions and actions',
    [
      { title: 'Kind' },
      { title: 'Matter', wide: true },
      { title: 'For' },
      { title: 'State' },
      { title: 'Where' },
    ],
    all.map(({ one, kind }): Text[] => [
      kind,
      one.what,
      one.owner?.value ?? quiet('nobody named'),
      state(one),
      sheet.place(one.origin) ?? '',
    ]),
  );
}

function acceptances(sheet: Sheet): Block | undefined {
  const rows = sheet.vessel.acceptances.map((one): Text[] => [
    separated(lineBreak, sheet.rule(one.rule), one.on),
    one.because ?? warning('no reason given'),
    one.by ?? warning('nobody named: not valid'),
    one.dated ?? quiet('not dated'),
    until(one.until, sheet.input.today),
    sheet.place(one.origin) ?? '',
  ]);
  if (rows.length === 0) return undefined;
  return table(
    'Departures accepted',
    [
      { title: 'Check' },
      { title: 'Reason', wide: true },
      { title: 'By' },
      { title: 'Date' },
      { title: 'Until' },
      { title: 'Where' },
    ],
    rows,
  );
}

function until(date: string | undefined, today: string): Text {
  if (date === undefined) return quiet('no end');
  return date < today ? warning(`${date}: expired: not valid`) : date;
}

/** An approval says whose it is, for what and of which revision; none stands for another. */
function signatures(sheet: Sheet): Block {
  const revision = sheet.vessel.revisions.at(-1)?.name ?? '';
  const form = table(
    'Signatures; none of them replaces another',
    [
      { title: 'Role' },
      { title: 'Name and organisation', wide: true },
      { title: 'Scope and basis', wide: true },
      { title: 'Revision' },
      { title: 'Date and signature', wide: true },
    ],
    ['Prepared', 'Checked', 'Owner', 'Class or flag', 'Surveyor'].map(role => [role, '', '', revision, '']),
  );
  return { ...form, form: true };
}
