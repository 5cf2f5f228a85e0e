import {
  DONE_ON,
  PLACE_VOCABULARY,
  RELATIONS,
  type Relation,
  type Row,
  SHAFT_MATERIAL,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Gear } from '../model/gear.js';
import { aside } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';
import { clutchesOf } from './gear-data.js';

/** Two statements of which one must be wrong, with what is wrong between them in words. */
export interface Disagreeing {
  readonly facts: readonly [Fact<unknown>, Fact<unknown>];
  readonly words: string;
  /** Set where the other one is borne out by more than itself: nothing but the first is in doubt. */
  readonly onlyFirst?: true;
}

/** Sheets round: what is above another figure by less is equal to it. */
const ROUNDING = 0.005;
/** Two readings of one curve are rounded more. */
const OF_A_CURVE = 0.02;

type Fields = Readonly<Record<string, unknown>>;

interface Around {
  readonly fields: Fields;
  readonly vocabulary: Vocabulary;
}

/** Statements of one thing that cannot both be true, by the relations of the vocabulary. */
export function disagreeingIn(fields: object, vocabulary: Vocabulary): Disagreeing[] {
  return within({ fields: fields as Fields, vocabulary }, undefined);
}

/** The same of a part, and of the grade that it is made of. */
export function disagreeingInPart(part: { readonly role: string; readonly grade?: object }): Disagreeing[] {
  const vocabulary = PLACE_VOCABULARY[part.role];
  return [
    ...(vocabulary ? disagreeingIn(part, vocabulary) : []),
    ...(part.grade ? disagreeingIn(part.grade, SHAFT_MATERIAL) : []),
    ...(part.role === 'gear' ? sensesAgainstReversing(part as unknown as Gear) : []),
  ];
}

/**
 * A sheet that says its gear does not reverse, and lists two clutches of which one does. Said of the gear in its line it
 * is how the gear is used: its astern clutch is left alone.
 */
function sensesAgainstReversing(gear: Gear): Disagreeing[] {
  const { reversing, entry } = gear;
  if (!reversing || heldBy(reversing) !== 'no' || homeOfFact(reversing)?.host !== entry?.origin) return [];
  const outputs = aside(() => clutchesOf(gear, gear.variant)).flatMap(({ output }) => output ?? []);
  const wordOf = (one: Fact<unknown>) => (heldBy(one) as { readonly word?: string } | undefined)?.word;
  const [first] = outputs;
  const other = outputs.find(one => wordOf(one) && wordOf(first!) && wordOf(one) !== wordOf(first!));
  if (!other) return [];
  return [
    {
      facts: [reversing, other],
      onlyFirst: true,
      words: `reversing no, and its clutches have the output ${first!.written} and ${other.written}`,
    },
  ];
}

function within(block: Around, around: Around | undefined): Disagreeing[] {
  const { fields, vocabulary } = block;
  const all = relationsOf(vocabulary).flatMap(one => broken(one, block, around) ?? []);
  for (const row of vocabulary.rows)
    if (row.many && row.kind.form === 'point') all.push(...twoAtOnePlace(row, fields));
  for (const row of vocabulary.blocks)
    for (const one of saidOf<Fields>(fields, row.field))
      all.push(...within({ fields: one, vocabulary: row.block }, block));
  return all;
}

/** `shaft in its line` has the relations of the shaft. */
function relationsOf({ title }: Vocabulary): readonly Relation[] {
  return RELATIONS[title.replace(/ in its line$/, '')] ?? [];
}

function broken(
  { less, than, times = 1 }: Relation,
  block: Around,
  around: Around | undefined,
): Disagreeing | undefined {
  const [small] = found(less, block, around, 'low');
  const others = than.flatMap(path => found(path, block, around, 'high'));
  if (!small || small.si === undefined || others.length === 0) return undefined;
  // One that nobody knows may be the greater.
  if (others.some(one => one.si === undefined)) return undefined;
  const great = others.reduce((one, other) => (other.si! > one.si! ? other : one));
  const rounding = small.isDay ? 0 : Math.abs(great.si!) * ROUNDING;
  if (small.si <= great.si! * times + rounding) return undefined;
  const more = small.isDay ? 'later than' : times === 1 ? 'more than' : 'far more than';
  return {
    facts: [small.fact, great.fact],
    words: `${small.words} ${small.fact.written} is ${more} ${great.words} ${great.fact.written}`,
  };
}

interface Figure {
  readonly fact: Fact<unknown>;
  readonly words: string;
  readonly si: number | undefined;
  readonly isDay: boolean;
}

