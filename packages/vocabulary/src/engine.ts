import { DAMAGE } from './damage.js';
import { ENGINE_FIT, ENGINE_PLACE_FIT, MOTOR_FIT, MOTOR_PLACE_FIT, MOUNTS } from './fit.js';
import { FLANGE } from './flange.js';
import {
  absolute,
  anyWord,
  between,
  block,
  counted,
  perYear,
  point,
  quantity,
  rotation,
  row,
  source,
  text,
  vocabulary,
  word,
} from './kinds.js';
import {
  ENGINE_EXCITATION,
  ENGINE_TORSION,
  THRUST_BEARING,
  THRUST_BEARING_DOC,
  THRUST_BEARING_EXAMPLE,
} from './torsion.js';

export const ENGINE_RATING = vocabulary({
  title: 'engine rating',
  rows: [
    row(
      'power',
      'power',
      point('power', 'rotational speed'),
      'Declared power and the speed it is declared at.',
      'power 300 kW at 2300 rpm',
      { range: between('0.5 kW', '30 MW', between('50 rpm', '12000 rpm')) },
    ),
    row(
      'measuredAt',
      'measured at',
      word('crankshaft', 'propeller shaft'),
      'Where the power was measured: the gear takes about 3 % in between.',
      'measured at crankshaft',
      { absent: 'at the propeller shaft, which is the heavier reading, until it is said', estimated: true },
    ),
    row(
      'standard',
      'standard',
      anyWord('standard'),
      'Standard that the rating is declared under.',
      'standard ISO-8665',
    ),
    row('hours', 'hours', perYear, 'Most hours a year that the rating allows.', 'hours 1500 per year', {
      range: between('1', '8784'),
    }),
    row('fullPower', 'full power', text, 'Time for which full power may be used.', 'full power "2 h in 8 h"'),
    row(
      'source',
      'source',
      source,
      'Document of this rating, where it is not that of the engine.',
      'source "Rating sheet 12" dated 2025-02-10',
      { absent: 'the source of the entry', estimated: true },
    ),
  ],
  blocks: [],
});

export const ACCESSORY = vocabulary({
  title: 'accessory',
  rows: [
    row(
      'rotation',
      'rotation',
      rotation,
      'Engine rotation that the accessory is built for.',
      'rotation standard viewed from flywheel',
    ),
  ],
  blocks: [],
});

