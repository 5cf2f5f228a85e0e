import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const tons = unitRule(
  {
    id: 'units/tons',
    title: 'Every mass states its ton',
    mistakes: ['U05'],
    severity: 'error',
    criterion: 'each mass carries a unit with one meaning',
    source: SP811,
    manual:
      'Displacement is given in long tons in older lines plans, in short tons in yard papers and in tonnes ' +
      'elsewhere; they differ by up to 12 %, and estimates of planing speed follow. Write t, long-ton, ' +
      'short-ton, lb or kg.',
    caution: 'State also whether the displacement is light or loaded.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, [
        '  arrangement proposed {',
        '  hull planing { displacement 12 tons }\n  arrangement proposed {',
      ]),
      passing: changed(SINGLE_LINE, [
        '  arrangement proposed {',
        '  hull planing { displacement 12 t }\n  arrangement proposed {',
      ]),
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: ['mass'],

    why: 'A long ton is 2240 lb, a short ton 2000 lb, a tonne 2205 lb: up to 12 % apart.',
  },
);
