import { DEGREE, FOOT, INCH, NAUTICAL_MILE, SP811, STATUTE_MILE, YARD } from '../constants.js';
import { unitRows } from '../unit.js';

/** Length, area, volume (with section moduli), second moments of area, angle. */
export const GEOMETRY_UNITS = [
  ...unitRows('length', SP811, [
    ['mm', 'millimetre', 1e-3, 'metric', 'shaft and part dimensions'],
    ['in', 'inch', INCH, 'US', 'propellers worldwide, shafts', { aliases: ['inch', 'inches'] }],
    ['m', 'metre', 1, 'metric', 'hull and span dimensions'],
    ['ft', 'foot', FOOT, 'US', 'hull and span dimensions', { aliases: ['foot', 'feet'] }],
    ['cm', 'centimetre', 1e-2, 'metric', 'clearances'],
    ['um', 'micrometre', 1e-6, 'metric', 'fits and run-out'],
    ['thou', 'thousandth of an inch', INCH / 1000, 'US', 'alignment and run-out', { aliases: ['mil'] }],
    ['yd', 'yard', YARD, 'US', 'distances'],
    ['km', 'kilometre', 1e3, 'metric', 'distances'],
    ['nmi', 'nautical mile', NAUTICAL_MILE, 'any', 'distance run', { aliases: ['nautical-mile'] }],
    ['mi', 'statute mile', STATUTE_MILE, 'US', 'distance on lakes', { aliases: ['statute-mile'] }],
  ]),
  ...unitRows('area', SP811, [
    ['mm2', 'square millimetre', 1e-6, 'metric', 'key and bolt areas'],
    ['in2', 'square inch', INCH ** 2, 'US', 'blade, key and bolt areas'],
    ['cm2', 'square centimetre', 1e-4, 'metric', 'piston and blade areas'],
    ['m2', 'square metre', 1, 'metric', 'disc, blade and wetted areas'],
    ['ft2', 'square foot', FOOT ** 2, 'US', 'disc and wetted areas'],
  ]),
  ...unitRows('volume', SP811, [
    [
      'L',
      'litre',
      1e-3,
      'metric',
      'oil and fuel',
      { aliases: ['l', 'litre', 'litres', 'liter', 'liters', 'dm3'] },
    ],
    ['m3', 'cubic metre', 1, 'metric', 'displacement', { also: ['section modulus'] }],
    [
      'US-gal',
      'US gallon, 231 in³',
      231 * INCH ** 3,
      'US',
      'oil and fuel',
      { aliases: ['USgal', 'US-gallon'] },
    ],
    ['imp-gal', 'imperial gallon', 4.54609e-3, 'imperial', 'oil and fuel', { aliases: ['impgal', 'UK-gal'] }],
    ['ft3', 'cubic foot', FOOT ** 3, 'US', 'displacement', { also: ['section modulus'] }],
    [
      'cm3',
      'cubic centimetre',
      1e-6,
      'metric',
      'engine displacement',
      { aliases: ['mL'], also: ['section modulus'] },
    ],
    ['in3', 'cubic inch', INCH ** 3, 'US', 'engine displacement', { also: ['section modulus'] }],
    ['mm3', 'cubic millimetre', 1e-9, 'metric', 'section moduli', { also: ['section modulus'] }],
  ]),
  ...unitRows('second moment of area', SP811, [
    ['cm4', 'centimetre to the fourth power', 1e-8, 'metric', 'shaft sections'],
    ['mm4', 'millimetre to the fourth power', 1e-12, 'metric', 'shaft sections'],
    ['in4', 'inch to the fourth power', INCH ** 4, 'US', 'shaft sections'],
    ['m4', 'metre to the fourth power', 1, 'metric', 'shaft sections'],
  ]),
  ...unitRows('angle', SP811, [
    [
      'deg',
      'degree',
      DEGREE,
      'any',
      'shaft and down angles',
      { display: '°', aliases: ['degree', 'degrees'] },
    ],
    ['rad', 'radian', 1, 'any', 'twist'],
    ['mrad', 'milliradian', 1e-3, 'any', 'misalignment'],
    ['arcmin', 'minute of arc', DEGREE / 60, 'any', 'misalignment', { display: '′' }],
    ['rev', 'revolution', 2 * Math.PI, 'any', 'turns counted', { aliases: ['turn', 'turns'] }],
  ]),
];
