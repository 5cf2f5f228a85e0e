import type { ValueChange } from '../judge/route.js';
import type { Tried } from './judgement.js';
import type { Exchanged } from './with-fact.js';

/** What the sheet of another part would state so that a check holds. */
export interface OtherStated {
  /** `input speed at most 3000 rpm` */
  readonly says: string;
  readonly settled: Tried;
  /** Of the entry. */
  readonly changes: readonly ValueChange[];
  /** The rating that the line then names. */
  readonly placed?: string;
}

/** What the check says with facts exchanged; the worst of it and of further rules, by their ids. */
export type Trial = (others: Exchanged, further?: readonly string[]) => Tried;
