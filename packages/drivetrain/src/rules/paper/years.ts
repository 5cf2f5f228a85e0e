/** Of the Julian calendar, as astronomers count. */
export const SECONDS_A_YEAR = 365.25 * 24 * 3600;

/** Years from one date to another, each as 2026-03-01. */
export function yearsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / (SECONDS_A_YEAR * 1000);
}

/** Age at which a data sheet is renewed, unless a vessel or its practice says another. */
export const USUAL_YEARS = 10;
