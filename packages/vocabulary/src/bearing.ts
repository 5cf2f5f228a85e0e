import { between, quantity, row, vocabulary, word } from './kinds.js';
import { COLLAR_THRUST, ROLLING_THRUST } from './torsion.js';

/** Words for where the cooling water of a bearing or seal comes from. */
export const WATER = ['open to sea', 'own engine', 'cross-fed', 'separate pump', 'none'] as const;

export const BEARING = vocabulary({
  title: 'bearing',
  rows: [
    row(
      'kind',
      'kind',
      word('strut', 'stern tube', 'intermediate', 'thrust'),
      'Kind of support.',
      'kind strut',
      { selects: true },
    ),
    row(
      'position',
      'at',
      quantity('length'),
      'Its centre, measured aft from the forward coupling face of the shaft.',
      'at 2.31 m',
      { signed: true, measuredWith: ['^length'], range: between('-5 m', '100 m') },
    ),
    row('length', 'length', quantity('length'), 'Length of the bearing.', 'length 200 mm', {
      range: between('3 mm', '5 m'),
    }),
    row('bore', 'bore', quantity('length'), 'Bore that the shaft runs in.', 'bore 45 mm', {
      range: between('5 mm', '1.6 m'),
    }),
    row(
      'housingBore',
      'housing bore',
      quantity('length'),
      'Bore of the strut or tube that holds the bearing.',
      'housing bore 2 5/8 in',
      {
        range: between('8 mm', '3 m'),
      },
    ),
    row(
      'lubrication',
      'lubrication',
      word('water', 'oil', 'grease'),
      'Lubricant of the bearing.',
      'lubrication water',
    ),
    row(
      'water',
      'water from',
      word(...WATER),
      'Source of its water; a strut bearing outside the hull is open to sea.',
      'water from own engine',
    ),
    row(
      'thrust',
      'thrust at most',
      quantity('force'),
      'Propeller thrust that a thrust bearing may carry.',
      'thrust at most 20 kN',
      { range: between('50 N', '10 MN') },
    ),
    ...ROLLING_THRUST,
    ...COLLAR_THRUST,
  ],
  blocks: [],
});
