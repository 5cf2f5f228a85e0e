import type { Source } from '../core/source.js';

/** Deflections of simple beams with one load, and the frequencies that follow from them. */
export const BEVAN_VIBRATIONS: Source = {
  author: 'T. Bevan',
  title: 'The Theory of Machines',
  clause: 'chapter 15',
  confidence: 'published',
};

export const EULER_BERNOULLI: Source = {
  title: 'Euler–Bernoulli beam with the stated end conditions',
  confidence: 'derived',
};

export const WOYTOWICH: Source = {
  author: 'Woytowich',
  title: 'Journal of Ship Research 23(4), pp. 235–241',
  year: 1979,
  confidence: 'published',
};

export const DUNKERLEY: Source = {
  title: 'Dunkerley’s addition: the reciprocals of the squared frequencies of the parts alone add up',
  confidence: 'derived',
};

export const LUMPED_TORSION: Source = {
  title: 'Equations of motion of rigid inertias joined by massless torsion springs and rigid gears',
  confidence: 'derived',
};

export const ROUND_SECTION: Source = { title: 'Geometry of a round section', confidence: 'derived' };
