import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const miles = unitRule(
  {
    id: 'units/miles',
    title: 'Every speed states its mile',
    mistakes: ['U02'],
    severity: 'error',
    criterion: 'each speed carries a unit with one meaning',
    source: SP811,
    manual:
      'Lakes and inland waters use statute miles, the sea uses knots. A speed without a unit, or in "miles", is 15 ' +
      '% uncertain, and the power for it about half as much again. Write kn, mph or km/h.',
    caution: 'Instruments can be set to either: note which one the reading came from.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, [
        '  arrangement proposed {',
        '  criteria { tip speed at most 40 }\n  arrangement proposed {',
      ]),
      passing: changed(SINGLE_LINE, [
        '  arrangement proposed {',
        '  criteria { tip speed at most 60 m/s }\n  arrangement proposed {',
      ]),
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: ['speed'],
    spellings: ['mile', 'miles', 'Mile', 'Miles'],
    why: 'A knot is 1.151 statute miles an hour: 20 mph is 17.4 kn. Read the wrong way, a speed is 15 % off.',
  },
);
