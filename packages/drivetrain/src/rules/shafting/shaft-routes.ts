import { given, inchShaftEnds, isInInches, percent, type Value } from '@tailshaft/mechanics';
import { amount, type NewQuantity, type NewValue, named, spellQuantity } from '@tailshaft/vocabulary';
import type { SizedSection } from '../../analysis/shaft-sections.js';
import { replacementFor } from '../../cure/statement.js';
import type { LineContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Quantity } from '../../model/fact.js';
import { statementOf } from '../../model/part.js';
import type { Shaft, ShaftMaterial } from '../../model/shafting.js';
import type { ShaftSection } from '../../model/strength.js';
import { writeInPlace } from '../rotation/edits.js';

/** Bars that dealers keep, metric; common practice. */
const METRIC_BARS = [
  20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120, 130, 140, 150,
];

/** At most so many grades are offered: those with the greatest margin. */
const OFFERED = 3;

/** A shaft as it would be with another diameter or grade. */
export function withDiameter(shaft: Shaft, diameter: Value<'length'>): Shaft {
  const { origin } = shaft;
  return { ...shaft, diameter: { value: diameter, written: diameter.written ?? '', origin } };
}

export function withGrade(shaft: Shaft, grade: ShaftMaterial): Shaft {
  return { ...shaft, material: { value: grade.name, written: grade.name, origin: shaft.origin }, grade };
}

/** The same with another diameter in one of its sections. */
function withSection(shaft: Shaft, section: ShaftSection, diameter: Value<'length'>): Shaft {
  const { origin } = section;
  const thicker = { ...section, diameter: { value: diameter, written: diameter.written ?? '', origin } };
  return { ...shaft, sections: (shaft.sections ?? []).map(one => (one === section ? thicker : one)) };
}

/** The diameter that stands for one of the sections of a shaft, or for the rest of it. */
export function diameterOf(
  shaft: Shaft,
  { section, end }: Pick<SizedSection, 'section' | 'end'>,
): Quantity<'length'> {
  return end?.fact ?? (section ?? shaft).diameter!;
}

/** A larger diameter of a shaft, or of one section of it. */
export interface Thicker {
  /** `Fit a 70 mm shaft`, `Make section middle of the shaft 70 mm thick`. */
  readonly words: string;
  readonly margin: number;
  readonly edit: ModelEdit;
}

/** The next stocked diameter over this one that passes, in the unit that it is written in. */
export function nextDiameter(
  shaft: Shaft,
  section: ShaftSection | undefined,
  marginOf: (other: Shaft) => number | undefined,
): Thicker | undefined {
  const fact = (section ?? shaft).diameter;
  const now = fact?.value;
  if (!now) return undefined;
  // A section that came with a retained part is not written where this one could be changed.
  if (section && statementOf(shaft) === 'retained') return undefined;
  for (const bar of barsOver(now)) {
    const [value, written] = [amount(bar), spellQuantity(bar)];
    const diameter = given('shaft diameter', 'd', 'length', bar.si, { written });
    const margin = marginOf(section ? withSection(shaft, section, diameter) : withDiameter(shaft, diameter));
    if (margin === undefined || margin < 0) continue;
    return section
      ? {
          words: `Make section ${section.name} of the shaft ${written} thick`,
          margin,
          edit: { do: 'replace', at: fact.origin, value },
        }
      : { words: `Fit a ${written} shaft`, margin, edit: otherShaft(shaft, 'diameter', value) };
  }
  return undefined;
}

/** A coupling end that is turned down less, up to the diameter behind it. */
export function thickerEnd(
  shaft: Shaft,
  behind: SizedSection,
  marginOf: (other: Shaft) => number | undefined,
): { readonly value: NewValue; readonly written: string; readonly margin: number } | undefined {
  const end = shaft.couplingEnd;
  if (!end?.value) return undefined;
  for (const bar of barsOver(end.value)) {
    if (bar.si > behind.size.outsideDiameter.si) return undefined;
    const written = spellQuantity(bar);
    const value = given('coupling end diameter', 'd', 'length', bar.si, { written });
    const margin = marginOf({ ...shaft, couplingEnd: { value, written, origin: end.origin } });
    if (margin !== undefined && margin >= 0) return { value: amount(bar), written, margin };
  }
  return undefined;
}

/** Stocked diameters over this one, thinnest first, in the unit that it is written in. */
function barsOver(now: Value<'length'>): NewQuantity[] {
  return stockBars(isInInches(now)).filter(one => one.si > now.si + 1e-6);
}

/** Stocked diameters, thinnest first. */
export function stockBars(inches: boolean): NewQuantity[] {
  const [sizes, unit] = inches
    ? [inchShaftEnds.map(one => one.diameter), 'in']
    : [METRIC_BARS.map(one => one / 1000), 'mm'];
  return sizes.map(si => ({ dimension: 'length' as const, si, unit }));
}

/** Ways to a stronger shaft: the next stocked diameter, and the grades of the catalogue that are strong enough. */
export function strongerShafts(
  { catalogue }: LineContext,
  shaft: Shaft,
  marginOf: (other: Shaft) => number | undefined,
  what = 'margin',
  weakest?: ShaftSection,
): Route[] {
  const next = nextDiameter(shaft, weakest, marginOf);
  const grades = catalogue.materials
    .filter(one => one.name !== shaft.grade?.name)
    .flatMap(grade => {
      const margin = marginOf(withGrade(shaft, grade));
      return margin !== undefined && margin >= 0 ? [{ grade, margin }] : [];
    })
    .sort((one, other) => other.margin - one.margin)
    .slice(0, OFFERED);
  return [
    ...(next
      ? [
          {
            title: `${next.words}: ${what} ${percent(next.margin)}; bearings, seal, coupling and propeller bore follow`,
            edits: [next.edit],
          },
        ]
      : []),
    ...grades.map(({ grade, margin }) => ({
      title: `Fit a shaft of ${grade.name} at this diameter: ${what} ${percent(margin)}`,
      edits: [otherShaft(shaft, 'material', named(grade.name))],
    })),
  ];
}

/** Writes a fact of the shaft; a retained one becomes a modified one. */
export function editOf(shaft: Shaft, property: string, at: object | undefined, value: NewValue): ModelEdit {
  if (statementOf(shaft) !== 'retained' && at) return { do: 'replace', at, value };
  return writeInPlace(shaft, property, value);
}

/** Another diameter or grade; in the place of a shaft that is kept another one is fitted, like it in all else. */
function otherShaft(shaft: Shaft, property: 'diameter' | 'material', value: NewValue): ModelEdit {
  const fact = shaft[property];
  const statement =
    fact && statementOf(shaft) === 'retained' ? replacementFor(shaft, new Map([[fact, value]])) : undefined;
  return statement
    ? { do: 'state', at: shaft.origin, statement }
    : editOf(shaft, property, fact?.origin, value);
}
