import {
  type BlockRow,
  CRITERIA,
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';

const ALL = [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY].flatMap(table => Object.entries(table));
type OfVocabulary = readonly [string, Row | BlockRow, Vocabulary, around: Vocabulary | undefined];
const EVERY: readonly OfVocabulary[] = ALL.flatMap(([kind, vocabulary]) =>
  within(vocabulary).flatMap(([one, around]) =>
    [...one.rows, ...one.blocks].map(row => [`${kind}: ${row.words}`, row, one, around] as const),
  ),
);
const ROWS = EVERY.filter(
  (one): one is readonly [string, Row, Vocabulary, Vocabulary | undefined] => 'kind' in one[1],
);

/** Model fields of a part that no row fills: its header does. */
const OF_THE_HEADER = ['ratioUsed', 'ratedAt', 'aheadClutch'];

describe('the rows of the vocabulary', () => {
  it.each(CRITERIA.rows.filter(row => row.kind.form === 'quantity').map(row => [row.words, row.bound]))(
    'the criterion "%s" is a bound',
    (_, bound) => {
      expect(['at least', 'at most']).toContain(bound);
    },
  );

  it.each(ROWS.filter(([, row]) => row.measuredWith))(
    '%s was measured with facts that exist',
    (_, row, block, around) => {
      for (const said of row.measuredWith ?? []) {
        const [own, path] = said.startsWith('^') ? [around, said.slice(1)] : [block, said];
        const [part, field] = path.includes('.') ? path.split('.') : [undefined, path];
        const there = part === undefined ? [own] : [PLACE_VOCABULARY[part!]];
        const fields = there.flatMap(one =>
          [...(one?.rows ?? []), ...(one?.blocks ?? [])].map(two => two.field),
        );
        expect([...fields, ...OF_THE_HEADER], path).toContain(field);
      }
    },
  );

  it('tells which facts have a hand', () => {
    const handed = Object.entries(PLACE_VOCABULARY).map(
      ([kind, one]) =>
        [kind, [...one.rows, ...one.blocks].filter(row => row.handed).map(row => row.field)] as const,
    );
    expect(Object.fromEntries(handed.filter(([, fields]) => fields.length > 0))).toEqual({
      engine: ['axisOffset', 'rotation', 'sheetRotation', 'serial', 'accessories'],
      motor: ['axisOffset'],
      gear: ['aheadClutch', 'pumpIndex', 'shiftCable', 'expectedOutput'],
      propeller: ['hand', 'handSetting', 'afterHand'],
    });
  });
});

function within(
  vocabulary: Vocabulary,
  around?: Vocabulary,
): readonly (readonly [Vocabulary, Vocabulary | undefined])[] {
  return [[vocabulary, around], ...vocabulary.blocks.flatMap(one => within(one.block, vocabulary))];
}
