import { changed, REPOWER } from '../example-specs.js';

const AS_FOUND = 'diameter 65 mm [drawing] }';

/** A repower whose shaft was found bent, and was made good. */
export const MADE_GOOD = changed(REPOWER, [
  AS_FOUND,
  `diameter 65 mm [drawing]
        damage bent {
          at between bearings
          dated 2025-11-03
          seen by "yard foreman, shaft drawn"
          made good "straightened, 0.05 mm between centres, crack-tested"
          made good on 2025-12-01
        } }`,
]);

/** The same whose shaft broke at the keyway, and is replaced by a thicker one. */
export const AFTER_BREAK = changed(
  REPOWER,
  [
    AS_FOUND,
    `diameter 65 mm [drawing]
        damage broken {
          at keyway
          dated 2025-11-03
          seen by "surveyor afloat"
          made good "replaced in kind to bring the vessel home"
          made good on 2025-11-10
        } }`,
  ],
  [
    '      retain shaft\n',
    '      replace shaft { material high-strength-stainless  diameter 75 mm [drawing] }\n',
  ],
);
