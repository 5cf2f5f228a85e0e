import { STATEMENTS } from '@tailshaft/vocabulary';

/** What the words of the trade mean where the language uses them. */
export const WORDS: Readonly<Record<string, string>> = {
  continuous: 'This clutch may carry full power ahead for as long as the vessel runs.',
  never: 'This clutch must not be used for running ahead.',
  same: 'The output turns as the input does, both seen from aft unless the entry says otherwise.',
  opposite:
    'The output turns the other way than the input, both seen from aft unless the entry says otherwise.',
  pleasure:
    'Lightest duty class: short time at full power, few hours a year. Makers use the words differently: the hours count.',
  light: 'Light duty class, above pleasure. Makers use the words differently: the hours count.',
  medium:
    'Medium duty class: much of the time near full power. Makers use the words differently: the hours count.',
  intermediate: 'The same step as medium duty.',
  heavy: 'Heavy duty class, below continuous. Makers use the words differently: the hours count.',
  continuousDuty: 'Heaviest duty class: full power without limit of time.',
  mirrors:
    'Takes the parts of another line. Handed facts (propeller hand, ahead clutch, pump index) are never mirrored: declare them here.',
  revises:
    'The repower: each part of the arrangement before is replaced, retained, modified or removed here.',
  unknown:
    'An open question: listed on the sheet with the checks that wait for it. No check takes it for a value.',
};

/** Words that hold statements together, for where nothing more can be said of them. */
export const KEYWORDS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(STATEMENTS.map(one => [one.word, one.doc])),
  dated: 'The date of the document, decision or change.',
  of: 'The arrangement that was tried: the trial is held against this one and no other.',
  because: 'The reason, in the words of whoever decided.',
  by: 'Who accepts, in which role.',
  until: 'The last day on which the acceptance counts; after it the finding fails again.',
  on: 'What is accepted: an arrangement, a line, or a part of a line.',
};

/** From where a rotation is seen. */
export const VIEWS: Readonly<Record<string, string>> = {
  flywheel: 'Viewed from the flywheel end, looking at the engine. SAE J824 says rotation this way.',
  front: 'Viewed from the front end, opposite to the flywheel, looking at the engine.',
  aft: 'Seen from aft, looking forward. Propeller hands are told this way.',
  forward: 'Seen from forward, looking aft.',
};
