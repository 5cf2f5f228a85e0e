import {
  asSpelling,
  type BlockRow,
  ENTRY_VOCABULARY,
  HEADER_ROWS,
  PLACE_VOCABULARY,
  type Spelling,
} from '@tailshaft/vocabulary';
import type { NestedReading } from '../reading/block.js';
import type { Host } from '../reading/place.js';

/** Properties that a part says in its header only. */
export const HEADER_ONLY: readonly string[] = [HEADER_ROWS.at, HEADER_ROWS.ratio, HEADER_ROWS.ahead].map(
  row => row.words,
);

/** What a part that nobody has described yet is asked for first. */
const DECIDES: ReadonlySet<string> = new Set<Spelling>(['rotation', 'layout', 'hand', 'diameter']);

/** What the name of a property stands for at its host. */
export type PropertyPlan =
  | { readonly kind: 'fact'; readonly words: string }
  | { readonly kind: 'header'; readonly words: string }
  /** A property of a block inside: `ratio 2.04:1 exact`. */
  | {
      readonly kind: 'inside';
      readonly row: BlockRow;
      readonly head: string;
      readonly rest: string;
      readonly nested?: NestedReading;
    }
  | { readonly kind: 'part'; readonly role: string };

/** Finds out where a property belongs, by the words that the host's vocabulary knows. */
export function planProperty(host: Host, property: string): PropertyPlan {
  if (host.form === 'part') {
    if (HEADER_ONLY.includes(property)) return { kind: 'header', words: property };
    if (property === HEADER_ROWS.hand.words && !host.block) return { kind: 'header', words: property };
  }
  if (host.form === 'line' && PLACE_VOCABULARY[property]) return { kind: 'part', role: property };
  if (host.vocabulary.rows.some(row => row.words === property)) return { kind: 'fact', words: property };
  for (const row of host.vocabulary.blocks) {
    if (property !== row.words && !property.startsWith(`${row.words} `)) continue;
    const [head, rest] = headAndRest(row, property.slice(row.words.length).trim());
    const nested = host.reading?.nested.find(
      one => one.row === row && (!row.head || (one.head?.fact?.written ?? '') === head),
    );
    return { kind: 'inside', row, head, rest, ...(nested ? { nested } : {}) };
  }
  return { kind: 'fact', words: property };
}

/** A statement that brings a block which is not there yet, with the property in it. */
export function insideStatement(row: BlockRow, head: string, rest: string, text: string): string {
  const begin = [row.words, head].filter(Boolean).join(' ');
  if (rest) return row.head ? `${begin} ${rest} ${text}` : `${begin} { ${rest} ${text} }`;
  if (text !== 'unknown') return `${begin} ${text}`;
  if (row.head && !head) return `${begin} unknown`;
  const open = OPEN_FACTS[row.words];
  if (!open) return `${begin} { }`;
  return asSpelling(row.words) === 'rating' ? `${begin} { ${open} }` : `${begin}  ${open}`;
}

/** A statement that brings a part which is not there yet. */
export function partStatement(role: string, text: string): string {
  if (text !== 'unknown') return `${role} ${text}`;
  const rows = ENTRY_VOCABULARY[role]?.rows ?? PLACE_VOCABULARY[role]?.rows ?? [];
  const row = rows.find(one => DECIDES.has(one.words)) ?? rows[0];
  return row ? `${role} { ${row.words} unknown }` : role;
}

/** What a block is asked for first, as open questions. */
const OPEN_FACTS: Readonly<Record<string, string>> = {
  clutch: 'output unknown  ahead unknown',
  rating: 'power unknown',
  rated: 'power per speed unknown',
  ratio: 'exact unknown',
};

function headAndRest(row: BlockRow, text: string): [head: string, rest: string] {
  if (!row.head) return ['', text];
  const at = text.indexOf(' ');
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}
