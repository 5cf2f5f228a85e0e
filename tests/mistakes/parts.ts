import type { Entry, Facts, Part } from './spec-model.js';

export const part = (kind: string, facts: Facts = {}, entry?: string, header?: string): Part => ({
  kind,
  ...(entry ? { entry } : {}),
  ...(header ? { header } : {}),
  facts,
});

const ENGINE_BASE: Facts = {
  rotation: 'standard viewed from flywheel',
  fuel: 'diesel',
  cylinders: '6',
  cycle: 'four-stroke',
  aspiration: 'turbocharged charge-cooled',
  'accessory starter': { rotation: 'standard viewed from flywheel' },
};

export function engine(name: string, facts: Facts): Entry {
  return {
    kind: 'engine',
    name,
    facts: { source: `"${name} data sheet" dated 2025-03-01`, ...ENGINE_BASE, ...facts },
  };
}

export const DUPLEX: Entry = {
  kind: 'shaft material',
  name: 'bar-450',
  facts: {
    source: '"Mill certificate 88" dated 2025-02-02',
    metal: 'stainless steel',
    'torsional yield': '300 MPa',
    'tensile yield': '450 MPa',
    'tensile strength': '620 MPa',
    'elastic modulus': '200 GPa',
    'shear modulus': '77 GPa',
    density: '7800 kg/m3',
  },
};

const PACK: Facts = {
  faces: '12',
  'outer diameter': '160 mm',
  'inner diameter': '110 mm',
  'clamp force': '24 kN',
  friction: '0.08',
};

export const BOTH_CLUTCHES = (rated: Facts): Facts => ({
  'clutch A': { output: 'opposite', ahead: 'continuous', ...PACK },
  'clutch B': { output: 'same', ahead: 'continuous', ...PACK },
  ...rated,
});

export const STATION: Facts = {
  'thrust direction': 'shown',
  'gear oil pressure': 'shown',
  'gear oil temperature': 'shown',
  'engine stop': 'apart from the speed lever',
};

export function conventional(hand: string, clutch: string): Part[] {
  return [
    part(
      'engine',
      {
        flywheel: 'aft',
        angle: '3 deg',
        position: '5 m',
        'output face at': '0.62 m',
        'bed centres': '600 mm',
        'space length': '1.6 m',
        'space width': '1.1 m',
        'space height': '1.2 m',
        'way out width': '0.95 m',
        'way out length': '1.4 m',
        'torsional statement': '"calculation 17"',
        mounts: {
          kind: 'soft',
          deflection: '3 mm',
          'thrust at most': '24 kN',
          'torque at most': '3000 N.m',
        },
      },
      'Plover-6',
      'at medium',
    ),
    part('coupling', {}, 'Reed-D'),
    part(
      'gear',
      {
        'pump set for': 'standard viewed from flywheel',
        'shift cable': 'push for ahead',
        'expected output': 'clockwise',
        'oil pressure gauge': 'fitted',
        'oil temperature gauge': 'fitted',
        'oil cooler': 'fitted',
        position: '4.2 m',
      },
      'Lime-20',
      `ratio 3.02:1 ahead clutch ${clutch}`,
    ),
    part('coupling', {}, 'Reed-R'),
    part('shaft', {
      material: 'bar-450',
      diameter: '55 mm',
      length: '2.9 m',
      'coupling end diameter': '50 mm',
      'coupling key width': '14 mm',
      taper: '1:16',
      'taper length': '125 mm',
      'taper large end': '55 mm',
      'keyway width': '14 mm',
      'key propeller': { height: '9 mm', length: '105 mm', material: 'bar-450' },
      'key coupling': { height: '9 mm', length: '90 mm', material: 'bar-450' },
      overhang: '55 mm',
      seal: 'face seal',
      'seal water from': 'own engine',
      'seal movement at most': '5 mm',
      'tube bore': '90 mm',
      angle: '3 deg',
      examined: '2026-01-14',
      'bearing tube': {
        kind: 'stern tube',
        at: '1.2 m',
        length: '220 mm',
        bore: '55 mm',
        'housing bore': '85 mm',
        lubrication: 'water',
        'water from': 'own engine',
      },
      'bearing strut': {
        kind: 'strut',
        at: '2.55 m',
        length: '220 mm',
        bore: '55 mm',
        'housing bore': '85 mm',
        lubrication: 'water',
        'water from': 'open to sea',
      },
    }),
    part('propeller', {
      hand,
      blades: '4',
      diameter: '820 mm',
      pitch: '540 mm',
      'area ratio': '0.72',
      cup: 'none',
      'tolerance class': 'I',
      material: 'nickel-aluminium bronze',
      mass: '62 kg',
      inertia: '1.7 kg.m2',
      'bore taper': '1:16',
      'bore large end': '55 mm',
      'keyway width': '14 mm',
      'hub length': '125 mm',
      'axis to hull': '560 mm',
      'rudder clearance': '110 mm',
      'strut clearance': '110 mm',
      'shaft depth': '0.9 m',
    }),
  ];
}
