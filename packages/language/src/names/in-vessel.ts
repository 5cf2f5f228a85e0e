import type { AcceptanceReading } from '../reading/acceptance.js';
import type { Place } from '../reading/place.js';
import type { VesselReading } from '../reading/vessel.js';
import { keyAt, type Occurrence } from './occurrence.js';

/** The names of a vessel, its arrangements and lines. A line keeps its name, and its identity, in every arrangement. */
export function namesOfVessel(vessel: VesselReading): Occurrence[] {
  const self = keyAt(vessel.namePlace);
  const keys = {
    vessel: `vessel ${self}`,
    arrangement: (name: string) => `arrangement ${self} ${name}`,
    'shaft line': (name: string) => `line ${self} ${name}`,
  };
  const found: Occurrence[] = [];
  const add = (kind: 'arrangement' | 'shaft line', name: string, place: Place, declares?: Place) => {
    if (name)
      found.push({ ...bare(place), kind, name, key: keys[kind](name), ...(declares ? { declares } : {}) });
  };
  if (vessel.name) {
    const declares = vessel.whole;
    found.push({ ...bare(vessel.namePlace), kind: 'vessel', name: vessel.name, key: keys.vessel, declares });
  }
  for (const one of vessel.arrangements) {
    add('arrangement', one.name, one.namePlace, one.whole);
    if (one.revises?.name) add('arrangement', one.revises.name, one.revises.place);
    for (const line of one.removed) add('shaft line', line.name, line.place);
    for (const line of one.lines) {
      add('shaft line', line.name, line.namePlace, line.whole);
      if (line.mirrors?.name) add('shaft line', line.mirrors.name, line.mirrors.place);
    }
  }
  for (const { of } of [...vessel.trials, ...vessel.studies]) if (of) add('arrangement', of.name, of.place);
  for (const acceptance of vessel.acceptances) {
    for (const segment of segmentsOf(acceptance)) {
      const kind = kindOf(vessel, segment.name, segment.index);
      if (kind === 'vessel') found.push({ ...segment.place, kind, name: vessel.name, key: keys.vessel });
      else if (kind) add(kind, segment.name, segment.place);
    }
  }
  return found;
}

/** `proposed.Port.shaft`, word by word. */
function segmentsOf({ clauses, on }: AcceptanceReading): { name: string; index: number; place: Place }[] {
  if (!on || clauses.on === undefined) return [];
  let start = on.start;
  return clauses.on.split('.').map((name, index) => {
    const place = { uri: on.uri, start, end: start + name.length };
    start = place.end + 1;
    return { name, index, place };
  });
}

/** What a word of such a path names: an arrangement or the vessel in front, then a line. */
function kindOf(
  vessel: VesselReading,
  name: string,
  index: number,
): (Occurrence['kind'] & ('arrangement' | 'shaft line' | 'vessel')) | undefined {
  const isLine = vessel.arrangements.some(one => one.lines.some(line => line.name === name));
  if (index === 0 && vessel.arrangements.some(one => one.name === name)) return 'arrangement';
  if (index <= 1 && isLine) return 'shaft line';
  return index === 0 && name === vessel.name ? 'vessel' : undefined;
}

function bare({ uri, start, end }: Place): Place {
  return { uri, start, end };
}
