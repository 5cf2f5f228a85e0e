import { conventional, part } from './parts.js';
import { single } from './single.js';
import type { Facts, Line, Part, Spec } from './spec-model.js';

const partsOf = (spec: Spec): Part[] => spec.arrangements[0]!.lines[0]!.parts;
const find = (parts: Part[], kind: string): Part => parts.find(one => one.kind === kind)!;
const entryOf = (spec: Spec, name: string): Facts => spec.catalogue.find(one => one.name === name)!.facts;
const times =
  (factor: number) =>
  (rows: Facts): void => {
    for (const [words, value] of Object.entries(rows)) {
      if (!words.startsWith('resistance')) continue;
      const [force, ...rest] = (value as string).split(' ');
      rows[words] = [Number((Number(force) * factor).toFixed(2)), ...rest].join(' ');
    }
  };

/** The other side of a pair: the engine of the same rotation, so the other clutch drives ahead. */
function otherSide(name: string, ahead: 'A' | 'B', hand: 'left' | 'right', output: string): Line {
  return {
    name,
    mirrors: 'Port',
    parts: [
      part(
        'gear',
        {
          'pump set for': 'standard viewed from flywheel',
          'shift cable': ahead === 'A' ? 'push for ahead' : 'pull for ahead',
          'expected output': output,
        },
        undefined,
        `ahead clutch ${ahead}`,
      ),
      part('propeller', {}, undefined, `hand ${hand}`),
    ],
  };
}

function crossFed(parts: Part[]): void {
  const shaft = find(parts, 'shaft').facts;
  shaft['seal water from'] = 'cross-fed';
  (shaft['bearing tube'] as Facts)['water from'] = 'cross-fed';
}

/** Two engines of one rotation, the screws turning outward by the two clutches. */
function twin(): Spec {
  const spec = single();
  spec.hull = 'semi-displacement';
  times(2)(spec.hullFacts);
  spec.hullFacts['waterline length'] = '14 m';
  spec.hullFacts.displacement = '26 t';
  spec.hullFacts.lightship = '21 t';
  const parts = conventional('left', 'B');
  const gear = find(parts, 'gear');
  gear.facts['shift cable'] = 'pull for ahead';
  gear.facts['expected output'] = 'counter-clockwise';
  spec.arrangements[0]!.lines = [{ name: 'Port', parts }, otherSide('Starboard', 'A', 'right', 'clockwise')];
  crossFed(parts);
  spec.says.push('require propellers turn outward');
  return spec;
}

/** Engine that faces aft, a short shaft with two joints, and a V-drive box that takes the thrust. */
function vDrive(): Spec {
  const spec = single();
  spec.catalogue.push(
    {
      kind: 'transfer',
      name: 'Gorse-V',
      facts: {
        source: '"Gorse sheet" dated 2025-01-20',
        kind: 'gear V-drive',
        output: 'same seen from aft',
        'turns the line back': 'yes',
        exact: '1.05:1',
        efficiency: '98 %',
        'input speed at most': '3000 rpm',
        'torque at most': '2400 N.m',
        'thrust at most': '24 kN',
        mass: '70 kg',
        length: '300 mm',
        'output flange': entryOf(spec, 'Lime-20')['output flange']!,
      },
    },
    {
      kind: 'coupling',
      name: 'Reed-J',
      facts: {
        source: '"Reed joint sheet" dated 2024-09-01',
        kind: 'joint',
        'torque at most': '2600 N.m',
        'passes thrust': 'no',
        'joint angle': '4 deg',
        'second joint angle': '4 deg',
        mass: '20 kg',
      },
    },
  );
  const parts = partsOf(spec);
  const engine = find(parts, 'engine');
  engine.facts.flywheel = 'forward';
  engine.facts.angle = '0 deg';
  const gear = find(parts, 'gear');
  gear.facts['expected output'] = null;
  const at = parts.findIndex(one => one.entry === 'Reed-R');
  parts.splice(at, 0, part('coupling', {}, 'Reed-J'), part('transfer', { position: '4 m' }, 'Gorse-V'));
  const shaft = find(parts, 'shaft');
  shaft.facts.angle = '11 deg';
  Object.assign(find(parts, 'propeller').facts, { hand: 'left', pitch: '600 mm' });
  return spec;
}

