import { declareFact, type Fact, type FactHome, isWeak } from '@tailshaft/drivetrain';
import { withArticle } from '@tailshaft/mechanics';
import { type BlockRow, type Row, UNKNOWN, type Vocabulary } from '@tailshaft/vocabulary';
import { notingAbsence, withoutPlace } from './absent.js';
import { Cursor } from './cursor.js';
import { readEvidence } from './evidence.js';
import { goesOn } from './forms/compound.js';
import { refuseEndless } from './forms/finite.js';
import { takeValue } from './forms/index.js';
import { refuseNegative } from './forms/negative.js';
import { likelyUnits, outOfRange } from './forms/out-of-range.js';
import { nearest } from './misspelt.js';
import type { BlockReading, FactReading, Host, Range } from './place.js';
import type { Problem } from './problem.js';
import { isSaidBefore } from './said-before.js';
import { type AtomTok, type BlockTok, isTok, type Tok } from './token.js';
import { type Match, WordIndex } from './word-index.js';

export type { BlockReading, FactReading, NestedReading } from './place.js';

/** An empty reading for a host, to be filled by `readFacts`. */
export function startReading(host: Host): BlockReading {
  const reading: BlockReading = {
    host,
    facts: [],
    nested: [],
    fields: {},
    problems: [],
    concerns: [],
    unread: [],
  };
  for (const block of host.vocabulary.blocks) if (block.many) reading.fields[block.field] = [];
  for (const row of host.vocabulary.rows) if (row.many) reading.fields[row.field] = [];
  host.reading = reading;
  return reading;
}

/**
 * Reads the atoms of one block into its reading, by the words that its vocabulary knows. Says how many it took: all, or those
 * before the first property that only the block around it knows.
 */
export function readFacts(reading: BlockReading, atoms: readonly AtomTok[], around?: WordIndex): number {
  const words = WordIndex.of(reading.host.vocabulary);
  const cursor: Cursor = new Cursor(
    atoms,
    reading.host.uri,
    index => words.match(atoms, index) !== undefined,
  );
  const ofAround = () => !words.match(atoms, cursor.index) && around?.match(atoms, cursor.index);
  while (cursor.index < atoms.length && !ofAround()) readOne(reading, cursor, words, around);
  reading.problems.push(...cursor.problems);
  reading.concerns.push(...cursor.concerns);
  return cursor.index;
}

function readOne(reading: BlockReading, cursor: Cursor, words: WordIndex, around?: WordIndex): void {
  const known = around ? [words, around] : [words];
  const atom = cursor.atoms[cursor.index]!;
  cursor.line = atom.line;
  const match = words.match(cursor.atoms, cursor.index);
  if (match?.block) readNested(reading, cursor, match, match.block, known);
  else if (match?.row) {
    const start = cursor.index;
    cursor.index += match.length;
    const last = cursor.atoms[cursor.index - 1]!;
    cursor.line = last.line;
    const before = wrongSoFar(cursor);
    const found = readFact(reading, cursor, match.row, { start: cursor.atoms[start]!.start, end: last.end });
    keep(reading, found);
    if (!found.fact && wrongSoFar(cursor) > before) skipRest(cursor, known);
  } else if (!readBare(reading, cursor, known)) unknownWords(reading, cursor, words);
}

/** The value behind a property's words, with `unknown` and evidence. */
export function readFact(reading: BlockReading, cursor: Cursor, row: Row, words: Range): FactReading {
  const before = cursor.problems.length + cursor.concerns.length;
  const problems = cursor.problems.length;
  const concerns = cursor.concerns.length;
  const from = cursor.index;
  cursor.open = [];
  cursor.known = undefined;
  const open = !goesOn(cursor, row.kind) && cursor.takeWords('unknown');
  const taken = open ? undefined : takeValue(cursor, row.words, row.kind);
  if (cursor.index === from) {
    reading.unread.push({ ...words, text: row.words });
    return { row, words };
  }
  for (let at = concerns; at < cursor.concerns.length; at++)
    cursor.concerns[at] = likelyUnits(cursor.concerns[at]!, row);
  const range = { start: cursor.atoms[from]!.start, end: cursor.previous!.end };
  const refused = refuseEndless(cursor, row.words, taken, range) || refuseNegative(cursor, row, taken, range);
  const value = refused ? undefined : taken;
  const outside = value === undefined ? undefined : outOfRange(cursor, row, value, range);
  const evidence = takeEvidence(reading, cursor);
  const broken = value === undefined && !open && cursor.problems.length + cursor.concerns.length > before;
  const written = cursor.atoms
    .slice(from, evidence ? evidence.index : cursor.index)
    .map(one => (isTok(one) ? one.text : ''))
    .join(' ');
  const fact: Fact<unknown> | undefined = broken
    ? undefined
    : {
        value,
        written,
        origin: { uri: cursor.uri, ...range },
        ...(evidence?.read ? { evidence: evidence.read } : {}),
        ...(outside ? { outOfRange: outside } : {}),
        ...(cursor.open.length > 0 ? { open: cursor.open } : {}),
        ...(cursor.known ? { known: cursor.known } : {}),
      };
  return {
    row,
    words,
    value: range,
    ...(evidence ? { evidence: evidence.range } : {}),
    ...(fact ? { fact } : {}),
    ...(cursor.problems.length > problems ? { doubtful: true } : {}),
  };
}

