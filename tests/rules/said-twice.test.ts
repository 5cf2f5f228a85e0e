import { describe, expect, it } from 'vitest';
import { writtenSpecs } from '../silence/base-specs.js';
import { Bench, type Judged } from '../silence/rejudge.js';
import { blocksOf, edited } from '../silence/written.js';
import { share } from '../support/share.js';

/** Something that a spec names once, and what it would be called if it were said again. */
interface Once {
  readonly what: string;
  readonly start: number;
  readonly end: number;
}

/** Every block and every named thing of a spec that would stand for the same thing if it stood there twice. */
function onces({ check }: Judged): Once[] {
  const blocks = blocksOf(check).flatMap(({ block }) =>
    block.nested.flatMap(({ row, words, host }) =>
      row.again === 'freely'
        ? []
        : [
            {
              what: `${row.words} of a ${block.host.vocabulary.title}`,
              start: words.start,
              end: Math.max(host.headEnd, host.block?.end ?? 0),
            },
          ],
    ),
  );
  const named = [
    ...check.entries.map(({ reading }) => ({ what: reading.kind, place: reading.whole })),
    ...check.vessels.flatMap(({ reading }) => [
      { what: 'vessel', place: reading.whole },
      ...reading.arrangements.flatMap(arrangement => [
        { what: 'arrangement', place: arrangement.whole },
        ...arrangement.lines.map(line => ({ what: 'shaftline', place: line.whole })),
      ]),
    ]),
  ].map(({ what, place }) => ({ what, start: place.start, end: place.end }));
  return [...blocks, ...named];
}

describe('whatever stands once is not passed over when it is said twice', () => {
  it('every block and every named thing of the examples', async () => {
    const silent: string[] = [];
    const tried = new Map<string, number>();
    for (const { name, text } of share(writtenSpecs(), 12)) {
      const base = await new Bench().judge(text);
      const bench = new Bench();
      for (const one of onces(base)) {
        const often = tried.get(one.what) ?? 0;
        if (often >= 2) continue;
        tried.set(one.what, often + 1);
        const again = `\n${text.slice(one.start, one.end)}\n`;
        const { refused } = await bench.judge(edited(text, { start: one.end, end: one.end, text: again }));
        if (!refused.some(words => words.startsWith('text/twice'))) silent.push(`${one.what} in ${name}`);
      }
    }
    expect(tried.size).toBeGreaterThan(8);
    expect(silent).toEqual([]);
  });
});
