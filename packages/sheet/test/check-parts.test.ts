import type { Verdict } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { partNames, spanWords } from '../src/sections/check-parts.js';

const NAMING = {
  path: 'proposed.Port',
  entries: ['Sedge-140', 'Sedge-R205'],
  spanOf: (whirling: number) => ({ 300: 'forward coupling to tube', 290: 'tube to strut' })[whirling],
  placeOf: (one: Verdict) => (one.place as { text?: string }).text,
};

/** A check by its rule, its subject behind the line, what it says, and its capacity: label and magnitude. */
type Told = readonly [
  rule: string,
  tail: string,
  message?: string,
  label?: string,
  si?: number,
  place?: string,
];

function named(...told: readonly Told[]): (string | undefined)[] {
  const verdicts = told.map(
    ([rule, tail, message = '', label = 'capacity', si = 1, text = '']) =>
      ({
        rule,
        subject: `proposed.Port${tail}`,
        message,
        capacity: { label, si },
        place: { text },
      }) as unknown as Verdict,
  );
  const names = partNames(verdicts, NAMING);
  return verdicts.map(one => names.get(one));
}

it.each<[string, readonly Told[], readonly string[]]>([
  [
    'one check alone needs no name',
    [
      ['tip', ''],
      ['overhang', ''],
    ],
    ['', ''],
  ],
  [
    'by the part in the subject',
    [
      ['bore', '.shaft.tube'],
      ['bore', '.shaft.housing-aft'],
    ],
    ['tube', 'housing aft'],
  ],
  [
    'by the span whose whirling speed it is',
    [
      ['span', '', '', 'whirling speed', 300],
      ['span', '', '', 'whirling speed', 290],
    ],
    ['forward coupling to tube', 'tube to strut'],
  ],
  [
    'by the catalogue entry it speaks of',
    [
      ['torque', '', 'Port: coupling Sedge-140 stands before the gear'],
      ['torque', '', 'Port: coupling Sedge-R205 stands behind the gear'],
    ],
    ['Sedge-140', 'Sedge-R205'],
  ],
  [
    'by what is compared, without the words both begin with',
    [
      ['diameter', '', '', 'power per speed, small-craft formula'],
      ['diameter', '', '', 'power per speed, class formula'],
    ],
    ['small-craft formula', 'class formula'],
  ],
  [
    'by the first words of what is compared, where they suffice',
    [
      ['stress', '', '', 'allowed shear stress, shafting code'],
      ['stress', '', '', 'safety factor in fatigue of the fitted shaft'],
    ],
    ['allowed shear stress', 'safety factor in fatigue'],
  ],
  [
    'by a second word where the first does not part all',
    [
      ['key', '.shaft.propeller-key', '', 'length'],
      ['key', '.shaft.coupling-key', '', 'length'],
      ['key', '.shaft.propeller-key', '', 'shear area'],
    ],
    ['propeller key, length', 'coupling key', 'propeller key, shear area'],
  ],
  [
    'by the line of the text where nothing else differs',
    [
      ['bolts', '', '', 'torque', 1, 'a.shaft:4'],
      ['bolts', '', '', 'torque', 1, 'a.shaft:9'],
    ],
    ['a.shaft:4', 'a.shaft:9'],
  ],
])('names checks of one rule %s', (_, told, names) => {
  expect(named(...told)).toEqual(names);
});

it('names the ends of a span in few words', () => {
  expect(spanWords('bearing tube to bearing strut')).toBe('tube to strut');
  expect(spanWords('last bearing of the shaft before to bearing tube')).toBe('shaft before to tube');
});
