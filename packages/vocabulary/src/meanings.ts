import { STATEMENT_MEANINGS } from './statements.js';

/** What the words of values mean. */
export const VALUE_MEANINGS: Readonly<Record<string, string>> = {
  continuous: 'This clutch may carry full power ahead for as long as the vessel runs.',
  never: 'This clutch must not be used for running ahead.',
  same: 'The output turns as the input does, both seen from aft unless the entry says otherwise.',
  opposite:
    'The output turns the other way than the input, both seen from aft unless the entry says otherwise.',
  unknown: 'An open question: listed on the sheet with the checks that need it. No check uses it as a value.',
};

/** What the classes of duty mean. Makers use the words differently: the hours count. */
export const DUTY_MEANINGS: Readonly<Record<string, string>> = {
  pleasure:
    'Lightest duty class: short time at full power, few hours a year. Makers use the words differently: the hours count.',
  light: 'Light duty class, above pleasure. Makers use the words differently: the hours count.',
  medium:
    'Medium duty class: much of the time near full power. Makers use the words differently: the hours count.',
  intermediate: 'The same step as medium duty.',
  heavy: 'Heavy duty class, below continuous. Makers use the words differently: the hours count.',
  continuous: 'Heaviest duty class: full power without limit of time.',
};

/** From where a rotation is seen. */
export const VIEW_MEANINGS: Readonly<Record<string, string>> = {
  flywheel: 'Viewed from the flywheel end, looking at the engine. SAE J824 says rotation this way.',
  front: 'Viewed from the front end, opposite to the flywheel, looking at the engine.',
  aft: 'Seen from aft, looking forward. Propeller hands are stated this way.',
  forward: 'Seen from forward, looking aft.',
};

/** What each kind of evidence means. */
export const EVIDENCE_MEANINGS: Readonly<Record<string, string>> = {
  measured: 'Measured on this vessel, with the date.',
  plate: 'Read from the plate of the part.',
  drawing: 'Taken from a drawing, with its number.',
  sheet: 'Taken from a data sheet or certificate, with its title.',
  'sister vessel': 'Taken from a sister vessel: used, and marked until it is measured on this one.',
  hearsay: 'Told by somebody: used, but no check that decides on direction holds by it.',
  assumed: 'Assumed by the author: used, and marked as such.',
};

/** What the words mean that join values and headers. */
const JOINING_MEANINGS: Readonly<Record<string, string>> = {
  material: 'Goes on to `shaft material`: a grade of shaft bar.',
  hand: 'The hand of the propeller: right-hand turns clockwise ahead, seen from aft.',
  ratio: 'The ratio that is fitted, by its nominal name.',
  at: 'The rating, speed or point that the figure holds at.',
  x: 'Number by size: `4 x 1/2 in`.',
  with: 'The other member.',
  'per year': 'Hours in a year.',
  year: 'Hours in a year.',
  '..': 'From the lower to the higher end.',
};

/** What a word of the language means, where nothing more can be said of it. */
export function meaningOf(word: string): string | undefined {
  return VALUE_MEANINGS[word] ?? STATEMENT_MEANINGS[word] ?? JOINING_MEANINGS[word] ?? DUTY_MEANINGS[word];
}
