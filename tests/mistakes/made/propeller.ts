import type { Mistake } from './mistake.js';
import { onPart, part, says, set, TWINS, UNMODIFIED, WITH_ENGINE } from './ways.js';

export const PROPELLER_MISTAKES: readonly Mistake[] = [
  {
    number: 'P01',
    make: onPart('propeller', { 'axis to hull': '430 mm' }),
    kinds: ['single', 'twin', 'vDrive', 'hybrid', 'triple', 'electric'],
    told: { rules: ['propeller/tip-clearance'], gravity: 'warning', at: ['propeller'] },
  },
  {
    number: 'P01',
    way: 'no room at all',
    kinds: ['single', 'twin', 'vDrive', 'triple'],
    make: onPart('propeller', { 'axis to hull': '400 mm' }),
    told: { rules: ['propeller/tip-clearance'], gravity: 'warning', at: ['propeller'] },
  },
  {
    number: 'P01',
    way: 'nozzle',
    kinds: ['tug'],
    make: onPart('propeller', { 'nozzle gap': '9 mm' }),
    told: { rules: ['propeller/nozzle-gap'], gravity: 'warning', at: ['propeller'] },
  },
  {
    number: 'P03',
    kinds: ['single', 'twin', 'vDrive', 'hybrid', 'triple', 'electric'],
    make: onPart('propeller', { 'rudder clearance': null }),
    told: { rules: ['propeller/other-clearances'], gravity: 'open', at: ['propeller'] },
  },
  {
    number: 'P04',
    make: spec => {
      spec.criteria['tip speed at most'] = '25 m/s';
    },
    told: { rules: ['speed/tip-speed'], gravity: 'warning' },
  },
  {
    number: 'P05',
    make: spec => {
      if (!spec.criteria['blade area by']) return false;
      return set(part(spec, 'propeller')!.facts, { 'area ratio': '0.4' });
    },
    told: { rules: ['propeller/blade-area'], gravity: 'warning', at: ['propeller'] },
  },
  {
    number: 'P06',
    forms: UNMODIFIED,
    make: spec => {
      const facts = part(spec, 'propeller')!.facts;
      facts['stamped pitch'] = facts.pitch!;
      facts['stamped diameter'] = facts.diameter!;
      facts.pitch = null;
    },
    told: { rules: ['propeller/stamped-size'], gravity: 'open', at: ['propeller'] },
  },
  {
    number: 'P07',
    kinds: TWINS,
    make: spec => {
      part(spec, 'propeller')!.facts.pitch =
        `${part(spec, 'propeller')!.facts.pitch as string} [measured 2026-01-14]`;
      part(spec, 'propeller', 'Starboard')!.facts.pitch = '570 mm [measured 2026-01-14]';
    },
    told: { rules: ['propeller/pair-pitch'], gravity: 'warning' },
  },
  {
    number: 'P08',
    make: onPart('propeller', { 'bore taper': '1:12' }),
    told: { rules: ['propeller/bore-taper'], gravity: 'error', at: ['propeller', 'shaft'] },
  },
  {
    number: 'P09',
    make: onPart('shaft', { 'taper large end': '48 mm' }),
    told: { rules: ['propeller/bore-large-end'], gravity: 'error', at: ['propeller', 'shaft'] },
  },
  {
    number: 'P10',
    make: onPart('propeller', { 'keyway width': '16 mm' }),
    told: { rules: ['propeller/keyway'], gravity: 'error', at: ['propeller', 'shaft'] },
  },
  {
    number: 'P11',
    make: onPart('propeller', { 'hub length': '95 mm' }),
    told: { rules: ['propeller/hub-length'], gravity: 'warning', at: ['propeller', 'shaft'] },
  },
  {
    number: 'P12',
    make: onPart('propeller', { cup: null }),
    told: { rules: ['propeller/cup'], gravity: 'open', at: ['propeller'] },
  },
  {
    number: 'P13',
    kinds: WITH_ENGINE,
    make: says('assume engine speed per inch of pitch 300 rpm because "from a speedboat"'),
    told: { rules: ['propeller/pitch-rule-of-thumb'], gravity: 'note' },
  },
  {
    number: 'P14',
    forms: ['new', 'repower', 'stepped', 'overridden'],
    make: onPart('propeller', { 'tolerance class': null }),
    told: { rules: ['propeller/tolerance-class'], gravity: 'open', at: ['propeller'] },
  },
  {
    number: 'P15',
    make: spec => {
      spec.hullFacts['corrosion protection'] = null;
    },
    told: { rules: ['propeller/material-pair'], gravity: 'open' },
  },
];
