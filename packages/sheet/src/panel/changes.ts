import { type Arrangement, compareArrangements, headline, sectionsOf } from '@tailshaft/drivetrain';
import { signedPercent } from '@tailshaft/mechanics';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { movedTable } from '../sections/moved-verdicts.js';
import type { Sheet } from '../sheet.js';

/** What leads from one arrangement to the other, by consequence. */
export function changesSection(sheet: Sheet, before: Arrangement, after: Arrangement): Block {
  const compared = compareArrangements(sheet.input, before, after);
  const blocks = sectionsOf(compared).map(({ title, kind, lines }): Block => {
    if (kind === 'derived')
      return table(
        title,
        [
          { title: 'Quantity', wide: true },
          { title: 'Line' },
          { title: before.name, numeric: true },
          { title: after.name, numeric: true },
          { title: 'Change', numeric: true },
        ],
        lines.flatMap(({ change, subjects }) =>
          change.kind === 'derived'
            ? [
                [
                  change.what,
                  subjects.map(nameOf).join(', '),
                  change.before ?? '?',
                  change.after ?? '?',
                  change.share === undefined ? '' : signedPercent(change.share),
                ],
              ]
            : [],
        ),
      );
    if (kind === 'verdict')
      return movedTable(
        sheet,
        title,
        { before: before.name, after: after.name },
        lines.flatMap(({ change, subjects }) =>
          change.kind === 'verdict' ? [{ where: subjects.map(nameOf).join(', '), change }] : [],
        ),
      );
    return section(`changes-${kind}`, title, [
      list(lines.map(({ change, subjects }) => `${subjects.map(nameOf).join(', ')}: ${change.words}`)),
    ]);
  });
  return section('changes', `From ${before.name} to ${after.name}`, [
    paragraph(headline(compared)),
    ...blocks,
  ]);
}

/** `proposed.Port` stands under the heading of its arrangement: `Port`. */
function nameOf(subject: string): string {
  return subject.slice(subject.indexOf('.') + 1);
}
