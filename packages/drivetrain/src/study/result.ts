import type { Value } from '@tailshaft/mechanics';
import type { AcceptancePolicy } from '../judge/acceptance-policy.js';
import type { Catalogue } from '../model/catalogue.js';
import type { Study, Vessel } from '../model/vessel.js';

/** One thing that a study varies, with its values as the text would write them. */
export interface Dimension {
  /** `propeller diameter`. */
  readonly words: string;
  readonly options: readonly string[];
}

/** A study made ready to be searched: whoever owns the text says what a vessel is with each choice. */
export interface StudyCase {
  readonly study: Study;
  /** Name of the arrangement that is studied. */
  readonly arrangement: string;
  readonly dimensions: readonly Dimension[];
  /** The vessel as it would be read with these options written; undefined where they do not go together. */
  readonly vesselWith: (choice: Choice) => Vessel | undefined;
  readonly catalogue: Catalogue;
  readonly today: string;
  readonly policy?: AcceptancePolicy;
  /** Checks that rule nothing out in this search and count for no limit: every candidate fails them. */
  readonly setAside?: readonly string[];
}

/** One option of each dimension, by its index. */
export type Choice = readonly number[];

/** The least margin of a candidate, and the check that it is of: what limits it. */
export interface Limit {
  readonly margin: number;
  readonly rule: string;
  readonly subject: string;
}

/** One candidate as it was judged. */
export interface Candidate {
  /** Its number among all combinations, from 0. */
  readonly index: number;
  readonly choice: Choice;
  readonly outcome: 'holds' | 'cannot tell' | 'fails';
  /** Checks that it fails, of those that must hold. */
  readonly failing: readonly string[];
  /** Checks that must hold and cannot be told. */
  readonly unknown: readonly string[];
  /** Findings that rule nothing out: failures of lesser weight. */
  readonly warnings: number;
  /** What limits it; absent where it fails or nothing gives a margin. */
  readonly limit?: Limit;
  /** What it comes to by each ranking; undefined where it cannot be told. */
  readonly ranks: readonly (Value | undefined)[];
}

/** How often a check ruled a candidate out. */
export interface Binding {
  readonly rule: string;
  /** Candidates that it fails in, of those that came to be judged by it. */
  readonly failed: number;
  /** Candidates that nothing else ruled out before it was their turn. */
  readonly alone: number;
}

/** What a check lacks that cannot tell of some candidate; of many data the first few. */
export interface Lacking {
  readonly rule: string;
  readonly data: readonly string[];
}

/** What a ranking lacks that is not known for some candidate; of many data the first few. */
export interface Unranked {
  readonly ranking: string;
  readonly data: readonly string[];
}

/** One ranking of a study, as a column of its table. */
export interface RankColumn {
  readonly words: string;
  readonly best: 'highest' | 'lowest';
}

/** Engine speed in rad/s and power at the crankshaft in W. */
export type LoadPoint = readonly [speed: number, power: number];

/** What one candidate asks of its engine, over engine speed. */
export interface LoadLine {
  /** What varies from line to line, as the study has it: `34 in`. */
  readonly option: string;
  readonly holds: boolean;
  readonly points: readonly LoadPoint[];
  /** With the lever right forward; absent where that is not known. */
  readonly full?: LoadPoint;
}

/** The load lines over one curve of engine or motor. */
export interface LoadLines {
  /** The ratio of the line; absent where it does not vary. */
  readonly ratio?: string;
  /** What varies from line to line: `propeller pitch`. */
  readonly varied: string;
  readonly line: string;
  readonly fullLoad: readonly LoadPoint[];
  readonly lines: readonly LoadLine[];
}

export interface StudyResult {
  readonly study: Study;
  readonly arrangement: string;
  readonly dimensions: readonly Dimension[];
  readonly ranking: readonly RankColumn[];
  /** Combinations of all options. */
  readonly combinations: number;
  /** Combinations that go together and were judged. */
  readonly judged: number;
  /** Combinations that do not go together, such as a ratio that the gear does not offer. */
  readonly apart: number;
  /** Set where somebody stopped it: how many combinations were looked at. */
  readonly stoppedAt?: number;
  /** Candidates that hold, the best first. */
  readonly holds: readonly Candidate[];
  /** Candidates that cannot be told, in the same order: never above those that hold. */
  readonly unknown: readonly Candidate[];
  readonly failed: number;
  /** What rules candidates out, the most frequent first. */
  readonly binding: readonly Binding[];
  /** Checks that fail by the same in every candidate that they rule out. */
  readonly alike: readonly string[];
  /** Of the candidates that cannot be told: which checks lack what. */
  readonly lacking: readonly Lacking[];
  /** Of the candidates that a ranking is not known for: what it lacks. */
  readonly unranked: readonly Unranked[];
  /** Indices of the candidates that no other one beats in every ranking. */
  readonly front: ReadonlySet<number>;
  /** Checks that were set aside in this search. */
  readonly setAside?: readonly string[];
  /** Where every candidate fails the same checks, and by the same: what the study comes to without these. */
  readonly without?: StudyResult;
  /** Load lines over the curve of the engine, by ratio, for whoever draws them. */
  readonly loadLines?: readonly LoadLines[];
}

/** How many combinations the options of all dimensions make. */
export function combinationsOf(dimensions: readonly Dimension[]): number {
  return dimensions.reduce((product, { options }) => product * options.length, 1);
}

/** The options of one combination; the last dimension varies fastest. */
export function choiceAt(dimensions: readonly Dimension[], index: number): Choice {
  const choice: number[] = [];
  let rest = index;
  for (let at = dimensions.length - 1; at >= 0; at -= 1) {
    const count = dimensions[at]!.options.length;
    choice[at] = rest % count;
    rest = Math.floor(rest / count);
  }
  return choice;
}
