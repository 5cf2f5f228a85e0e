import type { Mistake } from './mistake.js';
import {
  entry,
  OF_ENTRY,
  onEntry,
  onPart,
  onRating,
  onRatio,
  part,
  says,
  set,
  TWINS,
  WITH_ENGINE,
} from './ways.js';

export const RATIO_MISTAKES: readonly Mistake[] = [
  {
    number: 'T01',
    make: onRatio({ exact: '2.94:1' }),
    told: { rules: ['ratio/nominal-for-exact'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'T02',
    make: onRatio({
      exact: null,
      'clutch A': { output: 'opposite', ahead: 'continuous', exact: '2.88:1' },
      'clutch B': { output: 'same', ahead: 'continuous', exact: '2.88:1' },
    }),
    told: { rules: ['ratio/clutch-ratio', 'ratio/nominal-for-exact'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'T03',
    kinds: TWINS,
    make: spec => {
      part(spec, 'gear', 'Starboard')!.header = 'ratio 2.48:1 ahead clutch A';
    },
    told: { rules: ['ratio/unequal-sides'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'T05',
    make: onRatio({ 'rated medium': { torque: '250 N.m' } }),
    told: { rules: ['capacity/gear-input-torque'], gravity: 'open', at: ['gear'] },
  },
  {
    number: 'T06',
    make: onRatio({ 'rated medium': { torque: '680 N.m', from: '600 .. 2100 rpm' } }),
    told: { rules: ['capacity/rating-speed'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'T07',
    forms: OF_ENTRY,
    make: onRatio({ 'rated medium': null, 'rated pleasure': { torque: '680 N.m' } }),
    told: { rules: ['capacity/rating-duty'], gravity: 'error', at: ['gear'] },
  },
  {
    number: 'T08',
    make: onRatio({ 'rated medium': { torque: '680 N.m', for: 'petrol' } }),
    told: { rules: ['capacity/rating-fuel'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'T09',
    make: onEntry('gear', { 'input speed at most': '2500 rpm' }),
    told: { rules: ['speed/gear-input-maximum'], gravity: 'error', at: ['gear', 'engine'] },
  },
  {
    number: 'T10',
    forms: OF_ENTRY,
    make: onRating({ standard: null, hours: null, 'full power': null }),
    told: { rules: ['capacity/rating-undefined'], gravity: 'open', at: ['engine'] },
  },
  {
    number: 'T11',
    forms: OF_ENTRY,
    make: onRating({ 'measured at': null }),
    told: { rules: ['capacity/power-point'], gravity: 'open', at: ['engine'] },
  },
  {
    number: 'T12',
    make: onPart('engine', { 'power take-off': '25 kW' }),
    told: { rules: ['capacity/take-off'], gravity: 'open', at: ['engine'] },
  },
  {
    number: 'T16',
    kinds: WITH_ENGINE,
    make: says('require speed at most 2 kn at idle ahead "marina"'),
    told: { rules: ['speed/idle-in-gear', 'trace/requirement-met'], gravity: 'warning' },
  },
  {
    number: 'T17',
    make: onEntry('gear', { 'input speed at least': '700 rpm' }),
    told: { rules: ['speed/idle-pressure'], gravity: 'warning', at: ['gear', 'engine'] },
  },
  {
    number: 'T18',
    make: spec => {
      if (!entry(spec, 'gear')) return false;
      set(entry(spec, 'gear'), { 'slip device': 'not offered' });
      spec.says.push('require trolling speed at most 1 kn');
    },
    told: { rules: ['speed/slow-running'], gravity: 'error', at: ['gear', 'says'] },
  },
  {
    number: 'T19',
    make: says('certificate { power 30 kW }'),
    told: { rules: ['capacity/certificate'], gravity: 'error' },
  },
  {
    number: 'T20',
    make: onEntry('motor', { 'said to equal': '160 hp at 2400 rpm' }),
    told: { rules: ['capacity/motor-equivalent'], gravity: 'warning', at: ['motor'] },
  },
];
