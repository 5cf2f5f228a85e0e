import { declareFact, type Fact, isWeak, meaningOf } from '@tailshaft/drivetrain';
import { formatValue, renamed, tipClearanceAfterChange, type Value, wordsOfKey } from '@tailshaft/mechanics';
import { type BlockRow, PLACE_VOCABULARY, type Row, type Vocabulary } from '@tailshaft/vocabulary';
import type { Host } from '../reading/place.js';
import { instead, isSameBlock } from './overlay.js';
import type { PartLayers } from './part.js';
import { fieldsOf } from './part.js';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Facts of kept parts that were measured with something that is another now, and are not said anew: each is worked out for
 * what is there now where there is a formula, and is unknown where there is none. `olds` is the line before.
 */
export function withLapsed(layers: readonly PartLayers[], olds: readonly PartLayers[]): PartLayers[] {
  return layers.map(one => {
    const old = one.old && fieldsOf(one.old);
    const vocabulary = PLACE_VOCABULARY[one.role];
    if (!old || !vocabulary) return one;
    const lapsed = lapsedIn({ old, now: fieldsOf(one), vocabulary, host: one.origin }, { olds, layers });
    if (Object.keys(lapsed).length === 0) return one;
    return { ...one, facts: [...one.facts, lapsed] };
  });
}

/** A part, or a block in it, as it was and as it is. */
interface Block {
  readonly old: Fields;
  readonly now: Fields;
  readonly vocabulary: Vocabulary;
  readonly host: Host;
  readonly around?: Block;
}

interface Lines {
  readonly olds: readonly PartLayers[];
  readonly layers: readonly PartLayers[];
}

/** What of a block, and of the blocks in it, no longer counts as it was: the fields that stand in the place of those. */
function lapsedIn(block: Block, lines: Lines): Record<string, unknown> {
  const { old, now, vocabulary, host } = block;
  const lapsed: Record<string, unknown> = {};
  for (const row of vocabulary.rows) {
    if (!row.measuredWith || !Object.hasOwn(old, row.field) || !Object.hasOwn(now, row.field)) continue;
    // What is said anew, here or by another catalogue entry, was measured with what is there now.
    const said = [now[row.field]].flat() as Fact<unknown>[];
    const had = [old[row.field]].flat() as Fact<unknown>[];
    const facts = had.filter(fact => fact.value !== undefined && said.includes(fact));
    if (facts.length === 0) continue;
    const changed = row.measuredWith.flatMap(path => changedAt(path, block, lines));
    if (changed.length === 0) continue;
    const left = facts.map(fact =>
      declareFact(anew(row, fact, old, now, changed), { host, property: row.words }),
    );
    // Points of a curve that are said anew are another curve: none of the old ones belongs to it.
    const fresh = said.filter(fact => !had.includes(fact));
    lapsed[row.field] = row.many ? instead(fresh.length > 0 ? fresh : left) : left[0];
  }
  for (const row of vocabulary.blocks) {
    // Of several without a head nobody knows which was which.
    if (row.many && !row.head) continue;
    if (!Object.hasOwn(old, row.field) || !Object.hasOwn(now, row.field)) continue;
    const had = [old[row.field]].flat() as Fields[];
    const there = [now[row.field]].flat() as Fields[];
    const all = there.map(one => {
      const was = row.head ? had.find(other => isSameBlock(row, one, other)) : had[0];
      if (!was || typeof one !== 'object') return one;
      const inner = {
        old: was,
        now: one,
        vocabulary: row.block,
        around: block,
        host: hostOf(row, one, host),
      };
      const less = lapsedIn(inner, lines);
      return Object.keys(less).length === 0
        ? one
        : (Object.setPrototypeOf({ ...one, ...less }, Object.getPrototypeOf(one)) as Fields);
    });
    if (all.some((one, at) => one !== there[at]))
      lapsed[row.field] = Array.isArray(now[row.field]) ? instead(all) : all[0];
  }
  return lapsed;
}

