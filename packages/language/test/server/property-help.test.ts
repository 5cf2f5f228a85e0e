import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import { ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { propertyHelp } from '../../src/server/help/property-help.js';
import { positionOf, Testbed, withCursor } from './testbed.js';

const bed = new Testbed();

async function help(marked: string): Promise<string | undefined> {
  const { text, offset } = withCursor(marked);
  const document = await bed.open(text);
  const found = propertyHelp(document, positionOf(document, offset));
  const [one] = found?.signatures ?? [];
  if (!one) return undefined;
  const [start, end] = one.parameters![found!.activeParameter!]!.label as [number, number];
  return `${one.label.slice(0, start)}*${one.label.slice(start, end)}*${one.label.slice(end)}`;
}

/** One property of each form that a value can have, with a spec that has it at `@`. */
function onePerForm(): [form: string, row: Row, spec: string][] {
  const found = new Map<string, [string, Row, string]>();
  const visit = (vocabulary: Vocabulary, spec: string) => {
    for (const row of vocabulary.rows)
      if (!found.has(row.kind.form)) found.set(row.kind.form, [row.kind.form, row, spec]);
    for (const block of vocabulary.blocks) visit(block.block, spec.replace('@', inBlock(block)));
  };
  for (const [kind, one] of Object.entries(ENTRY_VOCABULARY)) visit(one, `${kind} Some-1 {\n  @\n}\n`);
  for (const [role, one] of Object.entries(PLACE_VOCABULARY))
    visit(
      one,
      `vessel V {\n  arrangement a {\n    shaftline Port {\n      ${role} {\n        @\n      }\n    }\n  }\n}\n`,
    );
  for (const [word, one] of Object.entries(VESSEL_VOCABULARY))
    visit(
      one,
      `vessel V {\n  ${word} ${word === 'duty' ? 'light' : word === 'hull' ? 'planing' : ''} {\n    @\n  }\n}\n`,
    );
  return [...found.values()];
}

function inBlock({ words, head, example }: BlockRow): string {
  const name = head ? `${example.slice(words.length).trim().split(' ')[0]} ` : '';
  return `${words} ${name}{\n    @\n    }`;
}

const FORMS = onePerForm();

describe('help on a property while its value is typed', () => {
  it('is tried on every form that a value can have', () => {
    expect(FORMS.map(one => one[0]).sort()).toMatchInlineSnapshot(`
      [
        "any word",
        "bolts",
        "date",
        "layout",
        "lock",
        "mesh",
        "name",
        "output sense",
        "per year",
        "pilot",
        "point",
        "quantity",
        "ranking",
        "ratio",
        "rotation",
        "rule name",
        "shaft criterion",
        "source",
        "span",
        "text",
        "variation",
        "word",
      ]
    `);
  });

  it.each(FORMS)(
    '%s: behind the words, in the value, and behind a value that is half typed',
    async (_form, row, spec) => {
      const value = row.example.slice(row.words.length).trim();
      const label = expect.stringMatching(new RegExp(`^${row.words} .*\\*<.+>\\*`));
      expect(await help(spec.replace('@', `${row.words} <|>`))).toEqual(label);
      expect(
        await help(spec.replace('@', `${row.words} ${value.slice(0, -1)}<|>${value.slice(-1)}`)),
      ).toEqual(label);
      const first = value.split(' ')[0]!;
      if (first !== value && !first.startsWith('"'))
        expect(await help(spec.replace('@', `${row.words} ${first} <|>`))).toEqual(label);
    },
  );

  it('is there for facts in the header of a part', async () => {
    const line = (typed: string) =>
      `vessel V {\n  arrangement a {\n    shaftline Port {\n      ${typed}\n    }\n  }\n}\n`;
    expect(await help(line('gear G ratio <|>'))).toMatch(/^ratio \*</);
    expect(await help(line('gear G ratio 2:1 ahead clutch <|>'))).toMatch(/^ahead clutch \*</);
    expect(await help(line('engine E at <|>'))).toMatch(/^at \*</);
    expect(await help(line('propeller hand <|>'))).toMatch(/^hand \*</);
    expect(await help(line('side <|>'))).toMatch(/^side \*</);
  });

  const stages: [typed: string, said: string][] = [
    ['rating medium { power <|>', 'power *<power with its unit>* at <rotational speed with its unit>'],
    [
      'rating medium { power 300 kW at <|>',
      'power <power with its unit> at *<rotational speed with its unit>*',
    ],
    [
      'rating medium { power 300 kW at 23<|>',
      'power <power with its unit> at *<rotational speed with its unit>*',
    ],
    ['source "Sheet" dated <|>', 'source <document in quotes> dated *<date>*'],
    [
      'rotation standard viewed from <|>',
      'rotation <standard, opposite, clockwise, counter-clockwise, either> viewed from *<flywheel, front, aft, forward>*',
    ],
    [
      'low idle 650 rpm [<|>',
      '*<measured, plate, drawing, sheet, sister vessel, hearsay, assumed>* <date, or document in quotes>',
    ],
    [
      'low idle 650 rpm [measured <|>',
      '<measured, plate, drawing, sheet, sister vessel, hearsay, assumed> *<date, or document in quotes>*',
    ],
  ];
  it.each(stages)('points to what comes next: %s', async (typed, said) => {
    expect(await help(`engine Some-1 {\n  ${typed}\n}\n`)).toBe(said);
  });

  const sentences: [typed: string, said: RegExp][] = [
    ['require speed <|>', /^require \*<what>\*/],
    ['require speed at least <|>', /at least \*<bound with its unit>\*/],
    ['require speed at least 22 kn at <|>', /at \*<condition>\*/],
    ['accept shafting/span-guide on <|>', /on \*<arrangement, line or part>\*/],
    ['accept shafting/span-guide on Port because "x" by "<|>', /by \*<role in quotes>\*/],
    ['revision B dated <|>', /dated \*<date>\*/],
    ['duty <|>', /^duty \*<pleasure/],
    ['assume gear efficiency 97 % because <|>', /because \*<reason/],
  ];
  it.each(sentences)('knows the sentences of a vessel: %s', async (typed, said) => {
    expect(await help(`vessel V {\n  ${typed}\n}\n`)).toMatch(said);
  });

  it('is silent where no value is typed', async () => {
    expect(await help('gear G {\n  <|>\n}\n')).toBeUndefined();
    expect(await help('gear G {\n  mass 9 kg\n  <|>\n}\n')).toBeUndefined();
    expect(await help('<|>')).toBeUndefined();
  });
});
