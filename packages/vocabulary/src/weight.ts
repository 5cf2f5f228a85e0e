import { anyWord, between, quantity, row, vocabulary, word } from './kinds.js';

/** A mass beside the machinery that an arrangement brings aboard or ashore. */
export const WEIGHT = vocabulary({
  title: 'weight',
  rows: [
    row(
      'moves',
      'moves',
      word('aboard', 'ashore'),
      'Whether it comes aboard or goes ashore.',
      'moves ashore',
    ),
    row(
      'arrangement',
      'under',
      anyWord('arrangement'),
      'Arrangement under which it comes or goes.',
      'under proposed',
    ),
    row(
      'mass',
      'mass',
      quantity('mass'),
      'Mass; of a tank, with what lightship counts in it.',
      'mass 320 kg',
      { range: between('0.1 kg', '100000 t') },
    ),
    row(
      'position',
      'position',
      quantity('length'),
      'Centre of mass along the vessel, forward positive, from the reference that all positions use.',
      'position 1.1 m',
      { signed: true, range: between('-300 m', '450 m') },
    ),
  ],
  blocks: [],
});
