import { silentTopics } from '@tailshaft/drivetrain';
import { count } from '@tailshaft/mechanics';
import { type Block, paragraph, type Section, section, type Table, table } from '../document/blocks.js';
import { separated, strong, type Text } from '../document/text.js';
import { CAUTION_LINE, SCREENING } from '../sections/cautions.js';
import type { Sheet } from '../sheet.js';
import { belongsTo } from './belongs.js';
import { revisionWords } from './paper.js';
import { lineNames, subjectWords } from './sides.js';
import type { PaperWord } from './words.js';

/** What stands at the end of every paper: what was not assessed, who decides, and who signs. */
export function closing(sheet: Sheet, word: PaperWord, roles: readonly string[], under = ''): Block[] {
  return [notAssessed(sheet, word, under), deference(under), signOff(sheet, roles, under)];
}

/** The same in a few lines, for papers of one page. */
export function closingInBrief(sheet: Sheet, word: PaperWord, roles: readonly string[], under = ''): Block[] {
  return [
    section(`${under}not-assessed`, 'Not assessed, and cautions', [
      // What lies outside every check is no news to a maker.
      ...notAssessed(sheet, word, under).blocks.slice(0, word === 'propeller-order' ? 1 : 2),
      paragraph(CAUTION_LINE),
      form(sheet, roles),
    ]),
  ];
}

/** What the spec says nothing of, so that no check was made. Nothing here is a pass. */
function notAssessed(sheet: Sheet, word: PaperWord, under: string): Section {
  const { vessel, input } = sheet;
  const topics = silentTopics(vessel, input.verdicts).filter(one =>
    one.rules.some(rule => belongsTo(word, { rule })),
  );
  const names = lineNames(vessel);
  const said = topics.map((one): Text => {
    const lines = one.subjects.length < names.length ? ` (${subjectWords(one.subjects)})` : '';
    return `${one.of}${lines}`;
  });
  return section(`${under}not-assessed`, 'Not assessed', [
    topics.length > 0
      ? paragraph([
          strong(`Nothing is declared of ${count(topics.length, 'subject')}, so no check was made: `),
          separated('; ', ...said),
          '.',
        ])
      : paragraph('The spec declares something of every subject that this paper covers.'),
    paragraph(
      'Outside every check: stability, trim, structure, exhaust, cooling water, fuel, fire, electrical supply, alignment as run, and the state of parts that stay.',
    ),
  ]);
}

function deference(under: string): Block {
  return section(`${under}deference`, 'Cautions', [
    paragraph(SCREENING),
    paragraph(
      'Data of the part makers, rules of class and flag, local codes and licensed practice take precedence over every figure here.',
    ),
  ]);
}

/** Room for those who answer for the paper; nothing here signs for anybody. */
function signOff(sheet: Sheet, roles: readonly string[], under: string): Block {
  return section(`${under}sign-off`, 'Sign-off', [form(sheet, roles)]);
}

function form(sheet: Sheet, roles: readonly string[]): Table {
  const revision = revisionWords(sheet.input);
  return {
    ...table(
      'A signature covers this paper at this revision and replaces no other',
      [
        { title: 'Role' },
        { title: 'Name and organisation', wide: true },
        { title: 'Revision' },
        { title: 'Date and signature', wide: true },
      ],
      roles.map(role => [role, '', revision, '']),
    ),
    form: true,
  };
}
