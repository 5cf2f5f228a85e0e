import { given, renamed, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { nameOf } from '../model/part.js';
import type { Bearing, Shaft } from '../model/shafting.js';
import type { ShaftSection } from '../model/strength.js';

export interface ShaftSize {
  readonly outsideDiameter: Value<'length'>;
  readonly bore: Value<'length'>;
}

/** One of the diameters of a shaft: of a section, or of what lies outside its sections. */
export interface SizedSection {
  /** `section middle`, `shaft outside its sections`, or just `shaft` where it has no sections. */
  readonly name: string;
  readonly section?: ShaftSection;
  readonly size: ShaftSize;
  /** Its diameter as written. */
  readonly written: string;
  /** Set for an end that is turned down: where that is declared. A thicker bar does not thicken it. */
  readonly end?: { readonly property: string; readonly fact: Quantity<'length'> };
}

/** Sections by name; of two of one name the upper counts, as when a part is modified. */
export function sectionsOf(shaft: Shaft): readonly ShaftSection[] {
  const all = shaft.sections ?? [];
  return all.filter((one, index) => all.findIndex(other => other.name === one.name) === index);
}

export function isStepped(shaft: Shaft): boolean {
  return sectionsOf(shaft).length > 0;
}

/** Diameter and bore outside the sections of a shaft; solid where no bore is declared. */
function mainSize(shaft: Shaft, needs: Needs): ShaftSize | undefined {
  const diameter = needs.fact(shaft.diameter, {
    what: `diameter of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'diameter',
  });
  const bore = mainBore(shaft, needs);
  return diameter && bore && sized(diameter, bore);
}

/** Every diameter that the shaft has. */
export function sizesOf(shaft: Shaft, needs: Needs): SizedSection[] | undefined {
  return joined(shaft, sectionsOf(shaft), true, needs);
}

/** The same with the ends that are turned down: where the taper of the propeller begins, and the coupling end. */
export function sizesWithEnds(shaft: Shaft, needs: Needs): SizedSection[] | undefined {
  const sizes = sizesOf(shaft, needs);
  if (!sizes) return undefined;
  const { taperLargeEnd, couplingEnd } = shaft;
  const aft = taperLargeEnd && sizesAft(shaft, needs)?.at(-1);
  const forward = couplingEnd && sizesForward(shaft, needs)?.[0];
  return [
    ...sizes,
    ...(aft ? endOf(shaft, taperLargeEnd, 'taper large end', aft, needs) : []),
    ...(forward ? endOf(shaft, couplingEnd, 'coupling end diameter', forward, needs) : []),
  ];
}

/** One place of two shafts, the one before and the one that takes its place. */
export interface PlaceOfTwo {
  /** Nothing for the bar, else ` at its coupling end`. */
  readonly where: string;
  readonly now: SizedSection;
  readonly was: SizedSection;
}

const ENDS = { 'taper large end': 'taperLargeEnd', 'coupling end diameter': 'couplingEnd' } as const;

/**
 * Two shafts place by place: the weakest of each bar, and each end that one of them turns down. An end of the old one of which
 * nothing is said is as thick as its bar; that of the new one is asked for where the old one says it.
 */
export function placesOfTwo(now: Shaft, was: Shaft, needs: Needs): PlaceOfTwo[] | undefined {
  const [sizes, old] = [sizesWithEnds(now, needs), sizesWithEnds(was, needs)];
  if (!sizes || !old) return undefined;
  const bar = (all: readonly SizedSection[]) => weakestInTorsion(all.filter(one => !one.end));
  const end = (all: readonly SizedSection[], property: string) =>
    all.find(one => one.end?.property === property);
  const ends = Object.entries(ENDS).map(([property, field]) => {
    const [own, oldEnd] = [end(sizes, property), end(old, property)];
    if (own)
      return {
        where: ` at its ${own.name.replace(' of its taper', ' of the taper')}`,
        now: own,
        was: oldEnd ?? bar(old),
      };
    if (oldEnd)
      needs.fact(now[field], { what: `${property} of the new ${nameOf(now)}`, host: now.origin, property });
    return undefined;
  });
  return [{ where: '', now: bar(sizes), was: bar(old) }, ...ends.flatMap(one => one ?? [])];
}

/** The ends of which nothing is said, as they are taken to be: told with what rests on them. */
export function endsTakenFor(shaft: Shaft): Value<'length'>[] {
  return (['taper large end', 'coupling end diameter'] as const).flatMap(property => {
    const said = property === 'taper large end' ? shaft.taperLargeEnd : shaft.couplingEnd;
    const size = said ? undefined : shaft.diameter?.value;
    if (!size) return [];
    return given(property, 'd', 'length', size.si, {
      written: shaft.diameter!.written,
      assumed: `that of the shaft: no ${property} is declared`,
      replaceWith: property,
    });
  });
}

function endOf(
  shaft: Shaft,
  fact: Quantity<'length'>,
  property: string,
  beside: SizedSection,
  needs: Needs,
): SizedSection[] {
  const diameter = needs.fact(fact, {
    what: `${property} of ${nameOf(shaft)}`,
    host: shaft.origin,
    property,
  });
  if (!diameter) return [];
  return [
    {
      name: property === 'taper large end' ? 'large end of its taper' : 'coupling end',
      size: sized(diameter, beside.size.bore),
      written: fact.written,
      end: { property, fact },
    },
  ];
}

/**
 * The diameters between two places, measured aft from the forward coupling face. A section whose place is not known
 * counts as if it were there, and its place is noted as missing.
 */
export function sizesBetween(
  shaft: Shaft,
  from: number,
  to: number,
  needs: Needs,
): SizedSection[] | undefined {
  let covered = false;
  const there = sectionsOf(shaft).filter(section => {
    const start = needs.fact(section.from, wantedOfSection(section, 'from'));
    const length = needs.fact(section.length, wantedOfSection(section, 'length'));
    if (!start || !length) return true;
    covered ||= start.si <= from + SLACK && start.si + length.si >= to - SLACK;
    return start.si < to - SLACK && start.si + length.si > from + SLACK;
  });
  return joined(shaft, there, !covered, needs);
}

/** The diameters that run in a bearing. */
export function sizesAtBearing(shaft: Shaft, bearing: Bearing, needs: Needs): SizedSection[] | undefined {
  if (!isStepped(shaft)) return sizesOf(shaft, needs);
  const at = needs.fact(bearing.position, {
    what: `place of bearing ${bearing.name}`,
    host: bearing.origin,
    property: 'at',
  });
  if (!at) return undefined;
  const half = (bearing.length?.value?.si ?? 2 * SLACK) / 2;
  return sizesBetween(shaft, at.si - half, at.si + half, needs);
}

/** The diameters at the forward end of the shaft, and at its aft end behind a place. */
export function sizesForward(shaft: Shaft, needs: Needs): SizedSection[] | undefined {
  return isStepped(shaft) ? sizesBetween(shaft, 0, 3 * SLACK, needs) : sizesOf(shaft, needs);
}

export function sizesAft(shaft: Shaft, needs: Needs): SizedSection[] | undefined {
  if (!isStepped(shaft)) return sizesOf(shaft, needs);
  const length = needs.fact(shaft.length, {
    what: `length of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'length',
  });
  return length && sizesBetween(shaft, length.si - 3 * SLACK, length.si, needs);
}

/** A tenth of a millimetre: steps meet bearings and ends no closer than that. */
const SLACK = 1e-4;

function joined(
  shaft: Shaft,
  sections: readonly ShaftSection[],
  withMain: boolean,
  needs: Needs,
): SizedSection[] | undefined {
  const own = withMain ? mainSize(shaft, needs) : undefined;
  const name = isStepped(shaft) ? 'shaft outside its sections' : 'shaft';
  const rest = sections.map(section => sizedSection(shaft, section, needs));
  if ((withMain && !own) || rest.some(one => !one)) return undefined;
  return [...(own ? [{ name, size: own, written: shaft.diameter!.written }] : []), ...rest.map(one => one!)];
}

function sizedSection(shaft: Shaft, section: ShaftSection, needs: Needs): SizedSection | undefined {
  const diameter = needs.fact(section.diameter, wantedOfSection(section, 'diameter'));
  const bore = section.boreDiameter
    ? needs.fact(section.boreDiameter, wantedOfSection(section, 'bore'))
    : mainBore(shaft, needs);
  if (!diameter || !bore) return undefined;
  return {
    name: `section ${section.name}`,
    section,
    size: sized(diameter, bore),
    written: section.diameter!.written,
  };
}

function mainBore(shaft: Shaft, needs: Needs): Value<'length'> | undefined {
  if (!shaft.boreDiameter) {
    return given('bore', 'd_i', 'length', 0, {
      assumed: 'solid: no bore is declared',
      replaceWith: 'bore',
    });
  }
  return needs.fact(shaft.boreDiameter, {
    what: `bore of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'bore',
  });
}

function wantedOfSection(section: ShaftSection, property: string) {
  return {
    what: `${property === 'from' ? 'beginning (from)' : property} of section ${section.name} of the shaft`,
    host: section.origin,
    property,
  };
}

function sized(diameter: Value<'length'>, bore: Value<'length'>): ShaftSize {
  return { outsideDiameter: renamed(diameter, 'shaft diameter', 'd'), bore: renamed(bore, 'bore', 'd_i') };
}

/** The one that twists and bends most easily. */
export function thinnest(sizes: readonly SizedSection[]): SizedSection {
  return sizes.reduce((least, one) => (stiffness(one.size) < stiffness(least.size) ? one : least));
}

/** The one that twists and bends least. */
export function thickest(sizes: readonly SizedSection[]): SizedSection {
  return sizes.reduce((most, one) => (stiffness(one.size) > stiffness(most.size) ? one : most));
}

/** The one with the least material, or with the most. */
export function lightest(sizes: readonly SizedSection[]): SizedSection {
  return sizes.reduce((least, one) => (area(one.size) < area(least.size) ? one : least));
}

export function heaviest(sizes: readonly SizedSection[]): SizedSection {
  return sizes.reduce((most, one) => (area(one.size) > area(most.size) ? one : most));
}

/** The one that a torque stresses most. */
export function weakestInTorsion(sizes: readonly SizedSection[]): SizedSection {
  const modulus = ({ size }: SizedSection) => stiffness(size) / size.outsideDiameter.si;
  return sizes.reduce((least, one) => (modulus(one) < modulus(least) ? one : least));
}

const stiffness = ({ outsideDiameter, bore }: ShaftSize) => outsideDiameter.si ** 4 - bore.si ** 4;
const area = ({ outsideDiameter, bore }: ShaftSize) => outsideDiameter.si ** 2 - bore.si ** 2;
