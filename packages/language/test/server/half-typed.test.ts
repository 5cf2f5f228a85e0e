import { readFileSync } from 'node:fs';
import type { LangiumDocument } from 'langium';
import { beforeAll, describe, expect, it } from 'vitest';
import { times } from '../../../../tests/support/share.js';
import { CallHierarchy } from '../../src/server/call-hierarchy.js';
import { propertyHelp } from '../../src/server/help/property-help.js';
import { linkedEditing } from '../../src/server/linked-editing.js';
import { outlineOf } from '../../src/server/outline.js';
import { selectionRanges } from '../../src/server/selection-ranges.js';
import { sourceLinks } from '../../src/server/source-links.js';
import { workingAt } from '../../src/server/working.js';
import { randomFrom } from './random.js';
import { positionOf, Testbed } from './testbed.js';

const example = (path: string) =>
  readFileSync(new URL(`../../../../examples/${path}.shaft`, import.meta.url), 'utf8');
const PARTS = ['couplings', 'engines', 'gears', 'materials', 'motors'];
const FILES = Object.fromEntries(
  PARTS.map(name => [`catalogue/${name}.shaft`, example(`catalogue/${name}`)]),
);
const SPEC = example('pilot-cutter/ternhaven').replace('../catalogue', 'catalogue');
const GEARS = FILES['catalogue/gears.shaft']!;
const OPTIONS = { tabSize: 2, insertSpaces: true };
const NO_TOKEN = { isCancellationRequested: false } as never;

/** Every service of the editor, asked at one place of a text. */
async function askAll(bed: Testbed, document: LangiumDocument, offset: number): Promise<void> {
  const { services } = bed;
  const { lsp } = services;
  const textDocument = { uri: document.uri.toString() };
  const position = positionOf(document, offset);
  const at = { textDocument, position };
  const range = { start: { line: 0, character: 0 }, end: document.textDocument.positionAt(1e9) };
  await lsp.HoverProvider!.getHoverContent(document, at, NO_TOKEN);
  await lsp.CompletionProvider!.getCompletion(document, at, NO_TOKEN);
  await lsp.InlayHintProvider!.getInlayHints(document, { textDocument, range }, NO_TOKEN);
  await lsp.CodeLensProvider!.provideCodeLens(document, { textDocument }, NO_TOKEN);
  await lsp.SemanticTokenProvider!.semanticHighlight(document, { textDocument }, NO_TOKEN);
  await lsp.DocumentSymbolProvider!.getSymbols(document, { textDocument }, NO_TOKEN);
  await lsp.FoldingRangeProvider!.getFoldingRanges(document, { textDocument }, NO_TOKEN);
  await lsp.DefinitionProvider!.getDefinition(document, at, NO_TOKEN);
  await lsp.ReferencesProvider!.findReferences(
    document,
    { ...at, context: { includeDeclaration: true } },
    NO_TOKEN,
  );
  await lsp.DocumentHighlightProvider!.getDocumentHighlight(document, at, NO_TOKEN);
  await lsp.DocumentLinkProvider!.getDocumentLinks(document, { textDocument }, NO_TOKEN);
  await lsp.Formatter!.formatDocument(document, { textDocument, options: OPTIONS }, NO_TOKEN);
  for (const ch of ['}', '\n'])
    await lsp.Formatter!.formatDocumentOnType(document, { ...at, ch, options: OPTIONS }, NO_TOKEN);
  await lsp.CodeActionProvider!.getCodeActions(
    document,
    { textDocument, range: { start: position, end: position }, context: { diagnostics: [] } },
    NO_TOKEN,
  );
  await sourceLinks(services, document);
  selectionRanges(document, [position]);
  linkedEditing(services, document, position);
  propertyHelp(document, position);
  workingAt(services, document, offset);
  outlineOf(services, document);
  const hierarchy = new CallHierarchy(services);
  for (const item of hierarchy.prepare(document, position) ?? []) {
    hierarchy.incoming(document, item);
    hierarchy.outgoing(document, item);
  }
}

const CUTS = Number(process.env.HALF_TYPED_CUTS ?? times(10, 25));

/** Texts cut where somebody stopped typing, and texts with a piece gone from their middle. */
describe('half-typed text', () => {
  const random = randomFrom(20260302);
  let bed: Testbed;
  beforeAll(() => {
    bed = new Testbed(FILES);
  });

  it.each([
    ['a vessel', SPEC, 'ternhaven.shaft'],
    ['a catalogue', GEARS, 'catalogue/gears.shaft'],
  ])('is answered by every service, cut anywhere: %s', async (_what, whole, path) => {
    for (let cut = 0; cut < CUTS; cut++) {
      const at = random(whole.length);
      const text = cut % 2 === 0 ? whole.slice(0, at) : whole.slice(0, at) + whole.slice(at + 1 + random(40));
      const document = await bed.open(text, path);
      const places = [at, random(text.length + 1), Math.max(0, at - 1)];
      for (const place of places) {
        try {
          await askAll(bed, document, Math.min(place, text.length));
        } catch (error) {
          throw new Error(`at ${place} of the text cut at ${at}: …${text.slice(at - 60, at)}`, {
            cause: error,
          });
        }
      }
    }
    expect(bed.failures).toEqual([]);
  });
});
