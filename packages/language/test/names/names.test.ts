import { type LangiumDocument, URI } from 'langium';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Location, type Range, ResponseError, TextDocumentEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { NameProviders } from '../../src/names/providers.js';
import { Specs } from '../edit/specs.js';
import { uriOf } from '../server/memory-files.js';

const FILES = {
  'ternhaven.shaft': `import "parts"
import "gears.shaft"
vessel Ternhaven {
  arrangement existing {
    shaftline Port {
      engine Old-Eight at light
      gear Rowan-7 ratio 2.0:1 ahead clutch A
      shaft { material steel-x }
    }
    shaftline S2 mirrors Port { side starboard  ahead clutch B }
  }
  arrangement proposed revises existing {
    shaftline Port {
      retain engine
      modify gear { ahead clutch B }
      retain shaft
    }
    shaftline S2 {
      retain engine
      replace gear ratio 3:1 ahead clutch A {
        lever push engages clutch A
        clutch A output same
        clutch C output opposite
      }
      retain shaft
    }
  }
  accept rotation/same-hand on proposed.S2.gear because "x" by "y"
  accept rotation/same-hand on S2 because "x" by "y"
}
`,
  'parts/engines.shaft':
    'engine Old-Eight {\n  rating light { power 200 kW at 2400 rpm }\n}\nengine Spare { mass 9 kg }\n',
  'parts/steel.shaft':
    'shaft material steel-x { density 7890 kg/m3 }\nshaft material bronze { density 8800 kg/m3 }\n',
  'gears.shaft': `gear Rowan-7 {
  lever push engages clutch A
  ratio 2:1 {
    clutch A output same
    clutch B output opposite
  }
  ratio 2.5:1 {
    clutch A output opposite
    clutch B output same
  }
}
gear Rowan-9 { mass 9 kg }
`,
  'other.shaft':
    'import "gears"\nvessel Other { arrangement a { shaftline Port { gear Rowan-7 ratio 2:1 ahead clutch A } } }\n',
};

let specs: Specs;
let providers: NameProviders;
beforeAll(async () => {
  specs = await Specs.read(FILES);
  const { shared, language } = specs.core;
  const other = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uriOf('other.shaft')));
  await language.project.load(other);
  providers = new NameProviders({ project: language.project, shared: shared as never });
});

/** The document and position of `<|>` in a piece of one of the files, which must be there once. */
function at(piece: string, path = 'ternhaven.shaft') {
  const text = FILES[path as keyof typeof FILES];
  const plain = piece.replace('<|>', '');
  const start = text.indexOf(plain);
  if (start < 0) throw new Error(`${path} does not say ${plain}`);
  const document = documentOf(uriOf(path));
  const position = document.textDocument.positionAt(start + piece.indexOf('<|>'));
  return { document, position, textDocument: { uri: uriOf(path) } };
}

function documentOf(uri: string): LangiumDocument {
  return specs.core.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))!;
}

/** `gears.shaft:4 clutch [A] output same`. */
function shown({ uri, range }: { uri: string; range: Range }): string {
  const text = documentOf(uri).textDocument;
  const line = text.getText().split('\n')[range.start.line]!;
  const marked = `${line.slice(0, range.start.character)}[${line.slice(range.start.character, range.end.character)}]${line.slice(range.end.character)}`;
  return `${uri.replace(uriOf(''), '')}:${range.start.line + 1} ${marked.trim()}`;
}

function references(piece: string, path?: string, includeDeclaration = true): string {
  const { document, ...params } = at(piece, path);
  const found: Location[] = providers.findReferences(document, {
    ...params,
    context: { includeDeclaration },
  });
  return found.map(shown).sort().join('\n');
}

function definition(piece: string, path?: string): string {
  const { document, ...params } = at(piece, path);
  return (providers.getDefinition(document, params) ?? [])
    .map(one => shown({ uri: one.targetUri, range: one.targetSelectionRange }))
    .join('\n');
}

