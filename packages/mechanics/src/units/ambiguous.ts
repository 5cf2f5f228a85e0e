import { asciiSpelling } from './typographic.js';

/** One of the meanings of a spelling that has several. */
export interface UnitChoice {
  /** Symbol to write instead. */
  readonly symbol: string;
  /** What it is worth: `long ton, 2240 lb`. */
  readonly meaning: string;
}

/** A spelling that is refused because people mean different things by it. */
export interface AmbiguousUnit {
  readonly spelling: string;
  readonly why: string;
  readonly choices: readonly UnitChoice[];
}

interface Row {
  readonly spellings: readonly string[];
  readonly why: string;
  readonly choices: readonly (readonly [symbol: string, meaning: string])[];
}

const ROWS: readonly Row[] = [
  {
    spellings: ['ton', 'tons', 'Ton', 'Tons', 'TON', 'MT', 'T'],
    why: 'three masses go by this name',
    choices: [
      ['t', 'tonne, 1000 kg'],
      ['long-ton', 'long ton, 2240 lb, 1016.047 kg'],
      ['short-ton', 'short ton, 2000 lb, 907.185 kg'],
    ],
  },
  {
    spellings: ['tonf', 'ton-force', 'tons-force'],
    why: 'three forces go by this name',
    choices: [
      ['tf', 'tonne-force, 1000 kgf, 9806.65 N'],
      ['long-tonf', 'long ton-force, 2240 lbf, 9964.02 N'],
      ['short-tonf', 'short ton-force, 2000 lbf, 8896.44 N'],
    ],
  },
  {
    spellings: ['gal', 'gals', 'gallon', 'gallons', 'Gal'],
    why: 'the US and the imperial gallon differ by 20 %',
    choices: [
      ['US-gal', 'US gallon, 3.785 L'],
      ['imp-gal', 'imperial gallon, 4.546 L'],
    ],
  },
  {
    spellings: ['gal/h', 'gal/hr', 'gph', 'GPH', 'gallons/h'],
    why: 'the US and the imperial gallon differ by 20 %',
    choices: [
      ['US-gal/h', 'US gallon per hour, 3.785 L/h'],
      ['imp-gal/h', 'imperial gallon per hour, 4.546 L/h'],
    ],
  },
  {
    spellings: ['gal/min', 'gpm', 'GPM', 'gallons/min'],
    why: 'the US and the imperial gallon differ by 20 %',
    choices: [
      ['US-gal/min', 'US gallon per minute, 3.785 L/min'],
      ['imp-gal/min', 'imperial gallon per minute, 4.546 L/min'],
    ],
  },
  {
    spellings: ['mile', 'miles', 'Mile', 'Miles'],
    why: 'a nautical mile is 15 % longer than a statute mile',
    choices: [
      ['nmi', 'nautical mile, 1852 m'],
      ['mi', 'statute mile, 1609.344 m'],
    ],
  },
  {
    spellings: ['nm', 'NM', 'nM'],
    why: 'it may be a newton metre written in the wrong case, a nautical mile, or a nanometre',
    choices: [
      ['N.m', 'newton metre (torque)'],
      ['nmi', 'nautical mile, 1852 m'],
    ],
  },
  {
    spellings: ['KN', 'Kn'],
    why: 'only the case tells a knot from a kilonewton',
    choices: [
      ['kn', 'knot (speed)'],
      ['kN', 'kilonewton (force)'],
    ],
  },
  {
    spellings: ['HP', 'Hp', 'h.p.', 'H.P.'],
    why: 'several powers go by this name and differ by up to 1.4 %',
    choices: [
      ['hp', 'horsepower of 550 ft·lbf/s, 745.700 W'],
      ['PS', 'metric horsepower of 75 kgf·m/s, 735.499 W'],
      ['hp-electric', 'electric horsepower, 746 W'],
    ],
  },
  {
    spellings: ['bhp', 'BHP', 'shp', 'SHP', 'ehp', 'EHP', 'ihp', 'IHP', 'dhp', 'DHP'],
    why: 'the letter says where the power is measured, not which horsepower it is; say the point of measurement beside the value',
    choices: [
      ['hp', 'horsepower of 550 ft·lbf/s, 745.700 W'],
      ['PS', 'metric horsepower of 75 kgf·m/s, 735.499 W'],
    ],
  },
  {
    spellings: ['cv', 'CV', 'ch', 'CH', 'pk', 'PK', 'hk', 'HK'],
    why: 'national names of the metric horsepower, some also of a tax class',
    choices: [['PS', 'metric horsepower of 75 kgf·m/s, 735.499 W']],
  },
  {
    spellings: ['lb.ft', 'ft.lb', 'lbs.ft'],
    why: 'a pound may be a force or a mass',
    choices: [
      ['lbf.ft', 'pound-force foot (torque), 1.3558 N·m'],
      ['lbm.ft', 'pound-mass foot (moment of mass), 0.1383 kg·m'],
    ],
  },
  {
    spellings: ['lb.in', 'in.lb'],
    why: 'a pound may be a force or a mass',
    choices: [['lbf.in', 'pound-force inch (torque), 0.11298 N·m']],
  },
  {
    spellings: ['oz', 'ounce', 'ounces'],
    why: 'an ounce may be a mass, a force or a volume',
    choices: [
      ['g', 'gram; an avoirdupois ounce is 28.35 g'],
      ['cm3', 'cubic centimetre; a US fluid ounce is 29.57 cm³'],
    ],
  },
  {
    spellings: ['M', 'C', 'F', 'degrees-C', 'deg-C', 'deg-F'],
    why: 'a bare letter does not say which unit is meant',
    choices: [
      ['degC', 'degree Celsius'],
      ['degF', 'degree Fahrenheit'],
      ['m', 'metre'],
    ],
  },
  {
    spellings: ['BTU', 'Btu', 'btu'],
    why: 'at least three definitions are in use and differ by 0.1 %',
    choices: [
      ['kJ', 'kilojoule; an international table Btu is 1.05506 kJ'],
      ['kWh', 'kilowatt hour'],
    ],
  },
];

const BY_SPELLING = new Map(ROWS.flatMap(row => row.spellings.map(spelling => [spelling, row] as const)));

/** The choices behind a spelling that is refused, or undefined when the spelling is not one of those. */
export function ambiguousUnit(spelling: string): AmbiguousUnit | undefined {
  const row = BY_SPELLING.get(asciiSpelling(spelling)) ?? BY_SPELLING.get(spelling.trim());
  if (!row) return undefined;
  return {
    spelling,
    why: row.why,
    choices: row.choices.map(([symbol, meaning]) => ({ symbol, meaning })),
  };
}

/** Every spelling that is refused. */
export function ambiguousSpellings(): string[] {
  return [...BY_SPELLING.keys()];
}
