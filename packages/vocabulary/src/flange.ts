import type { Flange } from './facts/index.js';
import { bolts, pilot, quantity, rowsFor, type Vocabulary } from './kinds.js';

const flange = rowsFor<Flange>();

export const FLANGE: Vocabulary = {
  title: 'flange',
  rows: [
    flange(
      'outsideDiameter',
      'outside diameter',
      quantity('length'),
      'Outside diameter.',
      'outside diameter 146 mm',
    ),
    flange(
      'boltCircle',
      'bolt circle',
      quantity('length'),
      'Diameter through the bolt centres.',
      'bolt circle 121 mm',
    ),
    flange('bolts', 'bolts', bolts, 'Number and size of bolts.', 'bolts 4 x 1/2 in'),
    flange(
      'pilot',
      'pilot',
      pilot,
      'Locating spigot (male) or recess (female) and its diameter.',
      'pilot 63.5 mm female',
    ),
    flange('thickness', 'thickness', quantity('length'), 'Flange thickness.', 'thickness 12 mm'),
  ],
  blocks: [],
};
