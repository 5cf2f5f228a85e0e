import type { Source } from '../core/source.js';

export const KHURMI_CLUTCH: Source = {
  author: 'R. S. Khurmi, J. K. Gupta',
  title: 'Theory of Machines',
  clause: 'chapter 10, friction clutches',
  confidence: 'published',
};

interface Ring {
  readonly outerRadius: number;
  readonly innerRadius: number;
}

/** The friction face is a ring. */
export const IS_RING = {
  condition: 'the outer radius is above the inner one, and that above zero',
  met: (si: Ring) => si.outerRadius > si.innerRadius && si.innerRadius > 0,
};

export const WHOLE_FACES = {
  condition: 'the number of friction faces is whole and above zero',
  met: (si: { readonly faces: number }) => Number.isInteger(si.faces) && si.faces > 0,
};

/** Mean friction radius of a worn-in ring, m. */
export function wornInRadius(outer: number, inner: number): number {
  return (outer + inner) / 2;
}

/** Mean friction radius of a ring under even pressure, m. */
export function evenPressureRadius(outer: number, inner: number): number {
  return ((2 / 3) * (outer ** 3 - inner ** 3)) / (outer ** 2 - inner ** 2);
}
