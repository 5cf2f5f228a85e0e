import { byGravity, type Verdict, type Vessel } from '@tailshaft/drivetrain';
import { valuesBehind } from '@tailshaft/mechanics';
import { hostOf, type Place, placeOf } from '../reading/place.js';
import type { Finding } from './finding.js';
import { aboutOf, inside } from './finding-place.js';
import { withoutNames, wordsOnly } from './finding-words.js';

/**
 * One cause, one finding. What two lines say alike, what several lines say of one declaration or one catalogue rating,
 * and what other rules say of a fact that already fails, is told under the gravest of them. Nothing is lost: it stands
 * in `folded`.
 */
export function oneCause(findings: readonly Finding[]): Finding[] {
  return grouped(grouped(findings, lineKeys), factKeys);
}

/** Groups findings that share a key; the gravest of each leads. A finding joins the first group that it has a key of. */
function grouped(findings: readonly Finding[], keysOf: (finding: Finding) => readonly string[]): Finding[] {
  const groups: Finding[][] = [];
  const byKey = new Map<string, Finding[]>();
  for (const finding of findings) {
    const keys = keysOf(finding);
    const subject = subjectOf(finding);
    const had = keys
      .map(key => byKey.get(key))
      .find(group => group && (keysOf === factKeys || !group.some(one => subjectOf(one) === subject)));
    const group = had ?? [];
    if (had) had.push(finding);
    else {
      group.push(finding);
      groups.push(group);
    }
    for (const key of keys) if (!byKey.has(key)) byKey.set(key, group);
  }
  return groups.map(group => {
    if (group.length === 1) return group[0]!;
    const [first, ...rest] = [...group].sort((a, b) => byGravity(a.verdict!, b.verdict!));
    const folded = rest.flatMap(({ folded: own = [], ...one }) => [one, ...own]);
    return { ...first!, folded: [...(first!.folded ?? []), ...folded] };
  });
}

function subjectOf({ verdict, vessel }: Finding): string {
  return `${vessel?.vessel.name} ${verdict?.subject}`;
}

/** What makes two findings of one rule, on two lines, one: the same words, the same declaration, the same rating. */
function lineKeys({ verdict, vessel: judged, entryKey: ofEntry }: Finding): string[] {
  if (!verdict || !judged) return [];
  const { vessel } = judged;
  const keys = ofEntry ? [`entry ${ofEntry}`] : [];
  const { arrangement, line } = aboutOf(verdict, vessel);
  if (!line) return keys;
  const { common: ofVerdict, named, alike } = spokenBy(verdict, vessel);
  const common = `${ofVerdict} ${vessel.name} ${arrangement!.name}`;
  keys.push(`words ${common} ${named}`);
  keys.push(`place ${common} ${keyOf(placeOf(verdict.place))} ${alike}`);
  const ratings = ratingsOf(verdict, vessel.origin as Place);
  if (ratings && verdict.outcome === 'fails') keys.push(`rating ${common} ${ratings} ${alike}`);
  return keys;
}

/** What makes a fact of a catalogue entry, as several vessels and lines see it, one. */
export function entryKey(verdict: Verdict, vessel: Vessel, place: Place): string {
  const { common, alike } = spokenBy(verdict, vessel);
  return `${common} ${keyOf(place)} ${alike}`;
}

interface Spoken {
  readonly common: string;
  /** The message without the names of lines, and without its figures too. */
  readonly named: string;
  readonly alike: string;
}

const SPOKEN = new WeakMap<Verdict, Spoken>();

/** With every key all vessels of a file are asked, and the verdicts on all but one are the same as before. */
function spokenBy(verdict: Verdict, vessel: Vessel): Spoken {
  let had = SPOKEN.get(verdict);
  if (!had) {
    const names = namesIn(vessel);
    const { message } = verdict;
    had = {
      common: commonOf(verdict),
      named: withoutNames(message, names),
      alike: wordsOnly(message, names),
    };
    SPOKEN.set(verdict, had);
  }
  return had;
}

function commonOf({ rule, outcome, severity, asFound, missing }: Verdict): string {
  return [rule, outcome, severity, asFound ?? '', missing.map(one => one.property).join(',')].join(' ');
}

function namesIn(vessel: Vessel): string[] {
  return [
    vessel.name,
    ...vessel.arrangements.flatMap(one => [one.name, ...one.lines.map(each => each.name)]),
  ];
}

/** What makes findings of several rules one: they fail for one declared fact of one arrangement. */
function factKeys({ verdict, vessel }: Finding): string[] {
  if (!verdict || !vessel || verdict.outcome !== 'fails') return [];
  const place = placeOf(verdict.place);
  const { arrangement } = aboutOf(verdict, vessel.vessel);
  if (!arrangement || hostOf(verdict.place)) return [];
  // A name, of a part or a line, is not a fact: much can be wrong with what it stands for.
  const isName = vessel.vessel.arrangements.some(
    one =>
      samePlace(one.nameOrigin, place) ||
      one.lines.some(
        line =>
          samePlace(line.nameOrigin, place) ||
          line.chain.some(part => samePlace(part.nameOrigin, place) || samePlace(part.origin, place)),
      ),
  );
  if (isName || samePlace(vessel.vessel.nameOrigin, place)) return [];
  return [`${vessel.vessel.name} ${arrangement.name} ${verdict.asFound ?? ''} ${keyOf(place)}`];
}

/** The place of a verdict, where it is a fact of a catalogue entry. */
export function entryPlace(verdict: Verdict, vessel: Place): Place | undefined {
  const place = placeOf(verdict.place);
  return inside(place, vessel) ? undefined : place;
}

/** The declared figures of catalogue entries that a capacity rests on. */
function ratingsOf({ capacity }: Verdict, vessel: Place): string | undefined {
  if (!capacity) return undefined;
  const places = [...valuesBehind(capacity)]
    .flatMap(one => (one.origin ? [placeOf(one.origin)] : []))
    .filter(one => !inside(one, vessel));
  return places.length > 0 ? [...new Set(places.map(keyOf))].sort().join(' ') : undefined;
}

function samePlace(origin: object | undefined, place: Place): boolean {
  if (origin === undefined) return false;
  const { uri, start, end } = placeOf(origin);
  return start === place.start && end === place.end && uri === place.uri;
}

function keyOf({ uri, start, end }: Place): string {
  return `${uri}:${start}-${end}`;
}