/** One engine and a motor on the input of its gear, in four ways of running, with passengers. */
function hybrid(): Spec {
  const spec = single();
  spec.catalogue.push({
    kind: 'motor',
    name: 'Smew-30',
    facts: {
      source: '"Smew sheet" dated 2025-06-11',
      rotation: 'either',
      power: '30 kW at 1500 rpm',
      'peak power': '42 kW',
      torque: '191 N.m',
      'base speed': '1500 rpm',
      'top speed': '2800 rpm',
      mass: '118 kg',
    },
  });
  spec.dutyFacts.passengers = 'carried';
  spec.criteria['shaft diameter by'] = 'small-craft formula factor 8.0 "passenger service"';
  spec.criteria['blade area by'] = null;
  const ratio = entryOf(spec, 'Lime-20')['ratio 3.02:1'] as Facts;
  ratio['rated medium'] = { torque: '680 N.m' };
  const engine = entryOf(spec, 'Plover-6');
  (engine['rating medium'] as Facts).power = '60 kW at 2400 rpm';
  Object.assign(engine, {
    'peak torque': '280 N.m at 1600 rpm',
    'full-load power (1)': '46.9 kW at 1600 rpm',
    'full-load power (2)': '60 kW at 2400 rpm',
  });
  Object.assign(find(partsOf(spec), 'propeller').facts, {
    diameter: '720 mm',
    pitch: '484 mm',
    'axis to hull': '500 mm',
  });
  const line = spec.arrangements[0]!.lines[0]!;
  line.parts.splice(
    1,
    0,
    part(
      'motor',
      { position: '4.6 m', angle: '3 deg', 'torsional statement': '"calculation 18"' },
      'Smew-30',
    ),
  );
  line.modes = {
    'mode passage': { 'driven by': 'engine' },
    'mode harbour': { 'driven by': 'motor', 'motor power at most': '13.2 kW' },
    'mode charging': { 'driven by': 'engine', 'generator load': '2 kW' },
    'mode tide': { 'driven by': 'engine and motor', 'motor power at most': '6 kW' },
  };
  return spec;
}

/** Twin screws in nozzles for pull. */
function tug(): Spec {
  const spec = twin();
  spec.hull = 'displacement';
  const port = partsOf(spec);
  const propeller = find(port, 'propeller');
  Object.assign(propeller.facts, {
    pitch: '640 mm',
    'area ratio': '0.7',
    series: 'Ka',
    nozzle: 'N19A',
    'nozzle gap': '5 mm',
    'axis to hull': null,
    'rudder clearance': null,
    'strut clearance': null,
  });
  spec.criteria['nozzle gap at most'] = '0.8 %';
  spec.criteria['blade area by'] = null;
  spec.criteria['tip clearance at least'] = null;
  spec.criteria['rudder clearance at least'] = null;
  spec.criteria['strut clearance at least'] = null;
  return spec;
}

/** Three screws: the wings turn outward, the centre one to the right. */
function triple(): Spec {
  const spec = twin();
  times(1.5)(spec.hullFacts);
  const centre = conventional('right', 'A');
  crossFed(centre);
  const lines = spec.arrangements[0]!.lines;
  lines.splice(1, 0, { name: 'Centre', parts: centre });
  return spec;
}

/** Motor, toothed belt and a thrust bearing of its own: nothing reverses but the motor. */
function electric(): Spec {
  const spec = single();
  spec.catalogue = spec.catalogue.filter(one => ['Reed-R', 'bar-450'].includes(one.name));
  spec.catalogue.push(
    {
      kind: 'motor',
      name: 'Smew-60',
      facts: {
        source: '"Smew sheet" dated 2025-06-11',
        rotation: 'either',
        power: '60 kW at 1800 rpm',
        torque: '318 N.m',
        'base speed': '1800 rpm',
        'top speed': '2600 rpm',
        mass: '160 kg',
        'installed angle at most': '15 deg',
        'running angle at most': '20 deg',
      },
    },
    {
      kind: 'transfer',
      name: 'Gorse-B',
      facts: {
        source: '"Gorse belt sheet" dated 2025-01-20',
        kind: 'belt',
        output: 'same',
        'turns the line back': 'no',
        exact: '2.4:1',
        efficiency: '97 %',
        'input speed at most': '3000 rpm',
        'torque at most': '420 N.m',
        mass: '40 kg',
        length: '200 mm',
        'output flange': {
          'outside diameter': '146 mm',
          'bolt circle': '121 mm',
          bolts: '6 x 12 mm',
          pilot: '63.5 mm female',
        },
      },
    },
  );
  const line = spec.arrangements[0]!.lines[0]!;
  const shaft = find(line.parts, 'shaft');
  shaft.facts['bearing thrust'] = {
    kind: 'thrust',
    at: '0.25 m',
    length: '70 mm',
    lubrication: 'grease',
    'thrust at most': '20 kN',
  };
  Object.assign(find(line.parts, 'propeller').facts, { pitch: '480 mm', diameter: '740 mm' });
  shaft.facts['seal water from'] = 'separate pump';
  (shaft.facts['bearing tube'] as Facts)['water from'] = 'separate pump';
  line.parts = [
    part(
      'motor',
      {
        angle: '3 deg',
        position: '4.6 m',
        'torsional statement': '"calculation 21"',
        'output face at': '0.62 m',
      },
      'Smew-60',
    ),
    part('transfer', { position: '4 m' }, 'Gorse-B'),
    ...line.parts.filter(one => one.entry === 'Reed-R' || ['shaft', 'propeller'].includes(one.kind)),
  ];
  spec.criteria['gear torque margin at least'] = null;
  spec.says = ['require speed at least 7 kn at full power "owner"'];
  return spec;
}

const BUILDERS: Readonly<Record<string, () => Spec>> = {
  single,
  twin,
  vDrive,
  hybrid,
  tug,
  triple,
  electric,
};

export const KINDS: Readonly<Record<string, () => Spec>> = Object.fromEntries(
  Object.entries(BUILDERS).map(([name, make]) => [name, () => structuredClone(make())]),
);
