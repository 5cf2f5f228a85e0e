import type { Source } from '../core/source.js';

/** Safety factor of the small-craft shaft formula by use. It already holds about 4/3 for the keyway. */
export interface ShaftServiceFactor {
  readonly use: string;
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

const GERR: Source = {
  author: 'D. Gerr',
  title: 'Boat Mechanical Systems Handbook',
  clause: 'safety factors of the shaft formula',
  year: 2009,
  confidence: 'published',
};
const SCHOOL: Source = {
  title: 'Masthead 18 (school of yacht design)',
  clause: 'safety factors of the shaft formula',
  confidence: 'published',
};
const OLDER: Source = { title: 'older small-craft handbook, as quoted', confidence: 'published' };

/** Two published sets, side by side: where they differ a criterion must name the one it takes. */
export const shaftServiceFactors: readonly ShaftServiceFactor[] = [
  { use: 'light petrol pleasure', low: 2, high: 2, source: GERR },
  { use: 'average yacht', low: 3, high: 3, source: GERR },
  { use: 'long-range motor cruiser', low: 3.5, high: 4, source: GERR },
  { use: 'high-performance racing', low: 4, high: 5, source: GERR },
  { use: 'pilot or patrol', low: 5, high: 6, source: GERR },
  { use: 'inspected passenger', low: 7.5, high: 7.5, source: GERR },
  { use: 'light petrol pleasure', low: 2, high: 2, source: SCHOOL },
  { use: 'average yacht', low: 3, high: 3, source: SCHOOL },
  { use: 'racing or commercial', low: 5, high: 8, source: OLDER },
  { use: 'inspected passenger', low: 7.5, high: 7.5, source: SCHOOL },
  { use: 'heavy commercial or towing', low: 8, high: 8, source: SCHOOL },
  {
    use: 'passenger, Canadian practice',
    low: 10,
    high: 10,
    source: { title: 'Canadian passenger practice, as quoted', confidence: 'published' },
  },
];

/** Propeller diameter over shaft diameter, a first guess only, by number of blades. */
export const propellerToShaftDiameter = [
  { material: 'bronze or nickel-copper', blades: 2, ratio: 14.5 },
  { material: 'bronze or nickel-copper', blades: 3, ratio: 14 },
  { material: 'bronze or nickel-copper', blades: 4, ratio: 13.1 },
  { material: 'high-strength stainless', blades: 2, ratio: 18.1 },
  { material: 'high-strength stainless', blades: 3, ratio: 17.5 },
  { material: 'high-strength stainless', blades: 4, ratio: 16.3 },
] as const;
