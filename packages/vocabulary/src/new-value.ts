import type { Dimension, Value } from '@tailshaft/mechanics';
import type {
  Bearing,
  CouplingFacts,
  EngineFacts,
  EngineRating,
  Fact,
  GearFacts,
  OutputSense,
  Pilot,
  PropellerFacts,
  Rotation,
  ShaftFacts,
} from './facts/index.js';
import type { EvidenceKind, Role } from './words.js';

/*
 * What an edit writes, as data: a quantity with its unit, a word that the model knows, a name, or what a fact says already.
 * `spell.ts` alone makes text of it, so that no rule puts words of the language together.
 */

/** A magnitude with the unit that it is written in. */
export interface NewQuantity {
  readonly dimension: Dimension;
  readonly si: number;
  /** Symbol of the unit: `mm`, `%`. Without one it is a plain number or, `to` 1, a ratio. */
  readonly unit?: string;
  readonly to?: 1;
  /** Digits behind the point that stand even where they are nil: an area ratio of 0.70. */
  readonly decimals?: number;
}

export type NewValue =
  /** An open question. */
  | { readonly is: 'open' }
  | { readonly is: 'word'; readonly word: NewWord }
  /** Of an entry, a clutch, a grade, a rating: whatever its author called it. */
  | { readonly is: 'name'; readonly name: string }
  /** Of a document. */
  | { readonly is: 'title'; readonly title: string }
  | { readonly is: 'quantity'; readonly quantity: NewQuantity }
  /** The number that an author wrote, with another unit. */
  | { readonly is: 'in unit'; readonly figure: string; readonly unit: string }
  /** What the text says already at another place. */
  | { readonly is: 'as stated'; readonly fact: Stated }
  | { readonly is: 'rotation'; readonly rotation: Rotation }
  | { readonly is: 'output'; readonly output: OutputSense }
  | { readonly is: 'bolts'; readonly count: number; readonly size: NewQuantity }
  | { readonly is: 'span'; readonly low: NewQuantity; readonly high: NewQuantity }
  | { readonly is: 'pilot'; readonly diameter: NewQuantity; readonly kind: NonNullable<Pilot['kind']> };

/** A fact or a value as its author wrote it. */
export type Stated = Fact<unknown> | (Value & Required<Pick<Value, 'written'>>);

/** A fact, or a block of facts, of a statement that is written anew. */
export type NewFact =
  | { readonly property: string; readonly value: NewValue; readonly evidence?: EvidenceKind }
  | NewBlock;

export interface NewBlock {
  /** The words that it begins with: `bearing`. */
  readonly block: string;
  /** What tells it from others of its kind. */
  readonly name?: string;
  readonly facts: readonly NewFact[];
}

/** The words that a fact of these kinds of block may hold, where the model lists them. */
type WordsIn<F> = F extends unknown
  ? {
      [K in keyof F]-?: NonNullable<F[K]> extends Fact<infer T>
        ? T extends string
          ? string extends T
            ? never
            : T
          : never
        : never;
    }[keyof F]
  : never;

export type NewWord = WordsIn<
  EngineFacts | EngineRating | GearFacts | PropellerFacts | ShaftFacts | Bearing | CouplingFacts
>;

export const OPEN: NewValue = { is: 'open' };
export const newWord = (word: NewWord): NewValue => ({ is: 'word', word });
export const named = (name: string): NewValue => ({ is: 'name', name });
export const asStated = (fact: Stated): NewValue => ({ is: 'as stated', fact });

/** A statement of a part that is written anew, or of what is modified of one that is kept. */
export interface NewStatement {
  /** None where no revision is needed: the part is declared here. */
  readonly action?: 'replace' | 'modify';
  readonly role: Role;
  readonly name?: string;
  readonly facts: readonly NewFact[];
}
