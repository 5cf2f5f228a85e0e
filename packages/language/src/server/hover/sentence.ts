import {
  type Acceptance,
  type Assumption,
  combinationsOf,
  countsOf,
  countWords,
  type Quantity,
  type Requirement,
  type Verdict,
} from '@tailshaft/drivetrain';
import { signedPercent, workingMarkdown } from '@tailshaft/mechanics';
import type { JudgedVessel } from '../../project/project.js';
import type { AcceptanceReading } from '../../reading/acceptance.js';
import type { Place } from '../../reading/place.js';
import type { StudyReading, VesselReading } from '../../reading/vessel.js';
import type { ReadyStudy } from '../../study/case.js';
import { linesOf } from '../lines.js';
import { inside, samePlace } from '../places.js';
import { ageWords } from './date.js';
import { drivenBy } from './driven.js';
import { openChecks } from './line.js';
import { bullets, paragraphs, plain, shortened } from './markdown.js';
import { conversionLine } from './quantities.js';

const WORKING_LINES = 16;

/** A requirement: what is asked for, in other units, and how each line meets it, with the working of the first. */
export function requirementHover(judged: JudgedVessel, place: Place): string | undefined {
  const found = judged.vessel.requirements.find(one => samePlace(one.origin, place));
  if (!found) return undefined;
  const verdicts = judged.verdicts.filter(one => inside(one.place, place));
  const worked = verdicts
    .flatMap(one => [one.capacity, one.demand, ...one.workings])
    .find(one => one?.working);
  return paragraphs(
    `**require** ${plain(found.written)}${found.note ? ` · ${plain(found.note)}` : ''}`,
    quantityLine(found),
    verdicts.length > 0 ? bullets(verdicts.map(verdictLine)) : 'No check uses it yet.',
    worked && shortened(workingMarkdown(worked), WORKING_LINES),
  );
}

/** An assumption: what it overrides, why, and what rests on it. */
export function assumptionHover(judged: JudgedVessel, place: Place): string | undefined {
  const found: Assumption | undefined = judged.vessel.assumptions.find(one => samePlace(one.origin, place));
  if (!found) return undefined;
  return paragraphs(
    `**assume** ${plain(found.about)}: it replaces the default wherever that is used.`,
    quantityLine(found),
    found.because ? `Because: ${plain(found.because)}` : 'No reason is given.',
    drivenBy(place, linesOf(judged)),
  );
}

/** An acceptance: what it covers now, who gave it, and how long it lasts. */
export function acceptanceHover(
  judged: JudgedVessel,
  { place, rule, clauses }: AcceptanceReading,
  today: string,
): string | undefined {
  const found: Acceptance | undefined = judged.vessel.acceptances.find(one => samePlace(one.origin, place));
  const covered = judged.verdicts.filter(one => one.rule === rule && covers(found, one));
  const said = judged.verdicts.filter(one => inside(one.place, place));
  return paragraphs(
    `**accept** ${plain(rule)}${clauses.on ? ` on ${plain(clauses.on)}` : ''}`,
    bullets([
      clauses.by ? `by ${plain(clauses.by)}` : 'nobody is named: it covers nothing',
      clauses.because ? `because ${plain(clauses.because)}` : 'no reason is given: it covers nothing',
      ...(clauses.dated ? [`dated ${ageWords(clauses.dated, today)}`] : []),
      clauses.until ? `until ${ageWords(clauses.until, today)}` : 'with no last day',
    ]),
    covered.length > 0 ? bullets(covered.map(verdictLine), 6) : 'It covers no finding now.',
    said.length > 0 && bullets(said.map(verdictLine)),
  );
}

/** An entry of the change record. */
export function revisionHover(
  { name, dated, text, facts }: VesselReading['revisions'][number],
  today: string,
): string {
  const signed = facts.nested.flatMap(({ row, head }) =>
    head?.fact ? [`${row.words} ${plain(String(head.fact.value))}`] : [],
  );
  return paragraphs(
    `**revision ${plain(name)}**${dated ? `, dated ${ageWords(dated, today)}` : ', without a date'}`,
    text && plain(text),
    signed.length > 0 && bullets(signed),
  );
}

/** A trial sheet: when it was written, and how the checks of its readings stand. */
export function trialHover(
  judged: JudgedVessel,
  { name, dated, place }: VesselReading['trials'][number],
  today: string,
): string {
  const verdicts = judged.verdicts.filter(one => inside(one.place, place));
  return paragraphs(
    `**trial ${plain(name)}**${dated ? `, dated ${ageWords(dated, today)}` : ', without a date'} · ${countWords(countsOf(verdicts))}`,
    openChecks(verdicts),
  );
}

/** A study: how many candidates it has, and what they are made of. */
export function studyHover({ name, of }: StudyReading, ready: ReadyStudy | undefined): string {
  const count = ready && combinationsOf(ready.dimensions);
  return paragraphs(
    `**study ${plain(name)}** of ${plain(of?.name ?? 'the arrangement')} · ${count === undefined ? 'cannot be searched as it is written' : `${count.toLocaleString('en')} candidates`}`,
    ready && bullets(ready.dimensions.map(({ words, options }) => `${words}: ${options.length}`)),
    count !== undefined && 'The command line searches it: `tailshaft study` with the name of this file.',
  );
}

function verdictLine(verdict: Verdict): string {
  const margin = verdict.margin === undefined ? '' : `, margin ${signedPercent(verdict.margin)}`;
  return `**${verdict.outcome}** ${verdict.rule} of ${plain(verdict.subject)}${margin}: ${plain(verdict.message)}`;
}

function quantityLine({
  quantity,
}: Pick<Requirement, 'quantity'> & { quantity?: Quantity }): string | undefined {
  return quantity?.value && bullets([conversionLine(quantity.value)]);
}

/** A finding that this acceptance turned into an accepted one says so itself. */
function covers(acceptance: Acceptance | undefined, { outcome, message }: Verdict): boolean {
  return (
    outcome === 'accepted' &&
    acceptance?.because !== undefined &&
    message.includes(`Accepted by ${acceptance.by}`) &&
    message.endsWith(acceptance.because)
  );
}
