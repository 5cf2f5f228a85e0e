/** Facts by their words; a block of facts stands behind the words of its header. `null` prints nothing. */
export interface Facts {
  [words: string]: string | Facts | null;
}

/** One part of a line: `replace gear Lime-20 ratio 2.478:1 ahead clutch A { ... }`. */
export interface Part {
  kind: string;
  verb?: '' | 'replace' | 'retain' | 'modify' | 'remove';
  entry?: string;
  header?: string;
  facts: Facts;
}

export interface Line {
  name: string;
  mirrors?: string;
  parts: Part[];
  modes?: Facts;
}

export interface Arrangement {
  name: string;
  revises?: string;
  lines: Line[];
  says: string[];
}

export interface Entry {
  kind: string;
  name: string;
  facts: Facts;
}

/** A whole vessel as data, so that a mistake is a change of data in whatever it is made to. */
export interface Spec {
  catalogue: Entry[];
  duty: string;
  dutyFacts: Facts;
  hull: string;
  hullFacts: Facts;
  helm: Facts;
  arrangements: Arrangement[];
  criteria: Facts;
  says: string[];
}

/** First and last line of the text, from 1, of everything that has a name: `proposed.Port.shaft`, `gear Lime-20`. */
export type Places = Map<string, readonly [number, number]>;

export interface Printed {
  readonly text: string;
  readonly catalogue: string;
  readonly places: Places;
}

export const copyOf = (spec: Spec): Spec => structuredClone(spec);

/** The text of the vessel; the catalogue in front of it, or by itself where another file is to hold it. */
export function print(spec: Spec, apart = false): Printed {
  const places: Places = new Map();
  const entries = new Writer(places);
  for (const one of spec.catalogue) {
    entries.note(`${one.kind} ${one.name}`, () => entries.block(`${one.kind} ${one.name}`, one.facts));
  }
  if (!apart) {
    vessel(entries, spec);
    return { text: entries.text(), catalogue: '', places };
  }
  const own = new Writer(places);
  own.line('import "catalogue"');
  vessel(own, spec);
  return { text: own.text(), catalogue: entries.text(), places };
}

function vessel(to: Writer, spec: Spec): void {
  to.open('vessel Testcraft "vessel"');
  to.block(`duty ${spec.duty}`, spec.dutyFacts);
  to.note('hull', () => to.block(`hull ${spec.hull}`, spec.hullFacts));
  if (Object.keys(spec.helm).length > 0) to.note('helm', () => to.block('helm', spec.helm));
  for (const one of spec.arrangements) arrangement(to, one);
  if (Object.keys(spec.criteria).length > 0) to.note('criteria', () => to.block('criteria', spec.criteria));
  spec.says.forEach((text, index) => {
    to.note(`says ${index}`, () => to.lines(text));
  });
  to.close();
}

function arrangement(to: Writer, one: Arrangement): void {
  to.open(`arrangement ${one.name}${one.revises ? ` revises ${one.revises}` : ''}`);
  for (const line of one.lines) {
    const at = `${one.name}.${line.name}`;
    to.note(at, () => {
      to.open(`shaftline ${line.name}${line.mirrors ? ` mirrors ${line.mirrors}` : ''}`);
      for (const part of line.parts) {
        const nth = line.parts.filter(other => other.kind === part.kind).indexOf(part);
        to.note(`${at}.${part.kind}${nth > 0 ? nth + 1 : ''}`, () => {
          const words = [part.verb, part.kind, part.entry, part.header].filter(word => word).join(' ');
          if (Object.values(part.facts).some(fact => fact !== null)) to.block(words, part.facts);
          else to.line(words);
        });
      }
      if (line.modes) to.facts(line.modes);
      to.close();
    });
  }
  for (const text of one.says) to.line(text);
  to.close();
}

class Writer {
  readonly #lines: string[] = [];
  #depth = 0;
  constructor(readonly places: Places) {}

  line(text: string): void {
    this.#lines.push(`${'  '.repeat(this.#depth)}${text}`);
  }
  lines(text: string): void {
    for (const one of text.split('\n')) this.line(one);
  }
  open(words: string): void {
    this.line(`${words} {`);
    this.#depth++;
  }
  close(): void {
    this.#depth--;
    this.line('}');
  }
  facts(facts: Facts): void {
    for (const [words, value] of Object.entries(facts)) {
      if (value === null) continue;
      // Words that may be said more than once are told apart by a number in brackets.
      const said = words.replace(/ ?\(\d+\)$/, '');
      if (typeof value === 'string') this.line(value === '' ? said : `${said} ${value}`);
      else this.block(said, value);
    }
  }
  block(words: string, facts: Facts): void {
    this.open(words);
    this.facts(facts);
    this.close();
  }
  note(name: string, write: () => void): void {
    const from = this.#lines.length + 1;
    write();
    this.places.set(name, [from, this.#lines.length]);
  }
  text(): string {
    return `${this.#lines.join('\n')}\n`;
  }
}
