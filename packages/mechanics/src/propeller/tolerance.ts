import type { Source } from '../core/source.js';

/** Accuracy classes of propeller manufacture, finest first. */
export type ToleranceClass = 'S' | 'I' | 'II' | 'III';

export const ISO_484_2: Source = {
  title: 'ISO 484-2:1981, propellers of 0.80 to 2.50 m; the figures from two independent trade pages',
  year: 1981,
  confidence: 'published',
};

/** Diameters to which the classes below belong, m; above them ISO 484-1 speaks. */
export const ISO_484_2_DIAMETERS: readonly [number, number] = [0.8, 2.5];

interface Tolerance {
  readonly what: string;
  readonly unit: '% of the value' | '% of the diameter' | 'degrees';
  /** Plus and minus unless `what` names one side; absent where the class does not limit it. */
  readonly limit: Readonly<Record<ToleranceClass, number | undefined>>;
  /** The tolerance is never less than this, m. */
  readonly least?: Readonly<Record<ToleranceClass, number>>;
}

const by = (s: number, i: number, ii: number, iii: number | undefined) => ({ S: s, I: i, II: ii, III: iii });
const mm = (s: number, i: number, ii: number, iii: number) => ({
  S: s / 1000,
  I: i / 1000,
  II: ii / 1000,
  III: iii / 1000,
});

export const PROPELLER_TOLERANCES = {
  localPitch: { what: 'local pitch', unit: '% of the value', limit: by(1.5, 2, 3, undefined) },
  pitchOfRadius: { what: 'mean pitch of each radius', unit: '% of the value', limit: by(1, 1.5, 2, 5) },
  pitchOfBlade: { what: 'mean pitch of each blade', unit: '% of the value', limit: by(0.75, 1, 1.5, 4) },
  pitch: { what: 'mean pitch of the propeller', unit: '% of the value', limit: by(0.5, 0.75, 1, 3) },
  spacing: { what: 'angle between blades', unit: 'degrees', limit: by(1, 1, 2, 2) },
  rake: { what: 'rake', unit: '% of the diameter', limit: by(0.5, 1, 1.5, 3) },
  sectionLength: {
    what: 'length of blade sections',
    unit: '% of the value',
    limit: by(1.5, 2, 3, 5),
    least: mm(7, 10, 13, 15),
  },
  thicknessPlus: {
    what: 'thickness of blade sections, over',
    unit: '% of the value',
    limit: by(2, 2.5, 4, 6),
    least: mm(2, 2.5, 4, 6),
  },
  thicknessMinus: {
    what: 'thickness of blade sections, under',
    unit: '% of the value',
    limit: by(1, 1.5, 2, 4),
    least: mm(1, 1.5, 2, 4),
  },
} as const satisfies Record<string, Tolerance>;

export type TolerancedMeasure = keyof typeof PROPELLER_TOLERANCES;

/**
 * How far a measure may be off, in its own unit (m, or degrees for the spacing), or undefined where the class sets
 * no limit. `value` is the nominal measure in m; the rake needs the diameter instead.
 */
export function toleranceOf(
  measure: TolerancedMeasure,
  quality: ToleranceClass,
  value: number,
): number | undefined {
  const row: Tolerance = PROPELLER_TOLERANCES[measure];
  const limit = row.limit[quality];
  if (limit === undefined || row.unit === 'degrees') return limit;
  return Math.max((limit / 100) * Math.abs(value), row.least?.[quality] ?? 0);
}
