import { describe, expect, it } from 'vitest';
import { applyEdits, type SpelledEdit, textEditsForSpelled } from '../../src/edit/index.js';
import type { Host } from '../../src/reading/place.js';
import { uriOf } from '../server/memory-files.js';
import { Specs } from './specs.js';

type Set = readonly [property: string, text: string];

/** The text after writing properties of a part of the last line of the last arrangement. */
async function setOnPart(role: string, lineText: string, ...sets: Set[]): Promise<string> {
  const before = `vessel V {\n  arrangement a {\n    ${lineText}\n  }\n}\n`;
  const specs = await Specs.read(before);
  const line = specs.check.vessels[0]!.vessel.arrangements.at(-1)!.lines.at(-1)!;
  const host = line.chain.find(part => part.role === role)!.origin;
  const after = apply(
    specs,
    sets.map(([property, text]) => ({ do: 'set', host, property, text })),
  );
  const readAgain = await Specs.read(after);
  expect(readAgain.check.problems.map(one => one.message)).toEqual([]);
  return after
    .split('\n')
    .slice(2, -3)
    .map(one => one.replace(/^ {4}/, ''))
    .join('\n');
}

async function setOnEntry(entryText: string, ...sets: Set[]): Promise<string> {
  const specs = await Specs.read(entryText);
  const host = specs.reading.entries.at(-1)!.host;
  const after = apply(
    specs,
    sets.map(([property, text]) => ({ do: 'set', host, property, text })),
  );
  expect((await Specs.read(after)).check.problems.map(one => one.message)).toEqual([]);
  return after;
}

function apply(specs: Specs, edits: readonly SpelledEdit[]): string {
  return applyEdits(specs.textOf(specs.document.uri.toString()), textEditsForSpelled(edits, specs.textOf));
}

