import { DRIVEN_BY, type ModeFacts } from './facts/mode.js';
import { between, quantity, rowsFor, vocabulary, word } from './kinds.js';

const mode = rowsFor<ModeFacts>();

/** What a way of running a line may say. */
export const MODE = vocabulary({
  title: 'mode',
  rows: [
    mode(
      'drivenBy',
      'driven by',
      word(...DRIVEN_BY),
      'Which movers turn the line in this mode. The first and the second engine are those of the text.',
      'driven by engine and motor',
    ),
    mode(
      'motorPower',
      'motor power at most',
      quantity('power'),
      'The most that the motor gives in this mode, where the control holds it below its own power.',
      'motor power at most 25 kW',
      { range: between('0.1 kW', '20 MW'), absent: 'the power of the motor', estimated: true },
    ),
    mode(
      'generatorLoad',
      'generator load',
      quantity('power'),
      'Power that the motor takes out of the line in this mode while it charges.',
      'generator load 12 kW',
      { range: between('0 kW', '20 MW'), absent: 'none' },
    ),
  ],
  blocks: [],
});
