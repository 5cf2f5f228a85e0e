import type { Origin } from '@tailshaft/mechanics';
import { MODE_VOCABULARY, type Mode } from '@tailshaft/vocabulary';
import type { Fact } from '../model/fact.js';
import { home, nameOf, type Part, type Role } from '../model/part.js';
import { runningLines } from '../model/running.js';
import type { ShaftLine } from '../model/vessel.js';

/** Something in a line that the language lets through and the checks do not understand. */
export interface Uncovered {
  /** What keeps the load path from being judged: `which of engine and motor drives Port, and when`. */
  readonly what: string;
  readonly at: Origin;
  /** Where what is missing would be written. */
  readonly host: Origin;
  readonly property: string;
  /** Nobody can say what else it means: it is refused. */
  readonly refused: boolean;
  /** Every declared fact that the load path takes from the parts concerned: nothing that rests on one of them is judged. */
  readonly facts: ReadonlySet<Fact<unknown>>;
  /** Where those parts and their entries stand: what is looked for there and left out rests on them as well. */
  readonly hosts: ReadonlySet<Origin>;
}

/** Parts of which a line has one. */
const ONE_OF_A_LINE: readonly Role[] = ['engine', 'motor', 'gear', 'propeller'];

/** What of a line the checks do not cover. */
export function uncoveredIn(line: ShaftLine): readonly Uncovered[] {
  const running = runningLines(line);
  const movers = line.chain.filter(one => one.role === 'engine' || one.role === 'motor');
  const path = { facts: factsOf(movers), hosts: hostsOf(movers) };
  if (running && 'unclear' in running) {
    const { at = line.nameOrigin, ...unclear } = running.unclear;
    return [{ ...unclear, at, refused: false, ...path }];
  }
  const found: Uncovered[] = [];
  const inModes = running !== undefined || line.mode !== undefined;
  for (const role of ONE_OF_A_LINE) {
    if (inModes && role !== 'gear' && role !== 'propeller') continue;
    const parts = line.chain.filter(one => one.role === role);
    const second = parts[1];
    if (!second) continue;
    found.push({
      what: `which of its ${parts.length} ${role}s ${line.name} is to be judged by`,
      at: second.nameOrigin ?? second.origin,
      host: line.origin,
      property: role,
      refused: true,
      facts: factsOf(parts),
      hosts: hostsOf(parts),
    });
  }
  if (line.engine && line.motor && !inModes)
    found.push({
      what: `which of ${nameOf(line.engine)} and ${nameOf(line.motor)} drives ${line.name}, and whether both do at once`,
      at: line.motor.nameOrigin ?? line.motor.origin,
      host: line.origin,
      property: 'motor',
      refused: false,
      facts: factsOf([line.engine, line.motor]),
      hosts: hostsOf([line.engine, line.motor]),
    });
  return found;
}

/** What of a line in its modes only those checks know that count several movers: all that rests on one of them. */
export function severalMovers(line: ShaftLine): Uncovered | undefined {
  const { modes, mode, joined } = line;
  if (!joined && !(modes && modes.length > 0)) return undefined;
  const movers = line.chain.filter(one => one.role === 'engine' || one.role === 'motor');
  // One mover that drives in every mode, and modes that say nothing else, are a line without modes.
  if (!joined && movers.length === 1 && modes!.every(saysOnlyWhatDrives)) return undefined;
  const what = joined
    ? `what the movers of ${line.name} come to together for this check`
    : `what the modes of ${line.name} come to for this check`;
  return {
    what,
    at: mode?.nameOrigin ?? line.nameOrigin,
    host: mode?.origin ?? line.origin,
    property: 'driven by',
    refused: false,
    facts: factsOf(movers),
    hosts: hostsOf(movers),
  };
}

function saysOnlyWhatDrives(mode: Mode): boolean {
  return MODE_VOCABULARY.rows.every(({ field }) => field === 'drivenBy' || !Object.hasOwn(mode, field));
}

function hostsOf(parts: readonly Part[]): ReadonlySet<Origin> {
  return new Set(parts.flatMap(one => [one.origin, home(one)]));
}

/** Fields of a part that the load path does not run through: its size, its fit, its papers. */
const BESIDE_THE_PATH = new Set([
  ...['entry', 'origin', 'nameOrigin', 'keptFrom', 'source', 'housing', 'mounts', 'bedCentres', 'serial'],
  ...['length', 'width', 'height', 'mass', 'centre', 'position', 'room', 'accessories'],
]);

function factsOf(parts: readonly Part[]): ReadonlySet<Fact<unknown>> {
  const facts = new Set<Fact<unknown>>();
  const visit = (one: unknown): void => {
    if (typeof one !== 'object' || one === null) return;
    if (isFact(one)) facts.add(one);
    else if (Array.isArray(one)) for (const element of one) visit(element);
    else if ('origin' in one)
      for (const [field, value] of Object.entries(one)) if (!BESIDE_THE_PATH.has(field)) visit(value);
  };
  for (const part of parts) visit(part);
  return facts;
}

/** Told without looking at its value. */
function isFact(one: object): one is Fact<unknown> {
  return 'written' in one && 'origin' in one && 'value' in one;
}
