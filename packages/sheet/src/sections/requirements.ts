import { type Requirement, verificationOf } from '@tailshaft/drivetrain';
import { type Block, section, table } from '../document/blocks.js';
import { lineBreak, quiet, separated, type Text, verdict as verdictMark, warning } from '../document/text.js';
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
        { title: 'Required by' },
        { title: 'Result', wide: true },
        { title: 'Where' },
      ],
      requirements.map(one => [
        one.written,
        one.note ?? quiet('not stated'),
        answers(sheet, one),
        sheet.place(one.origin) ?? '',
      ]),
    ),
  ]);
}

/** Each verdict on the requirement, also one that is told under another finding, and where what it judges is declared. */
function answers(sheet: Sheet, requirement: Requirement): Text {
  const found = sheet.input.verdicts.flatMap(one => [
    ...(one.answers === requirement.origin ? [{ one, under: undefined }] : []),
    ...(one.folds ?? [])
      .filter(folded => folded.answers === requirement.origin)
      .map(folded => ({ one: folded, under: one })),
  ]);
  if (found.length === 0) return unanswered(requirement);
  return separated(
    lineBreak,
    ...found.map(({ one, under }) =>
      separated(
        ' ',
        verdictMark(one.outcome),
        quiet(`${one.rule} (${one.subject})`),
        one.place === requirement.origin ? undefined : sheet.place(one.place),
        under && quiet(`reported under ${under.rule}`),
      ),
    ),
  );
}

/** Why no check speaks: the spec has nothing for it to judge, or there is none. */
function unanswered(requirement: Requirement): Text {
  const verification = verificationOf(requirement);
  if (verification.by === 'nothing') return warning(`nothing verifies it: ${verification.why}`);
  const rule = verification.by === 'rule' ? verification.rule : 'trace/requirement-met';
  return warning(`verified by ${rule}, which has no line in this spec to judge`);
}
