import type { Mistake } from './mistake.js';
import { entry, onEntry, onPart, set } from './ways.js';

export const INTERFACE_MISTAKES: readonly Mistake[] = [
  {
    number: 'I01',
    make: onEntry('gear', { 'input housing': 'SAE-4' }),
    told: { rules: ['interface/flywheel-housing'], gravity: 'error', at: ['gear', 'engine'] },
  },
  {
    number: 'I02',
    make: onEntry('coupling', { 'rivet ring diameter': '370 mm' }, 'Reed-D'),
    told: { rules: ['interface/flywheel-recess'], gravity: 'error', at: ['coupling', 'engine'] },
  },
  {
    number: 'I02',
    way: 'flywheel size',
    make: onEntry('coupling', { 'flywheel size': '14' }, 'Reed-D'),
    told: { rules: ['interface/flywheel-recess'], gravity: 'error', at: ['coupling', 'engine'] },
  },
  {
    number: 'I03',
    make: onEntry('coupling', { 'torque at most': '200 N.m' }, 'Reed-D'),
    told: {
      rules: ['interface/damper-match', 'capacity/coupling-torque'],
      gravity: 'error',
      at: ['coupling'],
    },
  },
  {
    number: 'I03',
    way: 'cylinders',
    make: onEntry('coupling', { 'cylinders at least': '8' }, 'Reed-D'),
    told: { rules: ['interface/damper-match'], gravity: 'error', at: ['coupling'] },
  },
  {
    number: 'I03',
    way: 'stiffness not said',
    make: onEntry('coupling', { 'torsional stiffness': null }, 'Reed-D'),
    told: { rules: ['interface/damper-match'], gravity: 'open', at: ['coupling'] },
  },
  {
    number: 'I04',
    make: onEntry('gear', { 'input spline teeth': '10' }),
    told: { rules: ['interface/damper-spline'], gravity: 'error', at: ['coupling', 'gear'] },
  },
  {
    number: 'I06',
    make: onPart('engine', { 'space height': '0.9 m' }),
    told: { rules: ['interface/engine-space'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'I06',
    way: 'way out',
    make: onPart('engine', { 'way out width': '0.6 m', 'way out length': '0.7 m' }),
    told: { rules: ['interface/engine-space'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'I08',
    make: onPart('engine', { 'bed centres': '680 mm' }),
    told: { rules: ['interface/bed-centres'], gravity: 'warning', at: ['engine'] },
  },
  {
    number: 'I09',
    make: onPart('gear', {
      'oil pressure gauge': 'not fitted',
      'oil temperature gauge': 'not fitted',
      'oil cooler': 'not fitted',
    }),
    told: { rules: ['interface/gear-gauges'], gravity: 'note', at: ['gear'] },
  },
  {
    number: 'I10',
    make: spec => {
      if (!entry(spec, 'gear')) return false;
      set(entry(spec, 'gear'), { freewheel: null });
      spec.dutyFacts['under way with engine stopped'] = 'yes';
    },
    told: { rules: ['interface/freewheel'], gravity: 'open', at: ['gear'] },
  },
];
