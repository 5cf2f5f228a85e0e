import { KEYWORDS, WORDS } from '../hover/words.js';

/** What the words of the grammar mean whose hovers depend on context, beside the part or value that they belong to. */
const MORE: Readonly<Record<string, string>> = {
  engine: 'The engine of a line, or a catalogue entry for one: rotation, ratings, speeds, housing.',
  motor: 'An electric motor: power, torque and speed over its range; it turns either way.',
  gear: 'The reduction gear: its ratios, what each clutch does, and what it is rated for.',
  transfer: 'A V-drive box, belt or chain stage between engine and shaft.',
  coupling: 'A coupling, damper or joint in the line.',
  shaft: 'The propeller shaft: material, diameter, sections, bearings.',
  'shaft material': 'A grade of shaft bar, with its strengths and where they are from.',
  material: 'Goes on to `shaft material`: a grade of shaft bar.',
  propeller: 'The propeller: hand, blades, diameter, pitch, bore.',
  side: 'The side that the line stands on, where its name does not say it.',
  'ahead clutch': 'The clutch that drives the vessel ahead.',
  clutch: 'The clutch that is meant, by its letter in the catalogue entry.',
  hand: 'The hand of the propeller: right-hand turns clockwise ahead, seen from aft.',
  'reason for': KEYWORDS.reason!,
  of: 'The arrangement that was run.',
  'remove shaftline': 'A line that was there as found, and goes.',
  for: 'What the reason is for: same hand, inward turning or unequal ratios.',
  duty: 'Duty class that the vessel is specified for, with its hours a year.',
  hull: 'Form and size of the hull, for speed and resistance.',
  at: 'The speed or the point that the figure holds at.',
  x: 'Number by size: `4 x 1/2 in`.',
  with: 'The other member.',
  'per year': 'Hours in a year.',
  year: 'Hours in a year.',
  '..': 'From the lower to the higher end.',
};

export const meaningOf = (word: string): string | undefined => WORDS[word] ?? KEYWORDS[word] ?? MORE[word];
