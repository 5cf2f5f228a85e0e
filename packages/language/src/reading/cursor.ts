import type { UnitConcern } from '@tailshaft/drivetrain';
import type { Joining } from '@tailshaft/vocabulary';
import type { Problem } from './problem.js';
import { type AtomTok, isTok, type Tok } from './token.js';

/**
 * Walks the atoms of one block. A value stands on the line of its property's words, so a value that was not typed
 * yet never swallows the next line.
 */
export class Cursor {
  index = 0;
  /** Line that the value being read must stand on. */
  line = 0;
  readonly problems: Problem[] = [];
  readonly concerns: UnitConcern[] = [];
  /** Parts of the value being read that are written `unknown`. */
  open: string[] = [];
  /** What is known of a value that is unknown as a whole. */
  known: Readonly<Record<string, unknown>> | undefined;

  constructor(
    readonly atoms: readonly AtomTok[],
    readonly uri: string,
    /** Whether a property begins at this index: there a value has ended. */
    private readonly beginsProperty: (index: number) => boolean,
  ) {}

  /** The next atom when it can belong to the value being read. */
  peek(ahead = 0): AtomTok | undefined {
    const atom = this.atoms[this.index + ahead];
    return atom && atom.line === this.line ? atom : undefined;
  }

  /** The next token of this kind, and text when given, taken. */
  take(kind: Tok['kind'], ...texts: string[]): Tok | undefined {
    const atom = this.peek();
    if (!isTok(atom) || atom.kind !== kind || (texts.length > 0 && !texts.includes(atom.text)))
      return undefined;
    this.index += 1;
    return atom;
  }

  /** The next words taken when they are these, in this order. */
  takeWords(words: string): boolean {
    const parts = words.split(' ');
    if (!parts.every((part, ahead) => isTok(this.peek(ahead)) && (this.peek(ahead) as Tok).text === part))
      return false;
    this.index += parts.length;
    return true;
  }

  /** The word that joins two parts of a value, taken. */
  takeJoin(word: Joining): boolean {
    return this.takeWords(word);
  }

  /** The next word taken, unless it begins another property. */
  takeFreeWord(): Tok | undefined {
    return this.atNextProperty ? undefined : this.take('word');
  }

  get atNextProperty(): boolean {
    return this.beginsAt(0);
  }

  /** Whether a property begins so many atoms ahead. */
  beginsAt(ahead: number): boolean {
    return this.beginsProperty(this.index + ahead);
  }

  /** The line whose end bounds the value moves on to where the next atom stands. */
  followLine(): void {
    this.line = this.atoms[this.index]?.line ?? this.line;
  }

  get previous(): AtomTok | undefined {
    return this.atoms[this.index - 1];
  }

  problem(
    code: string,
    range: { start: number; end: number },
    message: string,
    choices?: Problem['choices'],
  ): undefined {
    this.problems.push({
      code,
      start: range.start,
      end: range.end,
      message,
      severity: 'error',
      ...(choices ? { choices } : {}),
    });
    return undefined;
  }
}