/** Files a fact in its model field; a second one of a single property is a problem. */
export function keep(reading: BlockReading, found: FactReading): void {
  const { row } = found;
  const told = declared(found, reading.host);
  const { fact } = told;
  reading.facts.push(told);
  if (!fact) return;
  if (row.many) (reading.fields[row.field] as unknown[]).push(fact);
  else if (reading.fields[row.field] !== undefined) {
    reading.problems.push({
      code: 'text/twice',
      start: found.words.start,
      end: found.value?.end ?? found.words.end,
      severity: 'error',
      message: `"${row.words}" is written twice in this ${reading.host.vocabulary.title}; the first is used. Keep the correct one.`,
    });
  } else reading.fields[row.field] = fact;
}

/** A fact as it was found at a host: looking at its value is noted from here on. */
export function declared(found: FactReading, host: Host): FactReading {
  if (!found.fact) return found;
  const { doubt } = host;
  const fact = doubt && !found.fact.evidence ? { ...found.fact, evidence: doubt } : found.fact;
  return { ...found, fact: declareFact(fact, homeIn(host, found.row)) };
}

/** Where a fact belongs, and whether the product has an estimate for it. */
function homeIn(host: Host, row: Row | BlockRow): FactHome {
  const { words } = row;
  const of = withoutPlace(host.vocabulary.title);
  if (!('kind' in row)) return { host, property: words, of };
  return { host, property: words, of, row, ...(row.estimated ? { estimated: true } : {}) };
}

function takeEvidence(reading: BlockReading, cursor: Cursor) {
  const next = cursor.peek();
  if (next?.kind !== 'evidence') return undefined;
  const index = cursor.index;
  cursor.index += 1;
  return { index, range: { start: next.start, end: next.end }, read: readEvidence(next, reading.problems) };
}

function readNested(
  reading: BlockReading,
  cursor: Cursor,
  match: Match,
  row: BlockRow,
  known: readonly WordIndex[],
): void {
  const start = cursor.atoms[cursor.index]!.start;
  cursor.index += match.length;
  const words = { start, end: cursor.previous!.end };
  cursor.line = cursor.previous!.line;
  const before = wrongSoFar(cursor);
  const read = row.head && readFact(reading, cursor, headRow(row), words);
  if (read && !read.fact && wrongSoFar(cursor) > before)
    skipRest(cursor, [WordIndex.of(row.block), ...known]);
  const headEnd = cursor.previous!.end;

  // Facts on the same line belong to the nested block, until one that only the outer block knows.
  const from = cursor.index;
  let ofLine = from;
  while (cursor.atoms[ofLine]?.line === cursor.line && cursor.atoms[ofLine]!.kind !== 'block') ofLine += 1;
  // Its end is known once its facts are read, and they hold on to it.
  const host: { -readonly [Key in keyof Host]: Host[Key] } = {
    uri: cursor.uri,
    start,
    end: headEnd,
    headEnd,
    vocabulary: row.block,
    form: 'nested',
    ...doubtOf(read?.fact, reading.host),
  };
  const head = read?.fact ? { ...read, fact: declareFact(read.fact, homeIn(host, row)) } : read;
  const nested = startReading(host);
  const to =
    from + readFacts(nested, cursor.atoms.slice(from, ofLine), WordIndex.of(reading.host.vocabulary));
  const block = cursor.atoms[to]?.kind === 'block' ? (cursor.atoms[to] as BlockTok) : undefined;
  if (to > from) host.headEnd = cursor.atoms[to - 1]!.end;
  if (block) host.block = { start: block.start, end: block.end };
  if (block) readFacts(nested, block.atoms);
  cursor.index = block ? to + 1 : to;
  reading.problems.push(...nested.problems);
  reading.concerns.push(...nested.concerns);
  reading.nested.push({ row, words, ...(head ? { head } : {}), host });

  const fields: Record<string, unknown> = { ...nested.fields, origin: host };
  notingAbsence(fields, row.block);
  if (row.head) {
    fields[`${row.head.field}Fact`] = head?.fact;
    fields[row.head.field] = head?.fact?.value;
  }
  if (isSaidBefore(reading, row, nested.host, head?.fact))
    reading.problems.push({
      code: 'text/twice',
      start: words.start,
      end: headEnd,
      severity: 'error',
      message: `"${head ? `${row.words} ${head.fact?.written}` : row.words}" is written twice in this ${reading.host.vocabulary.title}; the first is used. Merge them into the correct one.`,
    });
  if (row.head && head?.fact?.value === undefined) return;
  if (row.many) (reading.fields[row.field] as unknown[]).push(fields);
  else reading.fields[row.field] ??= fields;
}

