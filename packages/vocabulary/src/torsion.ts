import { between, block, counted, point, quantity, row, span, vocabulary, word } from './kinds.js';

/*
 * What a torsional calculation goes by, and what one says; and the rating of the bearing that takes the thrust.
 */

export const EXCITATION = vocabulary({
  title: 'excitation',
  rows: [
    row(
      'torque',
      'torque',
      quantity('torque'),
      'Amplitude of the torque at this order, either side of the mean.',
      'torque 420 N.m',
      { range: between('0.1 N.m', '2 MN.m') },
    ),
  ],
  blocks: [],
});

const HEAD = {
  many: true,
  head: { field: 'order', kind: quantity('number'), range: between('0.5', '100') },
} as const;

export const ENGINE_TORSION = [
  row(
    'magnifier',
    'dynamic magnifier',
    quantity('number'),
    'Magnifier at resonance that the damping of the engine alone would allow: 30 to 60 for crank masses, from memory. Without it none of its damping counts.',
    'dynamic magnifier 40',
    {
      measuredWith: ['cylinders', 'inertia'],
      absent: 'none of its damping counts',
      range: between('1', '1000'),
      estimated: true,
    },
  ),
];
export const ENGINE_EXCITATION = block(
  'excitations',
  'excitation order',
  EXCITATION,
  'Torque of all cylinders together at one order of the crankshaft, at full load.',
  'excitation order 3 torque 420 N.m',
  HEAD,
);

export const PROPELLER_TORSION = [
  row(
    'dampingFactor',
    'damping factor',
    quantity('number'),
    'Archer’s factor a of its torsional damping, C = a Q/N with N in rpm: near 30, from memory. Without it none of its damping counts.',
    'damping factor 30',
    {
      measuredWith: ['diameter', 'pitch', 'blades', 'areaRatio'],
      absent: 'none of its damping counts',
      range: between('1', '200'),
      estimated: true,
    },
  ),
];
export const PROPELLER_EXCITATION = block(
  'excitations',
  'excitation order',
  EXCITATION,
  'Torque at one order of the propeller shaft (blade rate and its multiples), at rated power.',
  'excitation order 4 torque 240 N.m',
  HEAD,
);

export const COUPLING_TORSION = [
  row(
    'magnifier',
    'dynamic magnifier',
    quantity('number'),
    'Magnifier of the coupling alone at resonance, M = 2π/ψ.',
    'dynamic magnifier 6',
    { range: between('0.5', '1000'), absent: 'no damping counted', estimated: true },
  ),
  row(
    'relativeDamping',
    'relative damping',
    quantity('number'),
    'Energy lost in a cycle over the energy stored, ψ = 2π/M.',
    'relative damping 1.05',
    { range: between('0.005', '12'), absent: 'no damping counted', estimated: true },
  ),
  row(
    'vibratoryTorque',
    'vibratory torque at most',
    quantity('torque'),
    'Vibratory torque that it may carry continuously, either side of the mean.',
    'vibratory torque at most 600 N.m',
    { range: between('0.5 N.m', '1 MN.m') },
  ),
];

export const SHAFT_TORSION = [
  row(
    'vibratoryStresses',
    'vibratory stress',
    point('pressure', 'rotational speed'),
    'Amplitude of torsional vibration stress at a speed of this shaft, all orders together, from the torsional calculation or a measurement.',
    'vibratory stress 18 MPa at 265 rpm',
    {
      many: true,
      measuredWith: [
        'diameter',
        'engine.ratedAt',
        'engine.inertia',
        'gear.ratioUsed',
        'coupling.stiffness',
        'propeller.inertia',
      ],
      range: between('0.01 MPa', '600 MPa', between('1 rpm', '12000 rpm')),
    },
  ),
  row(
    'barredRanges',
    'barred range',
    span('rotational speed'),
    'Speeds of this shaft that may only be passed quickly, as on the plate at the controls.',
    'barred range 205 .. 236 rpm',
    {
      many: true,
      measuredWith: [
        'diameter',
        'engine.ratedAt',
        'engine.inertia',
        'gear.ratioUsed',
        'coupling.stiffness',
        'propeller.inertia',
      ],
      range: between('1 rpm', '12000 rpm'),
    },
  ),
];

export const ROLLING_THRUST = [
  row(
    'dynamicRating',
    'dynamic rating',
    quantity('force'),
    'Axial dynamic load rating of a rolling thrust bearing (ISO 281).',
    'dynamic rating 190 kN',
    { range: between('0.5 kN', '100 MN') },
  ),
  row(
    'rollingElements',
    'rolling elements',
    word('ball', 'roller'),
    'Balls or rollers: the exponent of its life depends on it.',
    'rolling elements roller',
  ),
];

export const COLLAR_THRUST = [
  row(
    'collars',
    'collars',
    quantity('number'),
    'Collars of a plain thrust bearing that carry ahead thrust.',
    'collars 1',
    { range: counted('1', '30') },
  ),
  row(
    'collarOutside',
    'collar outside diameter',
    quantity('length'),
    'Outside diameter of the bearing face of a collar.',
    'collar outside diameter 240 mm',
    { range: between('15 mm', '4 m') },
  ),
  row(
    'collarInside',
    'collar inside diameter',
    quantity('length'),
    'Inside diameter of the bearing face of a collar.',
    'collar inside diameter 130 mm',
    { range: between('5 mm', '3 m') },
  ),
  row(
    'collarPressure',
    'collar pressure at most',
    quantity('pressure'),
    'Mean pressure that the faces may carry, by the maker of the bearing.',
    'collar pressure at most 1.5 MPa',
    { range: between('0.05 MPa', '15 MPa') },
  ),
];

export const THRUST_BEARING = vocabulary({
  title: 'thrust bearing',
  rows: ROLLING_THRUST,
  blocks: [],
});
export const THRUST_BEARING_DOC = 'Rating of the rolling bearing that takes the thrust of the propeller.';
export const THRUST_BEARING_EXAMPLE = 'thrust bearing { dynamic rating 190 kN  rolling elements roller }';