describe('writing a property', () => {
  const cases: [what: string, role: string, line: string, sets: Set[], after: string][] = [
    [
      'replaces a value in a block',
      'propeller',
      'shaftline Port { propeller { hand left  blades 4 } }',
      [['hand', 'right']],
      'shaftline Port { propeller { hand right  blades 4 } }',
    ],
    [
      'takes away what vouched for the old value',
      'propeller',
      'shaftline Port { propeller { hand left [measured 2026-01-14]  blades 4 } }',
      [['hand', 'right']],
      'shaftline Port { propeller { hand right  blades 4 } }',
    ],
    [
      'keeps what vouches for the same value',
      'propeller',
      'shaftline Port { propeller { hand left [plate] } }',
      [['hand', 'left']],
      'shaftline Port { propeller { hand left [plate] } }',
    ],
    [
      'replaces a value in a header',
      'propeller',
      'shaftline Port { propeller hand left [plate] { blades 4 } }',
      [['hand', 'right']],
      'shaftline Port { propeller hand right { blades 4 } }',
    ],
    [
      'replaces header facts',
      'gear',
      'shaftline Port { gear ratio 2:1 ahead clutch A { mass 90 kg } }',
      [
        ['ahead clutch', 'B'],
        ['ratio', '2.5:1'],
      ],
      'shaftline Port { gear ratio 2.5:1 ahead clutch B { mass 90 kg } }',
    ],
    [
      'adds header facts behind the header',
      'gear',
      'shaftline Port { gear { mass 90 kg } }',
      [
        ['ratio', '2:1'],
        ['ahead clutch', 'B'],
      ],
      'shaftline Port { gear ratio 2:1 ahead clutch B { mass 90 kg } }',
    ],
    [
      'adds a rating to a header',
      'engine',
      'shaftline Port { engine }',
      [['at', 'medium']],
      'shaftline Port { engine at medium }',
    ],
    [
      'adds header facts and a block at once',
      'gear',
      'shaftline Port { gear }',
      [
        ['pump set for', 'standard'],
        ['ahead clutch', 'B'],
      ],
      'shaftline Port { gear ahead clutch B { pump set for standard } }',
    ],
    [
      'adds a hand to a header without a block',
      'propeller',
      'shaftline Port { propeller }',
      [
        ['hand', 'right'],
        ['set for hand', 'right'],
        ['blades', '4'],
      ],
      'shaftline Port { propeller hand right { set for hand right  blades 4 } }',
    ],
    [
      'adds to a block on one line',
      'propeller',
      'shaftline Port { propeller { blades 4 } }',
      [['hand', 'right']],
      'shaftline Port { propeller { blades 4  hand right } }',
    ],
    [
      'adds to a block glued to its braces',
      'propeller',
      'shaftline Port { propeller {blades 4} }',
      [['hand', 'right']],
      'shaftline Port { propeller {blades 4  hand right } }',
    ],
    [
      'adds to an empty block',
      'propeller',
      'shaftline Port { propeller {} }',
      [['hand', 'right']],
      'shaftline Port { propeller { hand right } }',
    ],
    [
      'adds a line to a block of lines',
      'propeller',
      'shaftline Port {\n      propeller {\n        blades 4 // as fitted\n      }\n    }',
      [['hand', 'right']],
      'shaftline Port {\n  propeller {\n    blades 4 // as fitted\n    hand right\n  }\n}',
    ],
    [
      'keeps to the indentation found',
      'propeller',
      'shaftline Port {\n      propeller {\n\t\t\tblades 4\n      }\n    }',
      [['hand', 'right']],
      'shaftline Port {\n  propeller {\n\t\t\tblades 4\n\t\t\thand right\n  }\n}',
    ],
    [
      'adds a line where the brace shares the last one',
      'propeller',
      'shaftline Port {\n      propeller {\n        blades 4 }\n    }',
      [['hand', 'right']],
      'shaftline Port {\n  propeller {\n    blades 4\n    hand right\n    }\n}',
    ],
    [
      'stays clear of a comment behind the header',
      'propeller',
      'shaftline Port {\n      propeller // bronze\n    }',
      [['hand', 'right']],
      'shaftline Port {\n  propeller hand right // bronze\n}',
    ],
    [
      'stays clear of a comment between header and block',
      'gear',
      'shaftline Port {\n      gear // old\n      { mass 90 kg }\n    }',
      [['ahead clutch', 'B']],
      'shaftline Port {\n  gear ahead clutch B // old\n  { mass 90 kg }\n}',
    ],
    [
      'adds in front of a fact that would take what follows for its own',
      'gear',
      'shaftline Port { gear { clutch A output same } }',
      [['layout', 'V-drive']],
      'shaftline Port { gear { layout V-drive  clutch A output same } }',
    ],
    [
      'writes a part that a mirror line leaves out',
      'propeller',
      'shaftline Port { propeller hand left }  shaftline Starboard mirrors Port { side starboard }',
      [
        ['hand', 'right'],
        ['set for hand', 'right'],
      ],
      'shaftline Port { propeller hand left }  shaftline Starboard mirrors Port { side starboard  propeller hand right { set for hand right } }',
    ],
    [
      'writes the clutch of a mirrored gear in its line',
      'gear',
      'shaftline Port { gear ahead clutch A }  shaftline Starboard mirrors Port',
      [
        ['pump set for', 'standard'],
        ['ahead clutch', 'B'],
      ],
      'shaftline Port { gear ahead clutch A }  shaftline Starboard mirrors Port { ahead clutch B  gear { pump set for standard } }',
    ],
    [
      'writes several parts of a mirror line a line each',
      'gear',
      'shaftline Port { gear ahead clutch A }\n    shaftline Starboard mirrors Port {\n    }',
      [
        ['ahead clutch', 'B'],
        ['pump set for', 'opposite'],
      ],
      'shaftline Port { gear ahead clutch A }\nshaftline Starboard mirrors Port {\n  ahead clutch B\n  gear { pump set for opposite }\n}',
    ],
  ];
  it.each(cases)('%s', async (_, role, line, sets, after) => {
    expect(await setOnPart(role, line, ...sets)).toBe(after);
  });

  it('finishes a header fact that was begun', async () => {
    const specs = await Specs.read('vessel V { arrangement a { shaftline Port { gear ahead } } }');
    const host = specs.check.vessels[0]!.vessel.arrangements[0]!.lines[0]!.gear!.origin;
    const after = apply(specs, [{ do: 'set', host, property: 'ahead clutch', text: 'B' }]);
    expect(after).toBe('vessel V { arrangement a { shaftline Port { gear ahead clutch B } } }');
  });

  it('finishes a property that has no value', async () => {
    const specs = await Specs.read('propeller P { hand  blades 4 }');
    const after = apply(specs, [
      { do: 'set', host: specs.reading.entries[0]!.host, property: 'hand', text: 'left' },
    ]);
    expect(after).toBe('propeller P { hand left  blades 4 }');
  });
});

