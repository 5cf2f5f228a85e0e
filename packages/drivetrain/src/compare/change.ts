import type { Origin, Value } from '@tailshaft/mechanics';
import type { Severity, Verdict } from '../judge/verdict.js';
import type { Role } from '../model/part.js';

/** What every kind of change has: how grave it is, what it concerns, and one sentence. */
interface Weighed {
  /** Smaller is graver. */
  readonly weight: number;
  /** What it concerns: `proposed.Port`, or the vessel's name. */
  readonly subject: string;
  /** The change in one line, without the subject. */
  readonly words: string;
  /** Where it stands in the text, before and after. */
  readonly placeBefore?: Origin;
  readonly placeAfter?: Origin;
}

export type Movement =
  | 'newly fails'
  | 'no longer accepted'
  | 'fails by more'
  | 'newly cannot tell'
  | 'accepted on other figures'
  | 'newly accepted'
  | 'margin smaller'
  | 'fails by less'
  | 'still fails, differently'
  | 'margin larger'
  | 'newly holds'
  | 'reported under its cause'
  | 'no longer judged'
  | 'newly judged';

/** A verdict that moved. */
export interface VerdictMove extends Weighed {
  readonly kind: 'verdict';
  readonly movement: Movement;
  readonly rule: string;
  readonly severity: Severity;
  readonly before?: Verdict;
  readonly after?: Verdict;
  /** The rule under whose finding it is told now. */
  readonly coveredBy?: string;
}

/** A derived quantity, or a sense, that followed from a change. */
export interface DerivedChange extends Weighed {
  readonly kind: 'derived';
  /** `shaft speed at rated power`. */
  readonly what: string;
  /** As a person says it; undefined where it cannot be told. */
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** after ÷ before − 1, for numbers. */
  readonly share?: number;
  readonly valueBefore?: Value;
  readonly valueAfter?: Value;
}

/** One declared fact that reads differently. */
export interface FactChange {
  /** Has a hand, so that it rightly differs between the sides of a twin. */
  readonly handed?: true;
  /** `area ratio`, `clutch A output`. */
  readonly what: string;
  readonly before: string | undefined;
  readonly after: string | undefined;
}

export type PartFate = 'kept' | 'replaced' | 'modified' | 'added' | 'removed' | 'moved between sides';

/** What became of one part of a line. */
export interface PartChange extends Weighed {
  readonly kind: 'part';
  readonly role: Role;
  readonly fate: PartFate;
  /** The line that it came from. */
  readonly from?: string;
  readonly before?: string;
  readonly after?: string;
  readonly facts: readonly FactChange[];
}

/** What a statement is about; the published schema has the same list. */
export const STATED = [
  'requirement',
  'criterion',
  'acceptance',
  'assumption',
  'duty',
  'hull',
  'certificate',
  'helm',
  'project',
  'arrangement',
  'trial',
  'mode',
  'study',
  'revision',
  'practice',
  'right to accept',
  'gravity',
] as const;

/** A requirement, criterion, acceptance, assumption or other statement about the vessel. */
export interface StatementChange extends Weighed {
  readonly kind: 'statement';
  readonly about: (typeof STATED)[number];
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** Of a criterion or an acceptance too: which way it went; `chosen otherwise` where that cannot be said. */
  readonly tendency?: 'relaxed' | 'tightened' | 'chosen otherwise';
}

export const EASILY_MISSED = [
  'source',
  'same number, other unit',
  'other unit, same value',
  'nominal to exact',
  'exact to nominal',
  'evidence',
  'record rewritten',
  'damage',
  'same name, other facts',
  'holds by another figure',
  'overridden at its place',
  'requirement relaxed',
  'verb and value',
  'no revision',
] as const;

/** A change that a reader easily misses. */
export interface SilentChange extends Weighed {
  readonly kind: 'silent';
  readonly what: (typeof EASILY_MISSED)[number];
}

/** Something done on one side of a twin only, or differently on the two sides. */
export interface OneSidedChange extends Weighed {
  readonly kind: 'one-sided';
  readonly changed: string;
  readonly unchanged: string;
}

/** A paper that was made for what has now changed. */
export interface StalePaper extends Weighed {
  readonly kind: 'paper';
}

/** What could not be told of a changed part, neither before nor now. */
export interface OpenChange extends Weighed {
  readonly kind: 'open';
  readonly role: Role;
  readonly rules: readonly string[];
}

/** Something that goes by another name; everything else of it is compared through the rename. */
export interface RenameChange extends Weighed {
  readonly kind: 'rename';
  readonly of: string;
  readonly from: string;
  readonly to: string;
}

export type SpecChange =
  | VerdictMove
  | DerivedChange
  | PartChange
  | StatementChange
  | SilentChange
  | OneSidedChange
  | OpenChange
  | RenameChange
  | StalePaper;

/** Gravest first; among equals by subject and words, so that the order never depends on the text. */
export function byConsequence(one: SpecChange, other: SpecChange): number {
  return (
    one.weight - other.weight ||
    compareText(one.subject, other.subject) ||
    compareText(one.words, other.words)
  );
}

export function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
