import type { Block } from '../document/blocks.js';
import type { Text } from '../document/text.js';
import type { SheetInput } from '../input.js';

/** One paper before it is a page or a PDF: both are made from this and say the same. */
export interface Paper {
  /** The word that asks for it: `shaft-line`. */
  readonly word: string;
  /** `Shaft line submittal`. */
  readonly title: string;
  /** Whom it is for. */
  readonly reader: string;
  /** What it is of. */
  readonly vessel: string;
  /** Vessel and revision, as every page has them. */
  readonly running: string;
  /** ISO date of the judgement. */
  readonly dated: string;
  /** How many checks fail, are accepted or cannot tell: said below the title. */
  readonly standing: Text;
  /** Said at the head of the first page. */
  readonly caution: string;
  readonly blocks: readonly Block[];
}

/** Vessel and revision in one line. */
export function runningHead({ vessel }: Pick<SheetInput, 'vessel'>): string {
  return `${vessel.title ?? vessel.name} · ${revisionWords({ vessel })}`;
}

export function revisionWords({ vessel }: Pick<SheetInput, 'vessel'>): string {
  const revision = vessel.revisions.at(-1);
  if (!revision) return 'no revision recorded';
  return `revision ${revision.name}${revision.dated ? ` of ${revision.dated}` : ''}`;
}
