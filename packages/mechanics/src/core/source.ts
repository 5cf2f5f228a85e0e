/** How far a formula or figure can be relied on. */
export type Confidence =
  /** Printed in the named publication, or definition of the SI. */
  | 'published'
  /** Known to the trade; no publication names it: shown as `common practice, no source`. */
  | 'common practice'
  /** The publication is known, the text was not at hand when it was written down. */
  | 'from memory'
  /** Follows by algebra from another formula here, or from the definition of its terms. */
  | 'derived';

/** Where a formula or figure comes from. */
export interface Source {
  readonly title: string;
  readonly author?: string;
  readonly year?: number;
  /** Chapter, clause, table or page. */
  readonly clause?: string;
  readonly confidence: Confidence;
}

/** One line that names a source, for a person. */
export function citeSource(source: Source): string {
  if (source.confidence === 'common practice') return `${source.title} (common practice, no source)`;
  const parts = [source.author, source.title, source.clause, source.year?.toString()]
    .filter(Boolean)
    .join(', ');
  return source.confidence === 'published' ? parts : `${parts} (${source.confidence})`;
}
