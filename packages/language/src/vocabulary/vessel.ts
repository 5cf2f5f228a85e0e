import type { Certificate, Criteria, Duty, Hull } from '@tailshaft/drivetrain';
import { perYear, quantity, rowsFor, text, type Vocabulary, word } from './kinds.js';

const duty = rowsFor<Duty>();

export const DUTY: Vocabulary = {
  title: 'duty',
  rows: [
    duty('hours', 'hours', perYear, 'Hours a year that the vessel runs.', 'hours 1500 per year'),
    duty(
      'passengers',
      'passengers',
      word('none', 'carried'),
      'Whether passengers are carried.',
      'passengers none',
    ),
  ],
  blocks: [],
};

const hull = rowsFor<Hull>();

export const HULL: Vocabulary = {
  title: 'hull',
  rows: [
    hull(
      'waterlineLength',
      'waterline length',
      quantity('length'),
      'Length on the waterline.',
      'waterline length 10.9 m',
    ),
    hull('displacement', 'displacement', quantity('mass'), 'Displacement loaded.', 'displacement 11.8 t'),
    hull('beam', 'beam', quantity('length'), 'Beam on the waterline.', 'beam 3.4 m'),
    hull('draft', 'draft', quantity('length'), 'Draft of the hull.', 'draft 0.8 m'),
  ],
  blocks: [],
};

const criteria = rowsFor<Criteria>();

export const CRITERIA: Vocabulary = {
  title: 'criteria',
  rows: [
    criteria(
      'gearTorqueMargin',
      'gear torque margin at least',
      quantity('ratio'),
      'Margin wanted over the gear rating.',
      'gear torque margin at least 10 %',
    ),
    criteria(
      'clutchServiceFactor',
      'clutch service factor at least',
      quantity('ratio'),
      'Clutch holding torque over torque at the clutch.',
      'clutch service factor at least 1.5',
    ),
    criteria(
      'tipSpeed',
      'tip speed at most',
      quantity('speed'),
      'Propeller tip speed wanted.',
      'tip speed at most 40 m/s',
    ),
    criteria(
      'ratioDifference',
      'ratio difference at most',
      quantity('ratio'),
      'Difference allowed between nominal and exact, and between sides.',
      'ratio difference at most 0.5 %',
    ),
    criteria(
      'sourceAge',
      'source age at most',
      quantity('time'),
      'Age at which a data sheet is to be refreshed.',
      'source age at most 10 year',
    ),
  ],
  blocks: [],
};

const certificate = rowsFor<Certificate>();

export const CERTIFICATE: Vocabulary = {
  title: 'certificate',
  rows: [
    certificate(
      'power',
      'power',
      quantity('power'),
      'Propulsion power on the vessel certificate or licence, all engines together.',
      'power 440 kW',
    ),
    certificate(
      'limitedBy',
      'limited by',
      text,
      'Document that limits the installed power to it.',
      'limited by "power-limit statement 4"',
    ),
  ],
  blocks: [],
};
