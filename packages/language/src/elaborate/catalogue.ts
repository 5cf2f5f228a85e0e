import type {
  Catalogue,
  CatalogueEntry,
  CouplingFacts,
  EngineFacts,
  GearFacts,
  MotorFacts,
  PropellerFacts,
  ShaftMaterial,
  TransferFacts,
} from '@tailshaft/drivetrain';
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
          if (first.namePlace.uri !== entry.namePlace.uri && !this.passedOver.has(first))
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
    this.made ??= this.seen();
    return this.made;
  }

  /** Kind by kind when it is looked at: most of a large catalogue never is. */
  private seen(): Catalogue {
    const lists = new Map<EntryKind, readonly unknown[]>();
    const kept = <T>(kind: EntryKind, make: (entry: EntryReading) => T): readonly T[] => {
      const had = lists.get(kind) ?? this.entries(kind).map(one => keptOf(one, make));
      lists.set(kind, had);
      return had as readonly T[];
    };
    return {
      get engines() {
        return kept('engine', catalogueEntry<EngineFacts>);
      },
      get motors() {
        return kept('motor', catalogueEntry<MotorFacts>);
      },
      get gears() {
        return kept('gear', catalogueEntry<GearFacts>);
      },
      get transfers() {
        return kept('transfer', catalogueEntry<TransferFacts>);
      },
      get couplings() {
        return kept('coupling', catalogueEntry<CouplingFacts>);
      },
      get propellers() {
        return kept('propeller', catalogueEntry<PropellerFacts>);
      },
      get materials() {
        return kept('shaft material', materialOf);
      },
    };
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
    get doc() {
      return entry.doc;
    },
    get origin() {
      return entry.host;
    },
    nameOrigin: entry.namePlace,
    get facts() {
      return entry.facts.fields as F;
    },
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
