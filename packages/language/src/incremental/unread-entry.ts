import type { EntryKind } from '@tailshaft/vocabulary';
import { TailshaftTerminals } from '../generated/ast.js';
import type { DocumentReading, EntryReading } from '../reading/document.js';
import { unquoted } from '../reading/forms/words.js';
import type { Place } from '../reading/place.js';

/*
 * A large catalogue is seen by every spec and used in a few of its entries. So what an entry is called is read from its head
 * alone, and its facts when somebody asks for them. That is only done where the parser could find no fault: then nothing
 * that stands around the entry depends on what stands in it.
 */

/** What is known of an entry from its head. */
export interface EntryHead {
  readonly kind: EntryKind;
  readonly name: string;
  readonly title?: string;
  /** Offsets of the name. */
  readonly start: number;
  readonly end: number;
}

const { WORD, STRING } = TailshaftTerminals;
/** One sign or one whole comment: a search that may go back would try halves of them, and every sum of spaces. */
const HIDDEN = `(?:[\\s\\uFEFF]|//[^\\r\\n]*(?![^\\r\\n])|/\\*(?:[^*]|\\*(?!/))*\\*/)`;
const HEAD = new RegExp(
  `${HIDDEN}*(engine|motor|gear|transfer|coupling|propeller|shaft[ \\t]+material)[ \\t]+(${WORD.source})(?=[\\s{])(?:[ \\t]+(${STRING.source}))?[ \\t]*(?=\\{)`,
  'y',
);
const REST = new RegExp(`${HIDDEN}*$`, 'y');

/** Words of the grammar look so, which name nothing. */
const PERHAPS_A_KEYWORD = /^[a-z]+$/;

/** A number in inches, which opens no string; strings and comments, in which brackets mean nothing; and brackets. */
const LOOK =
  /[\d\u00BC-\u00BE\u2150-\u215E]"(?![^\s}\])\u00D7,;])|"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?\*\/|\/\*|[{}[\]]/g;

/** The head of the only entry that a text holds, undefined where the parser might find fault with anything in it. */
export function headOfWholeEntry(text: string): EntryHead | undefined {
  HEAD.lastIndex = 0;
  const head = HEAD.exec(text);
  if (!head) return undefined;
  const [whole, kind, name, title] = head as unknown as [string, string, string, string | undefined];
  if (PERHAPS_A_KEYWORD.test(name)) return undefined;
  const end = endOfBlock(text, whole.length);
  if (end === undefined) return undefined;
  REST.lastIndex = end;
  if (!REST.test(text)) return undefined;
  const start = whole.lastIndexOf(name, title === undefined ? whole.length : whole.lastIndexOf(title) - 1);
  return {
    kind: (kind.startsWith('shaft') ? 'shaft material' : kind) as EntryKind,
    name,
    ...(title === undefined ? {} : { title: unquoted(title) }),
    start,
    end: start + name.length,
  };
}

/** Behind the brace that closes the block that opens here; evidence in square brackets holds words and no block. */
function endOfBlock(text: string, open: number): number | undefined {
  let depth = 0;
  let evidence = false;
  LOOK.lastIndex = open;
  for (let match = LOOK.exec(text); match; match = LOOK.exec(text)) {
    const mark = match[0];
    if (mark === '/*') return undefined;
    if (mark === '[' || mark === ']') {
      if (evidence === (mark === '[')) return undefined;
      evidence = mark === '[';
    } else if (mark === '{' || mark === '}') {
      if (evidence) return undefined;
      depth += mark === '{' ? 1 : -1;
      if (depth === 0) return LOOK.lastIndex;
    }
  }
  return undefined;
}

/** An entry of which only the head is read so far. */
class UnreadEntry implements EntryReading {
  readonly kind: EntryKind;
  readonly name: string;
  declare readonly title?: string;
  readonly namePlace: Place;
  readonly #read: () => EntryReading;

  constructor({ kind, name, title, start, end }: EntryHead, uri: string, read: () => EntryReading) {
    this.kind = kind;
    this.name = name;
    if (title !== undefined) this.title = title;
    this.namePlace = { uri, start, end };
    this.#read = read;
  }

  get doc() {
    return this.#read().doc;
  }
  get host() {
    return this.#read().host;
  }
  get whole() {
    return this.#read().whole;
  }
  get facts() {
    return this.#read().facts;
  }
}

/** A reading with one entry, of which nothing but the head is read before somebody asks for more. */
export function unreadEntry(head: EntryHead, uri: string, read: () => DocumentReading): DocumentReading {
  return {
    uri,
    imports: [],
    entries: [new UnreadEntry(head, uri, () => read().entries[0]!)],
    vessels: [],
    strays: [],
    get problems() {
      return read().problems;
    },
  };
}
