import type { Source } from '../core/source.js';

/** What follows from the definition of the terms and needs no book. */
export const DEFINITION: Source = { title: 'definition of the terms', confidence: 'derived' };

export const OOSTERVELD: Source = {
  author: 'Oosterveld and van Oossanen',
  title:
    'Further computer-analyzed data of the Wageningen B-screw series, International Shipbuilding Progress 22',
  year: 1975,
  confidence: 'published',
};

export const BLOUNT_HUBBLE: Source = {
  author: 'Blount and Hubble',
  title: 'Sizing segmental section commercially available propellers for small craft, SNAME Propellers 81',
  clause: 'regression of Gawn 1953; the printed table was not at hand, one machine-readable copy was',
  year: 1981,
  confidence: 'from memory',
};

export const RADOJCIC: Source = {
  author: 'Radojcic',
  title: 'regression of the Gawn-Burrill KCA series',
  clause: 'two identical copies of the table',
  year: 1988,
  confidence: 'published',
};

/** The polynomials of the Ka propellers in nozzle 19A. */
export const KA_SERIES: Source = {
  author: 'Oosterveld',
  title: 'Wake adapted ducted propellers, NSMB Publication 345',
  clause:
    'polynomials of Ka 4-70 and Ka 5-75 from two digital copies that agree, those of Ka 3-65 from memory; the printed tables were not at hand',
  year: 1970,
  confidence: 'from memory',
};

/** The numbered formulas of the handbook; titles confirmed by its contents list, coefficients recalled. */
export function handbook(clause: string): Source {
  return { author: 'Gerr', title: 'Propeller Handbook', clause, year: 1989, confidence: 'from memory' };
}
