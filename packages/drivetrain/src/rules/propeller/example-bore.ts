import { changed, SINGLE_LINE } from '../example-specs.js';

/** The single line with the shaft end and the bore of its propeller described, by SAE J755 for 2 1/2 in. */
export const BORED = changed(
  SINGLE_LINE,
  [
    'diameter 65 mm [drawing] }',
    'diameter 2 1/2 in [drawing]  taper 1:16  taper large end 2 1/2 in  taper length 7 1/4 in  keyway width 5/8 in }',
  ],
  [
    'area ratio 0.72 }',
    'area ratio 0.72  bore taper 1:16  bore large end 2 1/2 in  keyway width 5/8 in  hub length 7 1/2 in  tolerance class I }',
  ],
);
