import type { Arrangement, Part, ShaftLine, Verdict, Vessel } from '@tailshaft/drivetrain';
import { type Host, hostOf, type Place, placeOf } from '../reading/place.js';

/** What a verdict is about: the arrangement and the line of a vessel that its subject names. */
export interface About {
  readonly vessel: Vessel;
  readonly arrangement?: Arrangement;
  readonly line?: ShaftLine;
}

export function aboutOf({ subject }: Verdict, vessel: Vessel): About {
  const isOf = (path: string) => subject === path || subject.startsWith(`${path}.`);
  const arrangement = vessel.arrangements.find(one => isOf(one.path));
  const line = arrangement?.lines.find(one => isOf(one.path));
  return { vessel, ...(arrangement ? { arrangement } : {}), ...(line ? { line } : {}) };
}

/**
 * Where a file shows what a verdict says of its vessel: the declaration in the arrangement that is judged. What that
 * arrangement keeps from the one before, or takes from a catalogue elsewhere, is shown at the statement that does so.
 */
export function placeInFile(verdict: Verdict, uri: string, vessel: Vessel): Place {
  const place = placeOf(verdict.place);
  const about = aboutOf(verdict, vessel);
  if (place.uri === uri && !isElsewhere(place, about)) return place;
  const { arrangement, line } = about;
  const user =
    (line && keeperOf(place, line, arrangement!, vessel)) ??
    line?.chain.find(part => part.entry?.origin === verdict.place) ??
    line?.chain.find(part => part.entry && within(place, hostOf(part.entry.origin)));
  const used =
    user && placeOf(user.entry && place.uri !== uri ? (user.nameOrigin ?? user.origin) : user.origin);
  if (used && used.uri === uri && !isElsewhere(used, about)) return used;
  for (const one of verdict.related) {
    const at = placeOf(one.at);
    if (at.uri === uri && !isElsewhere(at, about)) return at;
  }
  return placeOf(line?.nameOrigin ?? arrangement?.nameOrigin ?? vessel.nameOrigin);
}

/** Whether a place lies in an arrangement of the vessel that is not the one the verdict is about. */
function isElsewhere(place: Place, { vessel, arrangement }: About): boolean {
  if (!arrangement || inside(place, placeOf(arrangement.origin))) return false;
  return vessel.arrangements.some(one => one !== arrangement && inside(place, placeOf(one.origin)));
}

/** The part that keeps what is declared at a place, in a line of its own or in the one that it mirrors. */
function keeperOf(place: Place, line: ShaftLine, arrangement: Arrangement, vessel: Vessel): Part | undefined {
  const mirrored = arrangement.lines.find(one => one.name === line.mirrors);
  const earlier = stepsBefore(arrangement, vessel);
  return (mirrored && keptBy(place, mirrored, earlier)) ?? keptBy(place, line, earlier);
}

/** The arrangements that this one revises, the last of them first. */
function stepsBefore(arrangement: Arrangement, { arrangements }: Vessel): Arrangement[] {
  const steps: Arrangement[] = [];
  let step = arrangements.find(one => one.name === arrangement.revises);
  while (step && step !== arrangement && !steps.includes(step)) {
    steps.push(step);
    const { revises } = step;
    step = arrangements.find(one => one.name === revises);
  }
  return steps;
}

function keptBy(place: Place, line: ShaftLine, earlier: readonly Arrangement[]): Part | undefined {
  for (const step of earlier) {
    const old = step.lines.find(one => one.name === line.name);
    const part = old?.chain.find(one => within(place, hostOf(one.origin)));
    if (!part) continue;
    const index = old!.chain.filter(one => one.role === part.role).indexOf(part);
    const same = line.chain.filter(one => one.role === part.role);
    return same[index] ?? same[0];
  }
  return undefined;
}

export function within(place: Place, host: Host | undefined): boolean {
  return (
    host !== undefined &&
    place.uri === host.uri &&
    place.start >= host.start &&
    place.end <= (host.block?.end ?? Math.max(host.end, host.headEnd))
  );
}

export function inside(place: Place, other: Place): boolean {
  return place.uri === other.uri && place.start >= other.start && place.end <= other.end;
}
