import { NAMED_QUANTITIES } from '@tailshaft/drivetrain';
import { ASSUMABLE } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import {
  type CompletionItem,
  CompletionItemKind,
  CompletionTriggerKind,
  type TextEdit,
} from 'vscode-languageserver';
import { times } from '../../../../tests/support/share.js';
import { CATALOGUE, SPEC, withChange } from './specs.js';
import { listed, positionOf, Testbed, withCursor } from './testbed.js';

const FILES = {
  'parts/gears.shaft': '',
  'parts/old/gears.shaft': '',
  'hull.shaft': '',
  'notes.txt': '',
  '.hidden/x.shaft': '',
  'node_modules/a/b.shaft': '',
};

const bed = new Testbed(FILES);

async function itemsAt(marked: string, triggerCharacter?: string): Promise<CompletionItem[]> {
  const { text, offset } = withCursor(marked);
  const document = await bed.open(text);
  const list = await bed.services.lsp.CompletionProvider!.getCompletion(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
    ...(triggerCharacter
      ? { context: { triggerKind: CompletionTriggerKind.TriggerCharacter, triggerCharacter } }
      : {}),
  });
  return list!.items;
}

/** What is offered at `<|>`, in this order. */
async function labels(marked: string): Promise<string> {
  return (await itemsAt(marked)).map(one => one.label).join(', ');
}

/** The text after the offer with this label was taken. */
async function taken(marked: string, label: string): Promise<string> {
  const { text, offset } = withCursor(marked);
  const item = (await itemsAt(marked)).find(one => one.label === label);
  if (!item) throw new Error(`"${label}" is not offered`);
  const edit = item.textEdit as TextEdit;
  const start = text.lastIndexOf('\n', offset - 1) + 1 + edit.range.start.character;
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, start) + edit.newText;
  return `${line}${text.slice(offset).split('\n')[0]}`.trim();
}

/** The spec with other words, and the cursor, in the place of some of its own. */
const typing = (instead: string, typed: string) => withChange(instead, `${typed}<|>`);

describe('completion of units', () => {
  it('offers the units of the dimension, best known first, with the value in each', async () => {
    const items = await itemsAt(typing('300 kW', '300 '));
    expect(items.slice(0, 3).map(one => `${one.label} ${one.detail}`)).toMatchInlineSnapshot(`
      [
        "kW kilowatt",
        "hp = 223.7 kW",
        "PS = 220.6 kW",
      ]
    `);
  });
  it('puts the space that is missing behind a number', async () => {
    expect(await taken(typing('650 rpm', '650'), 'rpm')).toBe('low idle 650 rpm');
  });
  it('replaces a unit half typed', async () => {
    expect(await taken(typing('650 rpm', '650 rp'), 'rpm')).toBe('low idle 650 rpm');
  });
  it('knows the second quantity of a point', async () => {
    expect(await labels(typing('at 2300 rpm', 'at 2300 '))).toBe('rpm, rad/s, rev/s, deg/s');
    expect(await labels(typing(' at 2300 rpm', ' '))).toBe('at');
  });
  it('knows a rating that needs no words', async () => {
    expect(await labels(typing('0.18 kW/rpm', '0.18 '))).toMatchInlineSnapshot(
      `"kW/rpm, hp/rpm, hp/100rpm, PS/rpm, kW/1000rpm, N.m, lbf.ft, kN.m, lbf.in, N.mm, kgf.m, kgf.cm, MN.m, kW, hp, PS, MW, W, hp-electric, lbf.ft/s, kgf.m/s"`,
    );
  });
});

describe('completion of properties', () => {
  it('offers what the block does not say yet', async () => {
    const found = await labels(typing('  fuel diesel\n', '  fuel diesel\n  '));
    expect(found).toContain('aspiration');
    expect(found).toContain('full-load power');
    expect(found).not.toContain('low idle');
  });
  it('goes on with a property of several words', async () => {
    expect(await taken(typing('input speed at least 600 rpm', 'input sp'), 'input speed at least')).toBe(
      'input speed at least',
    );
  });
  it('offers the facts of a clutch on its own line', async () => {
    expect(await labels(typing('ahead continuous', 'ahead '))).toBe('continuous, never, unknown');
    expect(await labels(typing('ahead continuous', ''))).toMatch(
      /^seen from aft, each seen at its own end, .*ahead/,
    );
  });
  it('opens blocks, and asks for the name of one that has a name', async () => {
    expect(await taken(typing('slip device offered', 'output fl'), 'output flange')).toBe(
      'output flange {\n\t$0\n}',
    );
    expect(
      await taken(withChange('  slip device offered\n', '  slip device offered\n  rat<|>\n'), 'ratio'),
    ).toBe('ratio');
    expect(await taken(typing('rated medium 0.18', 'ra'), 'rated')).toBe('rated  kW/rpm');
  });
});

