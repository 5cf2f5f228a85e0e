import type { RouteKind } from '@tailshaft/drivetrain';
import type { TextEdit } from '../edit/text-edit.js';
import type { Finding } from '../project/finding.js';

/** A change that is offered, with what it leads to in its title; nothing happens until somebody takes it. */
export interface Offer {
  readonly title: string;
  readonly kind: string;
  readonly edits: readonly TextEdit[];
  /** The one way out, or the one that changes least. */
  readonly preferred?: boolean;
  /** What a way out of a rule's finding is. */
  readonly route?: RouteKind;
  /** Something else gets worse, as its title says. */
  readonly makesWorse?: true;
  /** How many failures it puts right, where more than its own. */
  readonly mends?: number;
  /** A search of sizes and parts found it. */
  readonly searched?: true;
  /** It leaves a blank for the author to fill. */
  readonly asks?: true;
  /** What it puts right. */
  readonly finding?: Finding;
}

/** The text of a loaded file. */
export type TextOf = (uri: string) => string;
