import { HULL_CRITERIA, HULL_FORM_ROWS } from './hull-form.js';
import {
  anyWord,
  between,
  block,
  perYear,
  point,
  quantity,
  row,
  shaftCriterion,
  text,
  vocabulary,
  word,
} from './kinds.js';
import { PROPELLER_CRITERIA } from './propeller.js';
import { STRENGTH_CRITERIA } from './strength.js';
import { WEIGHT } from './weight.js';

export const DUTY = vocabulary({
  title: 'duty',
  rows: [
    row('hours', 'hours', perYear, 'Hours a year that the vessel runs.', 'hours 1500 per year', {
      range: between('1', '8784'),
    }),
    row(
      'running',
      'running',
      point('time', 'speed'),
      'Hours a year that the vessel runs at a speed. All of them together are its running profile.',
      'running 300 h at 18 kn',
      { many: true, range: between('0.1 h', '8784 h', between('0.3 kn', '120 kn')) },
    ),
    row('passage', 'passage', quantity('length'), 'Length of a usual passage.', 'passage 40 nmi', {
      range: between('0.1 nmi', '12000 nmi'),
    }),
    row(
      'passengers',
      'passengers',
      word('none', 'carried'),
      'Whether passengers are carried.',
      'passengers none',
    ),
    row(
      'underSail',
      'under way with engine stopped',
      word('yes', 'no'),
      'Whether the vessel sails, is towed or runs on one of two engines with a propeller shaft stopped or windmilling.',
      'under way with engine stopped yes',
    ),
  ],
  blocks: [],
});

export const HULL = vocabulary({
  title: 'hull',
  rows: [
    row(
      'waterlineLength',
      'waterline length',
      quantity('length'),
      'Length on the waterline.',
      'waterline length 10.9 m',
      { range: between('1.5 m', '450 m') },
    ),
    row(
      'fuelCapacity',
      'fuel capacity',
      quantity('volume'),
      'Usable fuel of all tanks.',
      'fuel capacity 1200 L',
      { range: between('1 L', '10000 m3') },
    ),
    row('displacement', 'displacement', quantity('mass'), 'Displacement loaded.', 'displacement 11.8 t', {
      range: between('50 kg', '600000 t'),
    }),
    row('beam', 'beam', quantity('length'), 'Beam on the waterline.', 'beam 3.4 m', {
      range: between('0.3 m', '80 m'),
    }),
    row('draft', 'draft', quantity('length'), 'Draft of the hull.', 'draft 0.8 m', {
      measuredWith: ['displacement'],
      range: between('0.03 m', '40 m'),
    }),
    row(
      'runningTrim',
      'running trim',
      quantity('angle'),
      'Greatest trim by the stern under way, over that at rest.',
      'running trim 4 deg',
      {
        signed: true,
        measuredWith: ['displacement', 'centreOfGravity'],
        range: between('-15 deg', '30 deg'),
      },
    ),
    row(
      'lightship',
      'lightship',
      quantity('mass'),
      'Mass of the complete vessel without load.',
      'lightship 9.8 t',
      { range: between('30 kg', '300000 t') },
    ),
    row(
      'centreOfGravity',
      'centre of gravity at',
      quantity('length'),
      'Centre of gravity along the vessel, forward positive, from the reference that all positions use.',
      'centre of gravity at 4.35 m',
      { signed: true, measuredWith: ['lightship'], range: between('-300 m', '450 m') },
    ),
    ...HULL_FORM_ROWS,
  ],
  blocks: [
    block(
      'weights',
      'weight',
      WEIGHT,
      'A tank, ballast or other mass beside the machinery that comes aboard or goes ashore under an arrangement.',
      'weight lead-pigs { moves ashore  under proposed  mass 320 kg  position 1.1 m }',
      {
        many: true,
        head: { field: 'name', kind: anyWord('name of the weight') },
        absent: 'nothing beside the machinery comes or goes',
        because: 'what is counted beside the machinery is written',
      },
    ),
  ],
});

