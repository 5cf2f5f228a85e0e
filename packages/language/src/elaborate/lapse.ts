import { declareFact, type Fact, isWeak, meaningOf } from '@tailshaft/drivetrain';
import { formatValue, renamed, tipClearanceAfterChange, type Value } from '@tailshaft/mechanics';
import { PLACE_VOCABULARY, type Row } from '@tailshaft/vocabulary';
import type { PartLayers } from './part.js';
import { fieldsOf } from './part.js';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Facts of kept parts that were measured with something that is another now, and are not said anew: each is worked out for
 * what is there now where there is a formula, and is unknown where there is none. `olds` is the line before.
 */
export function withLapsed(layers: readonly PartLayers[], olds: readonly PartLayers[]): PartLayers[] {
  const fieldsOfRole = (some: readonly PartLayers[], role: string) => {
    const found = some.filter(one => one.role === role).at(-1);
    return found && fieldsOf(found);
  };
  return layers.map(one => {
    const old = one.old && fieldsOf(one.old);
    if (!old) return one;
    const now = fieldsOf(one);
    const lapsed: Record<string, unknown> = {};
    for (const row of PLACE_VOCABULARY[one.role]?.rows ?? []) {
      if (!row.measuredWith || row.many || old[row.field] === undefined || row.field in one.said) continue;
      const changed = row.measuredWith.flatMap(path => {
        const [role, field] = path.includes('.') ? path.split('.') : [one.role, path];
        const [was, is] =
          role === one.role ? [old, now] : [fieldsOfRole(olds, role!), fieldsOfRole(layers, role!)];
        return isChanged(was?.[field!], is?.[field!])
          ? [{ field: field!, was: was![field!], is: is![field!] }]
          : [];
      });
      const fact = old[row.field] as Fact<unknown>;
      if (changed.length > 0 && fact.value !== undefined)
        lapsed[row.field] = declareFact(anew(row, fact, old, now, changed), {
          host: one.origin,
          property: row.words,
        });
    }
    if (Object.keys(lapsed).length === 0) return one;
    return { ...one, facts: [...one.facts, lapsed] };
  });
}

interface ChangedFact {
  readonly field: string;
  readonly was: unknown;
  readonly is: unknown;
}

/** A fact that was not there before was only found out since: nothing was measured with another one. */
function isChanged(was: unknown, is: unknown): boolean {
  return was !== undefined && is !== undefined && meaningOf(was) !== meaningOf(is);
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
    const evidence = [fact, ...changed.flatMap(one => [one.was, one.is] as Fact<unknown>[])].find(
      isWeak,
    )?.evidence;
    return { value, written: formatValue(value), origin: fact.origin, ...(evidence ? { evidence } : {}) };
  }
  const with_ = changed.map(
    ({ field, was, is }) => `${wordsOf(field)} ${writtenOf(was)}, which is ${writtenOf(is)} now`,
  );
  return {
    value: undefined,
    written: 'unknown',
    origin: fact.origin,
    lapsed: `${fact.written} was measured with ${with_.join(', and ')}`,
  };
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
      wordsOf('tipClearance'),
      'c',
    );
  },
};

function writtenOf(fact: unknown): string {
  return (fact as { written?: string }).written ?? 'another';
}

function wordsOf(field: string): string {
  return field.replace(/[A-Z]/g, letter => ` ${letter.toLowerCase()}`);
}
