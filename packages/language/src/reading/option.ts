import type { Fact } from '@tailshaft/drivetrain';
import type { Row } from '@tailshaft/vocabulary';
import { scan } from '../text/scan.js';
import { declared, readFact } from './block.js';
import { Cursor } from './cursor.js';
import type { FactReading, Host, Range } from './place.js';
import type { Problem } from './problem.js';
import { kindOfText, type Tok } from './token.js';

/** A value that a study tries for a property, read as if it stood at the property's host. */
export interface OptionReading {
  readonly found: FactReading;
  readonly fact?: Fact<unknown>;
  readonly problems: readonly Problem[];
}

/** Reads a text as the value of a property; everything of it stands at `place`. */
export function readOption(row: Row, text: string, host: Host, place: Range): OptionReading {
  const atoms: Tok[] = scan(text).map(one => ({
    kind: kindOfText(one.text),
    text: one.text,
    start: place.start,
    end: place.end,
    line: 0,
  }));
  const cursor = new Cursor(atoms, host.uri, () => false);
  const reading = { host, facts: [], nested: [], fields: {}, problems: [], concerns: [], unread: [] };
  const found = declared(readFact(reading, cursor, row, { start: place.start, end: place.start }), host);
  const left = cursor.index < atoms.length ? atoms[cursor.index] : undefined;
  const rest: Problem[] = left
    ? [
        {
          code: 'text/value',
          start: place.start,
          end: place.end,
          severity: 'error',
          message: `"${text}" is more than one value of "${row.words}": put a comma between values.`,
        },
      ]
    : [];
  const concerns: Problem[] = cursor.concerns.map(one => ({
    code: 'text/unit',
    start: place.start,
    end: place.end,
    severity: 'error',
    message: `"${one.written}" is not a reliable ${one.dimension}: write "${row.words}" with its unit.`,
  }));
  return {
    found,
    ...(found.fact ? { fact: found.fact } : {}),
    problems: [...cursor.problems, ...concerns, ...rest],
  };
}
