import { type Counts, countsOf, type Verdict, worstFirst } from '@tailshaft/drivetrain';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { separated, strong, type Text, verdict as verdictMark } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Counted as everywhere else: failures of what is as found stand apart. */
const COLUMNS: readonly (readonly [string, (counts: Counts) => number])[] = [
  ['fails', one => one.failed],
  ['fails as found', one => one.asFound],
  ['cannot tell', one => one.unknown],
  ['accepted', one => one.accepted],
  ['holds', one => one.held],
];

/** How many checks ended in what, for each line; then every failure in a sentence. */
export function summarySection(sheet: Sheet): Block {
  const { verdicts } = sheet.input;
  const subjects: (readonly [string, readonly Verdict[]])[] = [
    ...sheet.arrangements.flatMap(arrangement => [
      [`${arrangement.name}, as a whole`, sheet.ofArrangement(arrangement)] as const,
      ...arrangement.lines.map(line => [`${arrangement.name}, ${line.name}`, sheet.ofLine(line)] as const),
    ]),
    ['vessel', sheet.ofVesselAlone()],
    ['catalogue entries', sheet.input.entryVerdicts],
  ];
  const entries = new Set(sheet.input.entryVerdicts);
  const ofVessel = verdicts.filter(one => !entries.has(one));
  const failing = worstFirst(verdicts).filter(one => one.outcome === 'fails' || one.outcome === 'accepted');
  return section('summary', 'Summary', [
    table(
      'Checks by verdict',
      [{ title: 'Subject', wide: true }, ...COLUMNS.map(([title]) => ({ title, numeric: true }))],
      [...subjects, ['vessel in all, what is as found apart', ofVessel] as const]
        .filter(([, of]) => of.length > 0)
        .map(([name, of]) => [name, ...numbersOf(of)]),
    ),
    failing.length > 0
      ? list(
          failing.map(one =>
            separated(' ', verdictMark(one.outcome), strong(one.rule), one.message, sheet.place(one.place)),
          ),
        )
      : paragraph(
          verdicts.length > 0 ? 'No check fails. Open questions are listed above.' : 'No check was made.',
        ),
  ]);
}

function numbersOf(of: readonly Verdict[]): Text[] {
  const counts = countsOf(of);
  return COLUMNS.map(([, numberOf]) => {
    const number = numberOf(counts);
    return number === 0 ? '0' : strong(String(number));
  });
}
