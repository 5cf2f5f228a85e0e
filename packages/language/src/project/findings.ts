import { isFinding, type ShaftLine, type Verdict, type Vessel } from '@tailshaft/drivetrain';
import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import type { LineReading } from '../reading/arrangement.js';
import { nearest } from '../reading/misspelt.js';
import {
  type BlockReading,
  type FactReading,
  type Host,
  hostOf,
  type Place,
  placeOf,
} from '../reading/place.js';
import type { Problem } from '../reading/problem.js';
import type { FileCheck, JudgedVessel } from './project.js';

/** One thing to show at one place of one file: a problem of the text, or a verdict of a rule. */
export interface Finding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly place: Place;
  readonly message: string;
  readonly related: readonly { readonly place: Place; readonly message: string }[];
  readonly problem?: Problem;
  readonly verdict?: Verdict;
  readonly vessel?: JudgedVessel;
}

/** Everything to show in a file, by place. Verdicts that only repeat a problem of the text are left out. */
export function findingsOf(check: FileCheck): Finding[] {
  const findings: Finding[] = check.problems.map(problem => ({
    code: problem.code,
    severity: problem.severity === 'note' ? 'hint' : problem.severity,
    place: { uri: check.uri, start: problem.start, end: problem.end },
    message: problem.message,
    related: [],
    problem,
  }));
  for (const judged of check.vessels) {
    for (const verdict of judged.verdicts) {
      if (isToShow(verdict) && !echoesProblem(verdict, check) && !isUnsettled(verdict, judged))
        findings.push(toFinding(verdict, check.uri, judged));
    }
  }
  for (const entry of check.entries) {
    for (const verdict of entry.verdicts)
      if (isFinding(verdict) && !echoesProblem(verdict, check)) findings.push(toFinding(verdict, check.uri));
  }
  return once(findings).sort(
    (a, b) => a.place.start - b.place.start || a.place.end - b.place.end || (a.code < b.code ? -1 : 1),
  );
}

/** What is not known of the vessel as found is asked for by the proposals that rest on it, and by nothing else. */
function isToShow(verdict: Verdict): boolean {
  return isFinding(verdict) && !(verdict.asFound && verdict.outcome === 'cannot tell');
}

const SEVERITY = { error: 'error', warning: 'warning', note: 'hint' } as const;

function toFinding(verdict: Verdict, uri: string, judged?: JudgedVessel): Finding {
  const place = placeOf(verdict.place);
  const here = place.uri === uri ? place : judged && placeInVessel(verdict, uri, judged.vessel);
  const related = verdict.related.map(one => ({ place: placeOf(one.at), message: one.message }));
  for (const missing of verdict.missing)
    related.push({
      place: placeOf(missing.at ?? missing.host),
      message: `Write it here: ${missing.property}`,
    });
  if (here && here !== place) related.unshift({ place, message: 'Declared here' });
  return {
    code: verdict.rule,
    severity: verdict.outcome === 'cannot tell' ? 'information' : SEVERITY[verdict.severity],
    place: here ?? { uri, start: 0, end: 0 },
    message: verdict.message,
    related,
    verdict,
    ...(judged ? { vessel: judged } : {}),
  };
}

/** Where the vessel's own text uses what a verdict says of a catalogue entry. */
function placeInVessel(verdict: Verdict, uri: string, vessel: Vessel): Place {
  for (const one of verdict.related) if (placeOf(one.at).uri === uri) return placeOf(one.at);
  const line = lineOf(verdict, vessel);
  const user =
    line?.chain.find(part => part.entry?.origin === verdict.place) ??
    line?.chain.find(part => part.entry && within(placeOf(verdict.place), hostOf(part.entry.origin)));
  if (user && placeOf(user.origin).uri === uri) return placeOf(user.nameOrigin ?? user.origin);
  return placeOf(line?.nameOrigin ?? vessel.nameOrigin);
}

function lineOf(verdict: Verdict, vessel: Vessel): ShaftLine | undefined {
  return vessel.arrangements
    .flatMap(one => one.lines)
    .find(one => verdict.subject === one.path || verdict.subject.startsWith(`${one.path}.`));
}

function within(place: Place, host: Host | undefined): boolean {
  return (
    host !== undefined &&
    place.uri === host.uri &&
    place.start >= host.start &&
    place.end <= (host.block?.end ?? host.end)
  );
}

/** A `cannot tell` whose data are missing only because the text there could not be read, or a verdict on just that. */
function echoesProblem(verdict: Verdict, check: FileCheck): boolean {
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
 * propeller would be called wrong. The words that cannot be read are told of; the line is judged when they can.
 */
function isUnsettled(verdict: Verdict, judged: JudgedVessel): boolean {
  for (const arrangement of judged.reading.arrangements) {
    const unsettled = arrangement.lines.filter(lacksPart).map(one => one.name);
    for (const line of arrangement.lines) {
      if (!unsettled.includes(line.name) && !unsettled.includes(line.mirrors?.name ?? '')) continue;
      const path = `${arrangement.name}.${line.name}`;
      const { subject } = verdict;
      if (subject === path || subject.startsWith(`${path}.`) || subject === arrangement.name) return true;
    }
  }
  return false;
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

function once(findings: Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(one => {
    const key = `${one.code} ${one.place.start} ${one.place.end} ${one.message}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
