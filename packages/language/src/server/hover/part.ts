import { countsOf, countWords, lineFigures, type Verdict } from '@tailshaft/drivetrain';
import type { EntryReading } from '../../reading/document.js';
import { type JudgedLine, usersOf } from '../lines.js';
import { inside } from '../places.js';
import { gradeIn, gradeMarkdown } from '../standards/shaft-bar.js';
import { figureWords } from './figures.js';
import { openChecks } from './line.js';
import { bullets, paragraphs, plain } from './markdown.js';

/** A catalogue entry: what it is, where its data come from, where it is used and how it fares there. */
export function entryHover(entry: EntryReading, lines: readonly JudgedLine[]): string {
  const source = entry.facts.facts.find(one => one.row.field === 'source')?.fact;
  const users = usersOf(lines, entry.host);
  const verdicts = users.flatMap(({ line, part }) => aboutPart(line, part.path, entry));
  const grade = entry.kind === 'shaft material' ? gradeIn(entry.name, entry.title, entry.doc) : undefined;
  return paragraphs(
    `**${entry.kind} ${plain(entry.name)}**${entry.title ? ` · ${plain(entry.title)}` : ''}`,
    entry.doc,
    source ? `Source: ${plain(source.written)}` : 'Source: none stated.',
    users.length > 0
      ? `Used in ${users.map(({ line }) => placeName(line)).join(', ')}.`
      : lines.length > 0
        ? `Used in ${lines.map(placeName).join(', ')}.`
        : 'Not used by a vessel that is loaded.',
    verdicts.length > 0 && `Checks of this part: ${countWords(countsOf(verdicts))}.`,
    openChecks(verdicts),
    grade && gradeMarkdown(grade),
  );
}

function placeName({ judged, line }: JudgedLine): string {
  return plain(`${judged.vessel.name} ${line.path}`);
}

/** A part at its place, of the catalogue or declared there. */
export function placedPartHover(
  role: string,
  line: JudgedLine | undefined,
  place: object,
): string | undefined {
  const part = line?.line.chain.find(one => inside(one.origin, place as never) || one.origin === place);
  if (!line || !part) return undefined;
  const verdicts = line.verdicts.filter(one => mentions(one, place));
  return paragraphs(
    `**${role}** of ${plain(line.line.path)}, ${part.change}${part.entry ? `: ${plain(part.entry.name)}` : ', declared in place'}`,
    verdicts.length > 0 && `Checks of this part: ${countWords(countsOf(verdicts))}.`,
    openChecks(verdicts),
    part.role === 'shaft' || part.role === 'propeller' ? bullets(figuresOf(line)) : undefined,
  );
}

function figuresOf(line: JudgedLine): string[] {
  const needed = line.analysis.rotation.neededHand;
  return [
    ...(needed ? [`needs a ${needed}-hand propeller`] : []),
    ...lineFigures(line.analysis).map(figureWords),
  ];
}

export function aboutPart(line: JudgedLine, path: string, entry: EntryReading): Verdict[] {
  return line.verdicts.filter(
    one => one.subject === path || mentions(one, { ...entry.host, end: entry.whole.end }),
  );
}

/** Whether a verdict judges, or rests on, what is declared inside a place. */
function mentions(verdict: Verdict, place: object): boolean {
  const within = (one: object) => inside(one, place as never);
  const values = [verdict.capacity, verdict.demand];
  return (
    within(verdict.place) ||
    verdict.related.some(one => within(one.at)) ||
    values.some(value => value?.origin !== undefined && within(value.origin))
  );
}