/** Facts of an engine that belong to the engine wherever it stands. */
export const ENGINE = vocabulary({
  title: 'engine',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Kittiwake 9 data sheet, issue 2" dated 2025-01-20',
    ),
    row(
      'rotation',
      'rotation',
      rotation,
      'Which way the crankshaft turns, and from where that is seen. Standard is counter-clockwise at the flywheel end (SAE J824).',
      'rotation standard viewed from flywheel',
      { handed: true, evidence: 'strict' },
    ),
    row(
      'sheetRotation',
      'sheet rotation',
      rotation,
      'The rotation in the words of the data sheet, kept beside your reading of it.',
      'sheet rotation clockwise viewed from front',
      { handed: true },
    ),
    row(
      'fuel',
      'fuel',
      word('petrol', 'diesel', 'gas'),
      'Fuel: gear ratings may differ by it.',
      'fuel diesel',
    ),
    row('cylinders', 'cylinders', quantity('number'), 'Number of cylinders.', 'cylinders 6', {
      range: counted('1', '24'),
    }),
    row('cycle', 'cycle', word('four-stroke', 'two-stroke'), 'Working cycle.', 'cycle four-stroke'),
    row(
      'aspiration',
      'aspiration',
      word('natural', 'turbocharged', 'turbocharged charge-cooled'),
      'Aspiration of the engine, on which the ambient adjustment depends.',
      'aspiration turbocharged charge-cooled',
    ),
    row(
      'mechanicalEfficiency',
      'mechanical efficiency',
      quantity('ratio'),
      'Mechanical efficiency for the ambient adjustment.',
      'mechanical efficiency 85 %',
      { range: between('50 %', '100 %'), unordered: true },
    ),
    row('lowIdle', 'low idle', quantity('rotational speed'), 'Governed minimum speed.', 'low idle 650 rpm', {
      range: between('100 rpm', '3000 rpm'),
    }),
    row(
      'highIdle',
      'high idle',
      quantity('rotational speed'),
      'Governed no-load maximum, which the gear input must withstand.',
      'high idle 2530 rpm',
      { range: between('200 rpm', '12000 rpm') },
    ),
    row(
      'peakTorque',
      'peak torque',
      point('torque', 'rotational speed'),
      'Largest torque on the full-load curve and its speed.',
      'peak torque 1480 N.m at 1500 rpm',
      { range: between('2 N.m', '1 MN.m', between('50 rpm', '12000 rpm')) },
    ),
    row(
      'powerCurve',
      'full-load power',
      point('power', 'rotational speed'),
      'A point of the full-load curve, as power.',
      'full-load power 210 kW at 1400 rpm',
      { many: true, range: between('0.1 kW', '30 MW', between('50 rpm', '12000 rpm')) },
    ),
    row(
      'torqueCurve',
      'full-load torque',
      point('torque', 'rotational speed'),
      'A point of the full-load curve, as torque.',
      'full-load torque 1430 N.m at 1400 rpm',
      { many: true, range: between('1 N.m', '1 MN.m', between('50 rpm', '12000 rpm')) },
    ),
    row('housing', 'housing', anyWord('housing size'), 'Flywheel housing size (SAE J617).', 'housing SAE-3'),
    row(
      'flywheelSize',
      'flywheel size',
      anyWord('flywheel size'),
      'Flywheel clutch size (SAE J620).',
      'flywheel size 11.5',
    ),
    row('mass', 'mass', quantity('mass'), 'Dry mass.', 'mass 980 kg', { range: between('5 kg', '500 t') }),
    row(
      'inertia',
      'inertia',
      quantity('moment of inertia'),
      'Moment of inertia of the turning parts with flywheel.',
      'inertia 2.6 kg.m2',
      { range: between('0.001 kg.m2', '100000 kg.m2') },
    ),
    ...ENGINE_TORSION,
    row('fuelRate', 'fuel rate', quantity('volume flow'), 'Fuel burnt at rated power.', 'fuel rate 78 L/h', {
      measuredWith: ['ratings'],
      range: between('0.1 L/h', '10000 L/h'),
    }),
    row(
      'fuelCurve',
      'propeller-law fuel',
      point('volume flow', 'rotational speed'),
      'Fuel burnt at an engine speed on the propeller law through rated power, as engine sheets draw it.',
      'propeller-law fuel 34 L/h at 1800 rpm',
      {
        many: true,
        measuredWith: ['ratings'],
        range: between('0.05 L/h', '10000 L/h', between('50 rpm', '12000 rpm')),
      },
    ),
    row(
      'specificFuel',
      'specific fuel',
      quantity('fuel rate'),
      'Mass of fuel for each unit of work at rated power.',
      'specific fuel 212 g/kWh',
      { measuredWith: ['ratings'], range: between('120 g/kWh', '600 g/kWh') },
    ),
    row('serial', 'serial', text, 'Serial number as on the plate.', 'serial "K9-0412"', { handed: true }),
    ...ENGINE_FIT,
  ],
  blocks: [
    block(
      'ratings',
      'rating',
      ENGINE_RATING,
      'A power rating for one duty class.',
      'rating medium { power 300 kW at 2300 rpm  measured at crankshaft }',
      { many: true, head: { field: 'duty', kind: anyWord('duty class') } },
    ),
    block(
      'accessories',
      'accessory',
      ACCESSORY,
      'An accessory that is built for one rotation: starter, raw-water pump, alternator fan.',
      'accessory starter rotation standard viewed from flywheel',
      { many: true, head: { field: 'name', kind: anyWord('accessory') }, handed: true, again: 'freely' },
    ),
    ENGINE_EXCITATION,
  ],
});

/** Usually said in the header. */
export const RATED_AT = row(
  'ratedAt',
  'at',
  anyWord('duty class'),
  'The rating that is used, by its duty class.',
  'at medium',
  { absent: 'the only rating there is', because: 'an engine with one rating is used at that one' },
);

const MOUNTS_EXAMPLE = 'mounts { kind soft  deflection 3 mm  thrust at most 15 kN  torque at most 4200 N.m }';

