import { WATER } from './bearing.js';
import { anyWord, between, counted, date, quantity, row, slope, text, vocabulary, word } from './kinds.js';

/*
 * How parts meet each other and the hull: sizes, angles, places, mounts. The facts of each part beside its duty.
 */

const INSTALLED_ANGLE = [
  'installedAngleMax',
  'installed angle at most',
  quantity('angle'),
  'Greatest angle that the maker allows at rest, aft end down.',
  'installed angle at most 12 deg',
  { signed: true, range: between('-20 deg', '60 deg') },
] as const;
const RUNNING_ANGLE = [
  'runningAngleMax',
  'running angle at most',
  quantity('angle'),
  'Greatest angle that the maker allows under way, trim included.',
  'running angle at most 17 deg',
  { signed: true, range: between('-20 deg', '60 deg') },
] as const;
const ANGLE = [
  'angle',
  'angle',
  quantity('angle'),
  'Angle to the base line at rest, aft end down positive.',
  'angle 3 deg',
  { signed: true, range: between('-20 deg', '60 deg') },
] as const;
const POSITION = [
  'position',
  'position',
  quantity('length'),
  'Centre of mass along the vessel, forward positive, from the reference that all positions use.',
  'position 3.85 m',
  { signed: true, range: between('-300 m', '450 m') },
] as const;
const FACE = [
  'faceAt',
  'output face at',
  quantity('length'),
  'Its output face along the shaft line, aft positive, from the same mark in the hull before and after.',
  'output face at 0.62 m',
  { signed: true, range: between('-100 m', '200 m') },
] as const;
const AXIS_HEIGHT = [
  'axisHeight',
  'axis height',
  quantity('length'),
  'Height of its shaft at the output face, from the same mark in the hull before and after, up positive.',
  'axis height 0.42 m',
  { signed: true, range: between('-20 m', '20 m') },
] as const;
const AXIS_OFFSET = [
  'axisOffset',
  'axis offset',
  quantity('length'),
  'Distance of its shaft to starboard at the output face, from the same mark in the hull before and after.',
  'axis offset 0 mm',
  { signed: true, range: between('-20 m', '20 m'), handed: true },
] as const;
const OUTPUT_DROP = [
  'outputDrop',
  'output drop',
  quantity('length'),
  'Distance of the output below the input, square to the input shaft at the output flange; negative if above.',
  'output drop 142 mm',
  { signed: true, range: between('-2 m', '3 m') },
] as const;
const OUTPUT_OFFSET = [
  'outputOffset',
  'output offset',
  quantity('length'),
  'Distance of the output to starboard of the input, as fitted; negative if to port.',
  'output offset 0 mm',
  { signed: true, range: between('-2 m', '2 m') },
] as const;
const LENGTH = [
  'length',
  'length',
  quantity('length'),
  'Length along the shaft line.',
  'length 520 mm',
  { range: between('3 mm', '15 m') },
] as const;
const STATEMENT = [
  'torsionalStatement',
  'torsional statement',
  text,
  'Calculation or statement on torsional vibration of the proposed line.',
  'torsional statement "calculation 17"',
] as const;
const FITTED = word('fitted', 'not fitted');

export const ENGINE_FIT = [
  row(
    'recessDiameter',
    'flywheel recess diameter',
    quantity('length'),
    'Clear diameter of the recess in the flywheel.',
    'flywheel recess diameter 314 mm',
    { range: between('80 mm', '2.5 m') },
  ),
  row(...INSTALLED_ANGLE),
  row(...RUNNING_ANGLE),
  row('length', 'length', quantity('length'), 'Overall length, without gear.', 'length 1.31 m', {
    range: between('0.15 m', '20 m'),
  }),
  row('width', 'width', quantity('length'), 'Overall width.', 'width 0.86 m', {
    range: between('0.15 m', '8 m'),
  }),
  row('height', 'height', quantity('length'), 'Overall height, sump to top.', 'height 0.98 m', {
    range: between('0.15 m', '12 m'),
  }),
  row(
    'mountCentres',
    'mount centres',
    quantity('length'),
    'Distance across between the mounts of the two sides.',
    'mount centres 22.5 in',
    { range: between('100 mm', '6 m') },
  ),
];

