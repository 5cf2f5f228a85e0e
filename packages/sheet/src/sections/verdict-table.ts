import type { Verdict } from '@tailshaft/drivetrain';
import { type Column, type RowGroup, type Section, section, type Table } from '../document/blocks.js';
import { lineBreak, quiet, separated, strong, type Text, verdict as verdictMark } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { percentWords } from '../words.js';

const NUMBERS: readonly Column[] = [
  { title: 'Capacity', numeric: true },
  { title: 'Demand', numeric: true },
  { title: 'Margin', numeric: true },
];

/** Checks of one subject: worst first, then in the order of the rules. */
export function verdictSection(sheet: Sheet, id: string, of: string, verdicts: readonly Verdict[]): Section {
  return section(id, 'Checks', [verdictTable(sheet, of, verdicts)]);
}

export function verdictTable(sheet: Sheet, of: string, verdicts: readonly Verdict[]): Table {
  const counts = verdicts.some(one => one.capacity || one.demand);
  const groups: RowGroup[] = ORDER.flatMap(outcome => {
    const rows = verdicts.filter(one => one.outcome === outcome);
    return rows.length > 0 ? [{ rows: rows.map(one => verdictRow(sheet, of, one, counts)) }] : [];
  });
  return {
    block: 'table',
    caption: `Checks of ${of}`,
    columns: [
      { title: 'Verdict' },
      { title: 'Check', wide: true },
      ...(counts ? NUMBERS : []),
      { title: 'Judged by', wide: true },
    ],
    groups,
  };
}

/** What asks for attention stands first. */
const ORDER = ['fails', 'cannot tell', 'accepted', 'holds', 'does not apply'] as const;

function verdictRow(sheet: Sheet, of: string, one: Verdict, counts: boolean): Text[] {
  for (const value of one.workings) sheet.workings.refer(value, of);
  return [
    [verdictMark(one.outcome), one.outcome === 'fails' ? [lineBreak, quiet(one.severity)] : ''],
    separated(lineBreak, separated(' ', sheet.rule(one.rule), sheet.place(one.place)), one.message),
    ...(counts
      ? [
          one.capacity ? sheet.number(one.capacity, of) : '',
          one.demand ? sheet.number(one.demand, of) : '',
          one.margin === undefined ? '' : percentWords(one.margin),
        ]
      : []),
    criterion(one),
  ];
}

/** The criterion, with a default marked as one. */
function criterion({ criterion: text }: Verdict): Text {
  if (!text) return quiet('no criterion named');
  return isDefault(text) ? separated(' ', text.replace(/\s*\(default\)/g, ''), strong('[default]')) : text;
}

/** Rules say in words where nobody chose the criterion. */
export function isDefault(text: string): boolean {
  return /\(default\b/.test(text);
}
