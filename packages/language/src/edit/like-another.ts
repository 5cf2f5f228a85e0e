import { type BlockReading, hostOf, type Place, placeOf } from '../reading/place.js';
import { lineBreakOf, piecesOf } from '../text/tokens.js';
import { beforeStatement, indentAt, statementStart } from './layout.js';
import type { SpelledEdit, WordChange } from './spelled.js';
import { applyEdits, merged, type Replacement, type TextEdit } from './text-edit.js';

type TextOf = (uri: string) => string;

/** A new entry in the words of another; what no document says yet has no source. */
export function declareLike(
  edit: SpelledEdit & { do: 'declare like' },
  textOf: TextOf,
): TextEdit[] | undefined {
  const entry = hostOf(edit.entry);
  if (!entry?.block || !entry.reading) return undefined;
  const from = textOf(entry.uri);
  const open = entry.block.start;
  const kind = piecesOf(from.slice(entry.start, open));
  const name = kind.find(piece => !piece.comment && piece.text === nameIn(from, entry.start, open));
  if (!name) return undefined;
  const head = `${from.slice(entry.start, entry.start + name.start)}${edit.name} "${edit.title.replace(/"/g, "'")}" `;
  const swaps = [
    ...(changesIn(edit.changes, entry.uri, open, entry.block.end) ?? []),
    ...sourcesIn(entry.reading),
  ];
  if (swaps.length < edit.changes.length) return undefined;
  const body = within(from, open, entry.block.end, swaps);
  const { uri, start } = placeOf(edit.before);
  const text = textOf(uri);
  const vessel = statementStart(text, 'vessel', start);
  if (vessel === undefined || body === undefined) return undefined;
  const outer = indentAt(from, entry.start);
  const added = (head + body).replace(/\r\n|\r|\n/g, lineBreakOf(text)).replaceAll(`\n${outer}`, '\n');
  return [{ uri, ...beforeStatement(text, vessel, added) }];
}

/** The words of a statement that fitted a part, with others in the place of some, as a replacement. */
export function statementLike(
  like: Place,
  changes: readonly WordChange[],
  textOf: TextOf,
): string | undefined {
  const host = hostOf(like);
  if (!host || host.insertInto) return undefined;
  const end = Math.max(host.end, host.headEnd, host.block?.end ?? 0);
  const swaps = changesIn(changes, host.uri, host.start, end);
  const words = swaps && within(textOf(host.uri), host.start, end, swaps);
  return words && `replace ${words.trim().replace(/^(replace|modify|retain)\s+/, '')}`;
}

/** The last word before the title or the brace of an entry's header. */
function nameIn(text: string, start: number, open: number): string | undefined {
  return piecesOf(text.slice(start, open))
    .filter(piece => !piece.comment && !piece.text.startsWith('"'))
    .at(-1)?.text;
}

function changesIn(
  changes: readonly WordChange[],
  uri: string,
  start: number,
  end: number,
): Replacement[] | undefined {
  const places = changes.map(({ at, text }) => ({ ...placeOf(at), text }));
  const inside = places.every(one => one.uri === uri && one.start >= start && one.end <= end);
  return inside ? places.map(one => ({ start: one.start, end: one.end, text: one.text })) : undefined;
}

/** Every document that vouches for what is said, as an open question. */
function sourcesIn({ facts, nested }: BlockReading): Replacement[] {
  const own = facts.flatMap(({ row, value, evidence }) =>
    row.field === 'source' && value
      ? [{ start: value.start, end: evidence?.end ?? value.end, text: 'unknown' }]
      : [],
  );
  return [...own, ...nested.flatMap(one => (one.host.reading ? sourcesIn(one.host.reading) : []))];
}

function within(text: string, start: number, end: number, swaps: readonly Replacement[]): string | undefined {
  const edits = merged(
    swaps.map(one => ({ uri: '', start: one.start - start, end: one.end - start, text: one.text })),
  );
  return edits && applyEdits(text.slice(start, end), edits);
}
