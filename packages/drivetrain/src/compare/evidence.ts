import type { Evidence, EvidenceKind } from '../model/fact.js';

/** How what is declared is known, as it is compared: of several values of one property, all of them. */
export interface Marks {
  /** `measured 2026-01-14`, or `none written`; those of a list in the order of their words. */
  readonly words: string;
  /** The weakest of them. */
  readonly strength: number;
}

/** Weakest first. A value without a mark stands between what was seen and what was heard. */
const STRENGTH: readonly (EvidenceKind | undefined)[] = [
  'assumed',
  'hearsay',
  'sister vessel',
  undefined,
  'sheet',
  'drawing',
  'plate',
  'measured',
];

export function marksOf(all: readonly (Evidence | undefined)[]): Marks {
  const words = [...new Set(all.map(evidenceWords))].sort();
  return {
    // One mark on each of a list is told once.
    words: words.length > 1 ? all.map(evidenceWords).sort().join(', ') : (words[0] ?? NONE),
    strength: Math.min(...all.map(one => STRENGTH.indexOf(one?.kind))),
  };
}

export const NONE = 'none written';

function evidenceWords(evidence: Evidence | undefined): string {
  if (!evidence) return NONE;
  const note = evidence.note ? ` "${evidence.note}"` : '';
  return `${evidence.kind}${evidence.dated ? ` ${evidence.dated}` : ''}${note}`;
}

/** `weaker evidence, measured → hearsay`, where two facts that mean the same are known otherwise. */
export function marksMoved(
  old: { readonly meaning: string; readonly marks: Marks },
  now: { readonly meaning: string; readonly marks: Marks },
): { readonly words: string; readonly weaker: boolean } | undefined {
  if (old.meaning !== now.meaning || old.marks.words === now.marks.words) return undefined;
  const weaker = now.marks.strength < old.marks.strength;
  return {
    words: `${weaker ? 'weaker evidence' : 'other evidence'}, ${old.marks.words} → ${now.marks.words}`,
    weaker,
  };
}
