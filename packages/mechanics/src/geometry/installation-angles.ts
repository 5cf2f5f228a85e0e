import type { Source } from '../core/source.js';
import { degrees } from '../tables/printed-units.js';

/** Usual values to compare with where no maker's limit is declared: they inform, they never pass a check. rad. */
export const installationAngleGuides = [
  {
    what: 'down-angle gear output',
    from: degrees(7),
    to: degrees(15),
    source: {
      author: 'D. Gerr',
      title: 'Boat Mechanical Systems Handbook',
      clause: 'ch. 3',
      confidence: 'published',
    },
  },
  {
    what: 'shaft angle, good',
    from: degrees(8),
    to: degrees(10),
    source: { title: 'shaft angle of inboard craft', confidence: 'from memory' },
  },
  {
    what: 'shaft angle, most',
    from: degrees(12),
    to: degrees(15),
    source: { title: 'shaft angle of inboard craft', confidence: 'from memory' },
  },
  {
    what: 'engine tilt, running continuously',
    from: degrees(15),
    to: degrees(17),
    source: { title: "typical engine makers' limits", confidence: 'from memory' },
  },
] as const satisfies readonly { what: string; from: number; to: number; source: Source }[];
