import { percent } from '@tailshaft/mechanics';
import { isFinding } from '../judge/judge.js';
import type { Outcome, Severity, Verdict } from '../judge/verdict.js';
import type { Movement, VerdictMove } from './change.js';
import type { Side } from './side.js';

/**
 * Verdicts that moved between the two sides. A verdict is the same one when rule and subject are. Between two
 * arrangements other rules apply from the start, so a check that only begins or ends to apply is left out.
 */
export function verdictMoves(before: Side, after: Side, revision: boolean): VerdictMove[] {
  const [old, now] = [grouped(before), grouped(after)];
  const [coveredBefore, coveredAfter] = [coverOf(before), coverOf(after)];
  const pairs: Pair[] = [];
  for (const key of new Set([...old.keys(), ...now.keys()])) {
    for (const [one, other] of matched(old.get(key) ?? [], now.get(key) ?? []))
      pairs.push({ key, one, other });
  }
  const moves: VerdictMove[] = [];
  for (const { key, one, other } of acrossLines(pairs)) {
    const [was, is] = [one?.verdict ?? coveredBefore.get(key), other?.verdict ?? coveredAfter.get(key)];
    const move = moveOf(was, is, (other ?? one)!.subject, (other ?? one)!.verdict);
    if (!move || isNotation(move.movement, (other ?? one)!.verdict)) continue;
    if (revision && ONLY_APPLIES.has(move.movement) && one?.verdict.outcome !== 'fails') continue;
    moves.push(move);
  }
  return moves;
}

interface Pair {
  readonly key: string;
  readonly one: Subjected | undefined;
  readonly other: Subjected | undefined;
}

/**
 * What several lines share is judged once, on the line that comes first in the text. When the lines change places, the
 * same verdict is found on another line: it is one verdict, and has not moved.
 */
function acrossLines(pairs: readonly Pair[]): Pair[] {
  const gone = pairs.filter(pair => !pair.other);
  const taken = new Set<Pair>();
  const joined = pairs.map(pair => {
    if (pair.one || !pair.other) return pair;
    const { other } = pair;
    const same = gone.find(candidate => !taken.has(candidate) && isShared(candidate.one!, other));
    if (!same) return pair;
    taken.add(same);
    // Its words name the line that it is told on, and say the same.
    const verdict = { ...same.one!.verdict, message: other.verdict.message };
    return { ...pair, one: { ...same.one!, verdict } };
  });
  return joined.filter(pair => !taken.has(pair));
}

function isShared(one: Subjected, other: Subjected): boolean {
  if (one.verdict.rule !== other.verdict.rule) return false;
  const [a, b] = [one, other].map(({ subject }) => subject.split('.'));
  if (a!.length !== b!.length || a!.length < 2 || a![0] !== b![0] || a!.at(-1) === undefined) return false;
  if (a!.slice(2).join('.') !== b!.slice(2).join('.')) return false;
  if (one.verdict.outcome === 'holds' && other.verdict.outcome === 'holds') return true;
  const told = ({ verdict }: Subjected, line: string) =>
    `${verdict.outcome} ${verdict.message.replaceAll(line, '')}`;
  return told(one, a![1]!) === told(other, b![1]!);
}

/** A quantity that moves between catalogue and line is then read with the other units of the vessel, and means the same. */
function isNotation(movement: Movement, { rule, outcome }: Verdict): boolean {
  return ONLY_APPLIES.has(movement) && rule.startsWith('units/') && outcome === 'holds';
}

const ONLY_APPLIES = new Set<Movement>(['newly judged', 'no longer judged']);

/** What a finding is the cause of is told with that finding and has no verdict of its own: it is covered by it. */
interface Covered {
  readonly coveredBy: string;
}

function coverOf(side: Side): Map<string, Covered> {
  const covered = new Map<string, Covered>();
  for (const { subject, verdict } of side.verdicts) {
    if (!isFinding(verdict)) continue;
    const cut = verdict.subject.length - subject.length;
    for (const one of verdict.explains) {
      const key = one.subject.length >= cut ? one.subject.slice(cut) : one.subject;
      covered.set(`${one.rule} ${key}`, { coveredBy: verdict.rule });
    }
  }
  return covered;
}

type Told = Verdict | Covered | undefined;
const verdictOf = (told: Told): Verdict | undefined => (told && 'rule' in told ? told : undefined);

type Subjected = Side['verdicts'][number];

