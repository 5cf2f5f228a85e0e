import { given } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../analysis/line.js';
import { isDisputed } from '../judge/all-together.js';
import type { Resting } from '../judge/settle.js';
import type { Verdict } from '../judge/verdict.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { type Asked, askedOf, unfolded } from './asked.js';
import { compareBy, frontOf } from './front.js';
import { Judge, type Judging, rulesOut } from './judging.js';
import { type Order, orderOf } from './order.js';
import { limitValue, type Ranked, rankingsOf } from './ranking.js';
import {
  type Binding,
  type Candidate,
  type Choice,
  choiceAt,
  combinationsOf,
  type Lacking,
  type Limit,
  type StudyCase,
  type StudyResult,
  type Unranked,
} from './result.js';

export interface SearchOptions {
  /** Judge every candidate by every check, also those that have failed already. */
  readonly thorough?: boolean;
  /** Combinations from this one to before that one, for a share of the work. */
  readonly from?: number;
  readonly to?: number;
  /** Where several search together: gives the first of so many candidates that nobody else looks at. */
  readonly claim?: () => number;
  readonly piece?: number;
}

/** How far a search is. */
export interface Progress {
  readonly looked: number;
  readonly of: number;
}

/** What a share of a search found; shares are joined by `resultOf`. */
export interface Found {
  readonly candidates: readonly Candidate[];
  readonly failed: number;
  readonly apart: number;
  readonly binding: ReadonlyMap<string, Binding>;
  /** Margins by which each check failed, of several the first two. */
  readonly short: ReadonlyMap<string, ReadonlySet<number | undefined>>;
  /** What the checks that cannot tell lack, by check. */
  readonly lacking: ReadonlyMap<string, ReadonlySet<string>>;
  /** What the rankings that are not known lack, by their words. */
  readonly unranked: ReadonlyMap<string, ReadonlySet<string>>;
  readonly looked: number;
  readonly stopped: boolean;
}

/**
 * Judges the candidates of a study one by one. It rests after each few of them, so that whoever runs it can tell how far it
 * is, or end it: `next(true)` ends it, and what was found so far is what comes out.
 */
export function* search(
  of: StudyCase,
  { thorough = false, from = 0, to, claim, piece = 1 }: SearchOptions = {},
): Generator<Progress, Found, boolean | undefined> {
  const end = to ?? combinationsOf(of.dimensions);
  const judge = new Judge(of);
  const rankings = rankingsOf(of.study);
  const candidates: Candidate[] = [];
  const binding = new Map<string, Binding>();
  const short = new Map<string, Set<number | undefined>>();
  const lacking = new Map<string, Set<string>>();
  const unranked = new Map<string, Set<string>>();
  let [failed, apart] = [0, 0];
  let order: Order | undefined;
  const found = (looked: number, stopped: boolean): Found => ({
    candidates,
    failed,
    apart,
    binding,
    short,
    lacking,
    unranked,
    looked,
    stopped,
  });
  let looked = -1;
  for (const index of numbersOf(from, end, claim, piece)) {
    looked += 1;
    if (looked % REST === 0 && (yield { looked, of: end - from })) return found(looked, true);
    const choice = choiceAt(of.dimensions, index);
    const vessel = of.vesselWith(choice);
    if (!vessel) {
      apart += 1;
      continue;
    }
    if (!order) {
      const steps = orderOf(judge, of, firstThatGoes(of));
      let step = steps.next();
      for (; !step.done; step = steps.next())
        if (yield { looked, of: end - from }) return found(looked, true);
      order = step.value;
    }
    const noted = { lacking, unranked, short };
    const one = candidateOf(judge.judging(vessel), of, { index, choice }, order, rankings, thorough, noted);
    if (one.outcome !== 'fails') candidates.push(one);
    else {
      failed += 1;
      for (const rule of one.failing) {
        const had = binding.get(rule) ?? { rule, failed: 0, alone: 0 };
        binding.set(rule, {
          rule,
          failed: had.failed + 1,
          alone: had.alone + (one.failing.length === 1 ? 1 : 0),
        });
      }
    }
  }
  return found(looked + 1, false);
}

