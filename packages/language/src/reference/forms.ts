import type { Dimension } from '@tailshaft/mechanics';

/** How a value of each form is written, with every word that it may hold. */
export interface FormRow {
  readonly form: string;
  readonly written: string;
  readonly examples: readonly string[];
}

/** Forms of numbers. */
export const NUMBER_FORMS: readonly (readonly [written: string, meaning: string])[] = [
  ['300', 'A whole number.'],
  ['2.043', 'A decimal number, with a point.'],
  ['-12.5', 'A negative number, where the property can be negative.'],
  ['5e4, 1.2e-3', 'A number with a power of ten.'],
  ['1/2', 'A fraction.'],
  ['1 3/4, 1-3/4, 1¾', 'A mixed number.'],
  ['1.75", 4 ft 2 in', 'Inches by their mark; feet and inches together, where a length is meant.'],
  ['22 barg, 35 psia', 'A gauge or an absolute pressure by its unit, where the property is one.'],
  ['2.04:1', 'A ratio, input speed to output speed.'],
  ['20 .. 24 bar', 'A range, with both ends and one unit.'],
  ['300 kW at 2300 rpm', 'A point: a value at another.'],
  ['1500 per year', 'A count per year.'],
  ['unknown, 350 hp at unknown', 'An open question, in place of any value or any part of one.'],
];

/** Values that are more than a number with its unit or one of the listed words. */
export const VALUE_FORMS: readonly FormRow[] = [
  {
    form: 'rotation',
    written:
      '`standard`, `opposite`, `clockwise`, `counter-clockwise`, `either` or `either by pump index`, then `viewed from` `flywheel`, `front`, `aft` or `forward`',
    examples: ['standard viewed from flywheel', 'clockwise viewed from front'],
  },
  {
    form: 'output sense',
    written:
      '`same` or `opposite`; where the line turns back, then `seen from aft` or `each seen at its own end`',
    examples: ['same', 'opposite seen from aft'],
  },
  {
    form: 'layout',
    written:
      '`coaxial`, `parallel-offset`, `down-angle`, `V-drive` or `U-drive`, then an angle where there is one',
    examples: ['down-angle 8 deg'],
  },
  { form: 'bolts', written: 'number of bolts, `x`, size', examples: ['4 x 1/2 in'] },
  { form: 'pilot', written: 'diameter, then `male` or `female`', examples: ['63.5 mm female'] },
  {
    form: 'mesh',
    written:
      'driver and its teeth, `with`, driven and its teeth; then `internal`, `by chain`, `by belt`, `bevel near` or `bevel far` where it is not external; then `on` the member that carries the planet',
    examples: ['A 23 with B 47', 'sun 30 with planet 20 on carrier'],
  },
  { form: 'lock', written: 'two members of the train with `with` between', examples: ['sun with carrier'] },
  { form: 'date', written: 'year-month-day', examples: ['2026-05-01'] },
  {
    form: 'source',
    written: 'title in quotes, `dated`, date',
    examples: ['"Alder 63 sheet, issue 4" dated 2025-02-10'],
  },
  {
    form: 'shaft criterion',
    written: '`small-craft formula` or `class formula`; `factor` and a number; the reason in quotes',
    examples: ['small-craft formula factor 5.0 "pilot service"', 'class formula'],
  },
  { form: 'text', written: 'words in quotes', examples: ['"8 h, then run the engine 5 min"'] },
];

/** What each kind of evidence means. */
export const EVIDENCE_MEANING: Readonly<Record<string, string>> = {
  measured: 'Measured on this vessel, with the date.',
  plate: 'Read from the plate of the part.',
  drawing: 'Taken from a drawing, with its number.',
  sheet: 'Taken from a data sheet or certificate, with its title.',
  'sister vessel': 'Taken from a sister vessel: used, and marked until it is measured on this one.',
  hearsay: 'Told by somebody: used, but no check that decides on direction holds by it.',
  assumed: 'Assumed by the author: used, and marked as such.',
};

/** Order of the units: what people look for first. */
export const UNIT_ORDER: readonly Dimension[] = [
  'length',
  'angle',
  'rotational speed',
  'power',
  'torque',
  'power per speed',
  'force',
  'pressure',
  'speed',
  'mass',
];