function grouped(side: Side): Map<string, Subjected[]> {
  const groups = new Map<string, Subjected[]>();
  for (const one of side.verdicts) {
    const key = `${one.verdict.rule} ${one.subject}`;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}

/** Pairs several verdicts of one rule on one subject: first those that say the same, then those about the same thing. */
function matched(old: Subjected[], now: Subjected[]): [Subjected | undefined, Subjected | undefined][] {
  const pairs: [Subjected | undefined, Subjected | undefined][] = [];
  const rest = [...now];
  let waiting = [...old];
  for (const likeness of [identical, aboutTheSame, () => '']) {
    waiting = waiting.filter(one => {
      const at = rest.findIndex(other => likeness(other.verdict) === likeness(one.verdict));
      if (at < 0) return true;
      pairs.push([one, rest.splice(at, 1)[0]]);
      return false;
    });
  }
  for (const one of waiting) pairs.push([one, undefined]);
  for (const one of rest) pairs.push([undefined, one]);
  return pairs;
}

const identical = (verdict: Verdict) => `${verdict.outcome} ${verdict.message}`;
const aboutTheSame = (verdict: Verdict) =>
  [verdict.criterion, verdict.capacity?.label, verdict.demand?.label].join('|');

function moveOf(was: Told, is: Told, subject: string, any: Verdict): VerdictMove | undefined {
  const [before, after] = [verdictOf(was), verdictOf(is)];
  // What another finding now is told with has not gone: it is named with that one.
  const covered = is && 'coveredBy' in is ? is.coveredBy : undefined;
  const movement = covered ? coveredMovement(before) : movementOf(was, after);
  if (!movement) return undefined;
  const { severity, rule } = after ?? any;
  return {
    kind: 'verdict',
    movement,
    rule,
    severity,
    subject,
    ...(before ? { before, placeBefore: before.place } : {}),
    ...(after ? { after, placeAfter: after.place } : {}),
    ...(covered ? { coveredBy: covered } : {}),
    weight: weightOf(movement, severity, after),
    words: `${movement}: ${toldWords(was)} → ${toldWords(is)}${chooserWords(before, after)}`,
  };
}

function coveredMovement(before: Verdict | undefined): Movement | undefined {
  return stateOf(before) === 'none' ? undefined : 'reported under its cause';
}

/** A verdict that moved because another criterion judges says so: the default for the author's, or the other way. */
function chooserWords(before: Verdict | undefined, after: Verdict | undefined): string {
  const [was, is] = [before?.criterionChosenBy, after?.criterionChosenBy];
  if (!was || !is || was === is) return '';
  return is === 'default'
    ? `; judged by the default now, ${after!.criterion}: the spec chooses none any more`
    : `; judged by what the spec chooses now, ${after!.criterion}, and not by the default`;
}

function toldWords(told: Told): string {
  return told && 'coveredBy' in told ? `reported under ${told.coveredBy}` : outcomeWords(told);
}

/** Two margins this close are one figure. */
const SAME_MARGIN = 5e-4;

function movementOf(was: Told, after: Verdict | undefined): Movement | undefined {
  const before = verdictOf(was);
  const [old, now] = [was && !before ? 'covered' : stateOf(before), stateOf(after)];
  const change = marginChange(before, after);
  if (now === 'fails') {
    if (old === 'accepted') return 'no longer accepted';
    if (old !== 'fails') return 'newly fails';
    if (change === undefined)
      return before?.message === after?.message ? undefined : 'still fails, differently';
    return change < 0 ? 'fails by more' : change > 0 ? 'fails by less' : undefined;
  }
  if (now === 'cannot tell') return old === 'cannot tell' ? undefined : 'newly cannot tell';
  if (now === 'accepted') {
    if (old !== 'accepted') return 'newly accepted';
    return change ? 'accepted on other figures' : undefined;
  }
  if (now === 'holds') {
    if (old !== 'holds' && old !== 'none') return 'newly holds';
    if (old === 'none') return 'newly judged';
    return change === undefined || change === 0 ? undefined : change < 0 ? 'margin smaller' : 'margin larger';
  }
  return old === 'none' || old === 'covered' ? undefined : 'no longer judged';
}

type State = Exclude<Outcome, 'does not apply'> | 'none';

function stateOf(verdict: Verdict | undefined): State {
  return verdict === undefined || verdict.outcome === 'does not apply' ? 'none' : verdict.outcome;
}

/** Sign of the change of margin; undefined where there is none on either side. */
function marginChange(before: Verdict | undefined, after: Verdict | undefined): number | undefined {
  if (before?.margin === undefined || after?.margin === undefined) return undefined;
  const change = after.margin - before.margin;
  return Math.abs(change) < SAME_MARGIN ? 0 : Math.sign(change);
}

/** `holds with 12 %`, `fails by 3 %`, `not judged`. */
export function outcomeWords(verdict: Verdict | undefined): string {
  const state = stateOf(verdict);
  if (verdict === undefined || state === 'none') return 'not judged';
  const { margin } = verdict;
  if (margin === undefined || state === 'cannot tell') return state;
  if (margin < 0) return `${state}, short by ${percent(-margin)}`;
  return `${state} with ${percent(margin)} margin`;
}

const WEIGHTS: Readonly<Record<Movement, readonly [error: number, warning: number, note: number]>> = {
  'newly fails': [0, 10, 45],
  'no longer accepted': [1, 11, 46],
  'fails by more': [5, 14, 47],
  'newly cannot tell': [18, 22, 48],
  'accepted on other figures': [20, 24, 49],
  'still fails, differently': [26, 32, 50],
  'newly accepted': [27, 33, 50],
  'margin smaller': [30, 36, 52],
  'fails by less': [50, 54, 60],
  'reported under its cause': [54, 55, 60],
  'no longer judged': [55, 56, 61],
  'margin larger': [62, 63, 64],
  'newly holds': [65, 66, 67],
  'newly judged': [68, 69, 70],
};

/** Among equals the smaller margin is graver. */
function weightOf(movement: Movement, severity: Severity, after: Verdict | undefined): number {
  const [error, warning, note] = WEIGHTS[movement];
  const base = { error, warning, note }[severity];
  const margin = after?.margin;
  return margin === undefined ? base : base + 0.5 + Math.atan(margin) / 10;
}
