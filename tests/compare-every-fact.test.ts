import { compareSpecs, describeEntry, describeVessel, isSame, type SpecSet } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { Bench, type Judged } from './silence/rejudge.js';
import { edited, factsOf, type WrittenFact } from './silence/written.js';
import { exampleSpecs, joinedExample } from './support/examples.js';
import { share, times } from './support/share.js';

/** Whatever a spec states, a reviewer is told when it is taken out, doubted or given another number. SEED=7 tries other facts. */

function setOf({ check }: Judged): SpecSet {
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts, file: '' })),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
    unread: check.problems.filter(one => one.severity === 'error').map(one => one.message),
  };
}

/** What git shows in its own diffs must differ as well. */
const linesOf = ({ vessels, entries }: SpecSet) =>
  [...vessels.flatMap(describeVessel), ...entries.flatMap(describeEntry)].join('\n');

const EDITS: readonly (readonly [string, (text: string, fact: WrittenFact) => string | undefined])[] = [
  ['taken out', (text, { start, end }) => edited(text, { start, end, text: '' })],
  [
    'doubted',
    (text, { value, evidence }) =>
      edited(text, { start: value.end, end: evidence?.end ?? value.end, text: ' [hearsay "of the yard"]' }),
  ],
  [
    'of another number',
    (text, { value, row }) => {
      const written = text.slice(value.start, value.end);
      // Each number of the value by itself: a point of a curve has two, a pair of teeth as well.
      const numbers = [...written.matchAll(/(?<![\w.-])\d+(?:\.\d+)?(?![\w./])/g)];
      const number = numbers[(value.start + row.words.length) % Math.max(1, numbers.length)];
      if (!number) return undefined;
      const start = value.start + number.index;
      return edited(text, { start, end: start + number[0].length, text: `${Number(number[0]) + 1}` });
    },
  ],
];

/** A gear offered in one ratio is fitted in that one, said or not; how a signatory's role is known is not of the record. */
const SAYS_NOTHING: Readonly<Record<string, readonly string[]>> = {
  'taken out': ['gear ratio'],
  doubted: ['prepared by as', 'checked by as', 'approved by as'],
};

describe.each(share(exampleSpecs, 1))('%s', path => {
  it.each(EDITS)('tells every fact that is %s', async (what, edit) => {
    const bench = new Bench();
    const text = joinedExample(path);
    const before = await bench.judge(text);
    const set = setOf(before);
    const facts = share(
      factsOf(before.check).filter(
        one => !SAYS_NOTHING[what]?.includes([...one.path, one.property].join(' ')),
      ),
      times(15, 40),
    );
    const untold: string[] = [];
    const lines = linesOf(set);
    for (const fact of facts) {
      const changed = edit(text, fact);
      if (changed === undefined || changed === text) continue;
      const after = setOf(await bench.judge(changed));
      if (isSame(compareSpecs(set, after)) || (after.unread?.length === 0 && linesOf(after) === lines))
        untold.push(`${fact.path.join(' ')} ${fact.property}: ${text.slice(fact.start, fact.end)}`);
    }
    expect(untold).toEqual([]);
  });
});
