import { changed, SINGLE_LINE } from '../example-specs.js';

/** Engine 3°, gear 8° down, shaft 11°, with the limits of engine and gear and the trim under way. */
export const WITH_ANGLES = changed(
  SINGLE_LINE,
  ['  housing SAE-3\n', '  housing SAE-3\n  installed angle at most 8 deg\n  running angle at most 12 deg\n'],
  ['  arrangement proposed {', '  hull planing { running trim 5 deg }\n\n  arrangement proposed {'],
  ['{ flywheel aft }', '{ flywheel aft  angle 3 deg }'],
  ['diameter 65 mm [drawing] }', 'diameter 65 mm [drawing]  angle 11 deg }'],
);
