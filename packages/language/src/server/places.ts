import { type LangiumDocuments, URI } from 'langium';
import type { Location, Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Place } from '../reading/place.js';

interface Offsets {
  readonly start: number;
  readonly end: number;
}

/** Offsets as lines and characters of a text. */
export function rangeIn(text: TextDocument, { start, end }: Offsets): Range {
  return { start: text.positionAt(start), end: text.positionAt(end) };
}

/** The range of a place in whatever file it lies; nothing when that file is not loaded any more. */
export function rangeOf(place: Place, documents: LangiumDocuments): Range | undefined {
  const document = documents.getDocument(URI.parse(place.uri));
  return document && rangeIn(document.textDocument, place);
}

export function locationOf(place: Place, documents: LangiumDocuments): Location | undefined {
  const range = rangeOf(place, documents);
  return range && { uri: place.uri, range };
}

/** Whether an offset lies in a stretch or right behind it, as a cursor does. */
export function touches(range: Offsets | undefined, offset: number): boolean {
  return range !== undefined && offset >= range.start && offset <= range.end;
}

export function samePlace(one: object | undefined, other: Place): boolean {
  const place = one as Partial<Place> | undefined;
  return place?.start === other.start && place.end === other.end && place.uri === other.uri;
}

/** Whether a place lies inside another. */
export function inside(one: object | undefined, other: Place): boolean {
  const place = one as Partial<Place> | undefined;
  return (
    place?.uri === other.uri &&
    place.start !== undefined &&
    place.end !== undefined &&
    place.start >= other.start &&
    place.end <= other.end
  );
}
