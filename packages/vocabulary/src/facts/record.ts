import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { MATTER, PROJECT, SIGNATURE } from '../record.js';

/** Who stands for a revision, and as what. */
export interface Signature extends FactsOf<typeof SIGNATURE> {
  readonly origin: Origin;
  readonly name: string;
}

/** Who prepared, checked and approved a revision. */
export interface Signatures {
  readonly prepared?: readonly Signature[];
  readonly checked?: readonly Signature[];
  readonly approved?: readonly Signature[];
}

/** What is still to be answered or done, by whom and until when. */
export interface Matter extends FactsOf<typeof MATTER> {
  readonly origin: Origin;
  readonly what: string;
}

/** What the work is filed under, and what is open in it. */
export interface Project extends FactsOf<typeof PROJECT> {
  readonly origin: Origin;
  readonly questions?: readonly Matter[];
  readonly actions?: readonly Matter[];
}
