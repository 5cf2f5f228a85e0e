import type { LangiumDocument } from 'langium';
import { describe, expect, it } from 'vitest';
import type { CodeLens, DocumentSymbol, SelectionRange } from 'vscode-languageserver';
import { selectionRanges } from '../../src/server/selection-ranges.js';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from '../../src/server/semantic-tokens.js';
import { CATALOGUE, SPEC, VESSEL, withChange } from './specs.js';
import { positionOf, Testbed, withCursor } from './testbed.js';

const bed = new Testbed();
const about = (document: LangiumDocument) => ({ textDocument: { uri: document.uri.toString() } });
const WHOLE = { start: { line: 0, character: 0 }, end: { line: 9999, character: 0 } };

describe('inlay hints', () => {
  async function hints(spec: string, settings: Record<string, unknown> = {}): Promise<string[]> {
    await bed.services.settings.changed({} as never, { tailshaft: settings });
    const document = await bed.open(spec);
    const found = await bed.services.lsp.InlayHintProvider!.getInlayHints(document, {
      ...about(document),
      range: WHOLE,
    });
    await bed.services.settings.changed({} as never, { tailshaft: {} });
    return found!.map(({ position, label }) => {
      const line = spec.split('\n')[position.line]!;
      return `${line.slice(0, position.character).trim()} «${label}»`;
    });
  }
  it('show speed, torque and hand beside the parts', async () => {
    const found = await hints(SPEC);
    expect(found).toContain('shaft «turns 1126 rpm»');
    expect(found).toContain('shaft «carries 2468 N·m»');
    expect(found).toContain('propeller «needs left hand»');
    expect(found).toContain('propeller «needs right hand»');
    expect(found.some(one => /^shaftline Port «least margin \+[\d.]+ %»$/.test(one))).toBe(true);
  });
  it('stand behind the name of a line that mirrors another', async () => {
    const at = VESSEL.indexOf('    shaftline Starboard');
    const mirrored = `${VESSEL.slice(0, at)}    shaftline Starboard mirrors Port { ahead clutch B  propeller hand right }\n  }\n}\n`;
    const found = await hints(`${CATALOGUE}\n${mirrored}`);
    expect(found).toContain('shaftline Starboard «turns 1126 rpm»');
  });
  it('can each be switched off', async () => {
    const off = { shaftSpeed: false, shaftTorque: false, propellerHand: false, margins: false };
    expect(await hints(SPEC, { hints: off })).toEqual([]);
    expect(await hints(SPEC, { hints: { ...off, siUnits: true } })).toContain(
      'propeller { hand left [drawing]  blades 4  diameter 26 in «660.4 mm»',
    );
  });
});

describe('code lenses', () => {
  it('count the checks of vessel and lines, and lead to the sheet', async () => {
    const document = await bed.open(withChange('hand left', 'hand right'));
    const lenses = (await bed.services.lsp.CodeLensProvider!.provideCodeLens(
      document,
      about(document),
    )) as CodeLens[];
    expect(lenses).toHaveLength(3);
    expect(lenses[0]!.command!.title).toMatch(/^\d+ hold, 1 fails, 0 cannot tell, least margin \+/);
    expect(lenses[1]!.command).toMatchObject({
      command: 'tailshaft.showSheet',
      arguments: [document.uri.toString(), 'Ternhaven', 'proposed.Port'],
    });
    expect(lenses[2]!.command!.title).toMatch(/^\d+ hold, 0 fail,/);
  });
});

describe('document symbols', () => {
  it('outline entries and vessels', async () => {
    const document = await bed.open(SPEC);
    const outline = (symbols: DocumentSymbol[], depth = 0): string[] =>
      symbols.flatMap(one => [
        `${'  '.repeat(depth)}${one.name}${one.detail ? ` (${one.detail})` : ''}`,
        ...outline(one.children ?? [], depth + 1),
      ]);
    const symbols = await bed.services.lsp.DocumentSymbolProvider!.getSymbols(document, about(document));
    expect(outline(symbols as DocumentSymbol[]).join('\n')).toMatchInlineSnapshot(`
      "Kittiwake-9 (engine, six-cylinder diesel)
        rating medium
      Alder-63 (gear, down-angle reduction gear)
        ratio 2.04:1
        ratio 2.52:1
      Rowan-7 (gear, small reduction gear)
        ratio 2:1
      high-strength-stainless (shaft material)
      Ternhaven (harbour pilot cutter)
        proposed (arrangement)
          Port (shaft line)
            engine (Kittiwake-9)
            gear (Alder-63)
            shaft
            propeller
          Starboard (shaft line)
            engine (Kittiwake-9)
            gear (Alder-63)
            shaft
            propeller"
    `);
  });
});

