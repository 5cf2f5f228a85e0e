import { anyWord, block, row, text, vocabulary, word } from './kinds.js';

const SHOWN = word('shown', 'not shown');

export const HELM_STATION = vocabulary({
  title: 'helm station',
  rows: [
    row(
      'thrustDirection',
      'thrust direction',
      SHOWN,
      'Indication of shaft rotation or thrust direction, of each line, taken from the shaft or gear and not from the lever.',
      'thrust direction shown',
    ),
    row(
      'gearOilPressure',
      'gear oil pressure',
      SHOWN,
      'Indication or alarm of the gear oil pressure.',
      'gear oil pressure shown',
    ),
    row(
      'gearOilTemperature',
      'gear oil temperature',
      SHOWN,
      'Indication or alarm of the gear oil temperature.',
      'gear oil temperature shown',
    ),
    row(
      'engineStop',
      'engine stop',
      word('apart from the speed lever', 'by the speed lever alone', 'none'),
      'How the engine is stopped from here.',
      'engine stop apart from the speed lever',
    ),
  ],
  blocks: [],
});

export const HELM = vocabulary({
  title: 'helm',
  rows: [
    row(
      'requiredBy',
      'required by',
      text,
      'Regulation of flag or class that requires the fittings, as you name it.',
      'required by "licence condition 7"',
      { absent: 'no text is named', because: 'which text applies is named where one does' },
    ),
  ],
  blocks: [
    block(
      'stations',
      'station',
      HELM_STATION,
      'One control station of the vessel.',
      'station wheelhouse { thrust direction shown  engine stop apart from the speed lever }',
      {
        many: true,
        head: { field: 'name', kind: anyWord('name of the station') },
        absent: 'no station is described',
        because: 'stations that are described are written; where passengers are carried they are asked for',
      },
    ),
  ],
});