describe('definition', () => {
  it('leads from a part to its entry, from a grade to its material', () => {
    expect(definition('gear Row<|>an-7 ratio')).toBe('gears.shaft:1 gear [Rowan-7] {');
    expect(definition('material steel<|>-x')).toBe(
      'parts/steel.shaft:1 shaft material [steel-x] { density 7890 kg/m3 }',
    );
  });

  it('leads to the clutch of the ratio that is fitted, also through a mirror and a revision', () => {
    expect(definition('2.0:1 ahead clutch <|>A')).toBe('gears.shaft:4 clutch [A] output same');
    expect(definition('side starboard  ahead clutch <|>B')).toBe('gears.shaft:5 clutch [B] output opposite');
    expect(definition('modify gear { ahead clutch <|>B')).toBe('gears.shaft:5 clutch [B] output opposite');
    expect(definition('3:1 ahead clutch <|>A')).toBe('ternhaven.shaft:22 clutch [A] output same');
  });

  it('leads to ratio and rating', () => {
    expect(definition('ratio 2<|>.0:1')).toBe('gears.shaft:3 ratio [2:1] {');
    expect(definition('at lig<|>ht')).toBe(
      'parts/engines.shaft:2 rating [light] { power 200 kW at 2400 rpm }',
    );
  });

  it('leads to lines and arrangements, in every one of them', () => {
    expect(definition('mirrors Po<|>rt')).toBe(
      'ternhaven.shaft:5 shaftline [Port] {\nternhaven.shaft:13 shaftline [Port] {',
    );
    expect(definition('revises exis<|>ting')).toBe('ternhaven.shaft:4 arrangement [existing] {');
    expect(definition('on prop<|>osed.S2')).toBe(
      'ternhaven.shaft:12 arrangement [proposed] revises existing {',
    );
  });

  it('leads to every file of an import', () => {
    expect(definition('import "pa<|>rts"')).toBe(
      'parts/engines.shaft:1 []engine Old-Eight {\nparts/steel.shaft:1 []shaft material steel-x { density 7890 kg/m3 }',
    );
  });

  it('leads nowhere from other words', () => {
    expect(definition('reta<|>in engine')).toBe('');
  });
});

describe('references', () => {
  it('of an entry are in every file that sees it', () => {
    expect(references('gear Row<|>an-7 {', 'gears.shaft')).toMatchInlineSnapshot(`
      "gears.shaft:1 gear [Rowan-7] {
      other.shaft:2 vessel Other { arrangement a { shaftline Port { gear [Rowan-7] ratio 2:1 ahead clutch A } } }
      ternhaven.shaft:7 gear [Rowan-7] ratio 2.0:1 ahead clutch A"
    `);
    expect(references('gear Row<|>an-7 {', 'gears.shaft', false)).not.toContain('gears.shaft');
  });

  it('of a clutch are those of its gear, and of no other', () => {
    expect(references('engages clutch <|>A', 'gears.shaft')).toMatchInlineSnapshot(`
      "gears.shaft:2 lever push engages clutch [A]
      gears.shaft:4 clutch [A] output same
      gears.shaft:8 clutch [A] output opposite
      other.shaft:2 vessel Other { arrangement a { shaftline Port { gear Rowan-7 ratio 2:1 ahead clutch [A] } } }
      ternhaven.shaft:7 gear Rowan-7 ratio 2.0:1 ahead clutch [A]"
    `);
    expect(references('3:1 ahead clutch <|>A')).toMatchInlineSnapshot(`
      "ternhaven.shaft:20 replace gear ratio 3:1 ahead clutch [A] {
      ternhaven.shaft:21 lever push engages clutch [A]
      ternhaven.shaft:22 clutch [A] output same"
    `);
  });

  it('of a line are in all arrangements and acceptances of its vessel', () => {
    expect(references('shaftline S<|>2 mirrors')).toMatchInlineSnapshot(`
      "ternhaven.shaft:10 shaftline [S2] mirrors Port { side starboard  ahead clutch B }
      ternhaven.shaft:18 shaftline [S2] {
      ternhaven.shaft:28 accept rotation/same-hand on proposed.[S2].gear because "x" by "y"
      ternhaven.shaft:29 accept rotation/same-hand on [S2] because "x" by "y""
    `);
  });

  it('of a ratio are the lines it is fitted in', () => {
    expect(references('ratio 2:<|>1 {', 'gears.shaft')).toMatchInlineSnapshot(`
      "gears.shaft:3 ratio [2:1] {
      other.shaft:2 vessel Other { arrangement a { shaftline Port { gear Rowan-7 ratio [2:1] ahead clutch A } } }
      ternhaven.shaft:7 gear Rowan-7 ratio [2.0:1] ahead clutch A"
    `);
  });

  it('are lit up in the document, declarations as such', () => {
    const { document, ...params } = at('shaftline Po<|>rt {');
    const lit = providers.getDocumentHighlight(document, params);
    expect(
      lit.map(one => `${one.kind} ${shown({ uri: document.uri.toString(), range: one.range })}`),
    ).toEqual([
      '3 ternhaven.shaft:5 shaftline [Port] {',
      '2 ternhaven.shaft:10 shaftline S2 mirrors [Port] { side starboard  ahead clutch B }',
      '3 ternhaven.shaft:13 shaftline [Port] {',
    ]);
  });
});

