import type { Spec } from '../spec-model.js';
import type { Mistake } from './mistake.js';
import { block, entry, GEARED, onEntry, onPart, part } from './ways.js';

const deeper = (spec: Spec): false | undefined => {
  const gear = entry(spec, 'gear');
  if (!gear) return false;
  gear['ratio 4:1'] = { ...block(gear, 'ratio 3.02:1')!, exact: '4:1' };
  part(spec, 'gear')!.header = part(spec, 'gear')!.header!.replace('3.02', '4');
  return undefined;
};

/** Mistakes of a repower. */
export const REPOWER_MISTAKES: readonly Mistake[] = [
  {
    number: 'T04',
    forms: ['kept'],
    make: deeper,
    // Of a shaft that is too thin by both, the greater size is told, once.
    told: {
      rules: ['capacity/retained-shaft-torque', 'shafting/diameter'],
      gravity: 'warning',
      at: ['shaft'],
    },
  },
  {
    number: 'T13',
    kinds: GEARED,
    forms: ['kept'],
    make: spec => {
      part(spec, 'gear')!.header = part(spec, 'gear')!.header!.replace('3.02', '2.48');
    },
    told: { rules: ['capacity/retained-propeller-overload'], gravity: 'error', at: ['propeller'] },
  },
  {
    number: 'T14',
    forms: ['kept'],
    make: deeper,
    told: {
      rules: ['capacity/retained-propeller-light', 'propeller/absorbed-power'],
      gravity: 'warning',
      at: ['propeller'],
    },
  },
  {
    number: 'T15',
    forms: ['kept'],
    make: deeper,
    told: { rules: ['speed/vessel-speed-per-engine-rpm'], gravity: 'note' },
  },
  {
    number: 'P02',
    forms: ['new', 'repower', 'stepped'],
    kinds: ['single', 'twin', 'vDrive', 'hybrid', 'triple', 'electric'],
    make: onPart('propeller', { 'tip clearance': '230 mm' }),
    told: { rules: ['propeller/clearance-by-diameter'], gravity: 'note', at: ['propeller'] },
  },
  {
    number: 'L04',
    forms: ['repower'],
    make: spec => {
      const bar = structuredClone(spec.catalogue.find(one => one.name === 'bar-450')!);
      bar.name = 'bar-200';
      Object.assign(bar.facts, { 'torsional yield': '130 MPa', 'tensile yield': '200 MPa' });
      spec.catalogue.push(bar);
      part(spec, 'shaft')!.facts.material = 'bar-200';
    },
    told: { rules: ['shafting/material-changed'], gravity: 'warning', at: ['shaft'] },
  },
  {
    number: 'L19',
    kinds: ['single', 'twin', 'tug', 'triple'],
    forms: ['kept'],
    make: onEntry('gear', { length: '620 mm' }),
    told: { rules: ['shafting/length-stack'], gravity: 'warning', at: ['gear', 'engine', 'shaft'] },
  },
  {
    number: 'I05',
    kinds: GEARED,
    forms: ['kept'],
    make: onPart('engine', { 'torsional statement': null }),
    told: { rules: ['interface/torsional-statement'], gravity: 'warning', at: ['engine'] },
  },
  {
    number: 'I07',
    kinds: GEARED,
    forms: ['kept'],
    make: onEntry('engine', { mass: '3000 kg' }),
    told: { rules: ['interface/weight-change'], gravity: 'warning' },
  },
];
