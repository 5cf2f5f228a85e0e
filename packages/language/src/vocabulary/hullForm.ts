import { type Criteria, type Hull, SPEED_METHODS } from '@tailshaft/drivetrain';
import { point, quantity, type Row, rowsFor, text, word } from './kinds.js';

const hull = rowsFor<Hull>();

/** Form of a hull, the flow at its propellers, and resistance or speed where they are given. */
export const HULL_FORM_ROWS: readonly Row[] = [
  hull(
    'material',
    'material',
    word('steel', 'aluminium', 'fibreglass', 'wood', 'ferrocement'),
    'What the hull is built of.',
    'material aluminium',
  ),
  hull(
    'corrosionProtection',
    'corrosion protection',
    text,
    'What is done about unlike metals in the water: anodes, bonding, insulation.',
    'corrosion protection "shaft and hull anodes, bonded, drawing E-12"',
  ),
  hull(
    'blockCoefficient',
    'block coefficient',
    quantity('ratio'),
    'Displaced volume over length, beam and draft.',
    'block coefficient 0.48',
  ),
  hull(
    'prismaticCoefficient',
    'prismatic coefficient',
    quantity('ratio'),
    'Displaced volume over length and midship area.',
    'prismatic coefficient 0.62',
  ),
  hull(
    'midshipCoefficient',
    'midship coefficient',
    quantity('ratio'),
    'Midship area over beam and draft.',
    'midship coefficient 0.78',
  ),
  hull(
    'waterplaneCoefficient',
    'waterplane coefficient',
    quantity('ratio'),
    'Waterplane area over length and beam.',
    'waterplane coefficient 0.78',
  ),
  hull(
    'centreOfBuoyancy',
    'LCB',
    quantity('ratio'),
    'Centre of buoyancy forward of half the waterline length, in percent of it; aft is negative.',
    'LCB -2 %',
  ),
  hull(
    'wettedSurface',
    'wetted surface',
    quantity('area'),
    'Wetted surface of the bare hull.',
    'wetted surface 41 m2',
  ),
  hull(
    'transomArea',
    'transom area',
    quantity('area'),
    'Transom area below the surface at rest.',
    'transom area 0.3 m2',
  ),
  hull(
    'appendageArea',
    'appendage area',
    quantity('area'),
    'Wetted surface of rudders, shafts, struts and keels.',
    'appendage area 2.4 m2',
  ),
  hull(
    'appendageFactor',
    'appendage factor',
    quantity('ratio'),
    'Resistance of the appendages over that of a plate of their area, 1 + k2.',
    'appendage factor 1.5',
  ),
  hull(
    'chineBeam',
    'chine beam',
    quantity('length'),
    'Mean beam over the chines where the hull planes.',
    'chine beam 3.2 m',
  ),
  hull('deadrise', 'deadrise', quantity('angle'), 'Deadrise where the hull planes.', 'deadrise 16 deg'),
  hull('gravityForward', 'LCG', quantity('length'), 'Centre of gravity forward of the transom.', 'LCG 4.1 m'),
  hull('gravityHeight', 'VCG', quantity('length'), 'Centre of gravity above the keel.', 'VCG 1.1 m'),
  hull(
    'appendageResistance',
    'appendage resistance',
    quantity('ratio'),
    'Resistance of shafts, struts and rudders as a share of that of the bare hull.',
    'appendage resistance 9 %',
  ),
  hull(
    'wakeFraction',
    'wake fraction',
    quantity('ratio'),
    'How much slower than the hull the water meets the propeller, as a share.',
    'wake fraction 0.18',
  ),
  hull(
    'thrustDeduction',
    'thrust deduction',
    quantity('ratio'),
    'Share of the thrust that is lost by the suction of the propeller on the hull.',
    'thrust deduction 0.16',
  ),
  hull(
    'propulsiveEfficiency',
    'propulsive efficiency',
    quantity('ratio'),
    'Effective power over power at the propellers, for rows of shaft power.',
    'propulsive efficiency 0.55',
  ),
  hull(
    'waterDensity',
    'water density',
    quantity('density'),
    'Density of the water she runs in; sea water at 15 °C when not said.',
    'water density 1025 kg/m3',
  ),
  hull(
    'resistance',
    'resistance',
    point('force', 'speed'),
    'Resistance with appendages at a speed, from a test or a design; several rows make the curve.',
    'resistance 14.2 kN at 20 kn',
    { many: true },
  ),
  hull(
    'effectivePower',
    'effective power',
    point('power', 'speed'),
    'Resistance times speed at a speed; several rows make the curve.',
    'effective power 146 kW at 20 kn',
    { many: true },
  ),
  hull(
    'shaftPower',
    'shaft power',
    point('power', 'speed'),
    'Power of all propellers together at a speed, from a trial; with the propulsive efficiency several rows make the curve.',
    'shaft power 265 kW at 20 kn',
    { many: true },
  ),
  hull(
    'speedAtRatedPower',
    'speed at rated power',
    quantity('speed'),
    'Speed she makes with all engines at rated power, from a trial or the designer.',
    'speed at rated power 21 kn',
  ),
  hull(
    'crouchConstant',
    'Crouch constant',
    quantity('number'),
    'Constant of the planing estimate in knots, horsepower and pounds: 150 for average cruisers, 190 for light fast ones.',
    'Crouch constant 150',
  ),
];

/** How speed is to be worked out. */
export const HULL_CRITERIA: readonly Row[] = [
  rowsFor<Criteria>()(
    'speedMethod',
    'speed method',
    word(...SPEED_METHODS),
    'Method that speed and propeller load are worked out by.',
    'speed method Savitsky',
  ),
];
