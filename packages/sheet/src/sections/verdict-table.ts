import { type Verdict, worstFirst } from '@tailshaft/drivetrain';
import { percent } from '@tailshaft/mechanics';
import {
  type Column,
  paragraph,
  type RowGroup,
  type Section,
  section,
  type Table,
} from '../document/blocks.js';
import { lineBreak, quiet, separated, strong, type Text, verdict as verdictMark } from '../document/text.js';
import type { Sheet } from '../sheet.js';

const NUMBERS: readonly Column[] = [
  { title: 'Capacity', numeric: true },
  { title: 'Demand', numeric: true },
  { title: 'Margin', numeric: true },
];

/** Checks of one subject, those with numbers in a table of their own; worst first, then in the order of the rules. */
export function verdictSection(sheet: Sheet, id: string, of: string, verdicts: readonly Verdict[]): Section {
  const counted = verdicts.filter(hasNumbers);
  const reasoned = verdicts.filter(one => !hasNumbers(one));
  return section(id, 'Checks', [
    counted.length > 0
      ? verdictTable(sheet, of, `${of}: capacity against demand`, counted, NUMBERS)
      : undefined,
    reasoned.length > 0 ? verdictTable(sheet, of, `${of}: checks without numbers`, reasoned, []) : undefined,
    verdicts.length === 0 ? paragraph('No check applies.') : undefined,
  ]);
}

const hasNumbers = (one: Verdict) => one.capacity !== undefined || one.demand !== undefined;

function verdictTable(
  sheet: Sheet,
  of: string,
  caption: string,
  verdicts: readonly Verdict[],
  numbers: readonly Column[],
): Table {
  const ordered = worstFirst(verdicts);
  const outcomes = [...new Set(ordered.map(one => one.outcome))];
  const groups: RowGroup[] = outcomes.map(outcome => ({
    rows: ordered.filter(one => one.outcome === outcome).map(one => verdictRow(sheet, of, one)),
  }));
  const columns = [
    { title: 'Verdict' },
    { title: 'Check', wide: true },
    ...numbers,
    { title: 'Criterion', wide: true },
  ];
  return { block: 'table', caption, columns, groups };
}

function verdictRow(sheet: Sheet, of: string, one: Verdict): Text[] {
  for (const value of one.workings) sheet.workings.refer(value, of);
  return [
    [
      verdictMark(one.outcome),
      one.outcome === 'fails' ? [lineBreak, quiet(one.asFound ? 'as found' : one.severity)] : '',
    ],
    separated(lineBreak, separated(' ', sheet.rule(one.rule), sheet.place(one.place)), one.message),
    ...(hasNumbers(one)
      ? [
          one.capacity ? sheet.number(one.capacity, of) : '',
          one.demand ? sheet.number(one.demand, of) : '',
          one.margin === undefined ? '' : percent(one.margin),
        ]
      : []),
    criterion(one),
  ];
}

/** The criterion, with a default marked as one. */
function criterion({ criterion: text, criterionChosenBy }: Verdict): Text {
  if (!text) return quiet('no criterion named');
  return criterionChosenBy === 'default' ? separated(' ', text, strong('[default]')) : text;
}
