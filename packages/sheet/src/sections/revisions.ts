import { type Block, section, table } from '../document/blocks.js';
import { lineBreak, quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Revisions, departures accepted, and who signs for what: the record that goes with the numbers. */
export function revisionsSection(sheet: Sheet): Block {
  return section('record', 'Record', [revisions(sheet), acceptances(sheet), signatures(sheet)]);
}

function revisions(sheet: Sheet): Block {
  const rows = sheet.vessel.revisions.map((one): Text[] => [
    one.name,
    one.dated ?? quiet('not dated'),
    one.text ?? '',
    sheet.place(one.origin) ?? '',
  ]);
  return table(
    rows.length > 0 ? 'Revisions of the spec' : 'Revisions of the spec: none recorded',
    [{ title: 'Revision' }, { title: 'Date' }, { title: 'What changed', wide: true }, { title: 'Where' }],
    rows,
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
