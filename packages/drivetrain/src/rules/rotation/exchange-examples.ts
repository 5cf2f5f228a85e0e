import { changed, TWIN_LINES } from '../example-specs.js';

/*
 * Pairs in which the machinery of the two sides differs, so that it can end up on the wrong side.
 */

const ENGINE_ENTRY = TWIN_LINES.slice(0, TWIN_LINES.indexOf('gear Alder-63 "'));
const GEAR_ENTRY = TWIN_LINES.slice(
  TWIN_LINES.indexOf('gear Alder-63 "'),
  TWIN_LINES.indexOf('shaft material'),
);
const EITHER = ['input rotation standard viewed from flywheel', 'input rotation either'] as const;

const OPPOSITE_ENTRY = changed(
  ENGINE_ENTRY,
  ['engine Kittiwake-9 ', 'engine Kittiwake-9C '],
  ['rotation standard', 'rotation opposite'],
);

/** An engine of each rotation, both gears ahead on the clutch that reverses. */
export const HANDED_ENGINES = changed(
  `${OPPOSITE_ENTRY}${TWIN_LINES}`,
  EITHER,
  ['engine Kittiwake-9 at medium', 'engine Kittiwake-9C at medium'],
  ['ahead clutch A', 'ahead clutch B'],
);

export const ENGINES_EXCHANGED = changed(
  `${OPPOSITE_ENTRY}${TWIN_LINES}`,
  EITHER,
  [
    'shaftline Starboard {\n      engine Kittiwake-9 at',
    'shaftline Starboard {\n      engine Kittiwake-9C at',
  ],
  ['ahead clutch A', 'ahead clutch B'],
);

/** A second gear with the clutch letters the other way round. */
const OTHER_GEAR = ['2.04:1 exact 2.043:1', '2.1:1 exact 2.104:1', '2.52:1 exact 2.524:1'].reduce(
  (text, ratio) =>
    changed(text, [
      `ratio ${ratio} {\n    clutch A output same ahead continuous\n    clutch B output opposite ahead continuous`,
      `ratio ${ratio} {\n    clutch A output opposite ahead continuous\n    clutch B output same ahead continuous`,
    ]),
  changed(GEAR_ENTRY, ['gear Alder-63 ', 'gear Alder-63C ']),
);

const withBothGears = `${OTHER_GEAR}${changed(TWIN_LINES, ['ahead clutch B', 'ahead clutch A'])}`;

/** One gear that keeps the sense in clutch A and one that reverses it, both ahead on clutch A. */
export const HANDED_GEARS = changed(withBothGears, [
  `${starboardGear('Alder-63')}`,
  `${starboardGear('Alder-63C')}`,
]);

export const GEARS_EXCHANGED = changed(withBothGears, [
  'gear Alder-63 ratio 2.04:1 ahead clutch A',
  'gear Alder-63C ratio 2.04:1 ahead clutch A',
]);

function starboardGear(name: string): string {
  return `shaftline Starboard {\n      engine Kittiwake-9 at medium { flywheel aft }\n      gear ${name} ratio`;
}
