import { changed, SINGLE_LINE } from '../example-specs.js';

/** The single line with a propeller of a size for its power, a hull of known resistance, and a cup that is stated. */
export const PROPELLED = changed(
  SINGLE_LINE,
  [
    '  arrangement proposed {',
    `  hull planing {
    resistance 10 kN at 12 kn
    resistance 14.5 kN at 16 kn
    resistance 18 kN at 19 kn
    resistance 23 kN at 23 kn
    resistance 28 kN at 26 kn
    wake fraction 0.1
    thrust deduction 0.1
  }
  arrangement proposed {`,
  ],
  ['diameter 26 in  pitch 24 in  area ratio 0.72', 'diameter 30 in  pitch 27 in  area ratio 0.72  cup none'],
);
