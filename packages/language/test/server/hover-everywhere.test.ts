import { readFileSync } from 'node:fs';
import type { LangiumDocument } from 'langium';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MarkupContent } from 'vscode-languageserver';
import { scan } from '../../src/text/scan.js';
import { positionOf, Testbed } from './testbed.js';

const example = (path: string) =>
  readFileSync(new URL(`../../../../examples/${path}.shaft`, import.meta.url), 'utf8');
const FILES = Object.fromEntries(
  ['couplings', 'engines', 'gears', 'materials', 'motors'].map(name => [
    `catalogue/${name}.shaft`,
    example(`catalogue/${name}`),
  ]),
);
const MORE = `
  assume gear efficiency 96 % because "measured on the sister set"
  certificate { power 600 kW  limited by "power statement 4" }
  accept shafting/span-guide on Starboard.shaft because "whirling criterion holds" by "class surveyor" dated 2026-03-02 until 2027-03-01
}
`;
const SPEC = example('pilot-cutter/ternhaven')
  .replace('../catalogue', 'catalogue')
  .replace(/\n\}\s*$/, MORE);

let bed: Testbed;
let document: LangiumDocument;
beforeAll(async () => {
  bed = new Testbed(FILES);
  document = await bed.open(SPEC);
});

async function at(offset: number): Promise<string> {
  const found = await bed.services.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return (found?.contents as MarkupContent | undefined)?.value ?? '';
}

/** The hover at `|` of some words. */
async function hover(marked: string): Promise<string> {
  const start = SPEC.indexOf(marked.replace('|', ''));
  if (start < 0) throw new Error(`the spec does not say ${marked}`);
  return at(start + marked.indexOf('|'));
}

describe('hover everywhere a person would ask', () => {
  const silentIn = async (spec: string): Promise<string[]> => {
    const silent: string[] = [];
    for (const token of scan(spec)) {
      if (['open', 'close', 'comment'].includes(token.kind)) continue;
      if ((await at(token.start)) === '') silent.push(`${token.line + 1}: ${token.text}`);
    }
    return silent;
  };

  it('has something to say of every word, number and mark of a real spec', async () => {
    expect(await silentIn(SPEC)).toEqual([]);
  });

  it.each(['workboat/saltmarsh', 'motor-launch/reedmouth', 'ferry/brackle', 'sport-boat/quickgrass'])(
    'and of every other: %s',
    async path => {
      const before = document;
      const text = example(path);
      document = await bed.open(text, `${path}.shaft`);
      const silent = await silentIn(text);
      document = before;
      expect(silent).toEqual([]);
    },
  );

  const cases: [topic: string, at: string, said: (string | RegExp)[]][] = [
    ['import', '|"catalogue"', ['**import** catalogue', '9 engine, 9 gear']],
    [
      'a ratio that is chosen',
      'ratio |2.04:1 ahead',
      [
        '2.04 turns in for one out',
        'exact 2.043:1',
        /clutch A: output same/,
        /rated medium: 0\.\d+ kW\/rpm/,
        /Its other ratios: /,
      ],
    ],
    [
      'a clutch that is chosen',
      'ahead clutch |A { pump set for standard viewed from flywheel }\n',
      ['clutch A: output same, ahead continuous', 'It needs a **left-hand** propeller.'],
    ],
    [
      'a clutch of a line that mirrors',
      'gear ahead clutch |B',
      ['clutch B: output opposite', 'It needs a **right-hand** propeller.'],
    ],
    [
      'a duty class',
      'Kittiwake-9 at |medium',
      [/power \d+ kW at \d+ rpm/, 'measured at', 'hours', 'capacity/engine-duty: holds, margin'],
    ],
    ['a viewpoint', 'standard viewed from |flywheel', ['Viewed from the flywheel end', 'ISO 1204']],
    ['a rotation word', '|standard viewed from flywheel', ['The same rotation elsewhere']],
    ['an evidence mark', '[|measured 2026-01-14]', ['Known how: measured on board']],
    ['a date', '[measured |2026-01-14]', ['2026-01-14, 138 days ago.']],
    [
      'a requirement',
      'require |speed at least',
      [
        "**require** speed at least 22 kn at full power · owner's note 3",
        '**22 kn** = 11.318 m/s',
        /\*\*holds\*\* trace\/requirement-met of proposed/,
      ],
    ],
    ['its unit', '22 |kn', ['**knot**', '**require** speed']],
    ['a requirement of turning', 'propellers turn |outward', [/\*\*holds\*\* rotation\/turning-requirement/]],
    [
      'an assumption',
      'gear |efficiency 96',
      ['**assume** gear efficiency', 'Because: measured on the sister set', '**It drives**'],
    ],
    ['a criterion', 'tip clearance at least |15 %', ['**tip clearance at least**', '15 %']],
    [
      'a rule id',
      'accept |shafting/span-guide',
      ['**shafting/span-guide** · ', 'Criterion: ', 'common practice, no source'],
    ],
    [
      'who accepts',
      'by "|class surveyor"',
      ['by class surveyor', 'because whirling criterion holds', 'until 2027-03-01, in 273 days'],
    ],
    ['an arrangement', 'revises |existing', ['**arrangement existing**']],
    ['a line that mirrors', 'mirrors |Port', ['**shaft line proposed.Port**']],
    ['a title', '"Ternhaven, |harbour', ['**vessel Ternhaven**', 'All checks: ']],
    ['a revision', 'revision |B', ['**revision B**, dated 2026-02-27, 94 days ago', 'Diesel repower']],
    ['a limit on paper', '|certificate {', ['certificate or licence']],
  ];
  it.each(cases)('says of %s', async (_topic, marked, said) => {
    const text = await hover(marked);
    for (const one of said)
      if (typeof one === 'string') expect(text).toContain(one);
      else expect(text).toMatch(one);
  });
});
