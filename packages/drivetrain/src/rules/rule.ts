import type { Source } from '@tailshaft/mechanics';
import type {
  ArrangementContext,
  Context,
  EntryContext,
  LineContext,
  UnitsContext,
} from '../judge/context.js';
import type { Severity, Verdict } from '../judge/verdict.js';
import type { Apart } from '../model/reads.js';
import type { Examples } from './examples.js';

/** Everything about a rule but its check; manual, hover, `explain` and schema are made from it. */
export interface RuleInfo {
  /** Words that read: `rotation/propeller-hand`. */
  readonly id: string;
  readonly title: string;
  /** Numbers in the catalogue of mistakes that it covers: `R01`. */
  readonly mistakes: readonly string[];
  readonly severity: Severity;
  /** Share that the criterion is uncertain by, where it is an estimate or a guide and nobody's stated limit. */
  readonly estimate?: number;
  /** Whose limit the numbers are compared with, where it is no estimate. A rule that compares numbers has one or the other. */
  readonly limitOf?: string;
  /** Why its failing example names no figure that would clear it. */
  readonly noFigure?: string;
  /** What is compared with what. */
  readonly criterion: string;
  readonly source: Source;
  /** Two to six sentences: what goes wrong, why it matters, what puts it right. */
  readonly manual: string;
  readonly caution: string;
  /**
   * Properties that this check looks at and holds without: it is about the question itself, or the other facts settle it
   * whatever the answer is. Anything else that a check looks at and that is not known withholds what would hold.
   */
  readonly standsWithout?: 'anything' | readonly string[];
  /** Why nothing that this text could say settles it, where no way out may be found. */
  readonly noCure?: string;
  /** What puts it right is the record and not the vessel: its ways out say what was always so. */
  readonly curesRecord?: true;
  /** The check is about the evidence or the words themselves, whether or not they are true. */
  readonly judgesEvidence?: true;
  /** Judges itself whether the checks cover the line. */
  readonly judgesCover?: true;
  /**
   * A check of a line whose lines have several movers: it looks at what the load path adds of all of them, or at nothing that a
   * second mover would change (`together`), or each engine is asked by itself, with the input that it drives (`each`). Any
   * other check that rests on a mover cannot tell there.
   */
  readonly severalMovers?: 'together' | 'each';
  /** Cannot tell which part of the torque of two engines enters by which input of the gear. */
  readonly oneInput?: true;
  /**
   * A check of an arrangement or vessel over a line in its modes: it asks every mover by itself or speaks of the plainest mode,
   * as the reference says, or it looks at one mover, and what that one exceeds stays exceeded. Any other cannot tell there.
   */
  readonly overModes?: 'asks every mover' | 'fails in any';
  readonly examples: () => Examples;
}

/** A check may give no verdict (it does not concern this subject), one, or several, each of which rests on its own reading. */
export type Verdicts = Verdict | Apart<Verdict> | undefined;

export type Rule = RuleInfo &
  (
    | { readonly scope: 'line'; readonly check: (context: LineContext) => Verdicts }
    | { readonly scope: 'arrangement'; readonly check: (context: ArrangementContext) => Verdicts }
    | { readonly scope: 'vessel'; readonly check: (context: Context) => Verdicts }
    | { readonly scope: 'entry'; readonly check: (context: EntryContext) => Verdicts }
    | { readonly scope: 'units'; readonly check: (context: UnitsContext) => Verdicts }
  );
