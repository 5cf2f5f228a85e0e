import type { Source } from '@tailshaft/mechanics';

/** The ratio of toothed wheels is the quotient of whole numbers. */
export const TOOTH_COUNTS: Source = {
  title: 'ratio of tooth counts; propeller power by the propeller law',
  confidence: 'derived',
};
