import { changed, SINGLE_LINE } from '../example-specs.js';

/** A record as an office keeps it: filed, revised twice, signed, with what is open. */
export const RECORDED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  `  project {
    project number "R-214"
    drawing number "R-214-01"
    client "harbour authority"
    practice "design office"
    question "Is the shaft seal kept?" for "yard engineer" due 2025-11-20 done 2025-11-14
    action "Weigh the gear on delivery" for "yard engineer" due 2036-05-01
  }
  revision A dated 2025-10-02 "First issue"
  revision B dated 2025-11-20 "Pitch 25 in" {
    prepared by "J. Fennick" as "naval architect"
    checked by "R. Marram" as "checker" dated 2025-11-21
  }
  arrangement proposed {`,
]);
