import type { Fact } from '@tailshaft/drivetrain';
import { ENTRY_VOCABULARY, PLACE_VOCABULARY, type Variation } from '@tailshaft/vocabulary';
import { addToBlock, indentAt, startOfLine } from '../edit/layout.js';
import type { Replacement } from '../edit/text-edit.js';
import { withoutHanded } from '../elaborate/part.js';
import { formatText } from '../format/format-text.js';
import type { LineReading, PartReading } from '../reading/arrangement.js';
import type { DocumentReading, EntryReading } from '../reading/document.js';
import type { VesselReading } from '../reading/vessel.js';
import { lineBreakOf, piecesOf } from '../text/tokens.js';
import { itemsOf } from './fact-items.js';
import type { Offer, TextOf } from './offer.js';

/** A part of a line that names a catalogue entry. */
export interface NamedPart {
  readonly vessel: VesselReading;
  readonly line: LineReading;
  readonly part: PartReading;
}

/** An entry with the one place that uses it, in whatever files the two stand. */
export interface OnlyUse extends NamedPart {
  readonly entry: EntryReading;
}

/**
 * Moves the facts of a catalogue entry into the one line that uses it, and takes the entry away: the way back from
 * moving a part to the catalogue. Nothing is offered where the facts would mean something else in their new place.
 */
export function inlinePart(use: OnlyUse, textOf: TextOf): Offer[] {
  const { entry, part, line, vessel } = use;
  if (!maySwallow(use)) return [];
  const text = textOf(part.host.uri);
  const catalogue = textOf(entry.whole.uri);
  const facts = factsOf(entry, part, catalogue, lineBreakOf(text));
  const written = facts && writtenIn(part, facts, text);
  if (!written) return [];
  const from = text.slice(0, part.namePlace!.start).trimEnd().length;
  const here = [{ start: from, end: part.namePlace!.end, text: '' }, ...written];
  const file = decodeURIComponent(entry.whole.uri.split('/').at(-1)!);
  return [
    {
      title: `Move the facts of ${entry.kind} ${entry.name} from ${file} into ${line.name} of ${vessel.name}, the only line that uses it`,
      kind: 'refactor.inline',
      edits: [
        ...here.map(one => ({ uri: part.host.uri, ...one })),
        { uri: entry.whole.uri, ...withoutEntry(catalogue, entry) },
      ],
    },
  ];
}

/** The part whose name or role stands at an offset, when it names an entry. */
export function namedPartAt(reading: DocumentReading, offset: number): NamedPart | undefined {
  for (const one of namedParts(reading)) {
    const { whole, namePlace } = one.part;
    if (offset >= whole.start && offset <= namePlace!.end) return one;
  }
  return undefined;
}

export function namedParts(reading: DocumentReading): NamedPart[] {
  return reading.vessels.flatMap(vessel =>
    vessel.arrangements.flatMap(one =>
      one.lines.flatMap(line =>
        line.parts.filter(part => part.namePlace).map(part => ({ vessel, line, part })),
      ),
    ),
  );
}

/** Whether the facts mean the same in the line: all of them can be read, and no mirror would lose one that has a hand. */
function maySwallow({ entry, part, line, vessel }: OnlyUse): boolean {
  if (part.action !== undefined && part.action !== 'replace') return false;
  if (isVaried(vessel, part)) return false;
  if (!ENTRY_VOCABULARY[part.role] || !PLACE_VOCABULARY[part.role] || line.mirrors) return false;
  for (const { problems, unread } of [entry.facts, part.facts])
    if (problems.length + unread.length > 0) return false;
  const mirrored = vessel.arrangements.some(one =>
    one.lines.some(other => other.mirrors?.name === line.name),
  );
  if (!mirrored) return true;
  const all = entry.facts.fields;
  const kept = withoutHanded(part.role as never, all);
  return Object.keys(all).every(
    field => field in kept || (Array.isArray(all[field]) && (all[field] as unknown[]).length === 0),
  );
}

/** Whether a study puts other entries in the place of this one. */
function isVaried({ studies }: VesselReading, part: PartReading): boolean {
  return studies.some(({ facts }) =>
    (facts.fields.vary as readonly Fact<Variation>[]).some(
      ({ value }) => value?.of === part.role && value.property === undefined,
    ),
  );
}

