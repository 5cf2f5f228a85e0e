import { silentTopics } from '@tailshaft/drivetrain';
import { type Block, paragraph, table } from '../document/blocks.js';
import { code, quiet, separated, together, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** What the spec says nothing of, so that no rule about it spoke. A reader must not take that for consent. */
export function silentTable(sheet: Sheet): Block[] {
  const topics = silentTopics(sheet.vessel, sheet.input.verdicts);
  if (topics.length === 0) return [];
  const lines = new Set(topics.flatMap(one => one.subjects).filter(path => path.includes('.')));
  const everywhere = (subjects: readonly string[]) =>
    lines.size > 1 && [...lines].every(path => subjects.includes(path));
  return [
    paragraph(warning('Not assessed: the spec declares nothing about these, so no check was made.'), 'loud'),
    table(
      'Not assessed (nothing declared)',
      [
        { title: 'Subject', wide: true },
        { title: 'Lines', wide: true },
        { title: 'Checks not made', wide: true },
      ],
      topics.map(one => [
        one.of,
        everywhere(one.subjects) ? together(quiet('every line')) : separated(', ', ...one.subjects),
        separated(', ', ...one.rules.map(rule => code(rule))),
      ]),
    ),
  ];
}
