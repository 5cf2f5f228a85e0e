import type { Origin } from '@tailshaft/mechanics';
import type { Fact } from './fact.js';

/** Who stands for a revision, and as what. */
export interface Signature {
  readonly origin: Origin;
  readonly name: string;
  readonly role?: Fact<string>;
  /** ISO date. */
  readonly dated?: Fact<string>;
}

/** Who prepared, checked and approved a revision. */
export interface Signatures {
  readonly prepared?: readonly Signature[];
  readonly checked?: readonly Signature[];
  readonly approved?: readonly Signature[];
}

/** What is still to be answered or done, by whom and until when. */
export interface Matter {
  readonly origin: Origin;
  readonly what: string;
  readonly owner?: Fact<string>;
  /** ISO dates. */
  readonly due?: Fact<string>;
  readonly done?: Fact<string>;
}

/** What the work is filed under, and what is open in it. */
export interface Project {
  readonly origin: Origin;
  readonly number?: Fact<string>;
  readonly drawing?: Fact<string>;
  readonly client?: Fact<string>;
  readonly practice?: Fact<string>;
  readonly questions?: readonly Matter[];
  readonly actions?: readonly Matter[];
}