describe('workspace symbols', () => {
  it('find entries, vessels and lines by part of the name', async () => {
    await bed.open(SPEC);
    const find = async (query: string) =>
      (await bed.services.shared.lsp.WorkspaceSymbolProvider!.getSymbols({ query })).map(
        one => `${one.name} in ${one.containerName}`,
      );
    expect(await find('ald')).toEqual(['Alder-63 in gear']);
    expect(await find('Star')).toEqual(['Starboard in Ternhaven proposed']);
    expect(await find('xyz')).toEqual([]);
  });
});

describe('folding', () => {
  it('folds blocks, comments and imports, and leaves the closing brace in sight', async () => {
    const document = await bed.open(
      'import "a"\nimport "b"\n\n// one\n// two\nengine E {\n  rating light {\n    power 1 kW at 1 rpm\n  }\n}\n/* three\nfour */\n',
    );
    const ranges = await bed.services.lsp.FoldingRangeProvider!.getFoldingRanges(document, about(document));
    expect(ranges!.map(one => `${one.startLine}-${one.endLine} ${one.kind ?? 'block'}`)).toEqual([
      '5-8 block',
      '6-7 block',
      '3-4 comment',
      '10-11 comment',
      '0-1 imports',
    ]);
  });
});

describe('selection', () => {
  it('grows from the word outwards', async () => {
    const { text, offset } = withCursor('gear G {\n  ratio 2:1 {\n    rated medium 0.<|>2 kW/rpm\n  }\n}\n');
    const document = await bed.open(text);
    const grown: string[] = [];
    const [first] = selectionRanges(document, [positionOf(document, offset)]);
    for (let one: SelectionRange | undefined = first; one; one = one.parent)
      grown.push(document.textDocument.getText(one.range).replace(/\s+/g, ' ').trim());
    expect(grown).toEqual([
      '0.2',
      'rated medium 0.2 kW/rpm',
      'rated medium 0.2 kW/rpm',
      '{ rated medium 0.2 kW/rpm }',
      'ratio 2:1 { rated medium 0.2 kW/rpm }',
      'ratio 2:1 { rated medium 0.2 kW/rpm }',
      '{ ratio 2:1 { rated medium 0.2 kW/rpm } }',
      'gear G { ratio 2:1 { rated medium 0.2 kW/rpm } }',
      'gear G { ratio 2:1 { rated medium 0.2 kW/rpm } }',
    ]);
  });
});

describe('semantic tokens', () => {
  async function colours(spec: string, from = 0, to = 9999): Promise<string[]> {
    const document = await bed.open(spec);
    const { data } = await bed.services.lsp.SemanticTokenProvider!.semanticHighlightRange(document, {
      ...about(document),
      range: { start: { line: from, character: 0 }, end: { line: to, character: 0 } },
    });
    const found: string[] = [];
    let line = 0;
    let character = 0;
    for (let at = 0; at < data.length; at += 5) {
      const [down = 0, right = 0, length = 0, type = 0, modifiers = 0] = data.slice(at, at + 5);
      character = down === 0 ? character + right : right;
      line += down;
      const word = spec.split('\n')[line]!.slice(character, character + length);
      found.push(`${word}:${TOKEN_TYPES[type]}${modifiers ? `.${TOKEN_MODIFIERS[0]}` : ''}`);
    }
    return found;
  }
  it('tell words, values, units and names apart', async () => {
    const text =
      'gear G "title" {\n  ratio 2:1 {\n    clutch A output same seen from aft\n    rated medium 0.2 kW/rpm [sister vessel]\n  }\n}\n';
    expect((await colours(text)).join(' ')).toMatchInlineSnapshot(
      `"gear:keyword G:class.declaration "title":string ratio:property 2:1:number clutch:property A:variable.declaration output:property same:enumMember seen:keyword from:keyword aft:enumMember rated:property medium:variable.declaration 0.2:number kW/rpm:unit [:decorator sister:decorator vessel:decorator ]:decorator"`,
    );
  });
  it('colour a line, whatever is asked for beside it', async () => {
    const all = await Promise.all([colours(SPEC), colours(SPEC, 58, 60)]);
    expect(all[1]).toEqual(
      'vessel:keyword Ternhaven:namespace.declaration "harbour pilot cutter":string duty:property medium:enumMember hours:property 1500:number per:keyword year:keyword passengers:property none:enumMember'.split(
        / (?!pilot|cutter)/,
      ),
    );
    expect(all[0]!.length).toBeGreaterThan(200);
  });
});
