import type { EntryTable } from '../elaborate/catalogue.js';
import { withNested } from '../elaborate/vessel.js';
import type { PartReading } from '../reading/arrangement.js';
import type { BlockReading } from '../reading/block.js';
import type { DocumentReading } from '../reading/document.js';
import { entryKey, type NameKind, type Occurrence } from './occurrence.js';

/** The names of catalogue entries where they are declared, and where a line, or a shaft for its grade, uses them. */
export function namesOfParts(reading: DocumentReading, table: EntryTable): Occurrence[] {
  const found: Occurrence[] = [];
  for (const entry of reading.entries) {
    if (entry.name) {
      const { uri, start, end } = entry.namePlace;
      const kind = entry.kind as NameKind;
      const key = entryKey(kind, entry.namePlace);
      found.push({ uri, start, end, kind, name: entry.name, key, declares: entry.whole });
    }
    found.push(...materialsIn(entry.facts, table));
  }
  for (const part of partsOf(reading)) {
    const entry = part.name === undefined ? undefined : table.find(part.role, part.name);
    if (entry && part.namePlace) {
      const { uri, start, end } = part.namePlace;
      const key = entryKey(part.role, entry.namePlace);
      found.push({ uri, start, end, kind: part.role as NameKind, name: entry.name, key });
    }
    found.push(...materialsIn(part.facts, table));
  }
  return found;
}

export function partsOf(reading: DocumentReading): PartReading[] {
  return reading.vessels.flatMap(vessel =>
    vessel.arrangements.flatMap(one => one.lines.flatMap(line => line.parts)),
  );
}

function materialsIn(block: BlockReading, table: EntryTable): Occurrence[] {
  return [...withNested(block)].flatMap(one =>
    one.facts.flatMap(({ row, value, fact }): Occurrence[] => {
      if (row.kind.form !== 'name' || row.kind.of !== 'shaft material' || !value) return [];
      const entry = typeof fact?.value === 'string' ? table.find('shaft material', fact.value) : undefined;
      if (!entry) return [];
      const key = entryKey('shaft material', entry.namePlace);
      return [{ uri: one.host.uri, ...value, kind: 'shaft material', name: entry.name, key }];
    }),
  );
}
