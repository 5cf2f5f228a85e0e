import { type AbsentRead, noteAbsent } from '@tailshaft/drivetrain';
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
 * otherwise: what is declared are its own fields, and the rest stays undefined. A part has two vocabularies: that of its
 * catalogue entry, where its own facts belong, and that of its place.
 */
export function notingAbsence<T extends object>(fields: T, vocabulary: Vocabulary, place?: Vocabulary): T {
  const whole = place ?? vocabulary;
  let noting = made.get(whole);
  if (!noting) {
    noting = {};
    for (const row of rowsOf(whole)) note(noting, whole.title, row, standing => standing.origin);
    if (place) {
      for (const row of rowsOf(vocabulary))
        note(noting, vocabulary.title, row, standing => standing.entry?.origin ?? standing.origin);
    }
    made.set(whole, noting);
  }
  return Object.setPrototypeOf(fields, noting) as T;
}

/** `engine in its line` is the engine. */
export function withoutPlace(title: string): string {
  return title.replace(/ in its line$/, '');
}

function rowsOf({ rows, blocks }: Vocabulary): readonly (Row | BlockRow)[] {
  return [...rows, ...blocks];
}

function note(
  noting: object,
  title: string,
  row: Row | BlockRow,
  hostOf: (standing: Standing) => Origin,
): void {
  // Lists are there with nothing in them: to look at one says nothing of what is in it.
  if (row.many) return;
  const of = withoutPlace(title);
  const readOf = new WeakMap<Origin, AbsentRead>();
  Object.defineProperty(noting, row.field, {
    configurable: true,
    get(this: Standing) {
      const host = hostOf(this);
      let read = readOf.get(host);
      if (!read) {
        read = {
          host,
          property: row.words,
          of,
          ...(row.absent === undefined ? {} : { takenAs: row.absent }),
          ...('selects' in row && row.selects ? { selects: true as const } : {}),
        };
        readOf.set(host, read);
      }
      noteAbsent(read);
      return undefined;
    },
  });
}
