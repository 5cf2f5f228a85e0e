import { byGravity, type Outcome, type Verdict } from '@tailshaft/drivetrain';
import { count, plural } from '@tailshaft/mechanics';
import { type Block, list, paragraph, section } from '../document/blocks.js';
import { quiet, separated, strong, type Text, verdict as verdictMark, warning } from '../document/text.js';
import { countsIn } from '../sections/standing.js';
import type { Sheet } from '../sheet.js';
import { belongsTo } from './belongs.js';
import { foldSides, type OfSides, subjectWords } from './sides.js';
import type { PaperWord } from './words.js';

/** More failures than this are told by their first sentence, so that all of them stand on the first page. */
const MANY = 5;

/** What fails, is accepted or is open, before anything else on the first page. */
export function standsSection(
  sheet: Sheet,
  word: PaperWord,
  concerns: (one: Verdict) => boolean = () => true,
  /** What the id of the section begins with, where a paper has several. */
  under = '',
): Block {
  const { input } = sheet;
  const own = input.verdicts.filter(one => belongsTo(word, one) && concerns(one));
  const counts = countsIn(sheet);
  const found = (outcome: Verdict['outcome'], asFound: boolean) =>
    foldSides(
      own.filter(one => one.outcome === outcome && Boolean(one.asFound) === asFound).sort(byGravity),
      sheet.vessel,
      one => ({ subject: one.subject, words: `${one.rule} ${one.message}` }),
    );
  const [failing, accepted] = [found('fails', false), found('accepted', false)];
  const [foundFailing, foundAccepted] = [found('fails', true), found('accepted', true)];
  const open = found('cannot tell', false);
  const standing: Outcome =
    counts.failed.all > 0
      ? 'fails'
      : counts.unknown.all + input.problems.length > 0 || input.verdicts.length === 0
        ? 'cannot tell'
        : 'holds';
  const brief = failing.length + accepted.length > MANY;
  const left =
    input.verdicts.filter(one => one.outcome === 'fails' && !one.asFound).length -
    own.filter(one => one.outcome === 'fails' && !one.asFound).length;
  return section(
    `${under}stands`,
    'What fails, what is accepted, what is open',
    [
      unread(sheet),
      paragraph(headline(counts), counts.failed.all > 0 ? 'loud' : undefined),
      left > 0
        ? paragraph(
            warning(
              `${count(left, 'failure')} of the vessel ${plural(left, 'lies', 'lie')} outside the subject of this paper: see its summary.`,
            ),
          )
        : undefined,
      failing.length > 0 ? list(failing.map(one => told(one, brief))) : undefined,
      accepted.length > 0 ? list(accepted.map(one => acceptedWords(one, brief))) : undefined,
      openList(open),
      asFoundList([...foundFailing, ...foundAccepted]),
    ],
    { standing },
  );
}

/** The head line alone, for the title of a paper. */
export function standingWords(sheet: Sheet): Text {
  const unread = sheet.input.problems.length > 0 ? warning('The text was not read whole. ') : '';
  return [unread, headline(countsIn(sheet))];
}

/** `Fails: 2 of 104 checks fail. 1 accepted, 3 cannot tell, 98 hold.` */
function headline(counts: ReturnType<typeof countsIn>): Text {
  const [failed, accepted, unknown, held, asFound] = (
    ['failed', 'accepted', 'unknown', 'held', 'asFound'] as const
  ).map(one => counts[one].all) as [number, number, number, number, number];
  const made = failed + accepted + unknown + held;
  if (made === 0) return warning('No check was made: this paper judges nothing.');
  const rest = [
    `${accepted} accepted`,
    `${unknown} cannot tell`,
    count(held, 'holds', 'hold'),
    asFound > 0 ? `${count(asFound, 'fails', 'fail')} as found` : '',
  ];
  return [
    strong(failed > 0 ? `${count(failed, 'check')} ${plural(failed, 'fails', 'fail')}` : 'No check fails'),
    `; ${rest.filter(Boolean).join(', ')}. A check that cannot tell is not passed.`,
  ];
}

function unread({ input: { problems } }: Sheet): Block | undefined {
  if (problems.length === 0) return undefined;
  const [first] = problems;
  const more = problems.length > 1 ? ` and ${problems.length - 1} more` : '';
  return paragraph(
    warning(
      `The text was not read whole: ${first!.message} (${first!.where})${more}. What depends on it was not judged.`,
    ),
    'loud',
  );
}

function told({ subjects, first }: OfSides<Verdict>, brief: boolean): Text {
  return separated(
    ' ',
    verdictMark(first.outcome),
    strong(placeWords(subjects)),
    brief ? firstSentence(ownWords(first)) : ownWords(first),
    quiet(first.rule),
  );
}

function acceptedWords(one: OfSides<Verdict>, brief: boolean): Text {
  const by = one.first.acceptance;
  return separated(
    ' ',
    told({ ...one, first: unaccepted(one.first) }, brief),
    by &&
      `Accepted by ${by.by ?? 'nobody named'}${by.dated ? ` on ${by.dated}` : ''}${by.until ? ` until ${by.until}` : ''}${by.because ? `: ${by.because}` : ''}.`,
  );
}

/** The verdict as it was before somebody accepted it: who did is told once, behind it. */
function unaccepted(verdict: Verdict): Verdict {
  const { acceptance, message } = verdict;
  const at = acceptance?.by === undefined ? -1 : message.indexOf(` Accepted by ${acceptance.by}`);
  return at < 0 ? verdict : { ...verdict, message: message.slice(0, at) };
}

/** What cannot be told goes by what is missing, with the checks that wait for it. */
function openList(open: readonly OfSides<Verdict>[]): Block | undefined {
  if (open.length === 0) return undefined;
  return paragraph([
    verdictMark('cannot tell'),
    ' ',
    separated('; ', ...open.map(({ subjects, first }) => `${first.rule} (${placeWords(subjects)})`)),
    '.',
  ]);
}

function asFoundList(found: readonly OfSides<Verdict>[]): Block | undefined {
  if (found.length === 0) return undefined;
  return paragraph([
    quiet('As found, before any change: '),
    separated(
      '; ',
      ...found.map(
        ({ subjects, first }): Text => [
          verdictMark(first.outcome),
          ` ${placeWords(subjects)}: ${firstSentence(ownWords(first))}`,
          quiet(` ${first.rule}`),
        ],
      ),
    ),
  ]);
}

/** `proposed, Port and Starboard`. */
const placeWords = (subjects: readonly string[]) => subjectWords(subjects).replaceAll('.', ', ');

/** The message without the line that it begins with: that one is told before it, with its fellows. */
function ownWords({ subject, message }: Verdict): string {
  const [, line] = subject.split('.');
  return line && message.startsWith(`${line}: `) ? message.slice(line.length + 2) : message;
}

/** Up to the first full stop that ends a sentence, not one inside a number or an abbreviation. */
function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s+[A-Z“]|$)/s.exec(text)?.[0] ?? text;
}
