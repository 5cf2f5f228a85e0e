import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';

/** What stands in the place of what: facts, or blocks of facts. */
export type Exchanged = ReadonlyMap<object, object>;

/** The vessel with other facts in the place of some of a line; whatever points to one points to the other one. */
export function vesselWith(vessel: Vessel, line: ShaftLine, others: Exchanged): Vessel {
  const changed = replaced(line, others);
  const arrangements = new Map<Arrangement, Arrangement>();
  for (const one of vessel.arrangements) {
    const before = one.before && (arrangements.get(one.before) ?? one.before);
    const own = one.name === line.arrangement;
    const lines = own ? one.lines.map(old => (old === line ? changed : old)) : one.lines;
    arrangements.set(one, { ...one, lines, ...(before ? { before } : {}) });
  }
  return { ...vessel, arrangements: vessel.arrangements.map(one => arrangements.get(one)!) };
}

/** What a line is compared with stays as it was, and places are no part of it. */
const LEFT = new Set(['before', 'origin', 'nameOrigin', 'entry', 'grade', 'keptFrom', 'reference']);

/** The same objects where nothing changed, one new one for each that holds what is exchanged. */
function replaced<T extends object>(whole: T, others: Exchanged): T {
  const done = new Map<object, object>();
  const visit = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    const other = others.get(value);
    if (other) return other;
    if (isLeaf(value)) return value;
    const had = done.get(value);
    if (had) return had;
    done.set(value, value);
    const made = Array.isArray(value) ? visitList(value) : visitFields(value as Record<string, unknown>);
    done.set(value, made);
    return made;
  };
  const visitList = (list: readonly unknown[]): object => {
    const made = list.map(visit);
    return made.every((one, index) => one === list[index]) ? list : made;
  };
  const visitFields = (fields: Record<string, unknown>): object => {
    const entries = Object.entries(fields).map(
      ([key, value]) => [key, LEFT.has(key) ? value : visit(value)] as const,
    );
    if (entries.every(([key, value]) => value === fields[key])) return fields;
    return Object.setPrototypeOf(Object.fromEntries(entries), Object.getPrototypeOf(fields));
  };
  return visit(whole) as T;
}

/** Facts, values and places: nothing stands in them that could hold another fact. */
function isLeaf(value: object): boolean {
  return 'written' in value || 'si' in value || 'uri' in value;
}
