import { describe, expect, it } from 'vitest';
import type { CompletionItem, MarkupContent } from 'vscode-languageserver';
import { CATALOGUE, SPEC, withChange } from './specs.js';
import { positionOf, Testbed, withCursor } from './testbed.js';

const bed = new Testbed();

async function hover(marked: string): Promise<string> {
  const { text, offset } = withCursor(marked);
  const document = await bed.open(text);
  const found = await bed.services.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return (found?.contents as MarkupContent | undefined)?.value ?? '';
}

async function items(marked: string): Promise<CompletionItem[]> {
  const { text, offset } = withCursor(marked);
  const document = await bed.open(text);
  const found = await bed.services.lsp.CompletionProvider!.getCompletion(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return found!.items;
}

const on = (words: string, spec = SPEC) => spec.replace(words, `<|>${words}`);
const typing = (instead: string, typed: string, spec = SPEC) => withChange(instead, `${typed}<|>`, spec);
const inLine = (facts: string) => withChange('diameter 65 mm [drawing] }', `${facts} }`);

/** Figures: SAE J617, J620 and J755 as tabulated in the mechanics package, where each carries its source. */
describe('hover on a standard size shows its row, its neighbours and its source', () => {
  it('of a flywheel housing', async () => {
    const text = await hover(on('SAE-3\n}'));
    expect(text.slice(text.indexOf('**flywheel housing'))).toMatchInlineSnapshot(`
      "**flywheel housing SAE-3**

      | size | pilot bore | outside diameter | bolt circle | holes | thread | depth to crankshaft flange | bore run-out |
      | --- | --- | --- | --- | --- | --- | --- | --- |
      | SAE-2 | 447.675 to 447.802 mm (17.625 to 17.63 in) | 488.95 mm (19.25 in) | 466.725 mm (18.375 in) | 12 | 3/8-16 or M10 | 100.076 mm (3.94 in) | 0.2 mm |
      | **SAE-3** | **409.575 to 409.702 mm (16.125 to 16.13 in)** | **450.85 mm (17.75 in)** | **428.625 mm (16.875 in)** | **12** | **3/8-16** | **100.076 mm (3.94 in)** | **0.2 mm** |
      | SAE-4 | 361.95 to 362.077 mm (14.25 to 14.255 in) | 403.225 mm (15.875 in) | 381 mm (15 in) | 12 | 3/8-16 or M10 | 100.076 mm (3.94 in) | not printed |

      Source: SAE J617, table of housing sizes, four copies (published)."
    `);
  });
  it('the same on the gear that bolts to it', async () => {
    expect(await hover(withChange('input housing SAE-3', 'input housing <|>SAE-1/2'))).toContain(
      '**flywheel housing SAE-1/2**',
    );
  });
  it('of a flywheel, with what of it is from memory', async () => {
    const spec = withChange('  housing SAE-3\n}', '  housing SAE-3\n  flywheel size 11.5\n}');
    const text = await hover(on('11.5', spec));
    expect(text.slice(text.indexOf('**flywheel size 11.5'))).toMatchInlineSnapshot(`
      "**flywheel size 11.5**

      | size | metric name | pilot | bolt circle | clear of the recess | housing depth | face to housing face | pilot bearing bore | holes | thread |
      | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
      | 10 | 255 | 314.325 mm (12.375 in) | 295.275 mm (11.625 in) | 276.352 mm (10.88 in) | 100.076 mm (3.94 in) | 53.848 mm (2.12 in) | 72 mm | 8 | 3/8-16 |
      | **11.5** | **290** | **352.425 mm (13.875 in)** | **333.375 mm (13.125 in)** | **314.452 mm (12.38 in)** | **100.076 mm (3.94 in)** | **39.624 mm (1.56 in)** | **72 mm** | **8** | **3/8-16** |
      | 14 | 355 | 466.725 mm (18.375 in) | 438.15 mm (17.25 in) | 409.448 mm (16.12 in) | 100.076 mm (3.94 in) | 25.4 mm (1 in) | 80 mm | 8 | 1/2-13 |

      Source: SAE J620, table of flywheel sizes, two or three copies (published)."
    `);
    const large = await hover(withChange('  housing SAE-3\n}', '  flywheel size <|>21\n}'));
    expect(large).toContain('Source of holes and thread: SAE J620, holes and threads (from memory).');
  });
  it('of a shaft end, on each fact that the table is about', async () => {
    const shaft = inLine('diameter 1 3/4 in  taper 1:16  taper length 4 in  keyway width 7/16 in');
    for (const words of ['1 3/4 in', '1:16', '4 in  key', '7/16 in']) {
      const text = await hover(on(words, shaft));
      expect(text, words).toContain('**propeller end of a shaft of 1 3/4 in**');
      expect(text).toContain('| **1 3/4 in** | **44.45 mm** | **1:16** |');
      expect(text).toContain('| 1 1/2 in | 38.1 mm |');
      expect(text).toContain('| 2 in | 50.8 mm |');
      expect(text).toContain('Source: SAE J755, dimensions of shaft ends, two copies (published).');
    }
    expect(await hover(on('30 mm', inLine('diameter 30 mm')))).toContain(
      "Source: ISO 4566, taper 1:10, dimensions from one propeller vendor's order sheet (from memory).",
    );
  });
  it('says which sizes lie beside a shaft of none', async () => {
    const text = await hover(on('65 mm'));
    expect(text).toContain('65 mm is not a standard shaft size in the tables at hand.');
    expect(text).toMatch(/\| 2 1\/2 in \|[^\n]*\n\| 2 3\/4 in \|/);
  });
  it('of the bore of a propeller', async () => {
    const spec = withChange('hand left [drawing]', 'hand left [drawing]  bore large end <|>2 in');
    expect(await hover(spec)).toContain('**propeller end of a shaft of 2 in**');
  });
  it('of an output flange, and says when it is none of the named ones', async () => {
    const flange = (facts: string) =>
      withChange('  slip device offered\n', `  slip device offered\n  output flange { ${facts} }\n`);
    const named = await hover(on('5 in', flange('outside diameter 5 in  bolt circle 4.25 in')));
    expect(named).toContain('**output flange of 5 in**');
    expect(named).toContain('(from memory)');
    const own = await hover(on('121 mm', flange('outside diameter 146 mm  bolt circle 121 mm')));
    expect(own).toContain('146 mm is not a named size of the inch series');
    expect(await hover(on('output flange {', flange('outside diameter 4 in')))).toContain(
      '**output flange of 4 in**',
    );
  });
  it('of a generic grade that a material names, among those of its family', async () => {
    const spec = withChange(
      'shaft material high-strength-stainless {',
      'shaft material high-strength-stainless "austenitic, UNS S20910 type" {',
    );
    for (const words of ['high-strength-stainless "', 'high-strength-stainless  diameter']) {
      const text = await hover(on(words, spec));
      expect(text).toContain('**generic grade high-strength austenitic 22Cr-13Ni-5Mn**');
      expect(text).toContain('**482.6 MPa (70000 psi)**');
      expect(text).toContain('carbon steel');
      expect(text).toContain('Note: small bar only');
    }
    expect(await hover(on('high-strength-stainless {'))).not.toContain('generic grade');
  });
});

describe('completion of standard sizes', () => {
  const doc = (item: CompletionItem | undefined) => (item?.documentation as MarkupContent | undefined)?.value;
  it('offers housings and flywheels with their figures', async () => {
    const housings = await items(typing('housing SAE-3\n}', 'housing '));
    expect(housings.map(one => one.label)).toEqual([
      'SAE-00',
      'SAE-0',
      'SAE-1/2',
      'SAE-1',
      'SAE-2',
      'SAE-3',
      'SAE-4',
      'SAE-5',
      'SAE-6',
      'unknown',
    ]);
    const three = housings.find(one => one.label === 'SAE-3');
    expect(three?.detail).toBe('bolt circle 428.625 mm (16.875 in), holes 12');
    expect(doc(three)).toContain('Source: SAE J617, table of housing sizes, four copies (published).');
    const wheels = await items(typing('housing SAE-3\n}', 'flywheel size '));
    expect(wheels.map(one => one.label)).toContain('11.5');
  });
  it('offers shafts, their tapers, and the bores of hubs', async () => {
    const shafts = await items(inLine('diameter <|>'));
    expect(shafts.map(one => one.label)).toEqual(expect.arrayContaining(['1 3/4 in', '2 in', '30 mm']));
    expect(doc(shafts.find(one => one.label === '2 in'))).toContain('| 1 3/4 in |');
    expect((await items(inLine('diameter 2 in  taper <|>'))).map(one => one.label)).toEqual([
      '1:16',
      '1:12',
      '1:10',
      'unknown',
    ]);
  });
  it('goes on with the number that was begun', async () => {
    const begun = await items(inLine('diameter 2<|>'));
    expect(begun.map(one => one.label)).toEqual(expect.arrayContaining(['mm', '2 in', '2 1/4 in']));
    const whole = begun.find(one => one.label === '2 1/4 in')!.textEdit as { range: { start: object } };
    expect(whole).toMatchObject({ newText: '2 1/4 in' });
    const { text, offset } = withCursor(inLine('diameter 2<|>'));
    const document = await bed.open(text);
    expect(whole.range.start).toEqual(positionOf(document, offset - 1));
  });
  it('writes entries of generic grades that read without a mistake, in the figures of their source', async () => {
    const grades = (await items(`${CATALOGUE}<|>`)).filter(one => one.label.startsWith('shaft material … '));
    expect(grades.length).toBeGreaterThan(9);
    for (const one of grades.slice(1)) {
      const { newText } = one.textEdit as { newText: string };
      const written = newText.replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\d/g, '');
      const document = await bed.open(written);
      // A grade whose torsional yield no table prints says so: that is a question, no mistake.
      const mistakes = document.diagnostics!.filter(found => found.code !== 'units/torsional-yield');
      expect(mistakes, written).toEqual([]);
    }
    const first = grades.find(one => one.label.includes('S20910'))!.textEdit as { newText: string };
    expect(first.newText).toContain('\ttorsional yield 70000 psi\n');
  });
});
