import type { Facts } from '../spec-model.js';
import type { Mistake } from './mistake.js';
import {
  block,
  entry,
  lines,
  onBearing,
  onEntry,
  onPart,
  part,
  set,
  UNMODIFIED,
  WITH_ENGINE,
} from './ways.js';

export const SHAFT_MISTAKES: readonly Mistake[] = [
  {
    number: 'L01',
    make: onPart('shaft', {
      diameter: '38 mm',
      'taper large end': '38 mm',
      'coupling end diameter': '38 mm',
    }),
    told: { rules: ['shafting/diameter'], gravity: 'error', at: ['shaft'] },
  },
  {
    number: 'L01',
    way: 'weak coupling end alone',
    make: onPart('shaft', { 'coupling end diameter': '30 mm' }),
    told: { rules: ['shafting/diameter'], gravity: 'error', at: ['shaft'] },
  },
  {
    number: 'L02',
    make: spec => {
      spec.dutyFacts.passengers = 'carried';
      spec.criteria['shaft diameter by'] = 'small-craft formula factor 3.0 "as the yacht"';
    },
    told: { rules: ['shafting/service-factor'], gravity: 'error' },
  },
  {
    number: 'L03',
    make: onPart('shaft', { material: 'stainless' }),
    told: {
      rules: ['shafting/material-named', 'text/name', 'linking-error'],
      gravity: 'open',
      at: ['shaft'],
    },
  },
  {
    number: 'L05',
    forms: UNMODIFIED,
    make: spec => {
      const facts = part(spec, 'shaft')!.facts;
      facts['bearing tube'] = null;
      facts['bearing thrust'] = null;
      facts.length = '5.4 m';
      (facts['bearing strut'] as Facts).at = '5.1 m';
      for (const one of lines(spec)) {
        const motor = one.parts.find(other => other.kind === 'motor');
        if (motor && !one.parts.some(other => other.kind === 'engine')) facts['bearing thrust'] = null;
      }
    },
    told: { rules: ['shafting/bearing-span'], gravity: 'error', at: ['shaft'] },
  },
  {
    number: 'L06',
    make: onBearing('strut', { at: '1.9 m' }),
    told: { rules: ['shafting/span-guide'], gravity: 'note', at: ['shaft'] },
  },
  {
    number: 'L08',
    make: onPart('shaft', { overhang: '160 mm' }),
    told: { rules: ['shafting/overhang'], gravity: 'warning', at: ['shaft'] },
  },
  {
    number: 'L09',
    make: onBearing('tube', { 'housing bore': '58 mm' }),
    told: { rules: ['shafting/tube-bore'], gravity: 'error', at: ['shaft'] },
  },
  {
    number: 'L09',
    way: 'tube',
    make: onPart('shaft', { 'tube bore': '50 mm' }),
    told: { rules: ['shafting/tube-bore'], gravity: 'error', at: ['shaft'] },
  },
  {
    number: 'L10',
    make: spec =>
      set(block(entry(spec, 'coupling', 'Reed-R'), 'flange'), {
        'bolt circle': '108 mm',
        pilot: '63.5 mm female',
      }),
    told: { rules: ['shafting/coupling-flange'], gravity: 'error', at: ['coupling', 'gear', 'transfer'] },
  },
  {
    number: 'L11',
    make: onEntry('coupling', { bore: '48 mm' }, 'Reed-R'),
    told: { rules: ['shafting/coupling-bore'], gravity: 'error', at: ['coupling', 'shaft'] },
  },
  {
    number: 'L12',
    make: onEntry('coupling', { 'torque at most': '300 N.m' }, 'Reed-R'),
    told: { rules: ['capacity/coupling-torque'], gravity: 'error', at: ['coupling'] },
  },
  {
    number: 'L12',
    way: 'joint',
    kinds: ['vDrive'],
    make: onEntry('coupling', { 'torque at most': '300 N.m' }, 'Reed-J'),
    told: { rules: ['capacity/coupling-torque'], gravity: 'error', at: ['coupling'] },
  },
  {
    number: 'L13',
    make: onEntry(
      'coupling',
      { kind: 'flexible', 'chosen for': 'misalignment', 'passes thrust': 'yes' },
      'Reed-R',
    ),
    told: { rules: ['shafting/flexible-for-misalignment'], gravity: 'warning', at: ['coupling'] },
  },
  {
    number: 'L14',
    forms: UNMODIFIED,
    make: spec => {
      const transfer = entry(spec, 'transfer');
      if (transfer && entry(spec, 'coupling', 'Reed-J')) {
        transfer['thrust at most'] = null;
        return;
      }
      const last = part(spec, 'coupling') && lines(spec)[0]!.parts.findLast(one => one.kind === 'coupling');
      if (!last) return false;
      set(entry(spec, 'coupling', 'Reed-R'), { kind: 'joint', 'passes thrust': 'no', flange: null });
      const shaft = part(spec, 'shaft')!.facts;
      shaft['bearing thrust'] = null;
    },
    told: {
      rules: ['shafting/joint-thrust', 'shafting/thrust-path'],
      gravity: 'open',
      at: ['coupling', 'shaft', 'transfer'],
    },
  },
  {
    number: 'L15',
    make: spec => {
      for (const one of lines(spec)) one.parts = one.parts.filter(other => other.kind !== 'gear');
      for (const one of lines(spec)) {
        const shaft = one.parts.find(other => other.kind === 'shaft');
        if (shaft) shaft.facts['bearing thrust'] = null;
      }
      const box = entry(spec, 'transfer');
      if (box) box['thrust at most'] = null;
    },
    told: { rules: ['shafting/thrust-path', 'shafting/joint-thrust'], gravity: 'error' },
  },
  {
    number: 'L16',
    make: spec => {
      const box = entry(spec, 'transfer');
      if (box?.['thrust at most']) box['thrust at most'] = '4 kN';
      else if (part(spec, 'shaft')!.facts['bearing thrust'])
        (part(spec, 'shaft')!.facts['bearing thrust'] as Facts)['thrust at most'] = '4 kN';
      else return set(entry(spec, 'gear'), { 'thrust at most': '4 kN' });
    },
    told: { rules: ['shafting/thrust-capacity'], gravity: 'warning', at: ['gear', 'transfer', 'shaft'] },
  },
  {
    number: 'L17',
    make: spec => {
      const engine = part(spec, 'engine') ?? part(spec, 'motor');
      engine!.facts.angle = '16 deg';
      part(spec, 'shaft')!.facts.angle = '16 deg';
      const motor = part(spec, 'motor');
      if (motor) motor.facts.angle = '16 deg';
    },
    told: { rules: ['shafting/angle-limit'], gravity: 'error', at: ['engine', 'motor', 'gear'] },
  },
  {
    number: 'L18',
    make: onPart('shaft', { angle: '9 deg' }),
    kinds: ['single', 'twin', 'hybrid', 'tug', 'triple', 'electric'],
    told: { rules: ['shafting/angle-stack'], gravity: 'error', at: ['shaft', 'engine', 'motor'] },
  },
  {
    number: 'L18',
    way: 'joints',
    kinds: ['vDrive'],
    make: onEntry('coupling', { 'second joint angle': '9 deg' }, 'Reed-J'),
    told: {
      rules: ['shafting/angle-stack', 'shafting/joint-angles'],
      gravity: 'warning',
      at: ['coupling', 'shaft'],
    },
  },
  {
    number: 'L20',
    kinds: WITH_ENGINE,
    make: onPart('shaft', { 'seal movement at most': '1 mm' }),
    told: { rules: ['shafting/soft-mounts'], gravity: 'warning', at: ['shaft', 'engine'] },
  },
  {
    number: 'L21',
    make: spec => set(block(part(spec, 'engine')?.facts, 'mounts'), { 'torque at most': '300 N.m' }),
    told: { rules: ['shafting/mount-rating'], gravity: 'warning', at: ['engine'] },
  },
  {
    number: 'L22',
    make: onBearing('tube', { 'water from': 'none' }),
    told: { rules: ['shafting/bearing-water'], gravity: 'warning', at: ['shaft'] },
  },
  {
    number: 'L22',
    way: 'not said',
    forms: UNMODIFIED,
    make: onBearing('tube', { 'water from': null }),
    told: { rules: ['shafting/bearing-water'], gravity: 'open', at: ['shaft'] },
  },
  {
    number: 'L22',
    way: 'seal',
    make: onPart('shaft', { 'seal water from': 'none' }),
    told: { rules: ['shafting/bearing-water'], gravity: 'warning', at: ['shaft'] },
  },
  {
    number: 'L23',
    forms: ['kept'],
    make: onPart('shaft', { 'examination due': '2026-06-01', 'examination in this work': 'no' }),
    told: { rules: ['shafting/tailshaft-exam'], gravity: 'note', at: ['shaft'] },
  },
];
