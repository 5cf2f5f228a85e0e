import type { LineAnalysis, ShaftLine, StudyResult, Verdict, Vessel } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';

/** Something that could not be read in the text of the spec. */
export interface TextProblem {
  readonly message: string;
  /** `ternhaven.shaft:23`. */
  readonly where: string;
}

/** One cause of failure in words, with how many more checks fail for it. */
export interface SheetFailure {
  readonly verdict: Verdict;
  readonly message: string;
  readonly others: number;
}

/** Everything that a sheet of one vessel is made from. */
export interface SheetInput {
  readonly vessel: Vessel;
  /** What was judged of the vessel, and of catalogue entries that it uses. */
  readonly verdicts: readonly Verdict[];
  /** Those of them that judge catalogue entries by themselves: they are counted apart, as everywhere else. */
  readonly entryVerdicts: readonly Verdict[];
  /** What fails, each cause once, the gravest first. */
  readonly failures: readonly SheetFailure[];
  readonly analysisOf: (line: ShaftLine) => LineAnalysis;
  /** ISO date of the judgement. */
  readonly today: string;
  readonly problems: readonly TextProblem[];
  /** Checks that cannot tell until the text can be read: they miss no datum. */
  readonly behindText?: ReadonlySet<Verdict>;
  /** What the text and everything that it imports is known by, where the host can say: it stands in the title block. */
  readonly digest?: string;
  /** Studies of the vessel that were searched for the sheet. */
  readonly studies?: readonly StudyResult[];
  /** An origin as a person reads it: `ternhaven.shaft:23`. */
  readonly placeText?: (origin: Origin) => string | undefined;
  /** An origin as a host follows it; comes back in `data-place`. */
  readonly placeKey?: (origin: Origin) => string | undefined;
}
