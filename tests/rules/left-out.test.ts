import {
  type BlockRow,
  ENTRY_VOCABULARY,
  HEADER_ROWS,
  PLACE_VOCABULARY,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { writtenSpecs } from '../silence/base-specs.js';
import { tallies } from '../silence/compare/tally.js';
import { Bench, type Judged } from '../silence/rejudge.js';
import { edited, factsOf, type WrittenFact } from '../silence/written.js';
import { share } from '../support/share.js';
import { CHOICES, SETTLED_OTHERWISE } from './left-out-choices.js';

/** Every row, by the title of its block and its words. */
function allRows(): Map<string, Row | BlockRow> {
  const found = new Map<string, Row | BlockRow>();
  const visited = new Set<Vocabulary>();
  const visit = (vocabulary: Vocabulary) => {
    if (visited.has(vocabulary)) return;
    visited.add(vocabulary);
    for (const row of [...vocabulary.rows, ...vocabulary.blocks])
      found.set(`${vocabulary.title}|${row.words}`, row);
    for (const { block } of vocabulary.blocks) visit(block);
  };
  for (const all of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
    Object.values(all).forEach(visit);
  return found.set('gear in its line|ratio', HEADER_ROWS.ratio);
}

const OFTEN = 8;

/** A part in its line is the part: its catalogue entry has the same properties. */
const keyOf = (fact: WrittenFact) => `${fact.block.host.vocabulary.title}|${fact.property}`;

const isKept = (key: string, row: Row | BlockRow) => {
  const [title, words] = key.split('|');
  const isSettled = [key, `${title} in its line|${words}`].some(one => one in SETTLED_OTHERWISE);
  return row.because !== undefined || isSettled;
};

/** Of those that may stand more than once, one left out is one less. */
const isTried = (fact: WrittenFact) =>
  !fact.row.many && !(fact.block.host.vocabulary.title in CHOICES) && !isKept(keyOf(fact), fact.row);

/** Checks that hold without the fact and do not with it as an open question. */
function heldByAbsence(unknown: Judged, absent: Judged): string[] {
  const asked = tallies(unknown);
  return [...tallies(absent)].flatMap(([key, is]) => {
    const was = asked.get(key);
    return was && is.holds > was.holds && was.open > is.open ? [key] : [];
  });
}

describe('a fact left out behaves as `unknown` does', () => {
  it('but for those whose absence says something, each with its reason', () => {
    const says = [...allRows()].filter(
      ([, row]) => row.absent !== undefined && !('estimated' in row && row.estimated),
    );
    expect(
      says.flatMap(([key, row]) => (isKept(key, row) || key.split('|')[0]! in CHOICES ? [] : [key])),
    ).toEqual([]);
    const idle = [...allRows()].filter(([, row]) => row.because && !row.absent).map(([key]) => key);
    expect(idle, 'a reason for nothing').toEqual([]);
  });

  it('over every written spec: nothing holds without a fact that does not hold with it unknown', async () => {
    const wrong: string[] = [];
    let judged = 0;
    // The same property stands in many specs: a few of each will do.
    const tried = new Map<string, number>();
    const isFresh = (fact: WrittenFact) => {
      const often = tried.get(keyOf(fact)) ?? 0;
      tried.set(keyOf(fact), often + 1);
      return often < OFTEN && isTried(fact);
    };
    for (const spec of share(writtenSpecs(), 12, 60)) {
      const base = await new Bench().judge(spec.text);
      const bench = new Bench();
      for (const fact of share(factsOf(base.check).filter(isFresh), 10)) {
        judged += 1;
        const value = { start: fact.value.start, end: fact.end };
        const unknown = await bench.judge(edited(spec.text, { ...value, text: 'unknown' }));
        if (unknown.refused.length > base.refused.length) continue;
        const absent = await bench.judge(edited(spec.text, { start: fact.start, end: fact.end, text: '' }));
        if (absent.refused.length > base.refused.length) continue;
        wrong.push(...heldByAbsence(unknown, absent).map(key => `${keyOf(fact)}: ${key} (${spec.name})`));
      }
    }
    expect(judged).toBeGreaterThan(50);
    expect([...new Set(wrong)]).toEqual([]);
  }, 900_000);
});
