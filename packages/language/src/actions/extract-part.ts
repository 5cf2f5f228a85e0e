import { ENTRY_VOCABULARY } from '@tailshaft/vocabulary';
import { beforeStatement, startOfLine } from '../edit/layout.js';
import type { Replacement } from '../edit/text-edit.js';
import { formatText } from '../format/format-text.js';
import type { LineReading, PartReading } from '../reading/arrangement.js';
import type { DocumentReading } from '../reading/document.js';
import { lineBreakOf, piecesOf } from '../text/tokens.js';
import { type FactItem, itemsOf } from './fact-items.js';
import type { Offer, TextOf } from './offer.js';

/** Moves a part that is declared in place to the catalogue: to an imported file that has such parts, or to this one. */
export function extractPart(
  reading: DocumentReading,
  visible: readonly DocumentReading[],
  offset: number,
  textOf: TextOf,
): Offer[] {
  const found = partAt(reading, offset);
  if (!found) return [];
  const { part, line, vessel } = found;
  const text = textOf(reading.uri);
  const split = splitFacts(part, text);
  if (!split) return [];
  const taken = new Set(visible.flatMap(one => one.entries.map(entry => `${entry.kind} ${entry.name}`)));
  const name = freeName(`${vessel.name}-${line.name}-${part.role}`, one => taken.has(`${part.role} ${one}`));
  const here = [
    {
      start: part.whole.start + roleEnd(part, text),
      end: part.whole.start + roleEnd(part, text),
      text: ` ${name}`,
    },
    ...split.removed,
  ].map(one => ({ uri: reading.uri, ...one }));
  const target = catalogueFor(part.role, reading, visible);
  const entry = entryText(part.role, name, split.moved, lineBreakOf(textOf(target.uri)));
  const added =
    target === reading ? beforeStatement(text, vessel.whole.start, entry) : atEnd(textOf(target.uri), entry);
  const file = target === reading ? 'this file' : fileName(target.uri);
  return [
    {
      title: `Move this ${part.role} to the catalogue in ${file} as ${name}`,
      kind: 'refactor.extract',
      edits: [...here, { uri: target.uri, ...added }],
    },
  ];
}

/** A part in place at this offset whose facts may become an entry of their own. */
function partAt(reading: DocumentReading, offset: number) {
  for (const vessel of reading.vessels) {
    for (const line of vessel.arrangements.flatMap(one => one.lines)) {
      const part = line.parts.find(one => offset >= one.whole.start && offset <= one.whole.end);
      if (part) return mayMove(part, line) ? { vessel, line, part } : undefined;
    }
  }
  return undefined;
}

/** A retained or modified part has its facts elsewhere, and so has an unnamed part of a mirror line. */
function mayMove(part: PartReading, line: LineReading): boolean {
  const isNew = part.action === undefined || part.action === 'replace';
  const known = part.facts.problems.length === 0 && part.facts.unread.length === 0;
  return isNew && known && !part.name && !line.mirrors && ENTRY_VOCABULARY[part.role] !== undefined;
}

/** The facts that belong to the part wherever it stands, with their comments, and how they are taken away. */
function splitFacts(
  part: PartReading,
  text: string,
): { moved: string[]; removed: Replacement[] } | undefined {
  const block = part.host.block;
  if (!block) return undefined;
  const entry = ENTRY_VOCABULARY[part.role]!;
  const belongs = new Set([...entry.rows, ...entry.blocks].map(row => row.words));
  const items = itemsOf(part.facts, block, text);
  const moved = items.filter(item => belongs.has(item.words));
  if (moved.length === 0) return undefined;
  const slices = moved.map(item => text.slice(item.start, item.end));
  if (moved.length === items.length) {
    const inside = piecesOf(text.slice(block.start + 1, block.end - 1));
    const after = moved.at(-1)!.end - block.start - 1;
    const rest = inside.filter(piece => piece.start >= after).map(piece => piece.text);
    const from = text.slice(0, block.start).trimEnd().length;
    return { moved: [...slices, ...rest], removed: [{ start: from, end: block.end, text: '' }] };
  }
  return { moved: slices, removed: moved.map(item => wholeLines(item, text)) };
}

/** Takes the lines away with a fact that has them to itself, and otherwise the space in front of it. */
function wholeLines({ start, end }: FactItem, text: string): Replacement {
  const line = startOfLine(text, start);
  const rest = /^[^\S\r\n]*(\r\n|\r|\n)/.exec(text.slice(end));
  if (text.slice(line, start).trim() === '' && rest)
    return { start: line, end: end + rest[0].length, text: '' };
  const from = text.slice(0, start).trimEnd().length;
  return text[from - 1] === '{'
    ? { start, end: end + /^[^\S\r\n]*/.exec(text.slice(end))![0].length, text: '' }
    : { start: from, end, text: '' };
}

function roleEnd(part: PartReading, text: string): number {
  const pieces = piecesOf(text.slice(part.whole.start, part.whole.end)).filter(piece => !piece.comment);
  return pieces[part.action ? 1 : 0]!.end;
}

/** The file that already has such parts, then any that has parts, then this one. */
function catalogueFor(
  role: string,
  reading: DocumentReading,
  visible: readonly DocumentReading[],
): DocumentReading {
  const others = visible.filter(one => one !== reading && one.problems.length === 0);
  return (
    others.find(one => one.entries.some(entry => entry.kind === role)) ??
    others.find(one => one.entries.length > 0) ??
    reading
  );
}

function entryText(role: string, name: string, facts: readonly string[], eol: string): string {
  return formatText(`${role} ${name} {${eol}${facts.join(eol)}${eol}}`);
}

function atEnd(text: string, entry: string): Replacement {
  const eol = lineBreakOf(text);
  const end = text.trimEnd().length;
  return { start: end, end: text.length, text: `${end > 0 ? eol + eol : ''}${entry}${eol}` };
}

function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  let name = wanted;
  for (let number = 2; isTaken(name); number += 1) name = `${wanted}-${number}`;
  return name;
}

function fileName(uri: string): string {
  return decodeURIComponent(uri.split('/').at(-1)!);
}