describe('completion of values', () => {
  it('offers words, then from where a rotation is viewed', async () => {
    expect(await labels(typing('standard viewed from flywheel', ''))).toMatchInlineSnapshot(
      `"standard, opposite, clockwise, counter-clockwise, either, either by pump index, unknown"`,
    );
    expect(await labels(typing('viewed from flywheel', 'viewed from '))).toBe(
      'flywheel, front, aft, forward, unknown',
    );
  });
  it('puts the hand that the line needs first', async () => {
    expect(await labels(typing('left [drawing]', ''))).toBe('left, right, unknown');
    expect(await labels(typing('right [drawing]', ''))).toBe('right, left, unknown');
  });
  it('offers how a value is known', async () => {
    expect(await labels(typing('left [drawing]', 'left ['))).toBe(
      'measured, plate, drawing, sheet, sister vessel, hearsay, assumed',
    );
    expect(await labels(typing('left [drawing]', 'left [measured '))).toBe('2026-06-01');
    expect(await labels(typing('left [drawing]', 'left '))).toContain('measured');
  });
  it('offers the grades of the catalogue', async () => {
    expect(await labels(typing('high-strength-stainless  diameter', ''))).toBe(
      'high-strength-stainless, unknown',
    );
  });
});

describe('completion of parts', () => {
  it('offers gears by how they fare in the line, with the margin', async () => {
    const items = await itemsAt(typing('Alder-63 ratio 2.04:1 ahead clutch A', ''));
    expect(items[0]!.label).toBe('Alder-63');
    expect(items[0]!.detail).toMatch(/^2\.04:1 clutch A: holds, margin \+16 % · down-angle reduction gear$/);
    expect(items[1]!.label).toBe('Rowan-7');
    expect(items[1]!.detail).toMatch(/fails .*margin −\d+ %/);
    expect(JSON.stringify(items[0]!.documentation)).toContain('Alder 63 technical sheet, issue 4');
  });
  it('offers ratios and clutches of that gear, and duties of that engine', async () => {
    expect(await labels(typing('2.04:1 ahead clutch A', ''))).toBe('2.04:1, 2.52:1');
    expect(await labels(typing('clutch A\n      shaft', 'clutch '))).toBe('A, B');
    expect(await labels(typing('at medium', 'at '))).toBe('medium');
  });
  it('offers what becomes of a part where the arrangement revises another', async () => {
    const spec = withChange(
      '    }\n  }\n}\n',
      '    }\n  }\n  arrangement better revises proposed {\n    shaftline Port {\n      <|>\n    }\n  }\n}\n',
    );
    expect(await labels(spec)).toMatch(/^replace, retain, modify, remove, /);
    expect(await labels(spec.replace('<|>', 'retain <|>'))).toBe(
      'engine, motor, coupling, gear, transfer, shaft, propeller',
    );
  });
});

describe('completion of statements', () => {
  it('offers what a file, a vessel and an arrangement hold', async () => {
    expect(await labels(`${CATALOGUE}<|>`)).toMatchInlineSnapshot(
      `"import, engine, motor, gear, transfer, coupling, shaft material, propeller, practice, vessel, engine … { }, gear … { }, shaft material … { }, vessel … { }, shaft material … S30400, shaft material … S31600, shaft material … S43100, shaft material … carbon steel, shaft material … S20910, shaft material … S24100, shaft material … S17400, shaft material … N04400, shaft material … N05500, shaft material … C46400"`,
    );
    expect(await labels(typing('  duty medium', '  '))).toContain('criteria');
    expect(await labels(typing('    shaftline Starboard', '    '))).toMatch(
      /^shaftline, remove shaftline, reason for/,
    );
    expect(await labels(typing('shaftline Starboard {', 'shaftline '))).toBe('Starboard, Centre');
  });
  it('offers lines to mirror and arrangements to revise', async () => {
    expect(await labels(typing('shaftline Starboard {', 'shaftline Starboard mirrors '))).toBe('Port');
    const two = withChange(
      '  arrangement proposed {',
      '  arrangement existing { }\n  arrangement proposed revises <|> {',
    );
    expect(await labels(two)).toBe('existing');
  });
  it('offers rules, places and clauses of an acceptance', async () => {
    const accept = (typed: string) => withChange('    }\n  }\n}\n', `    }\n  }\n  accept ${typed}<|>\n}\n`);
    expect(await labels(accept(''))).toContain('rotation/propeller-hand');
    expect(await labels(accept('rotation/same-hand on '))).toBe(
      'proposed, Port, proposed.Port, Starboard, proposed.Starboard, ' +
        ['Port', 'Starboard']
          .flatMap(side => ['engine', 'gear', 'shaft', 'propeller'].map(role => `proposed.${side}.${role}`))
          .join(', '),
    );
    expect(await labels(accept('rotation/same-hand on proposed '))).toBe('because, by, dated, until');
  });
  it('offers criteria, requirements and assumptions', async () => {
    const here = (typed: string) =>
      withChange('  arrangement proposed', `  ${typed}<|>\n  arrangement proposed`);
    expect(await labels(here('criteria { '))).toContain('gear torque margin at least');
    expect(await labels(here('require '))).toContain('propellers turn outward');
    expect(await labels(here('assume '))).toContain('gear efficiency … because');
  });
  it('offers files and folders beside, and nothing hidden', async () => {
    expect(await labels('import "<|>"')).toBe('parts/, hull.shaft');
    expect(await labels('import "parts/<|>"')).toBe('gears.shaft, old/');
    expect(await labels('import "../<|>"')).toBe('');
    expect(await taken('import "parts/g<|>"', 'gears.shaft')).toBe('import "parts/gears"');
  });
});

