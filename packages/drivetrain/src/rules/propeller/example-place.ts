import { changed, REPOWER, SINGLE_LINE } from '../example-specs.js';

const ROOM = 'axis to hull 430 mm [measured 2026-01-14]  rudder clearance 120 mm  strut clearance 110 mm';

/** The single line with the room around its propeller measured. */
export const PLACED = changed(SINGLE_LINE, ['area ratio 0.72 }', `area ratio 0.72  ${ROOM} }`]);

/** The single line with a wide-tipped propeller in a nozzle. */
export const IN_NOZZLE = changed(SINGLE_LINE, [
  'area ratio 0.72 }',
  'area ratio 0.70  cup none  nozzle N19A  nozzle gap 4 mm }',
]);

/** A new propeller of another diameter, its tip clearance reckoned from the old one. */
export const RECKONED = changed(
  REPOWER,
  [
    'area ratio 0.72 }',
    'area ratio 0.72  tip clearance 125 mm [measured 2026-01-14]  rudder clearance 130 mm  strut clearance 120 mm }',
  ],
  [
    'retain propeller',
    'replace propeller { hand right  blades 4  diameter 27 in  pitch 23 in  tip clearance 112 mm  rudder clearance 130 mm  strut clearance 120 mm }',
  ],
);
