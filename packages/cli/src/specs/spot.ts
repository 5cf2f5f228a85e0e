import type { Place } from '@tailshaft/language';
import { type LangiumDocuments, URI } from 'langium';

/** A stretch of text as people count: lines and columns from 1. */
export interface Spot {
  readonly shown: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly start: number;
  readonly end: number;
  /** The whole first line. */
  readonly text: string;
}

/** Whoever knows the texts that places lie in. */
export interface Spots {
  /** Lines and columns of a place in any file that was read. */
  spot(place: Place): Spot | undefined;
}

export function spotIn(
  documents: LangiumDocuments,
  place: Place,
  shown: (uri: URI) => string,
): Spot | undefined {
  const uri = URI.parse(place.uri);
  const text = documents.getDocument(uri)?.textDocument;
  if (!text) return undefined;
  const [start, end] = [text.positionAt(place.start), text.positionAt(Math.max(place.start, place.end))];
  const line = text.getText({
    start: { line: start.line, character: 0 },
    end: { line: start.line + 1, character: 0 },
  });
  return {
    shown: shown(uri),
    line: start.line + 1,
    column: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
    start: place.start,
    end: place.end,
    text: line.replace(/[\r\n]+$/, ''),
  };
}
