import type { Verdict } from '@tailshaft/drivetrain';
import { HEADER_ROWS, PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import type { LineReading } from '../reading/arrangement.js';
import { nearest } from '../reading/misspelt.js';
import { type BlockReading, type FactReading, hostOf, placeOf } from '../reading/place.js';
import type { VesselReading } from '../reading/vessel.js';
import type { FileCheck, JudgedVessel } from './project.js';

/** A `cannot tell` whose data are missing only because the text there could not be read, or a verdict on just that. */
export function echoesProblem(verdict: Verdict, check: FileCheck): boolean {
  const { uri, start, end } = placeOf(verdict.place);
  if (uri === check.uri && check.problems.some(one => one.start === start && one.end === end)) return true;
  if (verdict.outcome !== 'cannot tell' || verdict.missing.length === 0) return false;
  return verdict.missing.every(missing => {
    const host = hostOf(missing.host);
    if (!host) return false;
    if (host.unresolved) return true;
    const { reading } = host;
    if (!reading) return false;
    const told = check.problems.length > 0 || (host.uri === check.uri && reading.concerns.length > 0);
    return (
      told &&
      (reading.facts.some(one => failedToSay(one, missing.property)) || begun(reading, missing.property))
    );
  });
}

const ROLES = Object.keys(PLACE_VOCABULARY);

/**
 * A verdict on a line one of whose parts cannot be read, as in `gaer Alder-63`: judged without its gear, the hand of its
 * propeller would be called wrong. The words that cannot be read are told of; the line is judged when they can. Where
 * only the ratio is half typed, what holds or fails without it stays, and what waits for it is not asked for again.
 */
export function isUnsettled(verdict: Verdict, judged: JudgedVessel): boolean {
  const { lacksPart, lacksAny } = unsettledIn(judged.reading);
  const waits = verdict.outcome === 'cannot tell' || verdict.rule === 'ratio/not-offered';
  const { subject } = verdict;
  return (waits ? lacksAny : lacksPart).some(
    ({ path, arrangement }) => subject === path || subject.startsWith(`${path}.`) || subject === arrangement,
  );
}

interface UnsettledLine {
  readonly path: string;
  readonly arrangement: string;
}

/** The lines of which a part, or a part or a ratio, cannot be read. */
interface UnsettledLines {
  readonly lacksPart: readonly UnsettledLine[];
  readonly lacksAny: readonly UnsettledLine[];
}

const UNSETTLED = new WeakMap<VesselReading, UnsettledLines>();

/** Asked for every verdict of every vessel of a file, and hardly ever anything but nothing. */
function unsettledIn(reading: VesselReading): UnsettledLines {
  let had = UNSETTLED.get(reading);
  if (!had) {
    had = {
      lacksPart: linesThat(lacksPart, reading),
      lacksAny: linesThat(line => lacksPart(line) || lacksRatio(line), reading),
    };
    UNSETTLED.set(reading, had);
  }
  return had;
}

function linesThat(lacks: (line: LineReading) => boolean, { arrangements }: VesselReading): UnsettledLine[] {
  return arrangements.flatMap(arrangement => {
    const unsettled = arrangement.lines.filter(lacks).map(one => one.name);
    return arrangement.lines.flatMap(({ name, mirrors }) => {
      const mirrored = mirrors && (mirrors.name || arrangement.lines[0]?.name);
      if (!unsettled.includes(name) && !unsettled.includes(mirrored ?? '')) return [];
      return [{ path: `${arrangement.name}.${name}`, arrangement: arrangement.name }];
    });
  });
}

/** Whether a gear of the line begins to say its ratio, and does not. */
function lacksRatio({ parts, facts }: LineReading): boolean {
  return parts.some(
    ({ role, facts: own }) =>
      role === 'gear' &&
      (own.facts.some(one => one.row.words === HEADER_ROWS.ratio.words && !one.fact) ||
        [...own.unread, ...facts.unread].some(({ text }) => /^rat(?:i|io)?(?: |$)/.test(text))),
  );
}

/** Whether words in a line that mean nothing are probably a part that it lacks. */
function lacksPart({ facts, parts }: LineReading): boolean {
  return facts.unread.some(({ text }) => {
    const meant = text === '' ? undefined : nearest(text, ROLES);
    return meant !== undefined && !parts.some(part => part.role === meant);
  });
}

function failedToSay({ row, fact, doubtful }: FactReading, property: string): boolean {
  return row.words === property && (!fact || doubtful === true);
}

/** Whether words that nobody can read yet are probably this property, half typed or misspelt. */
function begun(reading: BlockReading, property: string): boolean {
  const first = property.split(' ')[0]!;
  return reading.unread.some(
    ({ text }) =>
      text !== '' &&
      (property === text || property.startsWith(`${text} `) || nearest(text, [first]) === first),
  );
}
