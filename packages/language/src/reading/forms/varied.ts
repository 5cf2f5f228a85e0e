import {
  asSpelling,
  HEADER_ROWS,
  PLACE_VOCABULARY,
  type Row,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';

/** What a study may vary: the parts of a line, and the hull. */
export const VARIED: readonly string[] = [...Object.keys(PLACE_VOCABULARY), 'hull'];

const IN_HEADER: Readonly<Record<string, readonly Row[]>> = {
  engine: [HEADER_ROWS.at],
  gear: [HEADER_ROWS.ratio, HEADER_ROWS.ahead],
};

/** Forms whose values can be listed on one line. */
const FORMS = new Set<Row['kind']['form']>(['quantity', 'ratio', 'word', 'any word', 'name']);

/** The properties of a part, or of the hull, that a study can vary. */
export function variedRows(of: string): readonly Row[] {
  const vocabulary = asSpelling(of) === 'hull' ? VESSEL_VOCABULARY.hull : PLACE_VOCABULARY[of];
  const rows = (vocabulary?.rows ?? []).filter(row => !row.many && FORMS.has(row.kind.form));
  const header = (IN_HEADER[of] ?? []).filter(one => !rows.some(row => row.words === one.words));
  return [...header, ...rows];
}

/** The property of that name. */
export function variedRow(of: string, property: string): Row | undefined {
  return variedRows(of).find(row => row.words === property);
}
