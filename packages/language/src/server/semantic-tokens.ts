import { findUnit } from '@tailshaft/mechanics';
import { JOINING, UNKNOWN } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import type { SemanticTokenProvider } from 'langium/lsp';
import {
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensOptions,
  type SemanticTokensParams,
  type SemanticTokensRangeParams,
} from 'vscode-languageserver';
import { withNested } from '../elaborate/vessel.js';
import type { BlockReading } from '../reading/block.js';
import type { DocumentReading } from '../reading/document.js';
import type { Place } from '../reading/place.js';
import { KEYWORDS } from '../services/keywords.js';
import { scan, type Token } from '../text/scan.js';
import type { TailshaftServices } from './services.js';

/** `unit` is our own; every other type is one that all themes colour. */
export const TOKEN_TYPES = [
  'keyword',
  'property',
  'enumMember',
  'number',
  'unit',
  'string',
  'class',
  'namespace',
  'variable',
  'decorator',
] as const;
export const TOKEN_MODIFIERS = ['declaration'] as const;
type Type = (typeof TOKEN_TYPES)[number];

const index = (names: readonly string[]) => Object.fromEntries(names.map((name, at) => [name, at]));

/** Colours by meaning. Each request works on its own: nothing of one is kept for another. */
export class SemanticTokenColours implements SemanticTokenProvider {
  readonly tokenTypes = index(TOKEN_TYPES);
  readonly tokenModifiers = index(TOKEN_MODIFIERS);
  readonly semanticTokensOptions: SemanticTokensOptions = {
    legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
    // Without this word the library offers deltas, which nobody here answers.
    full: { delta: false },
    range: true,
  };

  constructor(private readonly services: TailshaftServices) {}

  semanticHighlight(document: LangiumDocument, _params: SemanticTokensParams): SemanticTokens {
    return this.coloured(document, 0, Number.POSITIVE_INFINITY);
  }

  semanticHighlightRange(document: LangiumDocument, { range }: SemanticTokensRangeParams): SemanticTokens {
    const text = document.textDocument;
    return this.coloured(document, text.offsetAt(range.start), text.offsetAt(range.end));
  }

  semanticHighlightDelta(document: LangiumDocument): SemanticTokens {
    return this.coloured(document, 0, Number.POSITIVE_INFINITY);
  }

  private coloured(document: LangiumDocument, from: number, to: number): SemanticTokens {
    const builder = new SemanticTokensBuilder();
    const text = document.textDocument;
    const stretches = stretchesIn(this.services.project.reading(document));
    let at = 0;
    for (const token of scan(text.getText())) {
      while (at < stretches.length && stretches[at]!.end <= token.start) at += 1;
      if (token.end < from || token.start > to) continue;
      const stretch = stretches[at];
      const within =
        stretch && stretch.start <= token.start && token.end <= stretch.end ? stretch : undefined;
      const type = typeOf(token, within?.type);
      if (!type) continue;
      const { line, character } = text.positionAt(token.start);
      const modifiers = within?.type === type ? within.modifiers : 0;
      builder.push(line, character, token.text.length, TOKEN_TYPES.indexOf(type), modifiers);
    }
    return { data: builder.build().data };
  }
}

/** A stretch of the text of which a reading knows what it is. */
interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly type: Type;
  readonly modifiers: number;
}

const DECLARATION = 1;

/** What a reading knows, in the order of the text. */
function stretchesIn(reading: DocumentReading): Stretch[] {
  const stretches: Stretch[] = [];
  const set = (place: { start: number; end: number } | undefined, type: Type, modifiers = 0) => {
    if (place && place.end > place.start)
      stretches.push({ start: place.start, end: place.end, type, modifiers });
  };
  const block = (outer: BlockReading) => {
    for (const one of withNested(outer)) {
      for (const fact of one.facts) {
        set(fact.words, 'property');
        set(fact.value, 'enumMember');
        set(fact.evidence, 'decorator');
      }
      for (const nested of one.nested) {
        set(nested.words, 'property');
        set(nested.head?.value, 'variable', DECLARATION);
      }
    }
  };
  const named = (name: string, place: Place, type: Type) => {
    if (name) set(place, type, DECLARATION);
  };
  for (const entry of reading.entries) {
    block(entry.facts);
    named(entry.name, entry.namePlace, 'class');
  }
  for (const vessel of reading.vessels) {
    for (const settings of Object.values(vessel.settings)) block(settings);
    for (const arrangement of vessel.arrangements) {
      for (const line of arrangement.lines) {
        block(line.facts);
        for (const part of line.parts) {
          block(part.facts);
          set(part.namePlace, 'class');
        }
        for (const mode of line.modes) {
          block(mode.facts);
          named(mode.name, mode.namePlace, 'variable');
        }
        named(line.name, line.namePlace, 'variable');
        set(line.mirrors?.place, 'variable');
      }
      named(arrangement.name, arrangement.namePlace, 'namespace');
      set(arrangement.revises?.place, 'namespace');
      for (const line of arrangement.removed) set(line.place, 'variable');
    }
    named(vessel.name, vessel.namePlace, 'namespace');
  }
  return stretches.sort((a, b) => a.start - b.start);
}

/** Words inside a value that join its parts. */
const JOINS: ReadonlySet<string> = new Set([...JOINING, UNKNOWN]);

function typeOf(token: Token, within: Type | undefined): Type | undefined {
  if (token.kind === 'string') return 'string';
  if (token.kind === 'number') return 'number';
  if (within === 'decorator' && token.kind !== 'mark') return 'decorator';
  if (token.kind !== 'word') return undefined;
  if (within === 'enumMember') {
    if (JOINS.has(token.text)) return 'keyword';
    return findUnit(token.text) ? 'unit' : 'enumMember';
  }
  if (within) return within;
  if (KEYWORDS.has(token.text) || token.text === UNKNOWN) return 'keyword';
  return findUnit(token.text) && token.text !== 'in' ? 'unit' : undefined;
}
