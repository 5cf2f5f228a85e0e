import { DAMAGE } from './damage.js';
import { GEAR_FIT, GEAR_PLACE_FIT, TRANSFER_FIT } from './fit.js';
import { FLANGE } from './flange.js';
import {
  anyWord,
  between,
  block,
  counted,
  gauge,
  gaugeSpan,
  layout,
  lock,
  mesh,
  name,
  outputSense,
  point,
  quantity,
  ratio,
  rotation,
  row,
  source,
  span,
  text,
  vocabulary,
  word,
} from './kinds.js';
import { THRUST_BEARING, THRUST_BEARING_DOC, THRUST_BEARING_EXAMPLE } from './torsion.js';
import { INPUT_SHAFTS } from './words.js';

export const TRAIN = vocabulary({
  title: 'train',
  rows: [
    row(
      'meshes',
      'mesh',
      mesh,
      'Two wheels in mesh, driver first, with their tooth counts; external unless it says internal, by chain, by belt, or bevel near or far (the side of the planet that is touched). Members on one shaft share a name; "on" names the member that carries a planet.',
      'mesh A 23 with B 47',
      { many: true },
    ),
    row('sunTeeth', 'sun teeth', quantity('number'), 'Teeth of the sun wheel.', 'sun teeth 30', {
      range: counted('5', '600'),
    }),
    row('ringTeeth', 'ring teeth', quantity('number'), 'Teeth of the ring wheel.', 'ring teeth 60', {
      range: counted('10', '1000'),
    }),
    row('planetTeeth', 'planet teeth', quantity('number'), 'Teeth of each planet.', 'planet teeth 15', {
      range: counted('5', '600'),
    }),
    row('planets', 'planets', quantity('number'), 'Number of planets on the carrier.', 'planets 3', {
      range: counted('1', '16'),
    }),
    row(
      'planetRow',
      'planet row',
      word('single', 'double'),
      'One planet between sun and ring, or two in series.',
      'planet row single',
    ),
    row(
      'input',
      'input',
      anyWord('member of the train'),
      'Member that is driven: sun, ring, carrier, or one that a mesh names. A row of meshes begins at its first driver.',
      'input sun',
      {
        absent: 'the first driver',
        because: 'drivers are written in the order that power passes, the first is the input',
      },
    ),
    row(
      'output',
      'output',
      anyWord('member of the train'),
      'Member that drives on. A row of meshes ends at its last wheel.',
      'output carrier',
      {
        absent: 'the last driven wheel',
        because: 'wheels are written in the order that power passes, the last is the output',
      },
    ),
    row(
      'held',
      'held',
      anyWord('member of the train'),
      'Member that is held still, whatever clutch is engaged; none when the set turns as one piece.',
      'held ring',
      { many: true },
    ),
    row(
      'locked',
      'locked',
      lock,
      'Two members that turn as one, whatever clutch is engaged.',
      'locked sun with carrier',
      { many: true },
    ),
  ],
  blocks: [],
});

const train = 'Tooth counts, from which ratio and sense are derived and compared with what is declared.';
const trainExample = 'train { mesh A 23 with B 47 }';