describe('completion of sentences', () => {
  const here = (typed: string) =>
    withChange('  arrangement proposed', `  ${typed}<|>\n  arrangement proposed`);

  it('knows every requirement that a check verifies', async () => {
    const offered = (await labels(here('require '))).split(', ');
    for (const { name, conditions } of NAMED_QUANTITIES) {
      const condition = conditions[0] ? ` at ${conditions[0]}` : '';
      for (const bound of ['at least', 'at most'])
        expect(offered).toContain(`${name} ${bound} …${condition}`);
    }
    expect(offered).toContain('trolling speed at most …');
    expect(offered).toContain('propellers turn outward');
  });
  it('goes on with a requirement word by word, with the units of its quantity, and states no number', async () => {
    expect(await labels(here('require speed at least '))).toContain('… at full power');
    expect(await labels(here('require speed at least 22 '))).toMatch(/^kn, .*mph/);
    expect(await labels(here('require speed at least 22 kn '))).toMatch(/^at full power, at full throttle, /);
    expect(await labels(here('require speed at least 22 kn at '))).toMatch(/^full power, full throttle, /);
    expect(await taken(here('require '), 'speed at least … at full power')).toBe(
      'require speed at least ${1} at full power',
    );
  });
  it('goes on with the mode that a requirement is for, where a line has modes', async () => {
    const moded = (typed: string) =>
      here(typed).replace(/(shaftline \w+ \{)/, '$1\n      mode harbour { driven by engine }\n');
    expect(await labels(moded('require speed at least 22 kn at full power '))).toBe('in mode harbour');
    expect(await labels(moded('require speed at least 22 kn at full power in mode '))).toBe('harbour');
    expect(await labels(here('require speed at least 22 kn at full power '))).toBe('');
  });
  it('knows every assumption', async () => {
    const offered = await labels(here('assume '));
    for (const { words } of ASSUMABLE) expect(offered).toContain(`${words} … because "…"`);
    expect(await labels(here('assume gear efficiency 97 % '))).toBe('because "…"');
  });
  it('knows the sentence of a trial, and the lines that it can run', async () => {
    expect(await labels(here('trial "sea trial" '))).toBe('of, dated, { }');
    expect(await labels(here('trial "sea trial" dated '))).toBe('2026-06-01');
    expect(await labels(here('trial "sea trial" dated 2026-05-02 {\n    run '))).toBe('Port, Starboard');
  });
});

describe('what is taken', () => {
  const places = [
    `${CATALOGUE}<|>`,
    typing('  duty medium', '  '),
    typing('    shaftline Starboard', '    '),
    withChange('    shaftline Starboard {', '    <|>\n    shaftline Stern {'),
    typing('  fuel diesel\n', '  fuel diesel\n  '),
    typing('blades 4', ''),
    withChange('  slip device offered\n', '  slip device offered\n  <|>\n'),
  ];

  it.each(places.map((text, index) => [index, text] as const))(
    'states nothing that its author did not: place %i',
    async (_index, text) => {
      for (const { label, textEdit, insertTextFormat } of await itemsAt(text)) {
        if (insertTextFormat !== 2 || label.includes('shaft material …')) continue;
        const stops = [...(textEdit as TextEdit).newText.matchAll(/\$\{\d+[:|]([^}]*)\}/g)].map(
          one => one[1]!,
        );
        for (const stop of stops) expect(`${label}: ${stop}`).not.toMatch(/: .*\d|\|/);
        expect((textEdit as TextEdit).newText.replace(/\$\{?\d+/g, '')).not.toMatch(/\d/);
      }
    },
  );
  it.each(places.map((text, index) => [index, text] as const))(
    'says what each keyword means: place %i',
    async (_index, text) => {
      const silent = (await itemsAt(text)).filter(
        one => one.kind === CompletionItemKind.Keyword && one.documentation === undefined,
      );
      expect(silent.map(one => one.label)).toEqual([]);
    },
  );
  it('offers a line to mirror only where there is one, and an arrangement to revise likewise', async () => {
    const bare = 'vessel A {\n  <|>\n}\n';
    expect(await labels(bare)).not.toMatch(/revises|accept … on/);
    expect(await labels('vessel A {\n  arrangement one {\n    <|>\n  }\n}\n')).not.toContain('mirrors');
    expect(await labels(typing('  duty medium', '  '))).toContain('revises');
  });
  it('offers generic grades where no shaft material is declared, and marks them as such', async () => {
    const none = SPEC.replace(/shaft material high[\s\S]*?\n}\n/, '').replace(
      'material high-strength-stainless  diameter',
      'material <|>  diameter',
    );
    const items = await itemsAt(none);
    const grade = items.find(one => one.label === 'austenitic-stainless-316')!;
    expect(grade.detail).toMatch(/^generic grade/);
    const entry = grade.additionalTextEdits![0]!.newText;
    expect(entry).toContain('generic grade');
    expect(entry).toContain('tensile strength 470 MPa');
    const { text } = withCursor(none.replace('material <|>', 'material austenitic-stainless-316<|>'));
    const document = await bed.open(`${text}${entry}`);
    expect(listed(document.diagnostics)).not.toMatch(/text\//);
  });
});

describe('completion after a space', () => {
  const after = async (instead: string, typed: string) =>
    (await itemsAt(typing(instead, typed), ' ')).map(one => one.label).join(', ');
  it('goes on with what was begun', async () => {
    expect(await after('650 rpm', '650 ')).toBe('rpm, rad/s, rev/s, deg/s');
    expect(await after('at medium', 'at ')).toBe('medium');
    expect(await after('left [drawing]', '')).toBe('left, right, unknown');
  });
  it('is quiet where nothing must follow', async () => {
    expect(await after('  fuel diesel\n', '  fuel diesel\n  ')).toBe('');
    expect(await after('650 rpm', '650 rpm ')).toBe('');
  });
});

describe('completion where the text is broken', () => {
  it('lives on when a block before is not closed', async () => {
    const open = withChange('  housing SAE-3\n}', '  housing SAE-3\n');
    expect(await labels(open.replace('650 rpm', '650 <|>'))).toContain('rpm');
    expect(await labels(open.replace('at medium', 'at <|>'))).toBe('medium');
  });
  it('stays silent in words and comments', async () => {
    expect(await labels(typing('"harbour', '"harb'))).toBe('');
    expect(await labels(`${SPEC}// low <|>`)).toBe('');
  });
});

const MANY = times(4_000, 20_000);

describe(`a catalogue of ${MANY} engines`, () => {
  it('is offered in part, which says so, and each of them by its letters', async () => {
    const engine = CATALOGUE.slice(CATALOGUE.indexOf('engine '), CATALOGUE.indexOf('gear '));
    const many = Array.from({ length: MANY }, (_, at) => `engine Heron-${at} {\n  mass ${at + 1} kg\n}\n`);
    const marked = `${many.join('')}${engine}${typing('engine Kittiwake-9 at medium', 'engine ').slice(SPEC.indexOf('gear Alder'))}`;
    const offered = async (typed: string) => {
      const { text, offset } = withCursor(marked.replace('<|>', `${typed}<|>`));
      const document = await bed.open(text, 'many.shaft');
      const list = await bed.services.lsp.CompletionProvider!.getCompletion(document, {
        textDocument: { uri: document.uri.toString() },
        position: positionOf(document, offset),
      });
      expect(list!.isIncomplete).toBe(true);
      expect(JSON.stringify(list).length).toBeLessThan(300_000);
      return list!.items.map(one => one.label);
    };
    const first = await offered('');
    expect(first).toHaveLength(300);
    expect(await offered(`Heron-${MANY / 10 - 1}`)).toContain(`Heron-${MANY - 2}`);
    expect(await offered('ktwk')).toEqual(['Kittiwake-9']);
  });
});