/** Facts of an engine at its place in a line. */
export const ENGINE_PLACE = vocabulary({
  title: 'engine in its line',
  rows: [
    RATED_AT,
    row(
      'flywheelFaces',
      'flywheel',
      word('aft', 'forward'),
      'Direction that the flywheel end faces in the vessel.',
      'flywheel aft',
      { evidence: 'strict' },
    ),
    row(
      'takeOff',
      'power take-off',
      quantity('power'),
      'Power taken off at rated speed before the gear.',
      'power take-off 12 kW',
      {
        range: between('0 kW', '10 MW'),
        absent: 'no power take-off',
        because: 'an engine drives nothing else unless somebody fits it',
      },
    ),
    row(
      'takeOffState',
      'take-off',
      word('on', 'off'),
      'Whether propeller matching and trial count the take-off as running.',
      'take-off on',
    ),
    row(
      'airTemperature',
      'air temperature',
      quantity('temperature'),
      'Air at the engine intake.',
      'air temperature 45 °C',
      { range: between('-40 °C', '80 °C'), absent: 'reference conditions of the rating', estimated: true },
    ),
    row(
      'coolantTemperature',
      'charge coolant temperature',
      quantity('temperature'),
      'Coolant into the charge-air cooler.',
      'charge coolant temperature 32 °C',
      { range: between('-5 °C', '95 °C'), absent: 'reference conditions of the rating', estimated: true },
    ),
    row('airPressure', 'air pressure', absolute, 'Air pressure at the intake.', 'air pressure 100 kPa', {
      range: between('60 kPa', '110 kPa'),
      absent: 'reference conditions of the rating',
      estimated: true,
    }),
    row(
      'airHumidity',
      'air humidity',
      quantity('ratio'),
      'Relative humidity of the intake air.',
      'air humidity 60 %',
      { range: between('0 %', '100 %'), absent: 'reference conditions of the rating', estimated: true },
    ),
    ...ENGINE_PLACE_FIT,
    ...ENGINE.rows,
  ],
  blocks: [
    ...ENGINE.blocks,
    block('mounts', 'mounts', MOUNTS, 'Mounts of the engine.', MOUNTS_EXAMPLE),
    DAMAGE,
  ],
});

export const MOTOR = vocabulary({
  title: 'motor',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Motor sheet" dated 2025-06-01',
    ),
    row('rotation', 'rotation', rotation, 'Which way the motor may turn.', 'rotation either'),
    row(
      'power',
      'power',
      point('power', 'rotational speed'),
      'Continuous power and the speed it is declared at.',
      'power 40 kW at 1200 rpm',
      { range: between('0.1 kW', '30 MW', between('20 rpm', '20000 rpm')) },
    ),
    row('peakPower', 'peak power', quantity('power'), 'Short-time power.', 'peak power 60 kW', {
      range: between('0.1 kW', '50 MW'),
    }),
    row('torque', 'torque', quantity('torque'), 'Continuous torque up to base speed.', 'torque 318 N.m', {
      range: between('1 N.m', '5 MN.m'),
    }),
    row(
      'baseSpeed',
      'base speed',
      quantity('rotational speed'),
      'Speed up to which the torque is constant.',
      'base speed 1200 rpm',
      { range: between('20 rpm', '20000 rpm') },
    ),
    row(
      'topSpeed',
      'top speed',
      quantity('rotational speed'),
      'Highest speed allowed.',
      'top speed 2400 rpm',
      { range: between('20 rpm', '25000 rpm') },
    ),
    row(
      'thrustCapacity',
      'thrust at most',
      quantity('force'),
      'Propeller thrust that its bearing may carry.',
      'thrust at most 6 kN',
      { range: between('50 N', '10 MN') },
    ),
    row('mass', 'mass', quantity('mass'), 'Mass.', 'mass 160 kg', { range: between('2 kg', '300 t') }),
    row(
      'inertia',
      'inertia',
      quantity('moment of inertia'),
      'Moment of inertia of the rotor.',
      'inertia 0.3 kg.m2',
      { range: between('0.0001 kg.m2', '100000 kg.m2') },
    ),
    row(
      'saidToEqual',
      'said to equal',
      point('power', 'rotational speed'),
      'Engine power at a shaft speed that the seller says the motor replaces.',
      'said to equal 40 hp at 1100 rpm',
      { range: between('0.1 kW', '30 MW', between('20 rpm', '12000 rpm')) },
    ),
    ...MOTOR_FIT,
  ],
  blocks: [
    block('thrustBearing', 'thrust bearing', THRUST_BEARING, THRUST_BEARING_DOC, THRUST_BEARING_EXAMPLE),
    block(
      'outputFlange',
      'output flange',
      FLANGE,
      'Dimensions of the output flange.',
      'output flange { outside diameter 146 mm  bolt circle 121 mm }',
    ),
  ],
});

/** Facts of a motor at its place in a line. */
export const MOTOR_PLACE = vocabulary({
  title: 'motor in its line',
  rows: [...MOTOR_PLACE_FIT, ...MOTOR.rows],
  blocks: [
    ...MOTOR.blocks,
    block('mounts', 'mounts', MOUNTS, 'Mounts of the motor.', MOUNTS_EXAMPLE),
    DAMAGE,
  ],
});
