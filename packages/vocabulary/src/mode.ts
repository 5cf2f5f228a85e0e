import { between, name, quantity, row, vocabulary, word } from './kinds.js';
import { DRIVEN_BY } from './words.js';

/** What a way of running a line may say. */
export const MODE = vocabulary({
  title: 'mode',
  rows: [
    row(
      'drivenBy',
      'driven by',
      word(...DRIVEN_BY),
      'Movers that drive the line in this mode. First and second engine are in the order of the text.',
      'driven by engine and motor',
    ),
    row(
      'motorPower',
      'motor power at most',
      quantity('power'),
      'Greatest motor power in this mode, where the control limits it below its own power.',
      'motor power at most 25 kW',
      { range: between('0.1 kW', '20 MW'), absent: 'the power of the motor', estimated: true },
    ),
    row(
      'generatorLoad',
      'generator load',
      quantity('power'),
      'Power that the motor draws from the line in this mode, when charging.',
      'generator load 12 kW',
      { range: between('0 kW', '20 MW'), absent: 'none' },
    ),
    row(
      'aheadClutch',
      'ahead clutch',
      name('clutch'),
      'The clutch of the gear that drives ahead in this mode.',
      'ahead clutch A',
      { handed: true, absent: 'the ahead clutch of the gear in its line' },
    ),
    row(
      'takeOffState',
      'take-off',
      word('on', 'off'),
      'Whether the power take-off of the engine counts as running in this mode, for propeller matching.',
      'take-off on',
      { absent: 'as the engine in its line says' },
    ),
  ],
  blocks: [],
});