function* numbersOf(
  from: number,
  end: number,
  claim: (() => number) | undefined,
  piece: number,
): Generator<number> {
  if (!claim) for (let index = from; index < end; index += 1) yield index;
  else
    for (let first = claim(); first < end; first = claim())
      for (let index = first; index < Math.min(first + piece, end); index += 1) yield index;
}

/** So many candidates are judged before the search rests. */
const REST = 32;

/** The first combination that goes together: the same wherever a search begins. */
function firstThatGoes(of: StudyCase): number {
  let index = 0;
  while (!of.vesselWith(choiceAt(of.dimensions, index))) index += 1;
  return index;
}

/** What a search comes to, from all its shares. */
export function resultOf(of: StudyCase, shares: readonly Found[]): StudyResult {
  const { study, arrangement, dimensions } = of;
  const ranking = rankingsOf(study).map(({ words, best }) => ({ words, best }));
  const sum = (count: (one: Found) => number) => shares.reduce((total, one) => total + count(one), 0);
  const candidates = shares.flatMap(one => one.candidates).sort(compareBy(ranking));
  const holds = candidates.filter(one => one.outcome === 'holds');
  const looked = sum(one => one.looked);
  return {
    study,
    arrangement,
    dimensions,
    ranking,
    combinations: combinationsOf(dimensions),
    judged: looked - sum(one => one.apart),
    apart: sum(one => one.apart),
    ...(shares.some(one => one.stopped) ? { stoppedAt: looked } : {}),
    holds,
    unknown: candidates.filter(one => one.outcome === 'cannot tell'),
    failed: sum(one => one.failed),
    binding: joined(shares.map(one => one.binding)),
    alike: shares
      .flatMap(one => [...one.short.keys()])
      .filter((rule, at, all) => all.indexOf(rule) === at && isAlike(rule, shares))
      .sort(),
    lacking: joinedLacking(shares.map(one => one.lacking)).map(
      ({ name, data }): Lacking => ({ rule: name, data }),
    ),
    unranked: joinedLacking(shares.map(one => one.unranked)).map(
      ({ name, data }): Unranked => ({ ranking: name, data }),
    ),
    front: frontOf(holds, ranking),
    ...(of.setAside ? { setAside: of.setAside } : {}),
  };
}

/** Searches to the end, for whoever has no need to rest. */
export function searched(of: StudyCase, options: SearchOptions = {}): StudyResult {
  const steps = search(of, options);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return resultOf(of, [step.value]);
}

function joined(all: readonly ReadonlyMap<string, Binding>[]): Binding[] {
  const sums = new Map<string, Binding>();
  for (const one of all)
    for (const { rule, failed, alone } of one.values()) {
      const had = sums.get(rule) ?? { rule, failed: 0, alone: 0 };
      sums.set(rule, { rule, failed: had.failed + failed, alone: had.alone + alone });
    }
  return [...sums.values()].sort(
    (a, b) => b.failed - a.failed || b.alone - a.alone || (a.rule < b.rule ? -1 : 1),
  );
}

function isAlike(rule: string, shares: readonly Found[]): boolean {
  return new Set(shares.flatMap(one => [...(one.short.get(rule) ?? [])])).size === 1;
}

/** What is noted beside the candidates, by check and by ranking. */
interface Noted {
  readonly short: Map<string, Set<number | undefined>>;
  readonly lacking: Map<string, Set<string>>;
  readonly unranked: Map<string, Set<string>>;
}

