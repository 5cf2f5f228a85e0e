import type { Facts } from '../spec-model.js';
import type { Mistake } from './mistake.js';
import { SOUND_TRIAL, TWINS, trial, WITH_ENGINE } from './ways.js';

export const TRIALS_MISTAKES: readonly Mistake[] = [
  {
    number: 'V01',
    kinds: WITH_ENGINE,
    make: trial({ ...SOUND_TRIAL, 'run LINE': { at: 'full throttle', 'engine speed': '2100 rpm' } }),
    told: { rules: ['trial/full-throttle'], gravity: 'error' },
  },
  {
    number: 'V01',
    way: 'motor',
    kinds: ['electric'],
    make: trial({ ...SOUND_TRIAL, 'run LINE': { at: 'full throttle', 'engine speed': '1500 rpm' } }),
    told: { rules: ['trial/full-throttle'], gravity: 'error' },
  },
  {
    number: 'V02',
    make: trial({ ...SOUND_TRIAL, 'run LINE': { at: 'full throttle', 'engine speed': '2600 rpm' } }),
    told: { rules: ['trial/full-throttle'], gravity: 'warning' },
  },
  {
    number: 'V03',
    make: trial({
      ...SOUND_TRIAL,
      bottom: 'foul',
      displacement: '9 t',
      'run LINE': { at: 'full throttle', 'engine speed': '2420 rpm' },
    }),
    told: { rules: ['trial/conditions'], gravity: 'warning' },
  },
  {
    number: 'V04',
    make: trial({
      ...SOUND_TRIAL,
      tachometers: 'not checked',
      'run LINE': { at: 'full throttle', 'engine speed': '2420 rpm' },
    }),
    told: { rules: ['trial/conditions'], gravity: 'warning' },
  },
  {
    number: 'V05',
    kinds: TWINS,
    make: trial({
      ...SOUND_TRIAL,
      'run Port': { at: 'part throttle', 'engine speed': '1815 rpm' },
      'run Starboard': { at: 'part throttle', 'engine speed': '1690 rpm' },
    }),
    told: { rules: ['trial/pair'], gravity: 'warning' },
  },
  {
    number: 'V06',
    make: trial({
      ...SOUND_TRIAL,
      'direction at the dock': null,
      'dock LINE': null,
      'run LINE': { at: 'full throttle', 'engine speed': '2420 rpm' },
    }),
    told: { rules: ['trial/conditions', 'trial/dock-steps'], gravity: 'open' },
  },
  {
    number: 'V06',
    way: 'pulls the wrong way',
    make: trial({
      ...SOUND_TRIAL,
      'dock LINE': {
        station: '"wheelhouse"',
        'with lever ahead': 'pulls astern',
        'with lever astern': 'pulls ahead',
        neutral: 'no drive',
      },
    }),
    told: { rules: ['trial/dock-steps'], gravity: 'error' },
  },
  {
    number: 'V07',
    make: trial({ ...SOUND_TRIAL, 'astern and stop': 'not recorded' }),
    told: { rules: ['trial/conditions'], gravity: 'warning' },
  },
  {
    number: 'V08',
    make: spec => {
      spec.dutyFacts.passengers = 'carried';
      (spec.helm['station wheelhouse'] as Facts)['thrust direction'] = 'not shown';
      if (spec.criteria['shaft diameter by'])
        spec.criteria['shaft diameter by'] = 'small-craft formula factor 8.0 "passengers"';
    },
    told: { rules: ['interface/helm-fittings'], gravity: 'warning' },
  },
];
