import { asWritten, type Fact, type Gear, type ShaftLine, type Vessel } from '@tailshaft/drivetrain';
import { withNested } from '../elaborate/vessel.js';
import type { BlockReading } from '../reading/block.js';
import type { DocumentReading } from '../reading/document.js';
import { type Place, placeOf } from '../reading/place.js';
import { keyAt, type NameKind, type Occurrence } from './occurrence.js';
import { partsOf } from './of-parts.js';

/** Kinds of what is declared inside a part, by the words that declare it. */
const INSIDE: Readonly<Record<string, NameKind>> = { clutch: 'clutch', ratio: 'ratio', rating: 'rating' };

/**
 * Clutches, ratios and ratings: declared in a catalogue entry or in place, used by the lines that the part stands in.
 * They are called by names that mean something only there, so each belongs to its part.
 */
export function namesInParts(reading: DocumentReading, vessels: readonly Vessel[]): Occurrence[] {
  const lines = vessels.flatMap(vessel => vessel.arrangements.flatMap(one => one.lines));
  const homes = new Homes(reading, lines);
  const blocks = [
    ...reading.entries.map(entry => ({ facts: entry.facts, owner: keyAt(entry.host) })),
    ...partsOf(reading).map(part => ({ facts: part.facts, owner: homes.ofPart(part.host) })),
  ];
  const found = blocks.flatMap(({ facts, owner }) => declaredIn(facts, owner));
  for (const line of lines) found.push(...usedIn(line, homes));
  const seen = new Set<number>();
  return found.filter(one => {
    if (one.uri !== reading.uri || seen.has(one.start)) return false;
    seen.add(one.start);
    return true;
  });
}

/** Whose the facts of a part are: its entry's, or those of the statement that declares it in place. */
class Homes {
  private readonly byPart = new Map<string, string>();

  constructor(
    private readonly reading: DocumentReading,
    lines: readonly ShaftLine[],
  ) {
    for (const line of lines) {
      for (const part of line.chain) {
        const key = keyAt(placeOf(part.origin));
        if (!this.byPart.has(key)) this.byPart.set(key, this.ofModel(part as Gear));
      }
    }
  }

  ofPart(host: Place): string {
    return this.byPart.get(keyAt(host)) ?? keyAt(host);
  }

  ofModel(part: Partial<Pick<Gear, 'clutches' | 'ratios'>> & Pick<Gear, 'entry' | 'origin'>): string {
    if (part.entry) return keyAt(placeOf(part.entry.origin));
    const ratings = (part as { ratings?: readonly { origin?: object }[] }).ratings ?? [];
    const declared = [...(part.ratios ?? []), ...(part.clutches ?? []), ...ratings].at(-1);
    const within = declared?.origin && this.statementAround(placeOf(declared.origin));
    return keyAt(within ?? placeOf(part.origin));
  }

  /** The part in place whose block holds a declaration. */
  private statementAround(place: Place): Place | undefined {
    return partsOf(this.reading).find(
      ({ host }) =>
        host.uri === place.uri && host.start <= place.start && place.end <= (host.block?.end ?? 0),
    )?.host;
  }
}

function declaredIn(top: BlockReading, owner: string): Occurrence[] {
  const found: Occurrence[] = [];
  for (const block of withNested(top)) {
    for (const { row, head, host } of block.nested) {
      const kind = INSIDE[row.words];
      if (!kind || !head?.value || head.fact?.value === undefined) continue;
      const name = head.fact.written;
      const declares = {
        uri: host.uri,
        start: host.start,
        end: Math.max(host.headEnd, host.block?.end ?? 0),
      };
      found.push({ uri: host.uri, ...head.value, kind, name, key: keyIn(kind, owner, name), declares });
    }
    for (const { row, value, fact } of block.facts) {
      if (row.kind.form !== 'name' || row.kind.of !== 'clutch' || !value || !fact?.value) continue;
      if (row.field === 'aheadClutch') continue;
      const name = fact.written;
      found.push({ uri: block.host.uri, ...value, kind: 'clutch', name, key: keyIn('clutch', owner, name) });
    }
  }
  return found;
}

function usedIn(line: ShaftLine, homes: Homes): Occurrence[] {
  const found: Occurrence[] = [];
  const { gear, engine } = line;
  const use = (kind: NameKind, owner: string, fact: Fact<unknown> | undefined, means: object | undefined) => {
    if (fact?.value === undefined) return;
    const { uri, start, end } = placeOf(fact.origin);
    const key = keyIn(kind, owner, fact.written);
    found.push({
      uri,
      start,
      end,
      kind,
      name: fact.written,
      key,
      ...(means ? { means: placeOf(means) } : {}),
    });
  };
  if (gear) {
    const owner = homes.ofModel(gear);
    const clutches = gear.variant?.clutches.length ? gear.variant.clutches : (gear.clutches ?? []);
    for (const fact of [asWritten(gear).aheadClutch, ...(line.modes ?? []).map(one => one.aheadClutch)]) {
      const clutch = clutches.find(one => one.name === fact?.value);
      use('clutch', owner, fact, clutch?.origin);
    }
    use('ratio', owner, gear.ratioUsed, undefined);
  }
  if (engine) use('rating', homes.ofModel(engine), engine.ratedAt, undefined);
  return found;
}

/** One key for 2:1 and 2.0:1. */
function keyIn(kind: NameKind, owner: string, name: string): string {
  const [over, under] = name.split(':').map(Number);
  const called = kind === 'ratio' && over && under ? (over / under).toFixed(6) : name;
  return `${kind} ${owner} ${called}`;
}
