import { type MissingDatum, missingData, openChecks, type Verdict } from '@tailshaft/drivetrain';
import { count } from '@tailshaft/mechanics';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { code, quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { CHECKLIST_ID } from './checklist.js';
import { silentTable } from './silent-table.js';

/** What this sheet does not say, before what it says in detail: unread text, checks without data, open questions. */
export function notCheckedSection(sheet: Sheet): Block {
  const { input } = sheet;
  const unsure = openChecks(input.verdicts);
  const gaps = missingIn(sheet);
  const numberless = unsure.filter(one => one.missing.length === 0 || input.behindText?.has(one));
  const blocks: (Block | undefined)[] = [
    input.problems.length > 0
      ? paragraph(
          warning(
            `${count(input.problems.length, 'problem')} in the text: what depends on it was not judged.`,
          ),
          'loud',
        )
      : undefined,
    input.problems.length > 0
      ? list(input.problems.map(one => separated(' ', one.message, quiet(one.where))))
      : undefined,
    unsure.length > 0
      ? paragraph(
          warning(
            `${count(unsure.length, 'check')} cannot tell${dataWords(gaps.length)}. None of them counts as passed.`,
          ),
          'loud',
        )
      : undefined,
    gaps.length > 0 ? gapTable(sheet, gaps) : undefined,
    numberless.length > 0
      ? list(numberless.map(one => separated(' ', sheet.rule(one.rule), one.message, sheet.place(one.place))))
      : undefined,
    ...openQuestions(sheet, unsure),
    input.problems.length + unsure.length + sheet.vessel.openQuestions.length === 0
      ? paragraph('Every check that was made had the data it needs.')
      : undefined,
    ...silentTable(sheet),
    sheet.input.verdicts.length === 0
      ? paragraph(warning('No check was made: this sheet judges nothing.'), 'loud')
      : undefined,
    paragraph([
      'A spec cannot prove everything: what must be inspected, measured or calculated elsewhere is in the ',
      { as: 'reference', text: 'checklist', to: CHECKLIST_ID },
      '.',
    ]),
  ];
  return section('not-checked', 'Not checked', blocks, { loud: true });
}

/** What is missing, as every list and count of it has it. */
export function missingIn({ input }: Sheet): MissingDatum[] {
  const asked = input.verdicts.filter(one => !input.behindText?.has(one));
  return missingData(asked, place => input.placeKey?.(place) ?? place);
}

function gapTable(sheet: Sheet, gaps: readonly MissingDatum[]): Block {
  return table(
    'Missing data, the most needed first',
    [
      { title: 'Missing datum', wide: true },
      { title: 'To write' },
      { title: 'Place' },
      { title: 'Checks waiting', wide: true },
    ],
    gaps.map(({ gap, waiting }) => [
      gap.what,
      code(`${gap.property} ${gap.example === 'unknown' ? '…' : gap.example}`),
      sheet.place(gap.at ?? gap.host) ?? '',
      separated('; ', ...new Set(waiting.map(one => `${one.rule} (${one.subject})`))),
    ]),
  );
}

/** `, for 3 missing data`: as `check` counts them. */
function dataWords(data: number): string {
  return data === 0 ? '' : `, for ${count(data, 'missing datum', 'missing data')}`;
}

function openQuestions(sheet: Sheet, unsure: readonly Verdict[]): Block[] {
  const { openQuestions: open } = sheet.vessel;
  if (open.length === 0) return [];
  return [
    paragraph(warning(`${count(open.length, 'open question')} written as unknown.`), 'loud'),
    list(
      open.map((one): Text => {
        const waiting = unsure.filter(verdict => verdict.missing.some(gap => gap.at === one.origin));
        const rules = [...new Set(waiting.map(verdict => verdict.rule))];
        return separated(
          ' ',
          one.what,
          sheet.place(one.origin),
          quiet(rules.length > 0 ? `needed by ${rules.join(', ')}` : 'no check needs it'),
        );
      }),
    ),
  ];
}
