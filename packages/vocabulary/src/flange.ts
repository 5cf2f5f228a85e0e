import { between, bolts, pilot, quantity, row, vocabulary } from './kinds.js';

export const FLANGE = vocabulary({
  title: 'flange',
  rows: [
    row(
      'outsideDiameter',
      'outside diameter',
      quantity('length'),
      'Outside diameter.',
      'outside diameter 146 mm',
      { range: between('20 mm', '4 m') },
    ),
    row(
      'boltCircle',
      'bolt circle',
      quantity('length'),
      'Diameter through the bolt centres.',
      'bolt circle 121 mm',
      { range: between('15 mm', '4 m') },
    ),
    row('bolts', 'bolts', bolts, 'Number and size of bolts.', 'bolts 4 x 1/2 in', {
      range: between('3 mm', '200 mm'),
    }),
    row(
      'pilot',
      'pilot',
      pilot,
      'Locating spigot (male) or recess (female) and its diameter.',
      'pilot 63.5 mm female',
      { range: between('5 mm', '3 m') },
    ),
    row('thickness', 'thickness', quantity('length'), 'Flange thickness.', 'thickness 12 mm', {
      range: between('1 mm', '500 mm'),
    }),
  ],
  blocks: [],
});