export const ENGINE_PLACE_FIT = [
  row(...ANGLE),
  row(
    'bedCentres',
    'bed centres',
    quantity('length'),
    'Distance across between the engine beds of the vessel.',
    'bed centres 24 in',
    { range: between('100 mm', '6 m') },
  ),
  row(
    'spaceLength',
    'space length',
    quantity('length'),
    'Length available for it, with access.',
    'space length 1.6 m',
    { range: between('0.2 m', '50 m') },
  ),
  row(
    'spaceWidth',
    'space width',
    quantity('length'),
    'Width available for it, with access.',
    'space width 1.1 m',
    { range: between('0.2 m', '30 m') },
  ),
  row(
    'spaceHeight',
    'space height',
    quantity('length'),
    'Height available for it, with access.',
    'space height 1.1 m',
    { range: between('0.2 m', '20 m') },
  ),
  row(
    'removalWidth',
    'way out width',
    quantity('length'),
    'Width of the narrowest hatch or door it goes in by.',
    'way out width 0.95 m',
    { range: between('0.15 m', '20 m') },
  ),
  row(
    'removalLength',
    'way out length',
    quantity('length'),
    'Length of the narrowest hatch or door it goes in by.',
    'way out length 1.4 m',
    { range: between('0.15 m', '30 m') },
  ),
  row(...POSITION),
  row(...FACE),
  row(...AXIS_HEIGHT),
  row(...AXIS_OFFSET),
  row(...STATEMENT),
];

export const MOTOR_FIT = [row(...INSTALLED_ANGLE), row(...RUNNING_ANGLE)];
export const MOTOR_PLACE_FIT = [
  row(...ANGLE),
  row(...POSITION),
  row(...FACE),
  row(...AXIS_HEIGHT),
  row(...AXIS_OFFSET),
  row(...STATEMENT),
];

export const MOUNTS = vocabulary({
  title: 'mounts',
  rows: [
    row(
      'kind',
      'kind',
      word('soft', 'rigid'),
      'Soft mounts let the engine move; rigid ones do not.',
      'kind soft',
    ),
    row(
      'deflection',
      'deflection',
      quantity('length'),
      'Movement of the coupling that they allow, either side of its mean position.',
      'deflection 3 mm',
      { measuredWith: ['^mass'], range: between('0 mm', '80 mm') },
    ),
    row(
      'thrust',
      'thrust at most',
      quantity('force'),
      'Propeller thrust that all mounts together may carry.',
      'thrust at most 15 kN',
      { range: between('50 N', '10 MN') },
    ),
    row(
      'torque',
      'torque at most',
      quantity('torque'),
      'Torque reaction that all mounts together may carry: that of the propeller shaft.',
      'torque at most 4200 N.m',
      { range: between('5 N.m', '5 MN.m') },
    ),
  ],
  blocks: [],
});

export const GEAR_FIT = [
  row(...LENGTH),
  row(...OUTPUT_DROP),
  row(...OUTPUT_OFFSET),
  row(...INSTALLED_ANGLE),
  row(...RUNNING_ANGLE),
  row(
    'splineTeeth',
    'input spline teeth',
    quantity('number'),
    'Teeth of the input spline.',
    'input spline teeth 26',
    { range: counted('5', '120') },
  ),
  row(
    'splinePitch',
    'input spline pitch',
    anyWord('pitch or module'),
    'Pitch or module of the input spline.',
    'input spline pitch 16/32',
  ),
  row(
    'inputInertia',
    'input inertia',
    quantity('moment of inertia'),
    'Moment of inertia of everything that turns with the input.',
    'input inertia 0.21 kg.m2',
    { measuredWith: ['ratioUsed'], range: between('0.0005 kg.m2', '20000 kg.m2') },
  ),
  row(
    'outputInertia',
    'output inertia',
    quantity('moment of inertia'),
    'Moment of inertia of everything that turns with the output, at output speed.',
    'output inertia 0.34 kg.m2',
    { measuredWith: ['ratioUsed'], range: between('0.0005 kg.m2', '100000 kg.m2') },
  ),
];

export const GEAR_PLACE_FIT = [
  row(
    'pressureGauge',
    'oil pressure gauge',
    FITTED,
    'Indication of gear oil pressure at the helm.',
    'oil pressure gauge fitted',
  ),
  row(
    'temperatureGauge',
    'oil temperature gauge',
    FITTED,
    'Indication of gear oil temperature at the helm.',
    'oil temperature gauge fitted',
  ),
  row('oilCooler', 'oil cooler', FITTED, 'Cooler of the gear oil.', 'oil cooler fitted'),
  row(...POSITION),
];

