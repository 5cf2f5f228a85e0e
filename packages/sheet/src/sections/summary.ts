import type { Outcome, Verdict } from '@tailshaft/drivetrain';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { separated, strong, type Text, verdict as verdictMark } from '../document/text.js';
import type { Sheet } from '../sheet.js';

const OUTCOMES: readonly Outcome[] = ['fails', 'cannot tell', 'accepted', 'holds', 'does not apply'];

/** How many checks ended in what, for each line; then every failure in a sentence. */
export function summarySection(sheet: Sheet): Block {
  const { verdicts } = sheet.input;
  const subjects: (readonly [string, readonly Verdict[]])[] = [
    ...sheet.arrangements.flatMap(arrangement => [
      [`${arrangement.name}, as a whole`, sheet.ofArrangement(arrangement)] as const,
      ...arrangement.lines.map(line => [`${arrangement.name}, ${line.name}`, sheet.ofLine(line)] as const),
    ]),
    ['vessel and catalogue', sheet.ofVessel()],
  ];
  const failing = (['fails', 'accepted'] as const).flatMap(outcome =>
    verdicts.filter(one => one.outcome === outcome),
  );
  return section('summary', 'Summary', [
    table(
      'Checks by verdict',
      [{ title: 'Subject', wide: true }, ...OUTCOMES.map(outcome => ({ title: outcome, numeric: true }))],
      subjects
        .filter(([, of]) => of.length > 0)
        .map(([name, of]) => [name, ...OUTCOMES.map(outcome => countWords(of, outcome))]),
    ),
    failing.length > 0
      ? list(
          failing.map(one =>
            separated(' ', verdictMark(one.outcome), strong(one.rule), one.message, sheet.place(one.place)),
          ),
        )
      : paragraph(
          verdicts.length > 0
            ? 'No check fails. What could not be told is listed above.'
            : 'No check was made.',
        ),
  ]);
}

function countWords(of: readonly Verdict[], outcome: Outcome): Text {
  const number = of.filter(one => one.outcome === outcome).length;
  return number === 0 ? '0' : strong(String(number));
}
