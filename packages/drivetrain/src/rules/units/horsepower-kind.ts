import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const horsepowerKind = unitRule(
  {
    id: 'units/horsepower-kind',
    title: 'Every power states its unit',
    mistakes: ['U01'],
    severity: 'error',
    criterion: 'each power carries a unit with one meaning',
    source: SP811,
    manual:
      'Data sheets give power in kW, in hp of 550 ft·lbf/s and in metric PS, often side by side. The two ' +
      'horsepowers differ by 1.4 %, which is the whole margin of many gear ratings. A spelling in use for several ' +
      'units is refused, and each reading is offered with its value. Write the unit that the sheet means.',
    caution: 'Take the unit from the sheet itself; do not choose the one that makes a check hold.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, ['power 300 kW at 2300 rpm', 'power 300 HP at 2300 rpm']),
      passing: SINGLE_LINE,
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: ['power', 'power per speed'],

    why: 'A metric horsepower (PS) is 1.4 % less than 550 ft\u00b7lbf/s (hp), and a bare number may be either or kilowatts: 300 PS is 295.9 hp is 220.6 kW.',
  },
);
