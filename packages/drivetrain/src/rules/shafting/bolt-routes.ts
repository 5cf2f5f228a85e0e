import { given, isInInches, type Value } from '@tailshaft/mechanics';
import { inUnit, type NewValue, named, quantityOf, spell } from '@tailshaft/vocabulary';
import type { Route } from '../../judge/route.js';
import type { Coupling } from '../../model/shafting.js';
import type { BoltedFlange } from '../../model/strength.js';

/** Bolts that dealers keep; common practice. */
const METRIC_BOLTS = [8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 42, 48];
const INCH_BOLTS = [3 / 8, 7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4, 7 / 8, 1, 1 + 1 / 8, 1 + 1 / 4];

/** Bolts stand no closer than so many of their diameters, for the spanner; common practice. */
const PITCH = 2.5;

export interface BoltChoice {
  /** Classes that may be offered, weakest first. */
  readonly classes: readonly string[];
  /** Whether the other flange has its holes already, so that number and size stay. */
  readonly drilled: boolean;
  /** `factor`, `margin by class rules`. */
  readonly words: string;
  /** What a coupling with other bolts reaches, in words; undefined where it does not pass. */
  readonly passes: (other: Coupling) => string | undefined;
}

/** Stronger, more, or larger bolts: of each the least that passes. */
export function boltRoutes(coupling: Coupling, choice: BoltChoice): Route[] {
  return [
    ...strongerBolts(coupling, choice),
    ...(choice.drilled ? [] : [...moreBolts(coupling, choice), ...largerBolts(coupling, choice)]),
  ];
}

function strongerBolts(coupling: Coupling, { classes, passes, words }: BoltChoice): Route[] {
  const fact = coupling.flange?.boltClass;
  if (!fact || coupling.flange!.boltYield || coupling.flange!.boltStrength) return [];
  for (const name of classes) {
    if (name === fact.value) continue;
    const reached = passes(withFlange(coupling, { boltClass: { ...fact, value: name, written: name } }));
    if (reached === undefined) continue;
    return [
      {
        title: `Use bolts of class ${name}: ${words} ${reached}`,
        edits: [{ do: 'replace', at: fact.origin, value: named(name) }],
      },
    ];
  }
  return [];
}

/** So many bolts more are looked at: a flange that needs more of them needs larger ones. */
const MOST_MORE = 12;

function moreBolts(coupling: Coupling, { passes, words }: BoltChoice): Route[] {
  const now = coupling.flange!.bolts!.value!;
  const more = Math.min(now.count, MOST_MORE);
  for (let added = 1; added <= more; added += 1) {
    const count = now.count + added;
    const other = withBolts(coupling, count, now.size);
    if (!fits(other)) return [];
    const reached = passes(other);
    if (reached !== undefined) return [route(coupling, other, `${words} ${reached}`)];
  }
  return [];
}

function largerBolts(coupling: Coupling, { passes, words }: BoltChoice): Route[] {
  const now = coupling.flange!.bolts!.value!;
  const [sizes, unit] = isInInches(now.size)
    ? ([INCH_BOLTS, 'in'] as const)
    : ([METRIC_BOLTS, 'mm'] as const);
  for (const size of sizes) {
    const bolt = given('bolt size', 'd_b', 'length', inUnit('length', size, unit).si, { unit });
    if (bolt.si <= now.size.si + 1e-6) continue;
    const other = withBolts(coupling, now.count, bolt);
    if (!fits(other)) return [];
    const reached = passes(other);
    if (reached !== undefined) return [route(coupling, other, `${words} ${reached}`)];
  }
  return [];
}

function route(coupling: Coupling, other: Coupling, consequence: string): Route {
  const { count, size } = other.flange!.bolts!.value!;
  const value: NewValue = { is: 'bolts', count, size: quantityOf(size) };
  return {
    title: `Fit ${spell(value)} bolts: ${consequence}; both flanges must have the metal for them`,
    edits: [{ do: 'replace', at: coupling.flange!.bolts!.origin, value }],
  };
}

function fits({ flange }: Coupling): boolean {
  const circle = flange?.boltCircle?.value?.si;
  const bolts = flange?.bolts?.value;
  return !circle || !bolts || (Math.PI * circle) / bolts.count >= PITCH * bolts.size.si;
}

function withBolts(coupling: Coupling, count: number, size: Value<'length'>): Coupling {
  const fact = coupling.flange!.bolts!;
  const written = spell({ is: 'bolts', count, size: quantityOf(size) });
  return withFlange(coupling, { bolts: { ...fact, value: { count, size }, written } });
}

function withFlange(coupling: Coupling, facts: Partial<BoltedFlange>): Coupling {
  return { ...coupling, flange: { ...coupling.flange!, ...facts } };
}
