import type { Comparison, SpecChange, VesselComparison } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import { hostOf, type Place, placeOf } from '../reading/place.js';
import type { JudgedVessel } from './project.js';

/** A line of a text whose consequence moved, with what moved. */
export interface Mark {
  readonly place: Place;
  /** Whether something newly fails, fails by more or can no longer be told there; whether only better moved; or neither. */
  readonly gravity: 'worse' | 'better' | 'moved';
  /** What moved, gravest first, a sentence each. */
  readonly words: readonly string[];
}

/**
 * Where in one text the consequences of a change stand: each verdict that moved at its declaration, each part and statement that
 * changed at its own, and what followed for a shaft line at the parts of it that changed, or at the line where none did.
 */
export function marksOf(comparison: Comparison, vessels: readonly JudgedVessel[], uri: string): Mark[] {
  const made = new Map<number, { place: Place; changes: SpecChange[] }>();
  const put = (origin: Origin, change: SpecChange) => {
    const place = placeOf(origin);
    if (place.uri !== uri || place.start < 0) return;
    const header = hostOf(origin)?.headEnd ?? place.end;
    const had = made.get(place.start) ?? {
      place: { uri, start: place.start, end: Math.max(place.start, Math.min(place.end, header)) },
      changes: [],
    };
    had.changes.push(change);
    made.set(place.start, had);
  };
  for (const one of comparison.vessels) {
    for (const change of one.changes) {
      if (change.placeAfter) put(change.placeAfter, change);
      else if (change.kind === 'derived') for (const at of causesOf(one, change, vessels)) put(at, change);
    }
  }
  return [...made.values()]
    .sort((one, other) => one.place.start - other.place.start)
    .map(({ place, changes }) => ({
      place,
      gravity: gravityOf(changes),
      words: [...new Set([...changes].sort((one, other) => one.weight - other.weight).map(sentence))],
    }));
}

/** The parts of its line that changed; where only something outside the line did, the line itself. */
function causesOf(
  { changes }: VesselComparison,
  moved: SpecChange,
  vessels: readonly JudgedVessel[],
): Origin[] {
  const parts = changes.flatMap(one =>
    one.kind === 'part' && one.fate !== 'kept' && one.placeAfter && isOf(one.subject, moved.subject)
      ? [one.placeAfter]
      : [],
  );
  if (parts.length > 0) return parts;
  const lines = vessels.flatMap(({ vessel }) => vessel.arrangements.flatMap(each => each.lines));
  return lines.flatMap(line => (line.path === moved.subject ? [line.nameOrigin] : []));
}

function isOf(subject: string, path: string): boolean {
  return subject === path || subject.startsWith(`${path}.`);
}

const WORSE: ReadonlySet<string> = new Set([
  'newly fails',
  'no longer accepted',
  'fails by more',
  'newly cannot tell',
  'accepted on other figures',
]);
const BETTER: ReadonlySet<string> = new Set(['newly holds', 'fails by less', 'margin larger']);

function gravityOf(changes: readonly SpecChange[]): Mark['gravity'] {
  const moves = changes.flatMap(one => (one.kind === 'verdict' ? [one.movement] : []));
  if (moves.some(one => WORSE.has(one))) return 'worse';
  if (changes.some(one => one.kind === 'statement' && one.tendency === 'relaxed')) return 'worse';
  return moves.length > 0 && moves.every(one => BETTER.has(one)) ? 'better' : 'moved';
}

/** Of a verdict, what the check says now; of anything else, the change in a line. */
function sentence(change: SpecChange): string {
  if (change.kind !== 'verdict') return `${change.subject}: ${change.words}`;
  const { movement, rule, subject, after } = change;
  return `${movement}: ${rule} on ${subject}${after ? `: ${after.message}` : ''}`;
}
