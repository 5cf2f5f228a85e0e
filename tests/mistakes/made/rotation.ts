import type { Mistake } from './mistake.js';
import {
  block,
  entry,
  flip,
  HAND,
  lines,
  OF_ENTRY,
  onEntry,
  onPart,
  onRatio,
  part,
  TWINS,
  WITH_ENGINE,
} from './ways.js';

export const ROTATION_MISTAKES: readonly Mistake[] = [
  {
    number: 'R01',
    kinds: WITH_ENGINE,
    make: spec => {
      const one = part(spec, 'propeller')!;
      one.facts.hand = flip(one.facts.hand as string);
    },
    told: { rules: HAND, gravity: 'error', at: ['propeller'] },
  },
  {
    number: 'R01',
    way: 'in the mirrored line',
    make: spec => {
      const one = part(spec, 'propeller', 'Starboard');
      if (!one) return false;
      one.header = 'hand left';
    },
    told: { rules: HAND, gravity: 'error', at: ['propeller', 'Starboard'] },
  },
  {
    number: 'R02',
    make: onRatio({
      'clutch A': { output: 'opposite', ahead: 'never' },
      'clutch B': { output: 'same', ahead: 'never' },
    }),
    told: { rules: ['rotation/ahead-clutch'], gravity: 'error', at: ['gear'] },
  },
  {
    number: 'R03',
    forms: OF_ENTRY,
    make: onRatio({ 'clutch A': { output: 'opposite' }, 'clutch B': { output: 'same' } }),
    told: { rules: ['rotation/clutch-permission'], gravity: 'open', at: ['gear'] },
  },
  {
    number: 'R04',
    make: onEntry('engine', { rotation: 'clockwise' }),
    told: { rules: ['rotation/viewpoint', 'text/viewpoint'], gravity: 'open', at: ['engine'] },
  },
  {
    number: 'R05',
    make: onEntry('engine', { 'sheet rotation': 'counter-clockwise viewed from front' }),
    told: { rules: ['rotation/sheet-view'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'R06',
    make: onEntry('engine', { rotation: 'opposite viewed from flywheel' }),
    told: { rules: HAND, gravity: 'error', at: ['propeller', 'engine', 'gear'] },
  },
  {
    number: 'R07',
    kinds: TWINS,
    make: spec => {
      // The plan: a handed pair, engine opposite to port; both were put in the wrong holes.
      const own = spec.catalogue.find(one => one.kind === 'engine')!;
      const other = structuredClone(own);
      other.name = `${own.name}-Opposite`;
      Object.assign(other.facts, {
        rotation: 'opposite viewed from flywheel',
        'accessory starter': { rotation: 'opposite viewed from flywheel' },
      });
      spec.catalogue.push(other);
      const starboard = lines(spec).find(one => one.name === 'Starboard')!;
      starboard.parts[0]!.header = 'ahead clutch B';
      const port = part(spec, 'engine')!;
      starboard.parts.unshift({ ...structuredClone(port), entry: other.name });
      starboard.parts[1]!.facts = {
        'pump set for': 'opposite viewed from flywheel',
        'shift cable': 'pull for ahead',
        'expected output': 'clockwise',
      };
      // Exchanged:
      port.entry = other.name;
      starboard.parts[0]!.entry = own.name;
    },
    told: { rules: HAND, gravity: 'error', at: ['engine', 'propeller', 'gear', 'Starboard'] },
  },
  {
    number: 'R08',
    kinds: TWINS,
    make: spec => {
      const port = part(spec, 'gear')!;
      const starboard = part(spec, 'gear', 'Starboard')!;
      port.header = 'ratio 3.02:1 ahead clutch A';
      starboard.header = 'ahead clutch B';
    },
    told: { rules: HAND, gravity: 'error', at: ['gear', 'propeller'] },
  },
  {
    number: 'R09',
    kinds: TWINS,
    make: spec => {
      const starboard = lines(spec).find(one => one.name === 'Starboard')!;
      Object.assign(part(spec, 'gear', 'Starboard')!, { header: 'ahead clutch B' });
      part(spec, 'gear', 'Starboard')!.facts['expected output'] = 'counter-clockwise';
      part(spec, 'gear', 'Starboard')!.facts['shift cable'] = 'pull for ahead';
      starboard.parts.find(one => one.kind === 'propeller')!.header = 'hand left';
    },
    told: {
      rules: ['rotation/same-hand', 'rotation/turning-requirement'],
      gravity: 'warning',
      at: ['propeller', 'says'],
    },
  },
  {
    number: 'R10',
    kinds: TWINS,
    make: spec => {
      Object.assign(part(spec, 'gear')!, { header: 'ratio 3.02:1 ahead clutch A' });
      Object.assign(part(spec, 'gear')!.facts, {
        'expected output': 'clockwise',
        'shift cable': 'push for ahead',
      });
      part(spec, 'propeller')!.facts.hand = 'right';
      Object.assign(part(spec, 'gear', 'Starboard')!, { header: 'ahead clutch B' });
      Object.assign(part(spec, 'gear', 'Starboard')!.facts, {
        'expected output': 'counter-clockwise',
        'shift cable': 'pull for ahead',
      });
      part(spec, 'propeller', 'Starboard')!.header = 'hand left';
      spec.says = spec.says.filter(one => !one.includes('turn outward'));
    },
    told: { rules: ['rotation/inward-turning'], gravity: 'warning' },
  },
  {
    number: 'R11',
    make: spec => {
      const gear = entry(spec, 'gear');
      if (!gear) return false;
      const other = block(gear, 'ratio 2.48:1')!;
      other['clutch A'] = { output: 'same', ahead: 'continuous' };
      other['clutch B'] = { output: 'opposite', ahead: 'continuous' };
      part(spec, 'gear')!.header = part(spec, 'gear')!.header!.replace('3.02', '2.48');
    },
    told: { rules: HAND, gravity: 'error', at: ['gear', 'propeller'] },
  },
  {
    number: 'R12',
    make: spec => {
      const one = part(spec, 'engine');
      if (!one) return false;
      one.facts.flywheel = one.facts.flywheel === 'aft' ? 'forward' : 'aft';
    },
    told: {
      rules: ['rotation/line-turns-back', ...HAND],
      gravity: 'error',
      at: ['engine', 'propeller', 'transfer', 'gear'],
    },
  },
  {
    number: 'R12',
    way: 'facing not said',
    make: onPart('engine', { flywheel: null }),
    told: {
      rules: ['rotation/line-turns-back', 'rotation/propeller-hand', 'rotation/gears-exchanged'],
      gravity: 'open',
    },
  },
  {
    number: 'R13',
    make: onPart('gear', { 'pump set for': 'opposite viewed from flywheel' }),
    told: { rules: ['rotation/pump-index'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'R14',
    make: onEntry('engine', { 'accessory starter': { rotation: 'opposite viewed from flywheel' } }),
    told: { rules: ['rotation/accessory'], gravity: 'warning', at: ['engine'] },
  },
  {
    number: 'R15',
    make: spec => {
      const one = part(spec, 'gear');
      if (!one) return false;
      one.facts['shift cable'] =
        one.facts['shift cable'] === 'push for ahead' ? 'pull for ahead' : 'push for ahead';
    },
    told: { rules: ['rotation/shift-cable'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'R15',
    way: 'in the mirrored line',
    make: spec => {
      const one = part(spec, 'gear', 'Starboard');
      if (!one) return false;
      one.facts['shift cable'] = 'pull for ahead';
    },
    told: { rules: ['rotation/shift-cable'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'R16',
    make: spec => {
      const one = part(spec, 'propeller')!;
      one.facts.kind = 'folding';
      one.facts['set for hand'] = flip(one.facts.hand as string);
    },
    told: { rules: ['rotation/convertible-hand', ...HAND], gravity: 'error', at: ['propeller'] },
  },
  {
    number: 'R16',
    way: 'setting not recorded',
    make: onPart('propeller', { kind: 'feathering' }),
    told: { rules: ['rotation/convertible-hand'], gravity: 'open', at: ['propeller'] },
  },
  {
    number: 'R17',
    make: onEntry('engine', { rotation: 'standard viewed from flywheel [hearsay]' }),
    told: { rules: ['rotation/unproven-source'], gravity: 'note', at: ['engine'] },
  },
  {
    number: 'R18',
    kinds: ['single', 'twin', 'vDrive', 'hybrid', 'tug', 'triple'],
    make: onPart('propeller', { kind: 'controllable pitch' }),
    told: { rules: ['rotation/controllable-pitch'], gravity: 'warning', at: ['propeller', 'gear'] },
  },
];
