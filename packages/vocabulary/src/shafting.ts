import { BEARING } from './bearing.js';
import { DAMAGE } from './damage.js';
import { COUPLING_FIT, DAMPER, SHAFT_FIT } from './fit.js';
import {
  anyWord,
  between,
  block,
  counted,
  name,
  quantity,
  row,
  source,
  span,
  vocabulary,
  word,
} from './kinds.js';
import { PROPELLER_MAKE, PROPELLER_STANDS } from './propeller.js';
import { BOLTED_FLANGE, SHAFT_KEY, SHAFT_SECTION } from './strength.js';
import { COUPLING_TORSION, PROPELLER_EXCITATION, PROPELLER_TORSION, SHAFT_TORSION } from './torsion.js';
import { HANDS } from './words.js';

export const COUPLING = vocabulary({
  title: 'coupling',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Coupling sheet" dated 2024-09-01',
    ),
    row('kind', 'kind', word('rigid', 'flexible', 'damper', 'joint'), 'Kind of coupling.', 'kind flexible', {
      selects: true,
    }),
    row(
      'torque',
      'torque at most',
      quantity('torque'),
      'Torque that it may carry continuously.',
      'torque at most 950 N.m',
      { range: between('1 N.m', '5 MN.m') },
    ),
    row('mass', 'mass', quantity('mass'), 'Mass.', 'mass 14 kg', { range: between('0.1 kg', '100 t') }),
    ...COUPLING_FIT,
    ...COUPLING_TORSION,
    ...DAMPER,
  ],
  blocks: [
    block(
      'flange',
      'flange',
      BOLTED_FLANGE,
      'Dimensions of its flange.',
      'flange { outside diameter 146 mm }',
      { absent: 'a coupling without a flange', because: 'a coupling with a flange describes it' },
    ),
  ],
});

/** Facts of a coupling at its place in a line. */
export const COUPLING_PLACE = vocabulary({
  title: 'coupling in its line',
  rows: COUPLING.rows,
  blocks: [...COUPLING.blocks, DAMAGE],
});

export const SHAFT_MATERIAL = vocabulary({
  title: 'shaft material',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Mill certificate 88" dated 2024-02-02',
    ),
    row(
      'metal',
      'metal',
      word('stainless steel', 'carbon steel', 'bronze', 'nickel-copper', 'aluminium'),
      'Kind of metal, for galvanic contact with the propeller in sea water. The name of the entry is not used.',
      'metal stainless steel',
    ),
    row(
      'torsionalYield',
      'torsional yield',
      quantity('pressure'),
      'Shear yield in torsion, not the tensile yield.',
      'torsional yield 70000 psi',
      { range: between('20 MPa', '1500 MPa') },
    ),
    row(
      'tensileYield',
      'tensile yield',
      quantity('pressure'),
      '0.2 % tensile yield.',
      'tensile yield 725 MPa',
      { range: between('30 MPa', '2500 MPa') },
    ),
    row(
      'tensileStrength',
      'tensile strength',
      quantity('pressure'),
      'Ultimate tensile strength.',
      'tensile strength 860 MPa',
      { range: between('60 MPa', '3000 MPa') },
    ),
    row(
      'youngsModulus',
      'elastic modulus',
      quantity('pressure'),
      "Young's modulus.",
      'elastic modulus 193 GPa',
      { range: between('10 GPa', '450 GPa') },
    ),
    row(
      'shearModulus',
      'shear modulus',
      quantity('pressure'),
      'Modulus of rigidity.',
      'shear modulus 77 GPa',
      { range: between('2 GPa', '200 GPa') },
    ),
    row('density', 'density', quantity('density'), 'Density.', 'density 7890 kg/m3', {
      range: between('1000 kg/m3', '12000 kg/m3'),
    }),
    row(
      'enduranceLimit',
      'endurance limit',
      quantity('pressure'),
      'Alternating stress that it withstands indefinitely, with size, finish, notch and sea water taken into account.',
      'endurance limit 90 MPa',
      { range: between('5 MPa', '1200 MPa') },
    ),
  ],
  blocks: [],
});