describe('writing a property of an entry', () => {
  const gear = 'gear G {\n  ratio 2:1 {\n    clutch A output same\n  }\n  ratio 3:1\n}\n';
  const cases: [what: string, text: string, set: Set, after: string][] = [
    [
      'gives it a block',
      'gear G "a gear"\n',
      ['layout', 'V-drive'],
      'gear G "a gear" {\n  layout V-drive\n}\n',
    ],
    [
      'goes into the ratio that is named',
      gear,
      ['ratio 2:1 exact', 'unknown'],
      'gear G {\n  ratio 2:1 {\n    clutch A output same\n    exact unknown\n  }\n  ratio 3:1\n}\n',
    ],
    [
      'goes behind a ratio without a block',
      gear,
      ['ratio 3:1 exact', '3.01:1'],
      'gear G {\n  ratio 2:1 {\n    clutch A output same\n  }\n  ratio 3:1  exact 3.01:1\n}\n',
    ],
    [
      'brings a ratio that is not there',
      gear,
      ['ratio 4:1 exact', 'unknown'],
      'gear G {\n  ratio 2:1 {\n    clutch A output same\n  }\n  ratio 3:1\n  ratio 4:1 exact unknown\n}\n',
    ],
    [
      'asks what a clutch does',
      'gear G { mass 90 kg }',
      ['clutch B', 'unknown'],
      'gear G { mass 90 kg  clutch B  output unknown  ahead unknown }',
    ],
    [
      'asks for the power of a rating',
      'engine E { mass 90 kg }',
      ['rating medium', 'unknown'],
      'engine E { mass 90 kg  rating medium { power unknown } }',
    ],
    [
      'keeps CRLF',
      'gear G {\r\n  mass 90 kg\r\n}\r\n',
      ['layout', 'V-drive'],
      'gear G {\r\n  mass 90 kg\r\n  layout V-drive\r\n}\r\n',
    ],
    [
      'replaces words of several tokens',
      'engine E {\n  rotation clockwise viewed from front\n}\n',
      ['rotation', 'standard viewed from flywheel'],
      'engine E {\n  rotation standard viewed from flywheel\n}\n',
    ],
  ];
  it.each(cases)('%s', async (_, text, set, after) => {
    if (text === 'gear G "a gear"\n') {
      const specs = await Specs.read(text);
      const host = specs.reading.entries[0]!.host;
      expect(apply(specs, [{ do: 'set', host, property: set[0], text: set[1] }])).toBe(after);
    } else expect(await setOnEntry(text, set)).toBe(after);
  });

  it('adds a fact to a clutch that has none in braces', async () => {
    const specs = await Specs.read(gear);
    const ratio = specs.reading.entries[0]!.facts.nested[0]!.host.reading!;
    const host: Host = ratio.nested[0]!.host;
    expect(apply(specs, [{ do: 'set', host, property: 'ahead', text: 'unknown' }])).toContain(
      'clutch A output same  ahead unknown\n',
    );
  });

  it('writes a duty into a vessel that has none, and finishes one without a word', async () => {
    const plain = await Specs.read('vessel V {\n  hull planing\n}\n');
    const host = plain.check.vessels[0]!.vessel.origin;
    expect(apply(plain, [{ do: 'set', host, property: 'duty', text: 'unknown' }])).toBe(
      'vessel V {\n  duty unknown\n  hull planing\n}\n',
    );
    const begun = await Specs.read('vessel V {\n  duty { passengers none }\n}\n');
    const other = begun.check.vessels[0]!.vessel.origin;
    expect(apply(begun, [{ do: 'set', host: other, property: 'duty', text: 'medium' }])).toBe(
      'vessel V {\n  duty medium { passengers none }\n}\n',
    );
  });

  it('asks for a part that a line lacks', async () => {
    const specs = await Specs.read('vessel V { arrangement a { shaftline Port { shaft { length 3 m } } } }');
    const host = specs.reading.vessels[0]!.arrangements[0]!.lines[0]!.host;
    expect(apply(specs, [{ do: 'set', host, property: 'engine', text: 'unknown' }])).toBe(
      'vessel V { arrangement a { shaftline Port { shaft { length 3 m }  engine { rotation unknown } } } }',
    );
  });
});

