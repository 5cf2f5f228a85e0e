import {
  BLADE_AREA_METHODS,
  type Criteria,
  NOZZLE_SECTIONS,
  type PropellerFacts,
  type PropellerPlace,
} from './facts/index.js';
import { between, quantity, rowsFor, slope, word } from './kinds.js';

const make = rowsFor<PropellerFacts>();

/** Blades, bore and make of a propeller. */
export const PROPELLER_MAKE = [
  make(
    'developedAreaRatio',
    'developed area ratio',
    quantity('ratio'),
    'Developed blade area over disc area, where the maker counts that instead of the expanded area.',
    'developed area ratio 0.68',
    { measuredWith: ['diameter', 'blades'], range: between('0.15', '1.8') },
  ),
  make(
    'series',
    'series',
    word('Wageningen B', 'Gawn', 'Gawn-Burrill', 'Ka'),
    'Published series that its blades are taken to belong to: Wageningen B for aerofoil sections, Gawn and Gawn-Burrill for flat-face blades, Ka for wide-tipped blades in a nozzle.',
    'series Wageningen B',
    { absent: 'the series that suits its area ratio', estimated: true },
  ),
  make(
    'stampedDiameter',
    'stamped diameter',
    quantity('length'),
    'Diameter stamped on the hub; no check takes it for the diameter. Each stamp on a line of its own.',
    'stamped diameter 24 in',
    { many: true, range: between('80 mm', '12 m') },
  ),
  make(
    'stampedPitch',
    'stamped pitch',
    quantity('length'),
    'Pitch stamped on the hub; no check takes it for the pitch. Each stamp on a line of its own.',
    'stamped pitch 24 in',
    { many: true, range: between('30 mm', '15 m') },
  ),
  make(
    'cup',
    'cup',
    word('none', 'light', 'medium', 'heavy'),
    'Cup of the trailing edge, as the propeller shop describes it; shops differ.',
    'cup none',
  ),
  make(
    'effectivePitch',
    'effective pitch',
    quantity('length'),
    'Effective pitch with the cup counted in, as the propeller shop states it.',
    'effective pitch 25 in',
    { measuredWith: ['pitch', 'cup'], range: between('30 mm', '15 m') },
  ),
  make(
    'toleranceClass',
    'tolerance class',
    word('S', 'I', 'II', 'III'),
    'Class of manufacture by ISO 484: S is the finest, III the coarsest.',
    'tolerance class I',
    { absent: 'class II, asked for where it is ordered', estimated: true },
  ),
  make(
    'material',
    'material',
    word(
      'bronze',
      'manganese bronze',
      'nickel-aluminium bronze',
      'stainless steel',
      'aluminium',
      'composite',
    ),
    'What it is cast of.',
    'material nickel-aluminium bronze',
  ),
  make('boreTaper', 'bore taper', slope, 'Change of diameter of the bore per length.', 'bore taper 1:16', {
    range: between('1:60', '1:3'),
  }),
  make(
    'boreLargeEnd',
    'bore large end',
    quantity('length'),
    'Diameter of the bore at its forward, large end.',
    'bore large end 2 1/4 in',
    { range: between('5 mm', '1.5 m') },
  ),
  make(
    'keywayWidth',
    'keyway width',
    quantity('length'),
    'Width of the keyway in the bore.',
    'keyway width 9/16 in',
    { range: between('1 mm', '250 mm') },
  ),
  make(
    'hubLength',
    'hub length',
    quantity('length'),
    'Length of the hub along the shaft.',
    'hub length 7 3/16 in',
    { range: between('10 mm', '4 m'), absent: 'estimated from the diameter', estimated: true },
  ),
];

const place = rowsFor<PropellerPlace>();