export const SHAFT = vocabulary({
  title: 'shaft',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Drawing S-201" dated 2025-03-01',
    ),
    row(
      'material',
      'material',
      name('shaft material'),
      'Grade of the bar.',
      'material high-strength-stainless',
    ),
    row('diameter', 'diameter', quantity('length'), 'Diameter in way of the bearings.', 'diameter 1 3/4 in', {
      range: between('5 mm', '1.5 m'),
    }),
    row('boreDiameter', 'bore', quantity('length'), 'Bore of a hollow shaft.', 'bore 20 mm', {
      absent: 'a solid shaft',
      because: 'a shaft is solid unless it is bored',
      range: between('0 mm', '1.4 m'),
    }),
    row('length', 'length', quantity('length'), 'Overall length.', 'length 3.4 m', {
      range: between('50 mm', '100 m'),
    }),
    ...SHAFT_FIT,
    ...SHAFT_TORSION,
  ],
  blocks: [
    block(
      'sections',
      'section',
      SHAFT_SECTION,
      'A length of the shaft that has another diameter or bore than the rest.',
      'section middle { from 0.4 m  length 1.2 m  diameter 85 mm }',
      { many: true, head: { field: 'name', kind: anyWord('name of the section') } },
    ),
    block(
      'keys',
      'key',
      SHAFT_KEY,
      'The key in the propeller or in the half-coupling.',
      'key propeller { width 25 mm  height 14 mm  length 180 mm  material duplex-stainless }',
      { many: true, head: { field: 'name', kind: word('propeller', 'coupling') } },
    ),
    block(
      'bearings',
      'bearing',
      BEARING,
      'One support of the shaft.',
      'bearing strut { kind strut  at 2.31 m  length 200 mm  lubrication water }',
      { many: true, head: { field: 'name', kind: anyWord('name of the bearing') } },
    ),
    DAMAGE,
  ],
});

export const PROPELLER = vocabulary({
  title: 'propeller',
  rows: [
    row(
      'source',
      'source',
      source,
      'Document the facts come from, and its date.',
      'source "Propeller order 118" dated 2025-04-04',
    ),
    row(
      'kind',
      'kind',
      word('fixed', 'folding', 'feathering', 'controllable pitch', 'counter-rotating pair'),
      'Kind of propeller; fixed when not stated. Of two on one leg that turn against each other, hand, blades, diameter and pitch are those of the forward one.',
      'kind folding',
      {
        absent: 'a fixed propeller',
        because: 'a propeller is fixed unless it is said to fold, feather or turn its blades',
      },
    ),
    row('hand', 'hand', word(...HANDS), 'Right turns clockwise seen from aft to drive ahead.', 'hand right', {
      handed: true,
      evidence: 'strict',
    }),
    row(
      'handSetting',
      'set for hand',
      word(...HANDS),
      'How a convertible propeller is assembled.',
      'set for hand left',
      {
        handed: true,
        evidence: 'strict',
        absent: 'as its hand says',
        because: 'only convertible blades are set; others are of their hand',
      },
    ),
    row(
      'afterHand',
      'after hand',
      word(...HANDS),
      'Hand of the after propeller of a counter-rotating pair.',
      'after hand right',
      { handed: true, evidence: 'strict' },
    ),
    row(
      'afterBlades',
      'after blades',
      quantity('number'),
      'Blades of the after propeller of a pair.',
      'after blades 3',
      { range: counted('2', '9') },
    ),
    row(
      'afterDiameter',
      'after diameter',
      quantity('length'),
      'Diameter of the after propeller of a pair.',
      'after diameter 14 1/4 in',
      { range: between('80 mm', '12 m') },
    ),
    row(
      'afterPitch',
      'after pitch',
      quantity('length'),
      'Pitch of the after propeller of a pair.',
      'after pitch 17 in',
      { range: between('30 mm', '15 m') },
    ),
    row('blades', 'blades', quantity('number'), 'Number of blades.', 'blades 4', {
      range: counted('2', '9'),
    }),
    row('diameter', 'diameter', quantity('length'), 'Diameter.', 'diameter 23 in', {
      range: between('80 mm', '12 m'),
    }),
    row(
      'pitch',
      'pitch',
      quantity('length'),
      'Pitch; of controllable blades, the design pitch.',
      'pitch 24 in',
      {
        range: between('30 mm', '15 m'),
      },
    ),
    row(
      'pitchRange',
      'pitch range',
      span('length'),
      'Pitches ahead that controllable blades can be set to: full power is taken at the one that suits it.',
      'pitch range 200 mm .. 1500 mm',
      { range: between('0 mm', '15 m') },
    ),
    row(
      'areaRatio',
      'area ratio',
      quantity('ratio'),
      'Expanded blade area over disc area.',
      'area ratio 0.72',
      { measuredWith: ['diameter', 'blades'], range: between('0.15', '1.8') },
    ),
    row('mass', 'mass', quantity('mass'), 'Mass in air.', 'mass 34 kg', {
      measuredWith: ['diameter', 'blades', 'areaRatio', 'material'],
      range: between('0.1 kg', '200 t'),
    }),
    row(
      'inertia',
      'inertia',
      quantity('moment of inertia'),
      'Polar moment of inertia in air.',
      'inertia 0.8 kg.m2',
      {
        measuredWith: ['diameter', 'blades', 'areaRatio', 'material'],
        range: between('0.0001 kg.m2', '1000000 kg.m2'),
      },
    ),
    ...PROPELLER_TORSION,
    ...PROPELLER_MAKE,
  ],
  blocks: [PROPELLER_EXCITATION],
});

/** Facts of a propeller at its place in a line. */
export const PROPELLER_PLACE = vocabulary({
  title: 'propeller in its line',
  rows: [...PROPELLER.rows, ...PROPELLER_STANDS],
  blocks: [...PROPELLER.blocks, DAMAGE],
});
