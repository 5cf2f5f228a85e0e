import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const torqueUnit = unitRule(
  {
    id: 'units/torque-unit',
    title: 'Every torque states its unit',
    mistakes: ['U06'],
    severity: 'error',
    criterion: 'each torque carries a unit with one meaning',
    source: SP811,
    manual:
      'Torque is given in N.m, lbf.ft and lbf.in, and in several loose spellings. Between lbf.in and lbf.ft lies a ' +
      'factor of twelve, enough to pass a coupling that will shear. Write the unit.',
    caution: 'Peak and rated torque are different things too: state which.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, ['peak torque 1480 N.m', 'peak torque 1480']),
      passing: SINGLE_LINE,
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: ['torque'],

    why: 'A pound-foot is twelve pound-inches and 1.356 N\u00b7m: a bare number may be wrong by a factor of twelve.',
  },
);
