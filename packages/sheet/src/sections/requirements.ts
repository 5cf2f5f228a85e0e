import type { Requirement, Verdict } from '@tailshaft/drivetrain';
import { type Block, section, table } from '../document/blocks.js';
import { quiet, separated, type Text, verdict as verdictMark, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** What the owner or class asks, with the checks that answer. */
export function requirementsSection(sheet: Sheet): Block | undefined {
  const { requirements } = sheet.vessel;
  if (requirements.length === 0) return undefined;
  return section('requirements', 'Requirements', [
    table(
      'Requirements as written, and the checks that name them',
      [
        { title: 'Requirement', wide: true },
        { title: 'From' },
        { title: 'Answer', wide: true },
        { title: 'Where' },
      ],
      requirements.map(one => [
        one.written,
        one.note ?? quiet('not stated'),
        answer(one, sheet.input.verdicts),
        sheet.place(one.origin) ?? '',
      ]),
    ),
  ]);
}

function answer(requirement: Requirement, verdicts: readonly Verdict[]): Text {
  const naming = verdicts.filter(
    one => one.place === requirement.origin || one.related.some(({ at }) => at === requirement.origin),
  );
  if (naming.length === 0)
    return warning(
      'not answered here: the data it needs are missing, or it is to be shown on trial or by document',
    );
  return separated(
    '; ',
    ...naming.map(one => separated(' ', verdictMark(one.outcome), quiet(`${one.rule} (${one.subject})`))),
  );
}
