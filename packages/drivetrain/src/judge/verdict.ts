import type { Origin, Value } from '@tailshaft/mechanics';
import type { Fact } from '../model/fact.js';
import type { Acceptance } from '../model/vessel.js';
import type { Balance, Needed } from './needed.js';
import type { Route } from './route.js';

export type Outcome = 'holds' | 'fails' | 'cannot tell' | 'does not apply' | 'accepted';
export type Severity = 'error' | 'warning' | 'note';

/** A datum that a check waits for, and where to write it. */
export interface Missing {
  /** `propeller hand of proposed.Port` */
  readonly what: string;
  /** Block or statement that should hold it. */
  readonly host: Origin;
  readonly property: string;
  /** A placeholder to write there; `unknown` unless a form helps, e.g. `unknown`. */
  readonly example: string;
  /** Set when something is written, but cannot be used: hearsay, an open question. */
  readonly at?: Origin;
}

/** Whether a criterion, or its figure, stands in the spec or is the product's default. */
export type Chooser = 'author' | 'default';

/** A criterion that the spec may choose, as it was applied. */
export interface Criterion {
  readonly said: string;
  readonly chosenBy: Chooser;
}

export interface Related {
  readonly at: Origin;
  readonly message: string;
}

/** One answer to each open question, and what a check would then find. */
export interface ByAnswer {
  readonly given: readonly string[];
  readonly result: string;
}

/** What one rule says of one subject. */
export interface Verdict {
  readonly rule: string;
  readonly outcome: Outcome;
  /** How much a failure matters; a `cannot tell` is shown as information whatever this is. */
  readonly severity: Severity;
  /** Set where the arrangement as found is judged: a fact of the vessel, never more than a note. */
  readonly asFound?: true;
  /** Path of the line, arrangement, vessel or entry: `proposed.Port`. */
  readonly subject: string;
  /** The declaration that a person would change. */
  readonly place: Origin;
  readonly message: string;
  readonly related: readonly Related[];
  readonly missing: readonly Missing[];
  /** Data that another half of the check waits for, or another mode of the line, whatever puts this failure right. */
  readonly open?: readonly Missing[];
  /** Which criterion judged, with its factor. */
  readonly criterion?: string;
  /** Who chose it, where the spec may: its author, or nobody, and the product's default judged. */
  readonly criterionChosenBy?: Chooser;
  readonly capacity?: Value;
  readonly demand?: Value;
  /** capacity ÷ demand − 1. */
  readonly margin?: number;
  /** What is held against the criterion over what that allows: above one it fails. */
  readonly over?: number;
  /** What a judgement compared, for whoever wants to know which figure would put a failure right. */
  readonly balance?: Balance;
  /** Figures of which each, all else as it is, puts a failure right; the least change first. */
  readonly needed?: readonly Needed[];
  /** Values worth opening: results with the whole computation behind them. */
  readonly workings: readonly Value[];
  /** Steps in words, for checks that reason rather than compute. */
  readonly steps: readonly string[];
  /** Findings that this one is the cause of: they are not shown beside it. */
  readonly explains: readonly { readonly rule: string; readonly subject: string }[];
  /** Those of them that were left out for it. */
  readonly folds?: readonly Verdict[];
  /** Facts that contradict each other, as this failure says: what rests on one cannot be told. */
  readonly disputes?: readonly Fact<unknown>[];
  /** Facts of a part that what happened to it outweighs, as this failure says: nothing holds on them. */
  readonly outweighs?: readonly Fact<unknown>[];
  /** Facts that it fails on, and that no such part can have: they are put right first. */
  readonly outOfRange?: readonly Fact<unknown>[];
  /** Facts that this verdict rests on and that another statement contradicts: it cannot be told for them. */
  readonly disputed?: readonly Fact<unknown>[];
  /** Set where the checks do not cover what it rests on: that is told once, by the rule that says so. */
  readonly withheld?: true;
  /** By what statement of the spec the failure is accepted; set where the outcome is `accepted`. */
  readonly acceptance?: Acceptance;
  /** The requirement that this verdict is the answer to. */
  readonly answers?: Origin;
  /** What the check would find, by the answer to what is missing: only where a few answers settle it. */
  readonly byAnswer?: readonly ByAnswer[];
  /** Ways out, made when somebody asks. */
  readonly routes: () => readonly Route[];
}

export const NO_ROUTES = (): readonly Route[] => [];

/** capacity ÷ demand − 1, or undefined when either is not a usable number. */
export function marginOf(capacity: Value, demand: Value): number | undefined {
  const margin = capacity.si / demand.si - 1;
  return Number.isFinite(margin) ? margin : undefined;
}
