/** Texts by their paths, with slashes, as they lie in one folder. */
export type Files = Readonly<Record<string, string>>;

export interface Options {
  /** The path of the text among the files, where its imports are found from; `spec.shaft` without it. */
  readonly path?: string;
  /** Ages and expiries are judged on this day, such as `2026-03-02`; today without it. */
  readonly today?: string;
  /** Who may accept failures, by rule: `rotation/ class surveyor; capacity/ naval architect`. */
  readonly acceptedBy?: string;
  /** For how long an acceptance may last, such as `18 months`. */
  readonly acceptedFor?: string;
}

export type Severity = 'error' | 'warning' | 'note' | 'information';
/** Only `holds` is a pass; what lacks data cannot tell. */
export type Outcome = 'holds' | 'fails' | 'cannot tell' | 'does not apply' | 'accepted';

/** Lines and columns from 1, columns in UTF-16 code units; the end stands behind the last one. */
export interface Place {
  readonly path: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export interface Value {
  readonly label: string;
  readonly dimension: string;
  /** Absent where it is not a finite number. */
  readonly si?: number;
  readonly text: string;
  readonly written?: string;
}

export interface Verdict {
  readonly rule: string;
  readonly subject: string;
  readonly outcome: Outcome;
  readonly severity: 'error' | 'warning' | 'note';
  /** Said of an arrangement as found. */
  readonly asFound?: true;
  readonly message: string;
  readonly criterion?: string;
  readonly criterionChosenBy?: 'author' | 'default';
  /** Capacity ÷ demand − 1. */
  readonly margin?: number;
  readonly capacity?: Value;
  readonly demand?: Value;
  readonly missing: readonly { readonly what: string; readonly property: string; readonly place?: Place }[];
  /** What the check would find, by the answer to what is missing: only where a few answers settle it. */
  readonly byAnswer?: readonly { readonly given: readonly string[]; readonly result: string }[];
  readonly place?: Place;
}

export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly subject?: string;
  readonly place?: Place;
  readonly asFound?: true;
  readonly related: readonly { readonly message: string; readonly place?: Place }[];
  readonly waysOut: readonly string[];
  /** Findings of the same cause, told under this one. */
  readonly folded?: readonly {
    readonly code: string;
    readonly severity: Severity;
    readonly message: string;
    readonly subject?: string;
    readonly place?: Place;
  }[];
}

export interface Counts {
  readonly held: number;
  readonly failed: number;
  readonly unknown: number;
  readonly accepted: number;
  readonly asFound: number;
}

export interface Vessel {
  readonly name: string;
  readonly title?: string;
  readonly arrangements: readonly {
    readonly name: string;
    readonly revises?: string;
    readonly lines: readonly { readonly path: string; readonly side?: 'port' | 'starboard' | 'centre' }[];
  }[];
  readonly counts: Counts;
  /** What nothing is declared of, so that the rules named could not look at it. */
  readonly notLookedAt: readonly {
    readonly of: string;
    readonly rules: readonly string[];
    readonly subjects: readonly string[];
  }[];
  readonly verdicts: readonly Verdict[];
}

export interface CheckedFile {
  readonly path: string;
  /** The gravest first, each cause once. */
  readonly findings: readonly Finding[];
  readonly vessels: readonly Vessel[];
  readonly entries: readonly {
    readonly kind: string;
    readonly name: string;
    readonly verdicts: readonly Verdict[];
  }[];
}

/** As `tailshaft check --json` prints it, by `schemas.check`. */
export interface Check {
  readonly form: 1;
  readonly program: 'tailshaft';
  readonly version: string;
  readonly today: string;
  readonly summary: {
    readonly files: number;
    readonly vessels: number;
    readonly errors: number;
    readonly warnings: number;
    readonly notes: number;
    readonly notChecked: number;
    readonly holds: number;
    readonly fails: number;
    readonly accepted: number;
    readonly asFound: number;
    readonly smallestMargin?: { readonly rule: string; readonly subject: string; readonly margin: number };
  };
  readonly couldNotRun: readonly string[];
  /** Each missing datum with the checks that wait for it, the most valuable first. */
  readonly openQuestions: readonly {
    readonly what: string;
    readonly property: string;
    readonly written: boolean;
    readonly checks: readonly string[];
    readonly place?: Place;
  }[];
  readonly files: readonly CheckedFile[];
  readonly caution: string;
}

export type Level =
  | 'not read whole'
  | 'newly fails'
  | 'newly accepted'
  | 'acceptance weakened'
  | 'criterion relaxed'
  | 'margin lost'
  | 'newly unknown';

export interface Change {
  readonly kind:
    | 'verdict'
    | 'derived'
    | 'part'
    | 'statement'
    | 'silent'
    | 'one-sided'
    | 'paper'
    | 'open'
    | 'rename';
  readonly subject: string;
  readonly words: string;
  /** What more there is of each kind stands in `schemas.compare`. */
  readonly [more: string]: unknown;
}

/** As `tailshaft compare --json` prints it, by `schemas.compare`. */
export interface Comparison {
  readonly form: 1;
  readonly program: 'tailshaft';
  readonly version: string;
  readonly before: string;
  readonly after: string;
  readonly headline: string;
  /** What a reviewer must not pass unread, the gravest first. */
  readonly levels: readonly Level[];
  /** Texts that cannot be read whole: what they hide is not compared. */
  readonly unread: readonly string[];
  readonly vessels: readonly {
    readonly name: string;
    readonly headline: string;
    readonly worse: boolean;
    readonly levels: readonly Level[];
    readonly changes: readonly Change[];
    readonly kept: readonly { readonly subject: string; readonly words: string }[];
    readonly addedLines: readonly string[];
    readonly removedLines: readonly string[];
  }[];
  readonly addedVessels: readonly string[];
  readonly removedVessels: readonly string[];
  readonly entries: readonly { readonly kind: string; readonly name: string; readonly fate: string }[];
  readonly caution: string;
}

/** A text with the files around it. */
export interface Side {
  readonly text: string;
  readonly files?: Files;
}

export interface Library {
  /** Judges a spec, with what it imports among the files. Rejects only what no text can bring about. */
  readonly check: (text: string, files?: Files, options?: Options) => Promise<Check>;
  /** Compares two texts by what follows from them. */
  readonly compare: (before: Side, after: Side, options?: Options) => Promise<Comparison>;
  /** The text in the usual layout; blocks that cannot be read stay as they are. */
  readonly format: (text: string) => string;
  /** The JSON schemas of what check and compare give. */
  readonly schemas: { readonly check: object; readonly compare: object };
  readonly version: string;
}
