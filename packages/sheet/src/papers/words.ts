/** The papers that a practice hands over, by the words that ask for them. */
export const PAPER_WORDS = [
  'summary',
  'specification',
  'propeller-order',
  'shaft-line',
  'weights',
  'trial-form',
  'comparison',
  'full',
] as const;
export type PaperWord = (typeof PAPER_WORDS)[number];