export const CLUTCH = vocabulary({
  title: 'clutch',
  rows: [
    row(
      'output',
      'output',
      outputSense,
      'Whether the output turns the same way as the input with this clutch engaged. Where the line turns back, state the viewpoint.',
      'output opposite seen from aft',
      { evidence: 'strict' },
    ),
    row(
      'ahead',
      'ahead',
      word('continuous', 'never'),
      'Whether this clutch may carry full power ahead continuously. Leave it out where the sheet does not state it.',
      'ahead continuous',
      { evidence: 'strict' },
    ),
    row('exact', 'exact', ratio, 'Exact ratio with this clutch, where the two differ.', 'exact 1.958:1', {
      measuredWith: ['train'],
      absent: 'the exact ratio of its ratio',
      because: 'a sheet gives a clutch a ratio of its own where it differs from that of its ratio',
      range: between('0.1:1', '30:1'),
    }),
    row('faces', 'faces', quantity('number'), 'Number of friction faces.', 'faces 12', {
      measuredWith: ['steelPlates', 'frictionPlates'],
      range: counted('1', '120'),
    }),
    row('steelPlates', 'steel plates', quantity('number'), 'Steel plates in the pack.', 'steel plates 7', {
      range: counted('1', '80'),
    }),
    row(
      'frictionPlates',
      'friction plates',
      quantity('number'),
      'Friction plates in the pack.',
      'friction plates 6',
      { range: counted('1', '80') },
    ),
    row(
      'outerDiameter',
      'outer diameter',
      quantity('length'),
      'Outer diameter of the friction faces.',
      'outer diameter 160 mm',
      { range: between('20 mm', '3 m') },
    ),
    row(
      'innerDiameter',
      'inner diameter',
      quantity('length'),
      'Inner diameter of the friction faces.',
      'inner diameter 110 mm',
      { range: between('5 mm', '3 m') },
    ),
    row(
      'pistonOuterDiameter',
      'piston outer diameter',
      quantity('length'),
      'Outer diameter of the clamping piston.',
      'piston outer diameter 155 mm',
      { range: between('20 mm', '3 m') },
    ),
    row(
      'pistonInnerDiameter',
      'piston inner diameter',
      quantity('length'),
      'Inner diameter of the clamping piston.',
      'piston inner diameter 90 mm',
      { range: between('0 mm', '3 m') },
    ),
    row(
      'springForce',
      'spring force',
      quantity('force'),
      'Return-spring force against the piston.',
      'spring force 900 N',
      { range: between('0 N', '200 kN') },
    ),
    row(
      'clampForce',
      'clamp force',
      quantity('force'),
      'Clamp force, when it is given instead of piston and pressure.',
      'clamp force 24 kN',
      {
        measuredWith: ['pistonOuterDiameter', 'pistonInnerDiameter', 'springForce', 'oilPressure'],
        range: between('0.1 kN', '10 MN'),
      },
    ),
    row(
      'oilPressure',
      'oil pressure',
      gauge,
      'Lowest working oil pressure at this clutch.',
      'oil pressure 20 bar',
      {
        range: between('0.5 bar', '80 bar'),
        absent: 'the least working pressure of the gear',
        estimated: true,
      },
    ),
    row(
      'friction',
      'friction',
      quantity('ratio'),
      'Coefficient of friction used for holding torque.',
      'friction 0.08',
      { range: between('0.01', '0.8'), unordered: true },
    ),
    row(
      'speedFactor',
      'clutch speed',
      quantity('ratio'),
      'Clutch shaft speed over input speed, for a clutch behind a mesh.',
      'clutch speed 1.0',
      {
        measuredWith: ['train'],
        absent: '1, a clutch on the input shaft',
        because: 'a sheet gives it for a clutch behind a mesh; others turn with the input',
        range: between('0.05', '20'),
      },
    ),
    row(
      'holds',
      'holds',
      anyWord('member of the train'),
      'Member of the ratio’s train that is held still while this clutch or brake is engaged.',
      'holds ring',
      { many: true },
    ),
    row(
      'locks',
      'locks',
      lock,
      'Two members of the ratio’s train that turn as one while this clutch is engaged.',
      'locks sun with carrier',
      { many: true },
    ),
  ],
  blocks: [
    block('train', 'train', TRAIN, train, trainExample, {
      absent: 'the declared sense and ratio stand alone',
      because: 'the declared sense and ratio stand; the train only proves them',
      whole: true,
    }),
  ],
});

export const GEAR_RATING = vocabulary({
  title: 'gear rating',
  rows: [
    row(
      'powerPerSpeed',
      'power per speed',
      quantity('power per speed'),
      'Input capacity as power per speed.',
      'power per speed 0.112 kW/rpm',
      { bare: true, range: between('0.0001 kW/rpm', '500 kW/rpm') },
    ),
    row('torque', 'torque', quantity('torque'), 'Input capacity as torque.', 'torque 1070 N.m', {
      bare: true,
      range: between('1 N.m', '5 MN.m'),
    }),
    row(
      'power',
      'power',
      point('power', 'rotational speed'),
      'Input capacity as power at one speed.',
      'power 235 kW at 2100 rpm',
      {
        bare: true,
        range: between('0.1 kW', '30 MW', between('50 rpm', '12000 rpm')),
      },
    ),
    row(
      'speeds',
      'from',
      span('rotational speed'),
      'Input speeds that the rating holds for.',
      'from 1000 .. 2600 rpm',
      {
        range: between('0 rpm', '12000 rpm'),
        absent: 'at all speeds of the gear',
        because: 'a sheet bounds the speeds of a rating where it bounds them at all',
      },
    ),
    row(
      'fuel',
      'for',
      word('petrol', 'diesel', 'gas'),
      'Engines that the rating holds for, when the sheet tells them apart.',
      'for diesel',
      { absent: 'whatever the fuel', because: 'a sheet tells fuels apart where its ratings differ by them' },
    ),
    row(
      'direction',
      'running',
      word('ahead', 'astern'),
      'Direction that the rating holds for, when the sheet tells them apart.',
      'running astern',
      {
        absent: 'ahead and astern',
        because: 'a sheet tells ahead and astern apart where its ratings differ by them',
      },
    ),
    row('source', 'source', source, 'Document of this rating.', 'source "Rating table 7" dated 2024-11-03'),
  ],
  blocks: [],
});

