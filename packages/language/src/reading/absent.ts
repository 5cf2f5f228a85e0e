import { noteAbsent } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';

/** What a model object has of where it stands. */
interface Standing {
  readonly origin: Origin;
  readonly entry?: { readonly origin: Origin };
}

const made = new WeakMap<Vocabulary, object>();

/**
 * Lets a model object tell of every property of its vocabulary that is looked for and not declared. The object is the same
 * otherwise: what is declared are its own fields, and the rest stays undefined.
 */
export function notingAbsence<T extends object>(fields: T, vocabulary: Vocabulary, place?: Vocabulary): T {
  let noting = made.get(place ?? vocabulary);
  if (!noting) {
    noting = {};
    // What may be written in place and in the catalogue belongs to the part itself.
    if (place) for (const row of rowsOf(place)) note(noting, row, standing => standing.origin);
    for (const row of rowsOf(vocabulary))
      note(noting, row, standing => (place ? standing.entry?.origin : undefined) ?? standing.origin);
    made.set(place ?? vocabulary, noting);
  }
  return Object.setPrototypeOf(fields, noting) as T;
}

function rowsOf({ rows, blocks }: Vocabulary): readonly (Row | BlockRow)[] {
  return [...rows, ...blocks];
}

function note(noting: object, row: Row | BlockRow, hostOf: (standing: Standing) => Origin): void {
  // Lists are there with nothing in them: to look at one says nothing of what is in it.
  if (row.many) return;
  Object.defineProperty(noting, row.field, {
    configurable: true,
    get(this: Standing) {
      noteAbsent({
        host: hostOf(this),
        property: row.words,
        ...('absent' in row && row.absent !== undefined ? { takenAs: row.absent } : {}),
      });
      return undefined;
    },
  });
}
