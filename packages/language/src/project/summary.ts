import type { DocumentReading, EntryReading, ImportReading } from '../reading/document.js';
import type { Place } from '../reading/place.js';

/** What other files and lists ask of a file: its imports, its entries, and the names in its vessels. */
export interface DocumentSummary {
  readonly imports: readonly ImportReading[];
  readonly entries: readonly EntryReading[];
  readonly vessels: readonly {
    readonly name: string;
    readonly namePlace: Place;
    readonly arrangements: readonly {
      readonly name: string;
      readonly lines: readonly { readonly name: string; readonly namePlace: Place }[];
    }[];
  }[];
}

/** A summary that holds on to nothing else of the reading. */
export function summaryOf({ imports, entries, vessels }: DocumentReading): DocumentSummary {
  return {
    imports: imports.map(one => ({ ...one })),
    entries,
    vessels: vessels.map(({ name, namePlace, arrangements }) => ({
      name,
      namePlace: placeOnly(namePlace),
      arrangements: arrangements.map(one => ({
        name: one.name,
        lines: one.lines.map(line => ({ name: line.name, namePlace: placeOnly(line.namePlace) })),
      })),
    })),
  };
}

function placeOnly({ uri, start, end }: Place): Place {
  return { uri, start, end };
}
