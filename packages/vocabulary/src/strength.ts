import { FLANGE } from './flange.js';
import { anyWord, between, name, point, quantity, row, vocabulary, word } from './kinds.js';
import { CLUTCH_MODELS, RATING_CONDITIONS } from './words.js';

/*
 * What the strength of a shaft line hangs on beside its diameter: sections, keys, coupling bolts, and the factors wanted.
 */

export const SHAFT_SECTION = vocabulary({
  title: 'shaft section',
  rows: [
    row(
      'from',
      'from',
      quantity('length'),
      'Where it begins, measured aft from the forward coupling face of the shaft.',
      'from 0.4 m',
      { signed: true, range: between('-2 m', '100 m') },
    ),
    row('length', 'length', quantity('length'), 'Length of the section.', 'length 1.2 m', {
      range: between('1 mm', '100 m'),
    }),
    row('diameter', 'diameter', quantity('length'), 'Diameter of the section.', 'diameter 85 mm', {
      range: between('5 mm', '1.5 m'),
    }),
    row(
      'boreDiameter',
      'bore',
      quantity('length'),
      'Bore of the section; that of the shaft when not stated.',
      'bore 30 mm',
      {
        absent: 'the bore of the shaft',
        because: 'a bore goes through: a section says its own where it is another',
        range: between('0 mm', '1.4 m'),
      },
    ),
  ],
  blocks: [],
});

export const SHAFT_KEY = vocabulary({
  title: 'key',
  rows: [
    row('width', 'width', quantity('length'), 'Width; that of the keyway when not stated.', 'width 25 mm', {
      absent: 'the width of the keyway',
      because: 'a key is as wide as its keyway',
      range: between('1 mm', '250 mm'),
    }),
    row('height', 'height', quantity('length'), 'Height, half of it in the shaft.', 'height 14 mm', {
      range: between('1 mm', '250 mm'),
    }),
    row(
      'length',
      'length',
      quantity('length'),
      'Length that bears: the straight part, without rounded ends.',
      'length 180 mm',
      { range: between('3 mm', '3 m') },
    ),
    row('material', 'material', name('shaft material'), 'Grade of the key.', 'material duplex-stainless'),
    row(
      'tensileYield',
      'tensile yield',
      quantity('pressure'),
      '0.2 % tensile yield of the key; that of its material when not stated.',
      'tensile yield 350 MPa',
      {
        absent: 'the yield of its material',
        because: 'the material of a key says its yield',
        range: between('50 MPa', '2500 MPa'),
      },
    ),
  ],
  blocks: [],
});

const BOLTS = [
  row(
    'boltClass',
    'bolt class',
    anyWord('property class of bolts, as 8.8 or A4-70'),
    'Property class as stamped on the head.',
    'bolt class 8.8',
    {
      absent: 'what the bolt strengths say',
      because: 'bolts whose yield and strength are written need no class',
    },
  ),
  row(
    'boltYield',
    'bolt yield',
    quantity('pressure'),
    'Tensile yield or proof stress of the bolts; that of their class when not stated.',
    'bolt yield 640 MPa',
    {
      absent: 'the yield of their class',
      because: 'the class stamped on a bolt is its yield',
      range: between('80 MPa', '2000 MPa'),
    },
  ),
  row(
    'boltStrength',
    'bolt tensile strength',
    quantity('pressure'),
    'Tensile strength of the bolts; that of their class when not stated.',
    'bolt tensile strength 800 MPa',
    {
      absent: 'the strength of their class',
      because: 'the class stamped on a bolt is its strength',
      range: between('150 MPa', '2500 MPa'),
    },
  ),
  row(
    'boltFit',
    'bolt fit',
    word('fitted', 'clearance'),
    'Fitted bolts stand in reamed holes and carry torque in shear; bolts with clearance only clamp the faces.',
    'bolt fit fitted',
  ),
  row(
    'boltPreload',
    'bolt preload',
    quantity('force'),
    'Clamping force of one bolt as tightened.',
    'bolt preload 60 kN',
    { range: between('0.1 kN', '5 MN') },
  ),
];

