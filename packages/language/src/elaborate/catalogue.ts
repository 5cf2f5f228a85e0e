import type { Catalogue, CatalogueEntry, ShaftMaterial } from '@tailshaft/drivetrain';
import { type EntryKind, type Role, SHAFT_MATERIAL } from '@tailshaft/vocabulary';
import { notingAbsence } from '../reading/absent.js';
import type { EntryReading } from '../reading/document.js';

/** The entries that a file can see, by kind and name. The first of two with one name counts. */
export class EntryTable {
  private readonly byKind = new Map<string, Map<string, EntryReading>>();
  private readonly passedOver = new Map<EntryReading, EntryReading>();
  private readonly listed = new Map<string, readonly string[]>();
  private made: Catalogue | undefined;

  constructor(readonly lists: readonly (readonly EntryReading[])[]) {
    for (const entries of lists) {
      for (const entry of entries) {
        const names = this.byKind.get(entry.kind) ?? new Map<string, EntryReading>();
        this.byKind.set(entry.kind, names);
        const first = names.get(entry.name);
        if (first) {
          if (first.host.uri !== entry.host.uri && !this.passedOver.has(first))
            this.passedOver.set(first, entry);
        } else if (entry.name) names.set(entry.name, entry);
      }
    }
  }

  find(kind: EntryKind | Role, name: string): EntryReading | undefined {
    return this.byKind.get(kind)?.get(name);
  }

  /** An entry of the same name in another file, which is passed over. */
  second(entry: EntryReading): EntryReading | undefined {
    return this.passedOver.get(entry);
  }

  /** The same list whenever it is asked for: whatever is worked out of it can be kept by it. */
  names(kind: string): readonly string[] {
    const had = this.listed.get(kind);
    if (had) return had;
    const names = [...(this.byKind.get(kind)?.keys() ?? [])];
    this.listed.set(kind, names);
    return names;
  }

  entries(kind: EntryKind | Role): EntryReading[] {
    return [...(this.byKind.get(kind)?.values() ?? [])];
  }

  /** As the drivetrain package sees it. */
  get catalogue(): Catalogue {
    this.made ??= {
      engines: this.all('engine'),
      motors: this.all('motor'),
      gears: this.all('gear'),
      transfers: this.all('transfer'),
      couplings: this.all('coupling'),
      propellers: this.all('propeller'),
      materials: this.entries('shaft material').map(one => keptOf(one, materialOf)),
    };
    return this.made;
  }

  private all<F>(kind: EntryKind): CatalogueEntry<F>[] {
    return this.entries(kind).map(one => keptOf(one, catalogueEntry<F>));
  }
}

const KEPT = new WeakMap<EntryReading, unknown>();

/** The same for the same reading: a large catalogue is looked at by every trial of a way out. */
function keptOf<T>(entry: EntryReading, make: (entry: EntryReading) => T): T {
  const had = KEPT.get(entry) ?? make(entry);
  KEPT.set(entry, had);
  return had as T;
}

/** One entry with its facts typed by its kind: the vocabulary has checked every field against that type. */
export function catalogueEntry<F>(entry: EntryReading): CatalogueEntry<F> {
  return {
    name: entry.name,
    ...(entry.title ? { title: entry.title } : {}),
    ...(entry.doc ? { doc: entry.doc } : {}),
    origin: entry.host,
    nameOrigin: entry.namePlace,
    facts: entry.facts.fields as F,
  };
}

export function materialOf(entry: EntryReading): ShaftMaterial {
  const { facts, ...rest } = catalogueEntry<Omit<ShaftMaterial, 'name' | 'origin'>>(entry);
  const material = {
    ...facts,
    name: rest.name,
    ...(rest.title ? { title: rest.title } : {}),
    origin: rest.origin,
  };
  return notingAbsence(material, SHAFT_MATERIAL);
}
