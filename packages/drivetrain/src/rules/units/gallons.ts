import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const gallons = unitRule(
  {
    id: 'units/gallons',
    title: 'Every volume and flow states its gallon',
    mistakes: ['U03'],
    severity: 'error',
    criterion: 'each volume carries a unit with one meaning',
    source: SP811,
    manual:
      'The US gallon is 3.785 L, the imperial one 4.546 L. Power estimated from fuel consumption is wrong by the ' +
      'same 20 %. Write US-gal, imp-gal or L.',
    caution: 'Flow meters are sold in both: read the plate of the meter.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, ['cycle four-stroke', 'cycle four-stroke\n  fuel rate 16 gal/h']),
      passing: changed(SINGLE_LINE, ['cycle four-stroke', 'cycle four-stroke\n  fuel rate 16 US-gal/h']),
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: ['volume', 'volume flow'],

    why: 'An imperial gallon is 1.20 US gallons; fuel burn, and every power judged from it, is 20 % off when the wrong one is read.',
  },
);