/** Where a block of this part is said now: where it stands in its statement, or else as part of that. */
function hostOf(row: BlockRow, one: Fields, around: Host): Host {
  const own = one.origin as Host;
  const { block } = around;
  if (own.uri === around.uri && block && own.start >= block.start && own.end <= block.end) return own;
  const head = row.head && (one[`${row.head.field}Fact`] as Fact<unknown> | undefined)?.written;
  const words = [around.saidIn?.words, row.words, head].filter(Boolean).join(' ');
  return { ...around, saidIn: { host: around.saidIn?.host ?? around, words } };
}

interface ChangedFact {
  readonly field: string;
  readonly was: Fact<unknown> | undefined;
  readonly is: Fact<unknown> | undefined;
  /** Set where another part has come in its place: which it is. */
  readonly part?: string;
}

/** What has become of the fact of this part, or of another one in its line, that something was measured with. */
function changedAt(path: string, own: Block, line: Lines): ChangedFact[] {
  if (path.startsWith('^')) return own.around ? changedAt(path.slice(1), own.around, line) : [];
  const [role, field] = path.includes('.') ? (path.split('.') as [string, string]) : [undefined, path];
  const [before, after] = [line.olds, line.layers].map(
    some => role && some.filter(one => one.role === role).at(-1),
  ) as (PartLayers | undefined)[];
  const was = (role ? before && fieldsOf(before) : own.old)?.[field] as Fact<unknown> | undefined;
  const is = (role ? after && fieldsOf(after) : own.now)?.[field] as Fact<unknown> | undefined;
  const same = was !== undefined && is !== undefined && meaningOf(was) === meaningOf(is);
  if (same || (!before && role)) return [];
  // Of another part nobody knows that it agrees with the one before until both say so.
  if (role && after?.old === undefined) return [{ field, was, is, part: role }];
  // A fact of the same part that was not there before was only found out since: nothing was measured with another one.
  return was !== undefined && is !== undefined ? [{ field, was, is }] : [];
}

function anew(
  row: Row,
  fact: Fact<unknown>,
  old: Fields,
  now: Fields,
  changed: readonly ChangedFact[],
): Fact<unknown> {
  const value = WORKED_OUT[row.field]?.(old, now, changed);
  if (value) {
    // As well known as the least known of what it follows from.
    const evidence = [fact, ...changed.flatMap(one => [one.was, one.is])].find(
      one => one && isWeak(one),
    )?.evidence;
    return { value, written: formatValue(value), origin: fact.origin, ...(evidence ? { evidence } : {}) };
  }
  const with_ = [...new Set(changed.map(wordsOfChange))];
  return {
    value: undefined,
    written: 'unknown',
    origin: fact.origin,
    lapsed: `${fact.written} was measured with ${with_.join(', and ')}`,
  };
}

/** `diameter 26 in, which is 27 in now`, or that the part is another. */
function wordsOfChange({ field, was, is, part }: ChangedFact): string {
  if (was?.written !== undefined && is?.written !== undefined)
    return `${wordsOfKey(field)} ${was.written}, which is ${is.written} now`;
  return `another ${part ?? wordsOfKey(field)}`;
}

/** How a fact follows what it was measured with, by its field. */
const WORKED_OUT: Readonly<
  Record<string, (old: Fields, now: Fields, changed: readonly ChangedFact[]) => Value | undefined>
> = {
  tipClearance: (old, now, changed) => {
    if (changed.some(one => one.field !== 'diameter')) return undefined;
    const [clearance, diameter, newDiameter] = [old.tipClearance, old.diameter, now.diameter].map(
      one => (one as Fact<Value<'length'>> | undefined)?.value,
    );
    if (!clearance || !diameter || !newDiameter) return undefined;
    return renamed(
      tipClearanceAfterChange({
        clearance: renamed(clearance, 'tip clearance before', 'c'),
        diameter: renamed(diameter, 'diameter before', 'D'),
        newDiameter: renamed(newDiameter, 'diameter now', "D'"),
      }),
      wordsOfKey('tipClearance'),
      'c',
    );
  },
};