describe('rename', () => {
  /** All lines that differ afterwards, or why it is refused. */
  function rename(piece: string, newName: string, path?: string): string {
    const { document, ...params } = at(piece, path);
    try {
      providers.prepareRename(document, params);
      const edit = providers.rename(document, { ...params, newName });
      return (edit?.documentChanges ?? [])
        .filter(TextDocumentEdit.is)
        .flatMap(({ textDocument: { uri }, edits }) => {
          const before = documentOf(uri).textDocument;
          const after = TextDocument.applyEdits(before, edits as never).split('\n');
          const old = before.getText().split('\n');
          return after.flatMap((line, index) =>
            line === old[index] ? [] : [`${uri.replace(uriOf(''), '')}:${index + 1} ${line.trim()}`],
          );
        })
        .sort()
        .join('\n');
    } catch (error) {
      if (error instanceof ResponseError) return `refused: ${error.message}`;
      throw error;
    }
  }

  it('changes an entry in every file', () => {
    expect(rename('gear Row<|>an-7 ratio', 'Rowan-8')).toMatchInlineSnapshot(`
      "gears.shaft:1 gear Rowan-8 {
      other.shaft:2 vessel Other { arrangement a { shaftline Port { gear Rowan-8 ratio 2:1 ahead clutch A } } }
      ternhaven.shaft:7 gear Rowan-8 ratio 2.0:1 ahead clutch A"
    `);
  });

  it('changes a clutch in its gear and in the lines that run ahead on it', () => {
    expect(rename('clutch <|>A output opposite', 'L', 'gears.shaft')).toMatchInlineSnapshot(`
      "gears.shaft:2 lever push engages clutch L
      gears.shaft:4 clutch L output same
      gears.shaft:8 clutch L output opposite
      other.shaft:2 vessel Other { arrangement a { shaftline Port { gear Rowan-7 ratio 2:1 ahead clutch L } } }
      ternhaven.shaft:7 gear Rowan-7 ratio 2.0:1 ahead clutch L"
    `);
    expect(rename('clutch <|>A output same\n        clutch C', 'L')).toMatchInlineSnapshot(`
      "ternhaven.shaft:20 replace gear ratio 3:1 ahead clutch L {
      ternhaven.shaft:21 lever push engages clutch L
      ternhaven.shaft:22 clutch L output same"
    `);
  });

  it('changes a material, a line, an arrangement, a vessel', () => {
    expect(rename('material steel<|>-x', 'steel-y')).toMatchInlineSnapshot(`
      "parts/steel.shaft:1 shaft material steel-y { density 7890 kg/m3 }
      ternhaven.shaft:8 shaft { material steel-y }"
    `);
    expect(rename('shaftline S<|>2 mirrors', 'Outer')).toMatchInlineSnapshot(`
      "ternhaven.shaft:10 shaftline Outer mirrors Port { side starboard  ahead clutch B }
      ternhaven.shaft:18 shaftline Outer {
      ternhaven.shaft:28 accept rotation/same-hand on proposed.Outer.gear because "x" by "y"
      ternhaven.shaft:29 accept rotation/same-hand on Outer because "x" by "y""
    `);
    expect(rename('revises exis<|>ting', 'as-found')).toMatchInlineSnapshot(`
      "ternhaven.shaft:12 arrangement proposed revises as-found {
      ternhaven.shaft:4 arrangement as-found {"
    `);
    expect(rename('vessel Tern<|>haven', 'Curlew')).toBe('ternhaven.shaft:3 vessel Curlew {');
  });

  it('is refused with the reason', () => {
    const refused: [piece: string, newName: string, path?: string][] = [
      ['gear Row<|>an-7 {', 'Rowan-9', 'gears.shaft'],
      ['gear Row<|>an-7 {', 'vessel', 'gears.shaft'],
      ['gear Row<|>an-7 {', '7', 'gears.shaft'],
      ['gear Row<|>an-7 {', 'two words', 'gears.shaft'],
      ['gear Row<|>an-7 {', 'unknown', 'gears.shaft'],
      ['clutch <|>A output opposite', 'B', 'gears.shaft'],
      ['material steel<|>-x', 'bronze'],
      ['material steel<|>-x', 'diameter'],
      ['shaftline S<|>2 mirrors', 'Starboard'],
      ['shaftline S<|>2 mirrors', 'S.2'],
      ['shaftline S<|>2 mirrors', 'Port'],
      ['shaftline Po<|>rt {', 'P1'],
      ['revises exis<|>ting', 'proposed'],
      ['ratio 2<|>.0:1', '3:1'],
      ['at lig<|>ht', 'medium'],
    ];
    const said = refused.map(([piece, name, path]) => `${name}: ${rename(piece, name, path)}`);
    expect(said.join('\n')).toMatchInlineSnapshot(`
      "Rowan-9: refused: There is a gear Rowan-9 already, in gears.shaft: names must be unique.
      vessel: refused: "vessel" is a word of the language, so it cannot be a name.
      7: refused: "7" is not one word: a name begins with a letter, and has letters, digits and single hyphens.
      two words: refused: "two words" is not one word: a name begins with a letter, and has letters, digits and single hyphens.
      unknown: refused: "unknown" marks an open question, so it cannot be a name.
      B: refused: There is a clutch B already here: names must be unique.
      bronze: refused: There is a shaft material bronze already, in steel.shaft: names must be unique.
      diameter: refused: A property begins with "diameter", so behind "material" it would not be read as a name.
      Starboard: refused: A line called Starboard is taken for the starboard one. Write the line's side, and give it another name.
      S.2: refused: Acceptances name lines as arrangement.line, so the name of a shaft line has no "." or "/" in it.
      Port: refused: A line called Port is taken for the port one. Write the line's side, and give it another name.
      P1: refused: The name Port also says on which side the line is. Write "side port" in each line of that name first; then it can have any name.
      proposed: refused: There is an arrangement proposed already here: names must be unique.
      3:1: refused: A ratio is named by its value: change the value in the catalogue and in the lines that use it.
      medium: refused: A duty class is a word that engines, gears and vessels share: renaming it here would only cut this one off."
    `);
  });

  it('leaves alike names of other things alone', () => {
    expect(rename('clutch <|>C output', 'A-astern')).toBe(
      'ternhaven.shaft:23 clutch A-astern output opposite',
    );
  });

  it('is no matter of words that name nothing', () => {
    const { document, ...params } = at('reta<|>in engine');
    expect(providers.prepareRename(document, params)).toBeUndefined();
  });
});

describe('links', () => {
  it('open the imported files', () => {
    const { document } = at('import "pa<|>rts"');
    expect(
      providers.getDocumentLinks(document).map(one => {
        const uri = document.uri.toString();
        return `${shown({ uri, range: one.range })} -> ${one.target?.replace(uriOf(''), '')}: ${one.tooltip}`;
      }),
    ).toEqual([
      'ternhaven.shaft:1 import "[parts]" -> parts/engines.shaft: Open the first of engines.shaft, steel.shaft',
      'ternhaven.shaft:2 import "[gears.shaft]" -> gears.shaft: Open gears.shaft',
    ]);
  });
});
