import type { Verdict } from '@tailshaft/drivetrain';
import type { PaperWord } from './words.js';

/**
 * Which findings a paper has to tell. Families of rules not named here stand in it only in the count of what the whole
 * vessel has; the summary, the specification, the comparison and the full sheet tell all.
 */
const FAMILIES: Partial<Record<PaperWord, readonly string[]>> = {
  'propeller-order': ['propeller', 'rotation', 'ratio', 'speed', 'capacity', 'units'],
  'shaft-line': ['shafting', 'interface', 'capacity', 'speed', 'ratio', 'rotation', 'propeller', 'units'],
  'trial-form': ['trial', 'trace', 'rotation', 'speed', 'ratio', 'propeller', 'capacity'],
};

/** Rules that the reader of weights looks for. */
const WEIGHTS = /weight|space|mount|bed-centres|sister/;

export function belongsTo(word: PaperWord, { rule }: Pick<Verdict, 'rule'>): boolean {
  if (word === 'weights') return WEIGHTS.test(rule);
  const families = FAMILIES[word];
  return families === undefined || families.some(family => rule.startsWith(`${family}/`));
}