export const TRANSFER_FIT = [
  row(
    'thrust',
    'thrust at most',
    quantity('force'),
    'Propeller thrust that its bearing may carry.',
    'thrust at most 12 kN',
    { range: between('50 N', '10 MN') },
  ),
  row(
    'downAngle',
    'down-angle',
    quantity('angle'),
    'Angle by which the output is steeper than the input, aft end down; negative if flatter. For a V-drive, the angle between the two.',
    'down-angle 12 deg',
    {
      signed: true,
      range: between('-30 deg', '45 deg'),
      absent: 'nil for a belt or a chain; an open question of any other box',
      because: 'belts and chains run between parallel shafts, and of another box the check asks it by itself',
    },
  ),
  row(...LENGTH),
  row(...OUTPUT_DROP),
  row(...OUTPUT_OFFSET),
  row(...POSITION),
];

export const COUPLING_FIT = [
  row(
    'chosenFor',
    'chosen for',
    word('torsional vibration', 'noise', 'mount movement', 'misalignment'),
    'Purpose of the coupling.',
    'chosen for torsional vibration',
  ),
  row('bore', 'bore', quantity('length'), 'Bore of the half-coupling for the shaft.', 'bore 1 3/4 in', {
    range: between('5 mm', '1.2 m'),
  }),
  row('keyWidth', 'key width', quantity('length'), 'Width of the keyway in that bore.', 'key width 7/16 in', {
    range: between('1 mm', '200 mm'),
  }),
  row(...LENGTH),
  row(
    'stiffness',
    'torsional stiffness',
    quantity('torsional stiffness'),
    'Torsional stiffness at rated torque.',
    'torsional stiffness 8200 N.m/rad',
    { range: between('10 N.m/rad', '1000 MN.m/rad') },
  ),
  row(
    'inertia',
    'inertia',
    quantity('moment of inertia'),
    'Moment of inertia of the whole coupling.',
    'inertia 0.09 kg.m2',
    { range: between('0.00005 kg.m2', '20000 kg.m2'), absent: 'no inertia counted', estimated: true },
  ),
  row(
    'passesThrust',
    'passes thrust',
    word('yes', 'no'),
    'Whether the propeller thrust may pass through it.',
    'passes thrust yes',
    {
      absent: 'thrust passes a rigid coupling',
      because: 'its kind says so: a rigid coupling passes thrust, a joint does not',
    },
  ),
  row('jointAngle', 'joint angle', quantity('angle'), 'Angle of the first joint.', 'joint angle 5 deg', {
    measuredWith: ['engine.angle', 'shaft.angle'],
    range: between('0 deg', '50 deg'),
  }),
  row(
    'secondJointAngle',
    'second joint angle',
    quantity('angle'),
    'Angle of the second joint, when there are two.',
    'second joint angle 5 deg',
    {
      measuredWith: ['engine.angle', 'shaft.angle'],
      range: between('0 deg', '50 deg'),
      absent: 'a single joint',
      because: 'a coupling has one joint unless it is made with two',
    },
  ),
];

export const DAMPER = [
  row(
    'flywheelSize',
    'flywheel size',
    anyWord('flywheel size'),
    'Flywheel size that it bolts to (SAE J620).',
    'flywheel size 11.5',
  ),
  row(
    'rivetRing',
    'rivet ring diameter',
    quantity('length'),
    'Largest diameter of the parts that enter the recess of the flywheel.',
    'rivet ring diameter 300 mm',
    { range: between('50 mm', '2.5 m') },
  ),
  row(
    'leastCylinders',
    'cylinders at least',
    quantity('number'),
    'Fewest cylinders that its maker offers it for.',
    'cylinders at least 4',
    { range: counted('1', '24') },
  ),
  row('splineTeeth', 'spline teeth', quantity('number'), 'Teeth of its hub.', 'spline teeth 26', {
    range: counted('5', '120'),
  }),
  row(
    'splinePitch',
    'spline pitch',
    anyWord('pitch or module'),
    'Pitch or module of its hub.',
    'spline pitch 16/32',
  ),
];

