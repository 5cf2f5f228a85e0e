import type { Token } from '../../text/scan.js';
import type { ValuePart } from './valueParts.js';

/** Sentences of a vessel, with what each of their words leads to. */
export interface Sentence {
  readonly parts: readonly ValuePart[];
  readonly doc: string;
  readonly example: string;
}

const fill = (text: string): ValuePart => ({ fill: text });
const word = (text: string): ValuePart => ({ word: text });

export const SENTENCES: Readonly<Record<string, Sentence>> = {
  require: {
    parts: [
      word('require'),
      fill('what'),
      word('at least'),
      fill('bound with its unit'),
      word('at'),
      fill('condition'),
      fill('note in quotes'),
    ],
    doc: 'A wish of the owner, class or flag; `at most` and `is` bound it too.',
    example: 'require speed at least 22 kn at full power "owner\'s note 3"',
  },
  assume: {
    parts: [word('assume'), fill('what, and its value'), word('because'), fill('reason in quotes')],
    doc: 'Overrides a default that the computation uses.',
    example: 'assume gear efficiency 97 % because "rating note"',
  },
  accept: {
    parts: [
      word('accept'),
      fill('rule'),
      word('on'),
      fill('arrangement, line or part'),
      word('because'),
      fill('reason in quotes'),
      word('by'),
      fill('role in quotes'),
      word('dated'),
      fill('date'),
      word('until'),
      fill('date'),
    ],
    doc: 'A waiver: the finding becomes accepted, and stays to be seen.',
    example:
      'accept shafting/span-guide on Port because "whirling criterion holds" by "class surveyor" dated 2026-03-02 until 2027-03-01',
  },
  revision: {
    parts: [word('revision'), fill('letter'), word('dated'), fill('date'), fill('what changed, in quotes')],
    doc: 'An entry of the change record.',
    example: 'revision B dated 2026-03-02 "Gear ratio 2.04:1"',
  },
  trial: {
    parts: [word('trial'), fill('name in quotes'), word('dated'), fill('date')],
    doc: 'The sheet of a dock or sea trial, with its conditions and runs in braces.',
    example: 'trial "builder\'s trial" dated 2026-02-24 { bottom clean }',
  },
  duty: {
    parts: [word('duty'), fill('pleasure, light, medium, heavy, continuous')],
    doc: 'Duty class that the vessel is specified for.',
    example: 'duty medium { hours 1500 per year }',
  },
  hull: {
    parts: [word('hull'), fill('planing, semi-displacement, displacement')],
    doc: 'Form of the hull.',
    example: 'hull planing',
  },
};

/** Which place of a sentence is being filled in: the one behind its last word that stands before the cursor. */
export function placeInSentence({ parts }: Sentence, typed: readonly Token[]): number {
  const said = typed.map(token => token.text);
  let place = 0;
  let fills = -1;
  for (const part of parts) {
    if ('fill' in part) fills += 1;
    else if (leads(said, part.word)) place = fills + 1;
  }
  return Math.min(place, fills);
}

/** `at` of a condition is no `at least`: it stands behind the bound. */
function leads(said: readonly string[], words: string): boolean {
  const bound = said.findIndex(
    (one, at) => one === 'is' || (one === 'at' && ['least', 'most'].includes(said[at + 1] ?? '')),
  );
  if (words === 'at least') return bound >= 0;
  if (words === 'at') return bound >= 0 && said.lastIndexOf('at') > bound;
  return said.includes(words);
}