/** The flange of a coupling: that of any part, and how its bolts carry. */
export const BOLTED_FLANGE = vocabulary({ ...FLANGE, rows: [...FLANGE.rows, ...BOLTS] });

export const STRENGTH_CRITERIA = [
  row(
    'shaftYieldFactor',
    'shaft yield factor at least',
    quantity('ratio'),
    'Tensile yield of the shaft over its stress under bending, torsion and thrust together.',
    'shaft yield factor at least 3',
    { range: between('1', '20') },
  ),
  row(
    'shaftFatigueFactor',
    'shaft fatigue factor at least',
    quantity('ratio'),
    'Factor of the shaft in fatigue, by its endurance limit.',
    'shaft fatigue factor at least 2',
    { range: between('1', '20') },
  ),
  row(
    'keyFactor',
    'key factor at least',
    quantity('ratio'),
    'Yield of the key over its stress in shear and in crushing.',
    'key factor at least 2.5',
    { range: between('1', '20') },
  ),
  row(
    'boltFactor',
    'bolt factor at least',
    quantity('ratio'),
    'Torque capacity of the coupling bolts over the torque in the coupling.',
    'bolt factor at least 2',
    { range: between('1', '20') },
  ),
  row(
    'classPlantFactor',
    'class plant factor at least',
    quantity('number'),
    'Factor F of the class formula (IACS UR M68): 95 for shafts of turbine, electric and slip-coupled plants before the propeller shaft. 100 where nothing is chosen.',
    'class plant factor at least 95',
    { range: between('80', '130') },
  ),
  row(
    'classShaftFactor',
    'class shaft factor at least',
    quantity('number'),
    'Factor k of the class formula for the propeller shaft: 1.26 keyed, 1.22 keyless or flanged. 1.26 where nothing is chosen.',
    'class shaft factor at least 1.22',
    { range: between('1', '2') },
  ),
  row(
    'thrustBearingReliability',
    'thrust bearing reliability at least',
    quantity('ratio'),
    'Share of such bearings that reach the life required (ISO 281, a₁ of the next tabulated share). 90 % where nothing is chosen.',
    'thrust bearing reliability at least 95 %',
    { range: between('90 %', '99 %') },
  ),
  row(
    'thrustBearingDuty',
    'thrust bearing duty',
    point('ratio', 'ratio'),
    'Share of the running time at a share of full shaft speed, thrust falling as its square. The rest of the time counts at full power; so does all of it where no duty is given.',
    'thrust bearing duty 60 % at 80 %',
    { many: true, range: between('0.1 %', '100 %', between('5 %', '100 %')) },
  ),
  row(
    'spanLeast',
    'span diameters at least',
    quantity('number'),
    'Shortest span between bearings, in shaft diameters. 20 where nothing is chosen.',
    'span diameters at least 15',
    { range: between('1', '60') },
  ),
  row(
    'spanMost',
    'span diameters at most',
    quantity('number'),
    'Longest span between bearings, in shaft diameters. 40 where nothing is chosen.',
    'span diameters at most 30',
    { range: between('5', '120') },
  ),
  row(
    'clutchPressure',
    'clutch holding by',
    word(...CLUTCH_MODELS),
    'How pressure spreads over the plates of a clutch: worn in, which is cautious and the default, or even, as new.',
    'clutch holding by uniform wear',
  ),
  row(
    'ratingConditions',
    'rating conditions',
    word(...RATING_CONDITIONS),
    'Air and coolant that the rated powers are taken to be stated for, where the air of an engine space is stated. ISO-3046-1 (100 kPa, 298 K, 30 %) where nothing is chosen; IACS-M28 is 45 °C air, 32 °C water, 60 %.',
    'rating conditions IACS-M28',
  ),
];