/** What a doubted head does to all that stands under it. */
function doubtOf(head: Fact<unknown> | undefined, around: Host): Pick<Host, 'doubt'> {
  const own = head && isWeak(head) ? head.evidence : undefined;
  // A head with evidence of its own is as good as that says.
  const doubt = own ?? (head?.evidence ? undefined : around.doubt);
  return doubt ? { doubt } : {};
}

function headRow(row: BlockRow): Row {
  return {
    words: row.words,
    field: row.head!.field,
    kind: row.head!.kind,
    doc: row.doc,
    example: row.example,
    ...(row.head!.range ? { range: row.head!.range } : {}),
  };
}

/** A value without its words, where its unit tells which property it is: `rated medium 0.112 kW/rpm`. */
function readBare(reading: BlockReading, cursor: Cursor, known: readonly WordIndex[]): boolean {
  const bare = reading.host.vocabulary.rows.filter(row => row.bare);
  const start = cursor.index;
  const atom = cursor.atoms[start]!;
  const isOpen = isTok(atom) && atom.text === UNKNOWN;
  if (bare.length === 0 || (atom.kind !== 'number' && !isOpen)) return false;
  for (const row of bare) {
    const attempt = new Cursor(cursor.atoms, cursor.uri, () => false);
    attempt.index = start;
    attempt.line = cursor.line;
    const found = readFact(startReading(reading.host), attempt, row, { start: atom.start, end: atom.start });
    if (!found.fact || attempt.problems.length > (found.fact.outOfRange ? 1 : 0)) continue;
    cursor.index = attempt.index;
    cursor.problems.push(...attempt.problems);
    reading.host.reading = reading;
    keep(reading, found);
    return true;
  }
  reading.host.reading = reading;
  const found = readFact(reading, cursor, bare[0]!, { start: atom.start, end: atom.start });
  keep(reading, found);
  if (!found.fact) skipRest(cursor, known);
  return true;
}

function wrongSoFar({ problems, concerns }: Cursor): number {
  return problems.length + concerns.length;
}

/** What is left on the line of a value that could not be read, up to the next property: it belongs to the same mistake. */
function skipRest(cursor: Cursor, known: readonly WordIndex[]): void {
  for (let atom = cursor.peek(); atom && atom.kind !== 'block'; atom = cursor.peek()) {
    const begins = known.some(words => words.match(cursor.atoms, cursor.index) !== undefined);
    if (begins || (isTok(atom) && isNearly(atom, known))) return;
    cursor.index += 1;
  }
}

/** Whether a word is probably that of a property, misspelt. */
function isNearly({ kind, text }: Tok, known: readonly WordIndex[]): boolean {
  return (
    kind === 'word' && text.length > 2 && known.some(words => nearest(text, words.firstWords) !== undefined)
  );
}

/** Words that no property of this block begins with: one problem for the whole stretch. */
function unknownWords(reading: BlockReading, cursor: Cursor, words: WordIndex): void {
  const first = cursor.atoms[cursor.index]!;
  let last: AtomTok = first;
  while (cursor.index < cursor.atoms.length) {
    const atom = cursor.atoms[cursor.index]!;
    if (atom !== first && (atom.line !== first.line || words.match(cursor.atoms, cursor.index))) break;
    last = atom;
    cursor.index += 1;
  }
  if (
    isTok(first) &&
    first.kind === 'word' &&
    cursor.atoms[cursor.index]?.kind === 'block' &&
    last.kind !== 'block'
  )
    cursor.index += 1;
  reading.unread.push({ start: first.start, end: last.end, text: isTok(first) ? first.text : '' });
  reading.problems.push(unknownProblem(reading.host.vocabulary, first, last, words));
}

function unknownProblem(vocabulary: Vocabulary, first: AtomTok, last: AtomTok, words: WordIndex): Problem {
  const range = {
    start: first.start,
    end: isTok(first) ? Math.max(first.end, last.kind === 'block' ? first.end : last.end) : first.end,
  };
  if (!isTok(first)) {
    const what =
      first.kind === 'block' ? 'This block belongs to no property' : 'This mark belongs to no value';
    return {
      code: 'text/unknown-property',
      ...range,
      severity: 'error',
      message: `${what}: write its property before it.`,
    };
  }
  if (first.kind === 'mark' && [',', ';', ':', '='].includes(first.text)) {
    return {
      code: 'text/mark',
      ...range,
      severity: 'error',
      message: `Remove "${first.text}": a property is its words followed by its value.`,
      choices: [{ title: `Remove "${first.text}"`, text: '', start: first.start, end: first.end }],
    };
  }
  const meant = nearest(first.text, words.firstWords);
  const near = meant ? ` Did you mean "${words.startingWith(meant)[0]}"?` : '';
  const choices = meant
    ? words
        .startingWith(meant)
        .map(one => ({ title: `Write ${one}`, text: one, start: first.start, end: first.end }))
    : undefined;
  return {
    code: 'text/unknown-property',
    ...range,
    severity: 'error',
    message: `"${first.text}" is not a property of ${withArticle(vocabulary.title)}.${near}`,
    ...(choices ? { choices } : {}),
  };
}
