import type { Source } from '@tailshaft/mechanics';

/** The estimate itself is a definition; the slip in it is not. */
export const IDLE_ESTIMATE: Source = {
  title: 'definition of slip; 30 % of slip at idle where nothing else is assumed',
  confidence: 'from memory',
};