export const CRITERIA = vocabulary({
  title: 'criteria',
  rows: [
    row(
      'gearTorqueMargin',
      'gear torque margin at least',
      quantity('ratio'),
      'Margin required over the gear rating.',
      'gear torque margin at least 10 %',
      { range: between('0 %', '300 %') },
    ),
    row(
      'clutchServiceFactor',
      'clutch service factor at least',
      quantity('ratio'),
      'Clutch holding torque over torque at the clutch.',
      'clutch service factor at least 1.5',
      { range: between('0.5', '20') },
    ),
    row(
      'tipSpeed',
      'tip speed at most',
      quantity('speed'),
      'Propeller tip speed limit.',
      'tip speed at most 40 m/s',
      { range: between('3 m/s', '150 m/s') },
    ),
    row(
      'ratioDifference',
      'ratio difference at most',
      quantity('ratio'),
      'Difference allowed between nominal and exact, and between sides.',
      'ratio difference at most 0.5 %',
      { range: between('0 %', '30 %') },
    ),
    row(
      'sourceAge',
      'source age at most',
      quantity('time'),
      'Greatest age of a data sheet.',
      'source age at most 10 year',
      { range: between('1 day', '100 year') },
    ),
    row(
      'trialDifference',
      'trial difference at most',
      quantity('ratio'),
      'Difference allowed between a trial reading and the prediction.',
      'trial difference at most 5 %',
      { range: between('0 %', '50 %') },
    ),
    row(
      'shaftDiameter',
      'shaft diameter by',
      shaftCriterion,
      'Formula that judges the shaft diameter, with its factor and the reason.',
      'shaft diameter by small-craft formula factor 5.0 "pilot service"',
      { many: true, range: between('1', '30') },
    ),
    row(
      'bearingSpanMargin',
      'bearing span margin at least',
      quantity('ratio'),
      'Whirling speed of a bearing span over the greatest shaft speed, less one.',
      'bearing span margin at least 20 %',
      { range: between('0 %', '500 %') },
    ),
    row(
      'overhang',
      'overhang at most',
      quantity('ratio'),
      'Propeller overhang in shaft diameters.',
      'overhang at most 1.5',
      { range: between('0.2', '10') },
    ),
    row(
      'shaftAngle',
      'shaft angle at most',
      quantity('angle'),
      'Shaft angle that the owner or designer allows.',
      'shaft angle at most 12 deg',
      { range: between('0 deg', '60 deg') },
    ),
    row(
      'angleDifference',
      'angle difference at most',
      quantity('angle'),
      'Difference allowed in the sum of engine, gear and shaft angles.',
      'angle difference at most 0.5 deg',
      { range: between('0 deg', '20 deg') },
    ),
    row(
      'lengthDifference',
      'length difference at most',
      quantity('length'),
      'Movement of the propeller along the shaft line that is allowed.',
      'length difference at most 5 mm',
      { range: between('0 mm', '1 m') },
    ),
    row(
      'weightChange',
      'weight change at most',
      quantity('ratio'),
      'Change of machinery weight that needs no stability review, as a share of lightship.',
      'weight change at most 2 %',
      { range: between('0 %', '100 %') },
    ),
    row(
      'balanceChange',
      'balance change at most',
      quantity('ratio'),
      'Shift of the centre of gravity that needs no stability review, as a share of waterline length.',
      'balance change at most 1 %',
      { range: between('0 %', '50 %') },
    ),
    row(
      'thrustBearingLife',
      'thrust bearing life at least',
      quantity('time'),
      'Rating life (ISO 281, 90 % reach it) required of the bearing that takes the thrust, at full power all the time.',
      'thrust bearing life at least 20000 h',
      { range: between('10 h', '1000000 h') },
    ),
    ...STRENGTH_CRITERIA,
    ...PROPELLER_CRITERIA,
    ...HULL_CRITERIA,
  ],
  blocks: [],
});

export const CERTIFICATE = vocabulary({
  title: 'certificate',
  rows: [
    row(
      'power',
      'power',
      quantity('power'),
      'Propulsion power on the vessel certificate or licence, all engines together.',
      'power 440 kW',
      { range: between('0.5 kW', '200 MW') },
    ),
    row(
      'limitedBy',
      'limited by',
      text,
      'Document that limits the installed power to it.',
      'limited by "power-limit statement 4"',
      { absent: 'no document limits the power', because: 'a certificate that a document limits names it' },
    ),
  ],
  blocks: [],
});
