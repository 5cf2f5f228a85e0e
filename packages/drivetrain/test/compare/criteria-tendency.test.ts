import { type Dimension, fromSI, given, unitsOf } from '@tailshaft/mechanics';
import { CRITERIA, limitsOf, type Row } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { statementChanges } from '../../src/compare/statements.js';
import type { Vessel } from '../../src/model/vessel.js';

/** A vessel that says nothing but one criterion. */
function asking(row: Row, si: number): Vessel {
  const { dimension } = row.kind as { dimension: Dimension };
  const unit = unitsOf(dimension)[0];
  const written = unit ? `${fromSI(si, unit)} ${unit.symbol}` : String(si);
  const fact = { value: given(row.words, 'x', dimension, si, { written }), written, origin: {} };
  return {
    name: 'Ternhaven',
    origin: {},
    nameOrigin: {},
    arrangements: [],
    criteria: { origin: {}, [row.field]: fact },
    assumptions: [],
    requirements: [],
    acceptances: [],
    revisions: [],
    unitConcerns: [],
    quantities: [],
    openQuestions: [],
  };
}

const bounded = CRITERIA.rows
  .filter(row => row.kind.form === 'quantity')
  .map(row => [row.words, row] as const);

describe('a criterion that asks for another number', () => {
  it.each(bounded)('%s is called by its own words, and rightly tightened or relaxed', (words, row) => {
    const { dimension } = row.kind as { dimension: Dimension };
    const { low, high } = limitsOf(row.range!, dimension);
    const [less, more] = [low + (high - low) / 4, low + (high - low) / 2];
    const [raised, lowered] = [
      statementChanges(asking(row, less), asking(row, more)),
      statementChanges(asking(row, more), asking(row, less)),
    ];
    const atLeast = words.endsWith('at least');
    expect(raised.map(one => one.tendency)).toEqual([atLeast ? 'tightened' : 'relaxed']);
    expect(lowered.map(one => one.tendency)).toEqual([atLeast ? 'relaxed' : 'tightened']);
    for (const { words: told } of [...raised, ...lowered])
      expect(told).toMatch(new RegExp(`^criterion: ${words} .* → ${words} `));
  });
});