const clutchDoc = 'One engaged position of the gear: its output sense and whether it may run ahead.';
const ratedDoc = 'Input capacity for one duty class.';
const clutchHead = { many: true, head: { field: 'name', kind: name('clutch') } } as const;
const ratedHead = {
  many: true,
  head: { field: 'duty', kind: anyWord('duty class') },
  again: ['from', 'for', 'running'],
  whole: true,
} as const;

export const INPUT_SHAFT = vocabulary({
  title: 'input shaft',
  rows: [
    row(
      'rotation',
      'rotation',
      rotation,
      'Engine rotation that this input accepts.',
      'rotation opposite viewed from flywheel',
      {
        evidence: 'strict',
        absent: 'as the gear accepts it',
        because: 'a sheet tells the two inputs apart where they take different rotations',
      },
    ),
    row(
      'speedMax',
      'speed at most',
      quantity('rotational speed'),
      'Highest speed of this input.',
      'speed at most 2600 rpm',
      {
        range: between('100 rpm', '12000 rpm'),
        absent: 'as the gear states it',
        because: 'a sheet tells the two inputs apart where their speeds differ',
      },
    ),
    row(
      'exact',
      'exact',
      ratio,
      'Exact ratio from this input to the output, where the two differ.',
      'exact 2.043:1',
      {
        range: between('0.1:1', '30:1'),
        absent: 'the exact ratio of its ratio',
        because: 'a sheet gives an input a ratio of its own where the two differ',
      },
    ),
  ],
  blocks: [
    block(
      'clutches',
      'clutch',
      CLUTCH,
      'A clutch of this input. Clutches of both inputs that drive ahead together have one name.',
      'clutch A output opposite ahead continuous',
      clutchHead,
    ),
    block(
      'ratings',
      'rated',
      GEAR_RATING,
      'Input capacity of this shaft for one duty class, with the other input loaded as well.',
      'rated medium 0.112 kW/rpm',
      ratedHead,
    ),
  ],
});

const inputDoc =
  'One of the two input shafts of a gear that joins two engines: the first engine of the text drives the first. Its clutches ' +
  'and ratings stand here.';
const inputExample = 'input shaft second { clutch A output same ahead continuous }';
const inputHead = { many: true, head: { field: 'name', kind: word(...INPUT_SHAFTS) } } as const;

export const GEAR_RATIO = vocabulary({
  title: 'gear ratio',
  rows: [
    row('exact', 'exact', ratio, 'Exact ratio from the tooth counts.', 'exact 2.043:1', {
      measuredWith: ['train'],
      range: between('0.1:1', '30:1'),
      absent: 'the nominal ratio, as a rounded figure',
      estimated: true,
    }),
  ],
  blocks: [
    block('clutches', 'clutch', CLUTCH, clutchDoc, 'clutch A output same ahead continuous', clutchHead),
    block('ratings', 'rated', GEAR_RATING, ratedDoc, 'rated medium 0.112 kW/rpm', ratedHead),
    block('inputs', 'input shaft', INPUT_SHAFT, inputDoc, inputExample, inputHead),
    block('train', 'train', TRAIN, train, trainExample, {
      absent: 'the declared sense and ratio stand alone',
      because: 'the declared sense and ratio stand; the train only proves them',
      whole: true,
    }),
  ],
});

