import { findUnit, type Value } from '@tailshaft/mechanics';
import {
  amount,
  inUnit,
  type NewQuantity,
  type Row,
  ratioTo1,
  spell,
  unitsOfKind,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { everyRow } from '../../../vocabulary/test/every-row.js';
import { spelledEdit } from '../../src/edit/spelled.js';
import { readOption } from '../../src/reading/option.js';

const HOST = {
  uri: 'memory:///spelled.shaft',
  start: 0,
  end: 0,
  headEnd: 0,
  vocabulary: VESSEL_VOCABULARY.hull!,
};

/** Whole, with decimals, in sixteenths, and as fine as a gear ratio. */
const NUMBERS = [1, 2.5, 1.75, 0.0625, 12.345, 1480];

function readBack(row: Row, quantity: NewQuantity): Value | undefined {
  // A range says what such a thing can be; what is looked at here is how its number is written.
  const { range: _, ...free } = row;
  const words = spell(amount(quantity));
  const { fact, problems } = readOption(free, words, HOST, { start: 0, end: 1 });
  expect(problems, `${row.words} ${words}`).toEqual([]);
  return fact?.value as Value | undefined;
}

describe('a quantity as an edit spells it', () => {
  const quantities = everyRow().filter(([, { kind }]) => kind.form === 'quantity');

  it.each(quantities)('%s reads back in every unit as the same magnitude', (_, row) => {
    if (row.kind.form !== 'quantity') return;
    const { dimension } = row.kind;
    const whole = dimension === 'number';
    for (const { symbol } of unitsOfKind(row.kind))
      for (const number of whole ? [1, 4, 1480] : NUMBERS) {
        const plain = symbol === '1';
        const wanted = plain ? { dimension, si: number } : inUnit(dimension, number, symbol);
        const read = readBack(row, wanted);
        expect(read!.si / wanted.si, `${number} ${symbol}`).toBeCloseTo(1, 8);
        if (!plain) expect(findUnit(read?.unit ?? '')?.symbol).toBe(symbol);
      }
  });

  it.each(everyRow().filter(([, { kind }]) => kind.form === 'ratio' && !kind.slope))(
    '%s reads back as a ratio to one',
    (_, row) => {
      const read = readBack(row, ratioTo1({ si: 2.0434 }));
      expect(read).toMatchObject({ si: 2.043, figure: { to: 1 } });
    },
  );
});

describe('a statement as an edit spells it', () => {
  it('says in its header what a part says there only', () => {
    const at = {};
    expect(
      spelledEdit({
        do: 'state',
        at,
        statement: {
          action: 'replace',
          role: 'gear',
          name: 'Cedar-80',
          facts: [
            { property: 'pump set for', value: { is: 'rotation', rotation: { word: 'standard' } } },
            { property: 'ratio', value: amount(ratioTo1({ si: 2.04 })) },
            { property: 'ahead clutch', value: { is: 'name', name: 'B' } },
          ],
        },
      }),
    ).toEqual({
      do: 'state',
      at,
      header: 'replace gear Cedar-80 ratio 2.04:1 ahead clutch B',
      facts: ['pump set for standard'],
      keeps: false,
    });
  });
});
