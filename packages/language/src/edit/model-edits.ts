import type { ModelEdit } from '@tailshaft/drivetrain';
import { type Host, hostOf, type Place, placeOf } from '../reading/place.js';
import { piecesOf } from '../text/tokens.js';
import { FactWriter } from './fact-writer.js';
import { beforeStatement, statementStart } from './layout.js';
import { declareLike, statementLike } from './like-another.js';
import { removal } from './removal.js';
import { merged, type TextEdit } from './text-edit.js';

/**
 * What edits in terms of the model are in terms of the text. None at all when one of them cannot be written, or two
 * of them want the same words: half a change would say something that nobody meant.
 */
export function textEditsFor(edits: readonly ModelEdit[], textOf: (uri: string) => string): TextEdit[] {
  const writer = new FactWriter(textOf);
  const result: TextEdit[] = [];
  for (const edit of edits) {
    const made = madeOf(edit, writer, textOf);
    if (!made) return [];
    result.push(...made);
  }
  const written = writer.finish();
  return (written && merged([...result, ...written])) ?? [];
}

function madeOf(
  edit: ModelEdit,
  writer: FactWriter,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  switch (edit.do) {
    case 'set':
      return set(writer, edit);
    case 'replace':
      return replace(writer, edit.at as Place, edit.text, textOf);
    case 'swap':
      return swap(placeOf(edit.one), placeOf(edit.other), textOf);
    case 'remove':
      return removal(placeOf(edit.at), textOf);
    case 'declare like':
      return declareLike(edit, textOf);
    case 'fit anew': {
      const words = statementLike(placeOf(edit.like), edit.changes, textOf);
      return words === undefined ? undefined : replace(writer, placeOf(edit.at), words, textOf);
    }
    case 'declare':
      return declare(placeOf(edit.before), edit.text, textOf);
  }
}

function declare(
  { uri, start }: Place,
  entry: string,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const text = textOf(uri);
  const vessel = statementStart(text, 'vessel', start);
  if (vessel === undefined) return undefined;
  return [{ uri, ...beforeStatement(text, vessel, entry) }];
}

/** A place with its block: the whole statement of a part. */
function wholeOf(place: Place): Place {
  const host = hostOf(place);
  return { uri: place.uri, start: place.start, end: Math.max(place.end, host?.block?.end ?? 0) };
}

function set(writer: FactWriter, edit: ModelEdit & { do: 'set' }): [] | undefined {
  const host = hostOf(edit.host);
  const done = host
    ? writer.set(host, edit.property, edit.text)
    : writer.setInStatement(placeOf(edit.host), edit.property, edit.text);
  return done ? [] : undefined;
}

function replace(
  writer: FactWriter,
  at: Place,
  text: string,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const host = hostOf(at);
  if (host?.insertInto) return writer.addStatement(host.insertInto, text) ? [] : undefined;
  if (host?.block && text.startsWith('modify ')) return modify(writer, host, text);
  const { uri, start, end } = wholeOf(at);
  if (start < 0 || end > textOf(uri).length) return undefined;
  return [{ uri, start, end, text }];
}

/** A part that keeps its facts in place: the header is written anew, its facts join those of the block. */
function modify(writer: FactWriter, host: Host, text: string): TextEdit[] | undefined {
  const pieces = piecesOf(text);
  const open = pieces.find(piece => piece.text === '{');
  const header = text.slice(0, open?.start ?? text.length).trimEnd();
  if (open) {
    const inside = text.slice(open.end, text.lastIndexOf('}')).trim();
    if (!writer.addStatement(host, inside)) return undefined;
  }
  return [{ uri: host.uri, start: host.start, end: host.headEnd, text: header }];
}

function swap(one: Place, other: Place, textOf: (uri: string) => string): TextEdit[] | undefined {
  if (hostOf(one)?.insertInto || hostOf(other)?.insertInto) return undefined;
  const [a, b] = [wholeOf(one), wholeOf(other)];
  return [
    { ...a, text: textOf(b.uri).slice(b.start, b.end) },
    { ...b, text: textOf(a.uri).slice(a.start, a.end) },
  ];
}
