import type { Source } from '@tailshaft/mechanics';

/** What a part may carry. */
export const PART_SHEET: Source = {
  title: 'the data sheet of the part, which alone can state what it may carry',
  confidence: 'common practice',
};

/** Scaling of a fixed-pitch propeller. */
export const PROPELLER_LAW: Source = {
  title: 'propeller law for fixed pitch: power by the third power of speed',
  confidence: 'published',
};

export const DEFER =
  'A screening by declared data. The makers of the parts, class, flag and the responsible engineer decide.';