/** Facts of a reduction gear wherever it stands. */
export const GEAR = vocabulary({
  title: 'gear',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Alder 63 technical sheet, issue 4" dated 2025-02-10',
    ),
    row(
      'layout',
      'layout',
      layout,
      'Position of the output relative to the input.',
      'layout down-angle 8 deg',
      {
        evidence: 'strict',
        range: between('-30 deg', '45 deg'),
      },
    ),
    row(
      'inputRotation',
      'input rotation',
      rotation,
      'Engine rotation that the gear accepts. "either by pump index" where its pump must be set for it.',
      'input rotation either by pump index',
      { evidence: 'strict' },
    ),
    row(
      'inputSpeedMax',
      'input speed at most',
      quantity('rotational speed'),
      'Highest input speed.',
      'input speed at most 3000 rpm',
      { range: between('100 rpm', '12000 rpm') },
    ),
    row(
      'inputSpeedMin',
      'input speed at least',
      quantity('rotational speed'),
      'Lowest input speed that keeps clutch pressure.',
      'input speed at least 600 rpm',
      { range: between('20 rpm', '6000 rpm') },
    ),
    row(
      'inputHousing',
      'input housing',
      anyWord('housing size'),
      'Flywheel housing size that it bolts to (SAE J617).',
      'input housing SAE-3',
    ),
    row(
      'thrust',
      'thrust at most',
      quantity('force'),
      'Propeller thrust that its bearing may carry.',
      'thrust at most 18 kN',
      {
        range: between('50 N', '10 MN'),
      },
    ),
    row(
      'oilPressure',
      'oil pressure',
      gaugeSpan,
      'Working range of clutch oil pressure.',
      'oil pressure 20 .. 24 bar',
      { range: between('0.5 bar', '80 bar') },
    ),
    row('efficiency', 'efficiency', quantity('ratio'), 'Output power over input power.', 'efficiency 97 %', {
      range: between('60 %', '100 %'),
      absent: '97 % unless the vessel assumes another',
      estimated: true,
      unordered: true,
    }),
    row('mass', 'mass', quantity('mass'), 'Dry mass.', 'mass 165 kg', { range: between('2 kg', '300 t') }),
    row(
      'pushEngages',
      'lever push engages clutch',
      name('clutch'),
      'Clutch that a push of the shift lever engages.',
      'lever push engages clutch A',
    ),
    row(
      'slipDevice',
      'slip device',
      word('offered', 'not offered', 'fitted'),
      'Device that lets the clutch slip for slow running.',
      'slip device offered',
    ),
    row(
      'freewheel',
      'freewheel',
      text,
      'Rule for turning with the engine stopped.',
      'freewheel "8 h, then run the engine 5 min"',
    ),
    row(
      'reversing',
      'reversing',
      word('yes', 'no'),
      'Whether it has an astern clutch; yes when two clutches are declared.',
      'reversing no',
      { absent: 'yes when two clutches are declared', estimated: true },
    ),
    ...GEAR_FIT,
  ],
  blocks: [
    block(
      'outputFlange',
      'output flange',
      FLANGE,
      'Dimensions of the output flange.',
      'output flange { outside diameter 146 mm  bolt circle 121 mm }',
    ),
    block('thrustBearing', 'thrust bearing', THRUST_BEARING, THRUST_BEARING_DOC, THRUST_BEARING_EXAMPLE),
    block(
      'ratios',
      'ratio',
      GEAR_RATIO,
      'An offered ratio, by its nominal name.',
      'ratio 2.04:1 exact 2.043:1 { }',
      { many: true, head: { field: 'nominal', kind: ratio, range: between('0.1:1', '30:1') } },
    ),
    block(
      'clutches',
      'clutch',
      CLUTCH,
      `${clutchDoc} Here: for every ratio.`,
      'clutch A output same ahead continuous',
      clutchHead,
    ),
    block(
      'ratings',
      'rated',
      GEAR_RATING,
      `${ratedDoc} Here: for every ratio.`,
      'rated medium 0.112 kW/rpm',
      ratedHead,
    ),
    block(
      'inputs',
      'input shaft',
      INPUT_SHAFT,
      `${inputDoc} Here: for every ratio.`,
      inputExample,
      inputHead,
    ),
  ],
});

/** Usually said in the header. */
export const AHEAD_CLUTCH = row(
  'aheadClutch',
  'ahead clutch',
  name('clutch'),
  'The clutch that drives the vessel ahead.',
  'ahead clutch A',
  { handed: true },
);