function found(path: string, block: Around, around: Around | undefined, end: End): Figure[] {
  if (path.startsWith('^')) return around ? found(path.slice(1), around, undefined, end) : [];
  const [first, rest] = path.split('.') as [string, string | undefined];
  if (rest !== undefined) {
    const inner = block.vocabulary.blocks.find(one => one.field === first);
    if (!inner) return [];
    return saidOf<Fields>(block.fields, first).flatMap(fields =>
      found(rest, { fields, vocabulary: inner.block }, block, end),
    );
  }
  const fact = own(block.fields, first) as Fact<unknown> | undefined;
  if (!fact || !homeOfFact(fact)) return [];
  const words = block.vocabulary.rows.find(one => one.field === first)?.words ?? first;
  const value = heldBy(fact);
  return [{ fact, words, si: numberIn(value, end), isDay: typeof value === 'string' }];
}

/** Two points of one curve at the same place that say different things of it. */
function twoAtOnePlace(row: Row, fields: Fields): Disagreeing[] {
  const points = ((own(fields, row.field) ?? []) as readonly Fact<unknown>[]).flatMap(fact => {
    const value = heldBy(fact) as { y?: { si: number }; x?: { si: number } } | undefined;
    return value?.x && value.y && homeOfFact(fact) ? [{ fact, x: value.x.si, y: value.y.si }] : [];
  });
  return points.flatMap((one, index) => {
    const other = points
      .slice(0, index)
      .find(two => near(one.x, two.x, 1e-4) && !near(one.y, two.y, OF_A_CURVE));
    return other
      ? [
          {
            facts: [one.fact, other.fact] as const,
            words: `${row.words} is ${one.fact.written} and ${other.fact.written}`,
          },
        ]
      : [];
  });
}

function near(one: number, other: number, share: number): boolean {
  return Math.abs(one - other) <= share * Math.max(Math.abs(one), Math.abs(other));
}

/** Statements that carry a date: on their evidence, as a document, or as the day of what was done. */
export function datedIn(fields: object, vocabulary: Vocabulary): DatedFact[] {
  const dated: DatedFact[] = [];
  for (const { field, words } of vocabulary.rows)
    for (const fact of saidOf<Fact<unknown>>(fields as Fields, field)) {
      const date = homeOfFact(fact) && dateOf(fact, DONE_ON.includes(field));
      if (date) dated.push({ fact, date, words });
    }
  for (const { field, block } of vocabulary.blocks)
    for (const one of saidOf(fields as Fields, field)) dated.push(...datedIn(one, block));
  return dated;
}

/** Everything dated that the parts of these lines say of themselves and of their grades. */
export function datedOf(lines: readonly ShaftLine[]): DatedFact[] {
  return lines.flatMap(({ chain }) =>
    chain.flatMap(part => {
      const vocabulary = PLACE_VOCABULARY[part.role];
      const { grade } = part as { readonly grade?: object };
      return [
        ...(vocabulary ? datedIn(part, vocabulary) : []),
        ...(grade ? datedIn(grade, SHAFT_MATERIAL) : []),
      ];
    }),
  );
}

export interface DatedFact {
  readonly fact: Fact<unknown>;
  readonly date: string;
  readonly words: string;
}

function dateOf(fact: Fact<unknown>, isDay: boolean): string | undefined {
  const value = heldBy(fact);
  if (fact.evidence?.dated) return fact.evidence.dated;
  if (isDay) return value as string | undefined;
  return (value as { readonly dated?: string } | undefined)?.dated;
}

/** Everything that a field says, one or several; nearly always nothing. */
function saidOf<T extends object = object>(fields: Fields, field: string): readonly T[] {
  const said = own(fields, field);
  if (typeof said !== 'object' || said === null) return NOTHING;
  return Array.isArray(said) ? said.filter(one => typeof one === 'object' && one !== null) : [said as T];
}

const NOTHING: readonly never[] = [];

/** Without noting that anybody looked for it. */
function own(fields: Fields, field: string): unknown {
  return Object.hasOwn(fields, field) ? fields[field] : undefined;
}

/** To hold two statements against each other is to rest on neither, but it is to look at both. */
function heldBy(fact: Fact<unknown>): unknown {
  return aside(() => fact.value);
}

type End = 'low' | 'high';

/** The number of a quantity or a day, of one end of a range, the first of a point, the diameter of a pilot, the size of bolts. */
function numberIn(value: unknown, end: End): number | undefined {
  if (typeof value === 'string') return Date.parse(value);
  if (typeof value !== 'object' || value === null) return undefined;
  if ('si' in value) return value.si as number;
  const inner = value as Readonly<Record<'y' | 'diameter' | 'size' | End, unknown>>;
  return numberIn(inner[end] ?? inner.y ?? inner.diameter ?? inner.size, end);
}
