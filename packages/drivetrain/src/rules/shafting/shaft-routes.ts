import { given, inchShaftEnds, type Value } from '@tailshaft/mechanics';
import { percent } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Shaft, ShaftMaterial } from '../../model/shafting.js';
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

/** The next stocked diameter over this one that passes, in the unit that the shaft is written in. */
export function nextDiameter(
  shaft: Shaft,
  marginOf: (other: Shaft) => number | undefined,
): { readonly diameter: Value<'length'>; readonly margin: number } | undefined {
  const now = shaft.diameter?.value;
  if (!now) return undefined;
  const inches = /\bin\b|"/.test(now.written ?? '');
  const sizes = inches
    ? inchShaftEnds.map(one => ({ si: one.diameter, written: `${one.size} in` }))
    : METRIC_BARS.map(one => ({ si: one / 1000, written: `${one} mm` }));
  for (const { si, written } of sizes) {
    if (si <= now.si + 1e-6) continue;
    const diameter = given('shaft diameter', 'd', 'length', si, { written });
    const margin = marginOf(withDiameter(shaft, diameter));
    if (margin !== undefined && margin >= 0) return { diameter, margin };
  }
  return undefined;
}

/** Ways to a stronger shaft: the next stocked diameter, and the grades of the catalogue that are strong enough. */
export function strongerShafts(
  { catalogue }: LineContext,
  shaft: Shaft,
  marginOf: (other: Shaft) => number | undefined,
  what = 'margin',
): Route[] {
  const next = nextDiameter(shaft, marginOf);
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
            title: `Fit a ${next.diameter.written} shaft: ${what} ${percent(next.margin)}; bearings, seal, coupling and propeller bore follow`,
            edits: [editOf(shaft, 'diameter', shaft.diameter?.origin, next.diameter.written!)],
          },
        ]
      : []),
    ...grades.map(({ grade, margin }) => ({
      title: `Fit a shaft of ${grade.name} at this diameter: ${what} ${percent(margin)}`,
      edits: [editOf(shaft, 'material', shaft.material?.origin, grade.name)],
    })),
  ];
}

/** Writes a fact of the shaft; a retained one becomes a modified one. */
export function editOf(shaft: Shaft, property: string, at: object | undefined, text: string): ModelEdit {
  if (shaft.change !== 'retained' && at) return { do: 'replace', at, text };
  return writeInPlace(shaft, property, text);
}
