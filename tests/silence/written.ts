import type { FileCheck } from '@tailshaft/language';

type Reading = FileCheck['vessels'][number]['reading'];
type Arrangement = Reading['arrangements'][number];
type Line = Arrangement['lines'][number];
type Part = Line['parts'][number];
type Entry = FileCheck['entries'][number]['reading'];
type Block = Part['facts'];
type Row = Block['host']['vocabulary']['rows'][number];

/** Whose block a fact stands in. */
export type Owner =
  | { readonly kind: 'entry'; readonly entry: Entry }
  | { readonly kind: 'part'; readonly arrangement: Arrangement; readonly line: Line; readonly part: Part }
  | { readonly kind: 'line'; readonly arrangement: Arrangement; readonly line: Line }
  | { readonly kind: 'setting'; readonly name: string };

/** A block of facts with the words of the blocks that it stands in: `ratio`, `clutch`. */
export interface WrittenBlock {
  readonly owner: Owner;
  readonly path: readonly string[];
  readonly block: Block;
}

export interface WrittenFact extends WrittenBlock {
  readonly row: Row;
  readonly property: string;
  /** The whole statement, with its evidence. */
  readonly start: number;
  readonly end: number;
  readonly value: { readonly start: number; readonly end: number };
  readonly evidence?: { readonly start: number; readonly end: number };
}

/** Every block of facts that a file states. */
export function blocksOf({ entries, vessels }: FileCheck): WrittenBlock[] {
  const found: WrittenBlock[] = [];
  const visit = (owner: Owner, block: Block, path: readonly string[]) => {
    found.push({ owner, block, path });
    for (const one of block.nested)
      if (one.host.reading) visit(owner, one.host.reading, [...path, one.row.words]);
  };
  for (const { reading } of entries) visit({ kind: 'entry', entry: reading }, reading.facts, []);
  for (const { reading } of vessels) {
    for (const [name, block] of Object.entries(reading.settings)) visit({ kind: 'setting', name }, block, []);
    for (const arrangement of reading.arrangements) {
      for (const line of arrangement.lines) {
        visit({ kind: 'line', arrangement, line }, line.facts, []);
        for (const part of line.parts)
          visit({ kind: 'part', arrangement, line, part }, part.facts, [part.role]);
      }
    }
  }
  return found;
}

/** Every fact that a file states, in the order of the text. */
export function factsOf(check: FileCheck): WrittenFact[] {
  return blocksOf(check)
    .flatMap(one =>
      one.block.facts.flatMap(found =>
        found.value && found.fact
          ? [
              {
                ...one,
                row: found.row,
                property: found.row.words,
                start: Math.min(found.words.start, found.value.start),
                end: found.evidence?.end ?? found.value.end,
                // Copies: what is judged next moves the places of what is read already.
                value: { start: found.value.start, end: found.value.end },
                ...(found.evidence
                  ? { evidence: { start: found.evidence.start, end: found.evidence.end } }
                  : {}),
              },
            ]
          : [],
      ),
    )
    .sort((a, b) => a.start - b.start);
}

/** The text with some stretches replaced; stretches do not overlap. */
export function edited(
  text: string,
  ...edits: readonly { readonly start: number; readonly end: number; readonly text: string }[]
): string {
  return [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((now, one) => now.slice(0, one.start) + one.text + now.slice(one.end), text);
}