/** The facts of the entry that the place does not override, with their comments, laid out below one another. */
function factsOf(entry: EntryReading, part: PartReading, text: string, eol: string): string | undefined {
  const { block } = entry.host;
  if (!block) return undefined;
  const said = new Set([
    ...part.facts.facts.filter(one => !one.row.many).map(one => one.row.field),
    ...part.facts.nested.filter(one => !one.row.many).map(one => one.row.field),
  ]);
  const items = itemsOf(entry.facts, block, text);
  const kept = items.filter(item => !said.has(item.field));
  const rest = piecesOf(text.slice(block.start + 1, block.end - 1))
    .filter(piece => piece.comment && piece.start >= (items.at(-1)?.end ?? block.start + 1) - block.start - 1)
    .map(piece => piece.text);
  const about = [entry.title, ...(entry.doc?.split(/\r\n|\r|\n/) ?? [])]
    .filter(words => words?.trim())
    .map(words => `// ${words}`);
  const lines = [...about, ...kept.map(item => text.slice(item.start, item.end)), ...rest];
  if (lines.length === 0) return undefined;
  // Laid out as deep as they will stand, since what is too long for a line there is broken.
  const deep = `vessel X {\narrangement x {\nshaftline X {\n${entry.kind} {\n${lines.join('\n').replace(/\r\n|\r/g, '\n')}\n}\n}\n}\n}`;
  const inside = formatText(deep).split('\n').slice(4, -4);
  return inside.map(one => one.replace(/^ {8}/, '')).join(eol);
}

/** The facts in the block of the part, behind those that stand there; what stands there is only moved to lines of its own. */
function writtenIn(part: PartReading, facts: string, text: string): Replacement[] | undefined {
  const eol = lineBreakOf(text);
  const outer = indentAt(text, part.whole.start);
  const indent = `${outer}  `;
  const lines = facts
    .split(eol)
    .map(one => (one ? indent + one : one))
    .join(eol);
  const { block, headEnd } = part.host;
  if (!block) return [{ start: headEnd, end: headEnd, text: ` {${eol}${lines}${eol}${outer}}` }];
  if (/[\r\n]/.test(text.slice(block.start, block.end))) {
    const added = addToBlock(text, block, [facts]);
    return added && [added];
  }
  const items = itemsOf(part.facts, block, text);
  const close = block.end - 1;
  const last = items.at(-1)?.end ?? block.start + 1;
  if (text.slice(last, close).trim() !== '') return undefined;
  const gaps = items.map((item, index) => ({
    start: items[index - 1]?.end ?? block.start + 1,
    end: item.start,
    text: eol + indent,
  }));
  return [...gaps, { start: last, end: close, text: `${eol}${lines}${eol}${outer}` }];
}

/** Takes an entry away with the comments right above it and one of the gaps beside it. */
function withoutEntry(text: string, { whole }: EntryReading): Replacement {
  const line = startOfLine(text, whole.start);
  if (text.slice(line, whole.start).trim() !== '') return { start: whole.start, end: whole.end, text: '' };
  const start = line - (COMMENTS_ABOVE.exec(text.slice(0, line))?.[0].length ?? 0);
  const behind = /^[^\S\r\n]*(?:\r\n|\r|\n|$)/.exec(text.slice(whole.end));
  if (!behind) return { start, end: whole.end, text: '' };
  const gap = /^(?:[^\S\r\n]*(?:\r\n|\r|\n))+/.exec(text.slice(whole.end + behind[0].length));
  const end = whole.end + behind[0].length + (gap?.[0].length ?? 0);
  // The last entry takes the gap above it away instead.
  if (end < text.length || start === 0) return { start, end, text: '' };
  const above = text.slice(0, start).trimEnd().length;
  return { start: above, end: text.length, text: above > 0 ? lineBreakOf(text) : '' };
}

const COMMENTS_ABOVE = /(?<=^|[\r\n])(?:[^\S\r\n]*\/\/[^\r\n]*(?:\r\n|\r|\n))+$/;
