import { flywheelSize, type Value } from '@tailshaft/mechanics';
import type { CatalogueEntry } from '../model/catalogue.js';
import type { Fact, Quantity } from '../model/fact.js';
import type { Flange } from '../model/gear.js';
import type { Coupling, CouplingFacts } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { shaftBehind } from './couplings.js';

/**
 * Catalogue couplings of the same kind that go in the place of this one: whatever it or its neighbours say of flywheel,
 * spline, flange, bore and thrust, the other sheet must say too, and agree. What a sheet leaves out never qualifies it.
 */
export function couplingsThatFit(
  line: ShaftLine,
  coupling: Coupling,
  couplings: readonly CatalogueEntry<CouplingFacts>[],
): CatalogueEntry<CouplingFacts>[] {
  const kind = coupling.kind?.value;
  if (!kind || !coupling.entry || !coupling.nameOrigin) return [];
  return couplings.filter(
    ({ name, facts }) =>
      name !== coupling.entry!.name && facts.kind?.value === kind && fitsPlace(line, coupling, facts),
  );
}

/** The same line with another coupling in the place of one. What is written in place stays. */
export function withCoupling(
  line: ShaftLine,
  coupling: Coupling,
  entry: CatalogueEntry<CouplingFacts>,
  catalogue: readonly CatalogueEntry<CouplingFacts>[],
): { readonly line: ShaftLine; readonly coupling: Coupling } {
  const old = catalogue.find(one => one.name === coupling.entry?.name)?.facts ?? {};
  const inPlace = Object.fromEntries(
    Object.entries(coupling).filter(
      ([field, value]) => !(field in old) || old[field as keyof CouplingFacts] !== value,
    ),
  );
  const fitted = {
    ...entry.facts,
    ...inPlace,
    entry: { name: entry.name, origin: entry.origin },
  } as Coupling;
  const exchanged = <P>(part: P) => (part === (coupling as unknown) ? (fitted as unknown as P) : part);
  return {
    coupling: fitted,
    line: { ...line, couplings: line.couplings.map(exchanged), chain: line.chain.map(exchanged) },
  };
}

function fitsPlace(line: ShaftLine, old: Coupling, facts: CouplingFacts): boolean {
  const { engine, gear } = line;
  const damper = old.kind?.value === 'damper';
  const shaft = damper ? undefined : shaftBehind(line, old);
  const ring = facts.rivetRing?.value;
  const recess = engine?.recessDiameter?.value;
  const cylinders = engine?.cylinders?.value;
  return (
    (!damper || sameSize(engine?.flywheelSize ?? old.flywheelSize, facts.flywheelSize)) &&
    (!damper || !old.rivetRing || (!!ring && (!recess || ring.si < recess.si))) &&
    (!old.leastCylinders ||
      (!!facts.leastCylinders?.value && (!cylinders || facts.leastCylinders.value.si <= cylinders.si))) &&
    (!old.splineTeeth || sameQuantity(gear?.splineTeeth ?? old.splineTeeth, facts.splineTeeth)) &&
    (!old.splinePitch || sameWord(gear?.splinePitch ?? old.splinePitch, facts.splinePitch)) &&
    (!old.flange || sameFlange(old.flange, facts.flange)) &&
    (!old.bore || sameQuantity(shaft?.couplingEnd ?? shaft?.diameter ?? old.bore, facts.bore)) &&
    (!old.keyWidth || sameQuantity(shaft?.couplingKeyWidth ?? old.keyWidth, facts.keyWidth)) &&
    (!old.length || sameQuantity(old.length, facts.length)) &&
    (!old.passesThrust || sameWord(old.passesThrust, facts.passesThrust)) &&
    STATED.every(field => !old[field]?.value || !!facts[field]?.value)
  );
}

/** What the other sheet must give a figure for, where this one does. */
const STATED = ['torque', 'stiffness', 'vibratoryTorque'] as const;

function sameQuantity(wanted: Quantity | undefined, offered: Quantity | undefined): boolean {
  return sameValue(wanted?.value, offered?.value);
}

function sameValue(wanted: Value | undefined, offered: Value | undefined): boolean {
  if (!wanted || !offered) return false;
  return Math.abs(wanted.si - offered.si) <= 1e-6 * Math.abs(wanted.si);
}

function sameWord(wanted: Fact<string> | undefined, offered: Fact<string> | undefined): boolean {
  return wanted?.value !== undefined && wanted.value === offered?.value;
}

/** By the table of sizes, so that 11.5 and 290 are one; nothing is asked where neither side names a size. */
function sameSize(wanted: Fact<string> | undefined, offered: Fact<string> | undefined): boolean {
  if (!wanted) return true;
  if (wanted.value === undefined || offered?.value === undefined) return false;
  const [a, b] = [flywheelSize(wanted.value), flywheelSize(offered.value)];
  return a && b ? a === b : wanted.value === offered.value;
}

function sameFlange(wanted: Flange, offered: Flange | undefined): boolean {
  if (!offered) return false;
  const [bolts, others] = [wanted.bolts?.value, offered.bolts?.value];
  const [pilot, other] = [wanted.pilot?.value, offered.pilot?.value];
  return (
    (!wanted.boltCircle || sameQuantity(wanted.boltCircle, offered.boltCircle)) &&
    (!bolts || (bolts.count === others?.count && sameValue(bolts.size, others.size))) &&
    (!pilot || (pilot.kind === other?.kind && sameValue(pilot.diameter, other?.diameter)))
  );
}