export const GEAR_PLACE = vocabulary({
  title: 'gear in its line',
  rows: [
    AHEAD_CLUTCH,
    row(
      'pumpIndex',
      'pump set for',
      rotation,
      'Input rotation that the oil pump is set for.',
      'pump set for standard',
      { handed: true, evidence: 'strict' },
    ),
    row(
      'shiftCable',
      'shift cable',
      word('push for ahead', 'pull for ahead'),
      'Movement of the cable for ahead. Always prove it at the dock.',
      'shift cable push for ahead',
      { handed: true },
    ),
    row(
      'expectedOutput',
      'expected output',
      word('clockwise', 'counter-clockwise'),
      'Output sense ahead, seen from aft, that the plan expects of this gear.',
      'expected output clockwise',
      {
        handed: true,
        measuredWith: ['aheadClutch', 'engine.rotation', 'engine.flywheelFaces'],
      },
    ),
    ...GEAR_PLACE_FIT,
    ...GEAR.rows,
  ],
  blocks: [...GEAR.blocks, DAMAGE],
});

export const TRANSFER = vocabulary({
  title: 'transfer',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "V-box sheet" dated 2024-05-02',
    ),
    row(
      'kind',
      'kind',
      word('gear V-drive', 'chain V-drive', 'belt', 'chain', 'gears'),
      'Means that transmit the power.',
      'kind gear V-drive',
    ),
    row(
      'output',
      'output',
      outputSense,
      'Output sense against input, and from where it is seen.',
      'output opposite seen from aft',
      { evidence: 'strict' },
    ),
    row(
      'turnsBack',
      'turns the line back',
      word('yes', 'no'),
      'Whether the output leaves on the same side as the input.',
      'turns the line back yes',
      {
        evidence: 'strict',
        absent: 'a V-drive box does; an open question of any other',
        because: 'a V-drive turns the line back by its kind, and of another box the check asks it by itself',
      },
    ),
    row('exact', 'exact', ratio, 'Exact ratio.', 'exact 1.214:1', {
      measuredWith: ['train'],
      range: between('0.1:1', '20:1'),
    }),
    row('efficiency', 'efficiency', quantity('ratio'), 'Output power over input power.', 'efficiency 98 %', {
      range: between('60 %', '100 %'),
      absent: '97 % unless the vessel assumes another',
      estimated: true,
      unordered: true,
    }),
    row(
      'inputSpeedMax',
      'input speed at most',
      quantity('rotational speed'),
      'Highest input speed.',
      'input speed at most 4000 rpm',
      { range: between('100 rpm', '12000 rpm') },
    ),
    row(
      'torque',
      'torque at most',
      quantity('torque'),
      'Input torque that it may carry.',
      'torque at most 900 N.m',
      { range: between('1 N.m', '5 MN.m') },
    ),
    row(
      'wheelDiameter',
      'input wheel diameter',
      quantity('length'),
      'Pitch diameter of the pulley or sprocket on its input.',
      'input wheel diameter 190 mm',
      { measuredWith: ['exact', 'train'], range: between('20 mm', '3 m') },
    ),
    row(
      'strandFactor',
      'strand factor',
      quantity('number'),
      'What both strands of a belt or chain pull on the shaft together, over the pull that carries the torque; of a belt by its maker.',
      'strand factor 1.5',
      {
        range: between('1', '5'),
        absent: '1 for a chain, whose other strand is slack; an open question of a belt',
        because: 'the slack strand of a chain pulls nothing, and of a belt the check asks it by itself',
      },
    ),
    row(
      'sideLoad',
      'side load at most',
      quantity('force'),
      'Side load that the shaft with its input wheel may take, by the maker of the engine or gear that drives it.',
      'side load at most 9 kN',
      { range: between('10 N', '1 MN') },
    ),
    row('mass', 'mass', quantity('mass'), 'Mass.', 'mass 74 kg', { range: between('1 kg', '100 t') }),
    ...TRANSFER_FIT,
  ],
  blocks: [
    block('train', 'train', TRAIN, train, trainExample, {
      absent: 'the declared sense and ratio stand alone',
      because: 'the declared sense and ratio stand; the train only proves them',
      whole: true,
    }),
    block(
      'outputFlange',
      'output flange',
      FLANGE,
      'Dimensions of the output flange.',
      'output flange { outside diameter 146 mm  bolt circle 121 mm }',
    ),
  ],
});

/** Facts of a transfer at its place in a line. */
export const TRANSFER_PLACE = vocabulary({
  title: 'transfer in its line',
  rows: TRANSFER.rows,
  blocks: [...TRANSFER.blocks, DAMAGE],
});