describe('replacing and exchanging', () => {
  const twin =
    'vessel V { arrangement a {\n  shaftline Port { gear A { mass 1 kg }  propeller hand left }\n  shaftline Starboard { gear B  propeller hand right } } }\ngear A { mass 90 kg }\ngear B { mass 8 kg }\n';

  async function lines(text: string) {
    const specs = await Specs.read(text);
    return { specs, lines: specs.check.vessels[0]!.vessel.arrangements.at(-1)!.lines };
  }

  it('puts a statement in the place of a part with its block', async () => {
    const {
      specs,
      lines: [port],
    } = await lines(twin);
    const after = apply(specs, [{ do: 'replace', at: port!.gear!.origin, text: 'gear B ratio 2:1' }]);
    expect(after).toContain('shaftline Port { gear B ratio 2:1  propeller hand left }');
  });

  it('keeps the facts of a part that is modified', async () => {
    const before = `vessel V { arrangement a { shaftline Port { propeller hand left } }
      arrangement b revises a { shaftline Port { retain propeller { mass 90 kg } } } }`;
    const {
      specs,
      lines: [port],
    } = await lines(before);
    const after = apply(specs, [
      {
        do: 'state',
        at: port!.propeller!.origin,
        header: 'modify propeller',
        facts: ['blades 4'],
        keeps: true,
      },
    ]);
    expect(after).toContain('{ modify propeller { mass 90 kg  blades 4 } }');
  });

  it('exchanges names, and whole parts', async () => {
    const {
      specs,
      lines: [port, starboard],
    } = await lines(twin);
    const names = apply(specs, [
      { do: 'swap', one: port!.gear!.nameOrigin!, other: starboard!.gear!.nameOrigin! },
    ]);
    expect(names).toContain('Port { gear B { mass 1 kg }  propeller');
    expect(names).toContain('Starboard { gear A  propeller');
    const parts = apply(specs, [{ do: 'swap', one: port!.gear!.origin, other: starboard!.gear!.origin }]);
    expect(parts).toContain('Port { gear B  propeller');
    expect(parts).toContain('Starboard { gear A { mass 1 kg }  propeller');
  });

  it('edits the catalogue in its own file', async () => {
    const specs = await Specs.read({
      'v.shaft': 'import "parts"\nvessel V { arrangement a { shaftline Port { gear A } } }\n',
      'parts.shaft': 'gear A {\n  mass 90 kg\n}\n',
    });
    const gear = specs.check.vessels[0]!.vessel.arrangements[0]!.lines[0]!.gear!;
    const edits = textEditsForSpelled(
      [
        { do: 'set', host: gear.entry!.origin, property: 'layout', text: 'unknown' },
        { do: 'set', host: gear.origin, property: 'ahead clutch', text: 'A' },
      ],
      specs.textOf,
    );
    expect(edits.map(one => [one.uri, one.text])).toEqual([
      [uriOf('parts.shaft'), '  layout unknown\n'],
      [uriOf('v.shaft'), ' ahead clutch A'],
    ]);
  });

  it('writes nothing at all when two edits want the same words', async () => {
    const {
      specs,
      lines: [port],
    } = await lines(twin);
    const at = port!.gear!.nameOrigin!;
    expect(
      textEditsForSpelled(
        [
          { do: 'replace', at, text: 'B' },
          { do: 'replace', at, text: 'C' },
        ],
        specs.textOf,
      ),
    ).toEqual([]);
    expect(
      textEditsForSpelled(
        [
          { do: 'replace', at, text: 'B' },
          { do: 'replace', at, text: 'B' },
        ],
        specs.textOf,
      ),
    ).toHaveLength(1);
  });
});