export const SHAFT_FIT = [
  row(
    'bearingSpan',
    'bearing span',
    quantity('length'),
    'Greatest distance between the centres of two supports, where their places are not given.',
    'bearing span 1.62 m',
    { range: between('50 mm', '30 m') },
  ),
  row(
    'overhang',
    'overhang',
    quantity('length'),
    'From the aft end of the last bearing to the propeller hub.',
    'overhang 60 mm',
    { measuredWith: ['length', 'taperLength', 'propeller.hubLength'], range: between('0 mm', '5 m') },
  ),
  row('taper', 'taper', slope, 'Change of diameter per length at the propeller.', 'taper 1:16', {
    range: between('1:60', '1:3'),
  }),
  row('taperLength', 'taper length', quantity('length'), 'Length of the taper.', 'taper length 5 in', {
    range: between('5 mm', '3 m'),
  }),
  row(
    'taperLargeEnd',
    'taper large end',
    quantity('length'),
    'Diameter where the taper begins, when it is not that of the shaft.',
    'taper large end 1 3/4 in',
    {
      measuredWith: ['taper', 'taperLength'],
      absent: 'the diameter of the shaft',
      because: 'a taper is turned from the diameter of the shaft',
      range: between('5 mm', '1.5 m'),
    },
  ),
  row(
    'keywayWidth',
    'keyway width',
    quantity('length'),
    'Width of the propeller keyway.',
    'keyway width 7/16 in',
    { range: between('1 mm', '250 mm') },
  ),
  row(
    'couplingEnd',
    'coupling end diameter',
    quantity('length'),
    'Diameter that goes into the half-coupling, when it is not that of the shaft.',
    'coupling end diameter 1 3/4 in',
    {
      absent: 'the diameter of the shaft',
      because: 'a shaft is as thick at its end unless it is turned down',
      range: between('5 mm', '1.5 m'),
    },
  ),
  row(
    'couplingKeyWidth',
    'coupling key width',
    quantity('length'),
    'Width of the key in the half-coupling.',
    'coupling key width 7/16 in',
    {
      range: between('1 mm', '250 mm'),
      absent:
        'no key at the coupling; an open question where the end is turned for one and a keyway would decide',
      because: 'an end without a keyway has none; where one would decide, it is asked for',
    },
  ),
  row(
    'runout',
    'runout',
    quantity('length'),
    'Total indicator reading between bearings, the shaft turned by hand.',
    'runout 0.08 mm',
    {
      absent: 'no record of it',
      because: 'a record that was not taken cannot be stale',
      measuredWith: ['diameter', 'length', 'material'],
      range: between('0 mm', '50 mm'),
    },
  ),
  row(
    'couplingAlignment',
    'coupling alignment',
    quantity('length'),
    'Greatest gap between the faces of the half-couplings less the least, all round, with the vessel afloat.',
    'coupling alignment 0.05 mm',
    { measuredWith: ['length', 'engine.angle', 'angle'], range: between('0 mm', '20 mm') },
  ),
  row(
    'fatigueStatement',
    'fatigue statement',
    text,
    'Calculation or statement on fatigue of this shaft, its keyways and fillets, and who made it.',
    'fatigue statement "calculation 21, keyway with runout and relieved fillet"',
    { absent: 'nobody has calculated it', because: 'a calculation that exists is named' },
  ),
  row(
    'seal',
    'seal',
    word('packed gland', 'flexible gland', 'lip seal', 'face seal'),
    'Kind of seal; only a packed gland on a rigid tube may also support the shaft.',
    'seal face seal',
  ),
  row(
    'sealWater',
    'seal water from',
    word(...WATER),
    'Source of the water for the seal.',
    'seal water from own engine',
  ),
  row(
    'sealMovement',
    'seal movement at most',
    quantity('length'),
    'Movement of the shaft that the seal accepts, either side of its mean position.',
    'seal movement at most 4 mm',
    { range: between('0 mm', '100 mm') },
  ),
  row(
    'tubeBore',
    'tube bore',
    quantity('length'),
    'Bore of the stern tube, where it holds no bearing.',
    'tube bore 2 1/2 in',
    { range: between('8 mm', '3 m') },
  ),
  row(
    'angle',
    'angle',
    quantity('angle'),
    'Angle of the shaft to the base line at rest, aft end down positive.',
    'angle 11 deg',
    { signed: true, range: between('-30 deg', '60 deg') },
  ),
  row('examined', 'examined', date, 'When the shaft was last drawn and examined.', 'examined 2024-03-12'),
  row(
    'examDue',
    'examination due',
    date,
    'When it must be drawn and examined next.',
    'examination due 2027-03-12',
  ),
  row(
    'examInScope',
    'examination in this work',
    word('yes', 'no'),
    'Whether this work draws and examines the shaft.',
    'examination in this work yes',
  ),
];
