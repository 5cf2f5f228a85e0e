import type { Mistake } from './mistake.js';
import { block, entry, lines, onEntry, onRating, part, says, TWINS } from './ways.js';

export const PAPERS_MISTAKES: readonly Mistake[] = [
  {
    number: 'U01',
    make: onRating({ power: '120 HP at 2400 rpm' }),
    told: { rules: ['units/horsepower-kind', 'units/unit-needed'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'U01',
    way: 'no unit',
    make: onRating({ power: '120 at 2400 rpm' }),
    told: { rules: ['units/horsepower-kind', 'units/unit-needed'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'U02',
    make: says('require speed at least 9 at full power'),
    told: { rules: ['units/miles', 'units/unit-needed'], gravity: 'error' },
  },
  {
    number: 'U03',
    make: onEntry('engine', { 'fuel rate': '8 gph' }),
    told: { rules: ['units/gallons', 'units/unit-needed'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'U04',
    kinds: TWINS,
    make: spec => {
      const starboard = lines(spec).find(one => one.name === 'Starboard')!;
      starboard.parts.push({
        kind: 'shaft',
        facts: { ...structuredClone(part(spec, 'shaft')!.facts), diameter: '2.165 in' },
      });
    },
    told: { rules: ['units/near-miss'], gravity: 'warning' },
  },
  {
    number: 'U05',
    make: spec => {
      spec.hullFacts.displacement = '17 tons';
    },
    told: { rules: ['units/tons', 'units/unit-needed'], gravity: 'error', at: ['hull'] },
  },
  {
    number: 'U06',
    make: onEntry('engine', { 'peak torque': '560 at 1600 rpm' }),
    told: { rules: ['units/torque-unit', 'units/unit-needed'], gravity: 'error', at: ['engine'] },
  },
  {
    number: 'U07',
    make: onEntry('shaft material', { 'torsional yield': '450 MPa' }),
    told: { rules: ['units/torsional-yield'], gravity: 'error', at: ['shaft material'] },
  },
  {
    number: 'U08',
    make: spec => {
      const gear = entry(spec, 'gear');
      if (!gear) return false;
      gear['ratio 3:1'] = { ...block(gear, 'ratio 3.02:1')!, exact: null };
      gear['ratio 3.02:1'] = null;
      part(spec, 'gear')!.header = part(spec, 'gear')!.header!.replace('3.02', '3');
    },
    told: { rules: ['units/nominal-ratio', 'ratio/nominal-for-exact'], gravity: 'open', at: ['gear'] },
  },
  {
    number: 'U09',
    make: onEntry('gear', { source: '"Lime 20 sheet" dated 2010-01-20' }),
    told: { rules: ['paper/source-age', 'paper/sheet-age'], gravity: 'warning', at: ['gear'] },
  },
  {
    number: 'U09',
    way: 'undated',
    make: onEntry('gear', { source: '"Lime 20 sheet"' }),
    told: { rules: ['paper/source-age', 'paper/sheet-age'], gravity: 'open', at: ['gear'] },
  },
  {
    number: 'U11',
    make: spec => {
      const facts = part(spec, 'shaft')!.facts;
      facts.diameter = `${facts.diameter as string} [sister vessel]`;
    },
    told: { rules: ['paper/sister-vessel'], gravity: 'warning' },
  },
  {
    number: 'U12',
    make: says(
      'accept shafting/span-guide on proposed because "tried" by "surveyor" dated 2024-01-01 until 2025-01-01',
    ),
    told: { rules: ['paper/acceptance'], gravity: 'error' },
  },
  {
    number: 'U12',
    way: 'nobody',
    make: says('accept shafting/span-guide on proposed because "tried"'),
    told: { rules: ['paper/acceptance'], gravity: 'error' },
  },
  {
    number: 'U13',
    make: says('require noise at most 72 percent "owner"'),
    told: { rules: ['trace/requirement-unverified'], gravity: 'warning' },
  },
];
