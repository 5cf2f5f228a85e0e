import type { Dimension } from '@tailshaft/mechanics';
import { listed } from '@tailshaft/mechanics';
import {
  LAYOUTS,
  MESH_KINDS,
  OUTPUT_SENSES,
  PILOT_KINDS,
  ROTATIONS,
  SEEN,
  SHAFT_FORMULAS,
  VIEWS,
} from '@tailshaft/vocabulary';

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
    written: `${choice(ROTATIONS)}, then \`viewed from\` ${choice(VIEWS)}`,
    examples: ['standard viewed from flywheel', 'clockwise viewed from front'],
  },
  {
    form: 'output sense',
    written: `${choice(OUTPUT_SENSES)}; where the line turns back, then ${choice(SEEN.map(one => (one.startsWith('from') ? `seen ${one}` : one)))}`,
    examples: ['same', 'opposite seen from aft'],
  },
  {
    form: 'layout',
    written: `${choice(LAYOUTS)}, then an angle where there is one`,
    examples: ['down-angle 8 deg'],
  },
  { form: 'bolts', written: 'number of bolts, `x`, size', examples: ['4 x 1/2 in'] },
  { form: 'pilot', written: `diameter, then ${choice(PILOT_KINDS)}`, examples: ['63.5 mm female'] },
  {
    form: 'mesh',
    written: `driver and its teeth, \`with\`, driven and its teeth; then ${choice(MESH_KINDS.map(([words]) => words))}; then \`on\` the member that carries the planet`,
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
    written: `${choice(SHAFT_FORMULAS.map(([words]) => words))}; \`factor\` and a number; the reason in quotes`,
    examples: ['small-craft formula factor 5.0 "pilot service"', 'class formula'],
  },
  {
    form: 'variation',
    written:
      'a part, or a part and one of its properties, or `hull` and one of its properties; then values with commas between, a range `a .. b by step`, or `any`',
    examples: ['propeller pitch 30 in .. 36 in by 1 in', 'gear any', 'propeller blades 3, 4'],
  },
  {
    form: 'rule name',
    written: 'the name of a check, or `every check`',
    examples: ['propeller/cup', 'every check'],
  },
  {
    form: 'ranking',
    written:
      'a computed quantity, as behind `require`, or `least margin` or `mass`; `at` and a condition; `highest first` or `lowest first` where the usual order is not meant',
    examples: ['speed at full power', 'least margin', 'shaft speed at rated power lowest first'],
  },
  { form: 'text', written: 'words in quotes', examples: ['"8 h, then run the engine 5 min"'] },
];

/** `same` or `opposite`, each as code. */
function choice(words: readonly string[]): string {
  const all = words.map(word => `\`${word}\``);
  return listed(all, 'or');
}

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
