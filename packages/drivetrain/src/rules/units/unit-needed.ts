import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { SP811, unitRule } from './unit-rule.js';

export const unitNeeded = unitRule(
  {
    id: 'units/unit-needed',
    title: 'Every other quantity states its unit',
    mistakes: ['U01', 'U02', 'U03', 'U05', 'U06'],
    severity: 'error',
    criterion: 'each length carries a unit with one meaning',
    source: SP811,
    manual:
      'A number without a unit, or with a unit of another kind of quantity, is not a fact: an inch may be read ' +
      'as a millimetre, psi as bar. Nothing is computed from it, and every check that needs it cannot tell. ' +
      'Any unit in the reference may be used; the value stays as written.',
    caution: 'Do not round a measured size to a nominal one while adding its unit.',
    noFigure: 'how a figure is written, and not how large it is',
    examples: examples(() => ({
      failing: changed(SINGLE_LINE, ['low idle 650 rpm', 'low idle 650']),
      passing: SINGLE_LINE,
      cannotTell: 'A unit is there and means one thing, or it is not: the rule never lacks a datum.',
    })),
  },
  {
    dimensions: [
      'length',
      'area',
      'time',
      'angle',
      'temperature',
      'temperature difference',
      'rotational speed',
      'force',
      'pressure',
      'density',
      'moment of inertia',
      'mass per length',
      'torsional stiffness',
      'linear stiffness',
      'energy',
      'moment of mass',
      'kinematic viscosity',
      'fuel rate',
      'frequency',
      'acceleration',
      'torsional damping',
      'second moment of area',
      'section modulus',
    ],

    why: 'Nothing is computed with it until its unit is there.',
  },
);