function candidateOf(
  judging: Judging,
  of: StudyCase,
  which: { readonly index: number; readonly choice: Choice },
  { shared, own }: Order,
  rankings: readonly Ranked[],
  thorough: boolean,
  { lacking, unranked, short }: Noted,
): Candidate {
  const { vessel } = judging;
  const asked = askedOf(of.study, of.arrangement, vessel, of.setAside);
  const wholeOnly = thorough || vessel.acceptances.length > 0 || judging.isUncovered;
  const failed = wholeOnly ? [] : failedEarly(judging, shared, own, asked, short);
  if (failed.length > 0)
    return { ...which, outcome: 'fails', failing: failed, unknown: [], warnings: 0, ranks: [] };
  const verdicts = judging.verdicts().filter(asked.concerns);
  const all = unfolded(verdicts);
  const counted = all.filter(asked.mustHold);
  const failing = rulesIn(counted, 'fails');
  const unknown = rulesIn(counted, 'cannot tell');
  const warnings = verdicts.filter(
    one =>
      one.outcome === 'fails' && one.severity !== 'note' && !asked.mustHold(one) && !asked.isSetAside(one),
  ).length;
  const outcome = failing.length > 0 ? 'fails' : unknown.length > 0 ? 'cannot tell' : 'holds';
  if (outcome === 'fails') {
    for (const one of counted) if (one.outcome === 'fails') noteShort(short, one);
    return { ...which, outcome, failing, unknown, warnings, ranks: [] };
  }
  for (const one of counted)
    if (one.outcome === 'cannot tell')
      noteLacking(
        lacking,
        one.rule,
        one.missing.map(({ what }) => what),
      );
  const limit = limitOf(verdicts.filter(one => !asked.isSetAside(one)));
  return {
    ...which,
    outcome,
    failing,
    unknown,
    warnings,
    ...(limit ? { limit } : {}),
    ranks: ranksOf(rankings, vessel, of.arrangement, judging.analysisOf, limit, unranked),
  };
}

/**
 * Checks that rule a candidate out, without the costly ones where the others do so already. None where facts contradict each
 * other: then only all verdicts together tell what fails.
 */
function failedEarly(
  judging: Judging,
  shared: readonly number[],
  own: readonly number[],
  asked: Asked,
  short: Noted['short'],
): readonly string[] {
  const failing = new Map<string, Verdict>();
  const judge = (check: number): readonly Resting[] => {
    const said = judging.said(check);
    const [first] = rulesOut(said, asked);
    if (first) failing.set(first.rule, first);
    return said;
  };
  let disputed = false;
  for (const check of shared) disputed = isDisputed(judge(check)) || disputed;
  if (disputed) return [];
  for (const check of own) {
    if (failing.size > 0) break;
    judge(check);
  }
  for (const one of failing.values()) noteShort(short, one);
  return [...failing.keys()].sort();
}

function noteShort(short: Noted['short'], { rule, margin }: Verdict): void {
  const had = short.get(rule) ?? new Set();
  if (had.size < 2) short.set(rule, had.add(margin));
}

/** So many data are told of one check. */
const TOLD = 4;

/** The first by their words are kept, so that it makes no difference who sees which candidates. */
function noteLacking(lacking: Map<string, Set<string>>, name: string, missing: readonly string[]): void {
  const had = lacking.get(name);
  if (had && missing.every(what => had.has(what))) return;
  const data = [...new Set([...(had ?? []), ...missing])].sort();
  lacking.set(name, new Set(data.slice(0, TOLD)));
}

function joinedLacking(all: readonly Found['lacking'][]): { name: string; data: string[] }[] {
  const names = [...new Set(all.flatMap(one => [...one.keys()]))].sort();
  return names.map(name => {
    const data = new Set(all.flatMap(one => [...(one.get(name) ?? [])]));
    return { name, data: [...data].sort().slice(0, TOLD) };
  });
}

function rulesIn(verdicts: readonly Verdict[], outcome: Verdict['outcome']): string[] {
  return [...new Set(verdicts.filter(one => one.outcome === outcome).map(one => one.rule))].sort();
}

/** What limits a candidate: the least margin among all that is told of it. */
export function limitOf(verdicts: readonly Verdict[]): Limit | undefined {
  let least: Limit | undefined;
  for (const { margin, outcome, rule, subject } of verdicts) {
    if (margin === undefined || (outcome !== 'holds' && outcome !== 'fails')) continue;
    if (!least || margin < least.margin) least = { margin, rule, subject };
  }
  return least;
}

function ranksOf(
  rankings: readonly Ranked[],
  vessel: Vessel,
  arrangement: string,
  analysisOf: (line: ShaftLine) => LineAnalysis,
  limit: Limit | undefined,
  unranked: Noted['unranked'],
): Candidate['ranks'] {
  const lines = vessel.arrangements.find(one => one.name === arrangement)?.lines ?? [];
  return rankings.map(one => {
    if (one.fromLimit) return limit && limitValue(limit);
    const rank = one.of(lines, analysisOf);
    if ('lacking' in rank) return void noteLacking(unranked, one.words, rank.lacking);
    // Without its working, which would keep the whole candidate alive.
    return given(one.words, rank.symbol, rank.dimension, rank.si);
  });
}
