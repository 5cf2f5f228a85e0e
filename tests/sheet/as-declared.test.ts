import { makePaper, PAPER_WORDS, partsList } from '@tailshaft/sheet';
import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { joinedExample } from '../support/examples.js';
import { share } from '../support/share.js';
import { EXAMPLES, wordsIn } from './papers-of.js';
import { sheetOfExample, sheetOfText } from './sheet-of.js';

/** Places of the columns of a list of parts. */
const [ROLE, FACT] = [2, 6];

describe('what is told of a part', () => {
  it.each(share(EXAMPLES, 6))('is what the text may say of it, and nothing of the model: %s', async path => {
    const input = await sheetOfExample(path);
    const grades = input.vessel.arrangements.flatMap(one =>
      one.lines.flatMap(line =>
        line.chain.flatMap(part => (part as { grade?: { name: string } }).grade?.name ?? []),
      ),
    );
    const known = (role: string) => {
      const own = PLACE_VOCABULARY[role as keyof typeof PLACE_VOCABULARY]!;
      // Of a gear, what is said of the ratio that is fitted stands among its own facts.
      const fitted = own.blocks.find(one => one.field === 'ratios')?.block;
      const said = [own, fitted].flatMap(one => (one ? [...one.rows, ...one.blocks] : []));
      return [...said.map(one => one.words), ...grades];
    };
    const strange = partsList(input).flatMap(row => {
      const [role, fact] = [row[ROLE]!, row[FACT]!];
      const [first] = fact.split(': ') as [string];
      return fact === '' ||
        known(role).some(
          words => [words, `nominal ${words}`].includes(first) || first.startsWith(`${words} `),
        )
        ? []
        : [`${role}: ${fact}`];
    });
    expect([...new Set(strange)]).toEqual([]);
  });
});

it('a power that is declared in horsepower is told in kilowatts and in horsepower, and never twice in one', async () => {
  const metric = joinedExample('pilot-cutter/ternhaven.shaft');
  const declared = metric.replace(
    /\bpower ([\d.]+) kW at/g,
    (_, kW: string) => `power ${(Number(kW) / 0.7457).toFixed(0)} hp at`,
  );
  expect(declared).not.toBe(metric);
  const input = await sheetOfText(declared);
  for (const word of PAPER_WORDS) {
    const words = wordsIn(makePaper(input, word).blocks);
    expect(words.match(/(?<![\d.])([\d.]+ [^\s()]+) \(\1\)/g) ?? [], word).toEqual([]);
  }
});