/** How a propeller stands in the vessel. */
export const PROPELLER_STANDS = [
  place(
    'axisToHull',
    'axis to hull',
    quantity('length'),
    'From the shaft axis to the hull, in the plane of the propeller.',
    'axis to hull 400 mm',
    {
      measuredWith: ['shaft.angle'],
      range: between('30 mm', '20 m'),
    },
  ),
  place(
    'tipClearance',
    'tip clearance',
    quantity('length'),
    'Least distance from blade tip to hull.',
    'tip clearance 95 mm',
    {
      measuredWith: ['diameter', 'axisToHull'],
      range: between('0 mm', '10 m'),
    },
  ),
  place(
    'rudderClearance',
    'rudder clearance',
    quantity('length'),
    'Least distance from blade to rudder.',
    'rudder clearance 120 mm',
    {
      measuredWith: ['diameter', 'areaRatio', 'shaft.length', 'shaft.overhang'],
      range: between('0 mm', '20 m'),
    },
  ),
  place(
    'strutClearance',
    'strut clearance',
    quantity('length'),
    'Least distance from blade to the strut, bracket, bossing or skeg ahead of it.',
    'strut clearance 110 mm',
    {
      measuredWith: ['diameter', 'areaRatio', 'hubLength', 'shaft.overhang'],
      range: between('0 mm', '10 m'),
    },
  ),
  place(
    'shaftDepth',
    'shaft depth',
    quantity('length'),
    'Shaft axis below the surface, at the propeller.',
    'shaft depth 0.7 m',
    { measuredWith: ['shaft.angle'], range: between('0 m', '40 m') },
  ),
  place(
    'nozzle',
    'nozzle',
    word(...NOZZLE_SECTIONS),
    'Section of the nozzle that it turns in. Published figures cover nozzle 19A, written N19A, ahead; of any other nozzle nothing is worked out.',
    'nozzle N19A',
    { absent: 'an open propeller' },
  ),
  place(
    'nozzleGap',
    'nozzle gap',
    quantity('length'),
    'Least gap between blade tip and nozzle.',
    'nozzle gap 6 mm',
    { measuredWith: ['diameter'], range: between('0 mm', '200 mm') },
  ),
];

const criteria = rowsFor<Criteria>();

/** What a propeller is to be judged by. */
export const PROPELLER_CRITERIA = [
  criteria(
    'tipClearance',
    'tip clearance at least',
    quantity('ratio'),
    'Least tip clearance as a share of the diameter.',
    'tip clearance at least 15 %',
    { range: between('0 %', '100 %') },
  ),
  criteria(
    'rudderClearance',
    'rudder clearance at least',
    quantity('ratio'),
    'Least clearance of the rudder as a share of the diameter.',
    'rudder clearance at least 12 %',
    { range: between('0 %', '100 %') },
  ),
  criteria(
    'strutClearance',
    'strut clearance at least',
    quantity('ratio'),
    'Least clearance of strut, bracket or skeg as a share of the diameter.',
    'strut clearance at least 15 %',
    { range: between('0 %', '100 %') },
  ),
  criteria(
    'nozzleGap',
    'nozzle gap at most',
    quantity('ratio'),
    'Most gap between blade tip and nozzle, as a share of the diameter.',
    'nozzle gap at most 0.8 %',
    { range: between('0.05 %', '5 %') },
  ),
  criteria(
    'bladeAreaBy',
    'blade area by',
    word(...BLADE_AREA_METHODS),
    'Published criterion that judges the blade area.',
    'blade area by Burrill 5 %',
  ),
  criteria(
    'propellerDemandLeast',
    'propeller demand at least',
    quantity('ratio'),
    'Least power that the propeller is to ask at rated speed, of the power delivered to it.',
    'propeller demand at least 86 %',
    { range: between('10 %', '200 %') },
  ),
  criteria(
    'propellerDemandMost',
    'propeller demand at most',
    quantity('ratio'),
    'Most power that the propeller may ask at rated speed, of the power delivered to it.',
    'propeller demand at most 106 %',
    { range: between('10 %', '200 %') },
  ),
  criteria(
    'pitchDifference',
    'pitch difference at most',
    quantity('ratio'),
    'Difference of pitch allowed between the propellers of a pair.',
    'pitch difference at most 1.5 %',
    { range: between('0 %', '30 %') },
  ),
];
