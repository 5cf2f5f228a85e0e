import type { Source } from '@tailshaft/mechanics';

/** The diameter formulas. */
export const SHAFT_DIAMETER: Source = {
  author: 'D. Gerr',
  title: 'Boat Mechanical Systems Handbook',
  clause: 'shaft diameter and its safety factors, the formula of ABYC P-6; class formula: IACS UR M68',
  year: 2009,
  confidence: 'published',
};

/** Spacing of bearings by the first whirling speed. */
export const WHIRLING: Source = {
  title: 'small-craft handbook formula of bearing spacing, which is the first bending mode of a plain span',
  clause: 'three copies',
  confidence: 'published',
};

/** What the maker of a part says of it. */
export const PART_SHEET: Source = {
  title: 'the data sheet of the part, which alone can state it',
  confidence: 'common practice',
};

/** Trade usage. */
export const PRACTICE: Source = { title: 'usage of builders and yards', confidence: 'common practice' };

/** Sums along the line. */
export const GEOMETRY: Source = {
  title: 'sums of angles and lengths along the shaft line',
  confidence: 'derived',
};

export const DEFER =
  'A screening by declared data. The makers of the parts, class, flag and the responsible engineer decide.';
