import {
  type BlockRow,
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';

/** Each block of the language once, with the words that lead to it. */
export function everyBlock(): readonly (readonly [path: string, Vocabulary])[] {
  const seen = new Map<Vocabulary, string>();
  const visit = (path: string, vocabulary: Vocabulary): void => {
    if (seen.has(vocabulary)) return;
    seen.set(vocabulary, path);
    for (const one of vocabulary.blocks) visit(`${path} ${one.words}`, one.block);
  };
  for (const table of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
    for (const [kind, vocabulary] of Object.entries(table)) visit(kind, vocabulary);
  return [...seen].map(([vocabulary, path]) => [path, vocabulary] as const);
}

/** Each row once, with the words that lead to it. */
export function everyRow(): readonly (readonly [path: string, Row])[] {
  const seen = new Set<Row>();
  return everyBlock().flatMap(([path, { rows }]) =>
    rows.flatMap(row => {
      if (seen.has(row)) return [];
      seen.add(row);
      return [[`${path}: ${row.words}`, row] as const];
    }),
  );
}

/** What stands between the words of a block and its facts. */
export function everyHead(): readonly (readonly [path: string, NonNullable<BlockRow['head']>])[] {
  return everyBlock().flatMap(([path, { blocks }]) =>
    blocks.flatMap(one => (one.head ? [[`${path}: ${one.words}`, one.head] as const] : [])),
  );
}
