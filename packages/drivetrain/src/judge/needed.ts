import {
  formatNumber,
  formatQuantity,
  fromSI,
  type Origin,
  reworked,
  toSI,
  type Value,
  valuesBehind,
  writtenUnit,
} from '@tailshaft/mechanics';
import { limitsOf, type Row, rangedIn } from '@tailshaft/vocabulary';
import { homeOfFact, valueUnnoticed } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import { quantityWords } from './quantity-words.js';

/** The figure of one declared quantity with which, all else as it is, a failing comparison would not fail. */
export interface Needed {
  /** What it is, in words: `shaft diameter`, `engine rated speed`. */
  readonly quantity: string;
  /** Words of its property, and of what holds it: `diameter` of `shaft`. */
  readonly property: string;
  readonly of: string;
  readonly host: Origin;
  /** Where the figure stands now. */
  readonly at: Origin;
  readonly bound: 'at least' | 'at most' | 'exactly';
  readonly si: number;
  /** As it would be written there, rounded to the side on which the comparison holds. */
  readonly written: string;
  readonly now: Value;
}

/** What a failing check compared: of two values the one must be no less than the other, or the two must be the same. */
export type Balance =
  | {
      readonly more: Value;
      readonly less: Value;
      /** Margin that the one must have over the other. */
      readonly wanted?: number;
      /** Comparisons that the same judgement made and that were not the worst: they must be met as well. */
      readonly also?: readonly Balance[];
    }
  | {
      /** One alone is a difference, which must be nil. */
      readonly same: readonly [Value, Value?];
      readonly within: number;
    };

/** What a figure of a declared quantity stands in. */
export type Choosable = ReadonlyMap<Origin, { readonly fact: Fact<unknown>; readonly figure: Value }>;

/** A figure is sought up to so many times what it is, and down to that part of it. */
const REACH = Math.log(30);

/**
 * For each declared figure that the comparison rests on and that may be chosen, what it would have to be; the least change
 * first. One with which another comparison that holds no longer would is none.
 */
export function neededFor(balance: Balance, choosable: Choosable, others: readonly Balance[] = []): Needed[] {
  const leaves = new Map<Origin, Value>();
  const sides = 'same' in balance ? balance.same : [balance.more, balance.less];
  for (const side of sides)
    for (const one of side ? valuesBehind(side) : []) {
      const figure = one.origin && choosable.get(one.origin)?.figure;
      // What is worked out of the figure, as its half, is not what would be written there.
      if (figure?.si === one.si && one.si > 0) leaves.set(one.origin!, { ...figure, label: one.label });
    }
  const lapses = measuredWithAnother([...leaves.keys()].map(one => choosable.get(one)!.fact));
  return [...leaves.values()]
    .filter(leaf => !lapses(choosable.get(leaf.origin!)!.fact))
    .flatMap(leaf => {
      const needed = solve(balance, leaf, choosable.get(leaf.origin!)!.fact);
      return needed && others.every(one => settles(one, needed.at, needed.si)) ? [needed] : [];
    })
    .sort((one, other) => changeOf(one) - changeOf(other));
}

/** Which facts another one of them was measured with: with another figure there, that one is not what it was. */
function measuredWithAnother(facts: readonly Fact<unknown>[]): (fact: Fact<unknown>) => boolean {
  const homes = facts.flatMap(one => homeOfFact(one) ?? []);
  return fact => {
    const home = homeOfFact(fact);
    return homes.some(
      ({ host, row }) =>
        home?.row &&
        // A block says what it was measured with of the part around it.
        row?.measuredWith?.includes(host === home.host ? home.row.field : `^${home.row.field}`),
    );
  };
}

/** How far a figure is from what stands there, either way, as a logarithm. */
export function changeOf({ si, now }: Pick<Needed, 'si' | 'now'>): number {
  return Math.abs(Math.log(si / now.si));
}

function solve(balance: Balance, now: Value, fact: Fact<unknown>): Needed | undefined {
  const home = homeOfFact(fact);
  if (!home?.of || home.row?.unordered) return undefined;
  const factor = root(step => shortfall(balance, now.origin!, now.si * Math.exp(step)));
  if (factor === undefined) return undefined;
  const bound = 'same' in balance ? 'exactly' : factor > 0 ? 'at least' : 'at most';
  const found = now.si * Math.exp(factor);
  const size = FINE.map(([digits, slack]) => rounded(now, found, bound, digits, slack)).find(one =>
    settles(balance, now.origin!, one.si),
  );
  if (!size || !isPlausible(home.row, now, fact, size.si)) return undefined;
  return {
    quantity: quantityWords(home, now, fact),
    property: home.property,
    of: home.of,
    host: home.host,
    at: now.origin!,
    bound,
    ...size,
    now,
  };
}

/** How much is wanting, as a share; nil or less where nothing is. A difference is followed through nil. */
function shortfall(balance: Balance, origin: Origin, si: number): number | undefined {
  if ('same' in balance) {
    const was = balance.same[0].si - (balance.same[1]?.si ?? 0);
    const is = differenceOf(balance.same, origin, si);
    return is === undefined ? undefined : is / was;
  }
  const more = reworked(balance.more, origin, si);
  const less = reworked(balance.less, origin, si);
  if (more === undefined || less === undefined) return undefined;
  const found = (less * (1 + (balance.wanted ?? 0))) / more - 1;
  return Number.isFinite(found) ? found : undefined;
}

function differenceOf([one, other]: readonly [Value, Value?], origin: Origin, si: number) {
  const first = reworked(one, origin, si);
  const second = other ? reworked(other, origin, si) : 0;
  return first === undefined || second === undefined ? undefined : first - second;
}

/** Whether nothing is wanting, by the very comparison that a check makes. */
export function settles(balance: Balance, origin: Origin, si: number): boolean {
  if ('same' in balance) {
    const apart = differenceOf(balance.same, origin, si);
    return apart !== undefined && Math.abs(apart) <= balance.within;
  }
  const more = reworked(balance.more, origin, si);
  const less = reworked(balance.less, origin, si);
  if (more === undefined || less === undefined || more / less - 1 < (balance.wanted ?? 0)) return false;
  return balance.also?.every(one => settles(one, origin, si)) ?? true;
}

/** Whether such a thing can have the figure: what the text would refuse is no cure. */
function isPlausible(row: Row | undefined, now: Value, fact: Fact<unknown>, si: number): boolean {
  const own = row && rangedIn(row, valueUnnoticed(fact)).find(one => one.value?.origin === now.origin);
  if (!own) return true;
  const { low, high } = limitsOf(own.range, own.dimension);
  return si >= low && si <= high;
}

/**
 * The least step, in the logarithm of the figure, with which nothing is wanting; undefined where no step within reach does
 * it. Most figures stand in a power law, of which two points give the third.
 */
function root(short: (step: number) => number | undefined): number | undefined {
  const start = short(0);
  const up = short(PROBE);
  const down = short(-PROBE);
  if (start === undefined || up === undefined || down === undefined || !(start > 0)) return undefined;
  const way = up < down ? 1 : -1;
  if (Math.min(up, down) >= start - 1e-12) return undefined;
  let low = { at: 0, short: start };
  let high: { at: number; short: number } | undefined;
  let next = way * PROBE;
  for (let turn = 0; turn < 60 && Math.abs(next) <= REACH; turn += 1) {
    const found = short(next);
    if (found === undefined) return undefined;
    if (found <= 0) high = { at: next, short: found };
    else low = { at: next, short: found };
    if (high && Math.abs(high.at - low.at) < 1e-7) return high.at;
    if (high && high.short > -1e-9) return high.at;
    next = high ? between(low, high, turn) : beyond(low, start, way);
  }
  return high?.at;
}

const PROBE = 0.002;

/** By the power law through the start and here, and a little further so that it is passed; at most three times the step. */
function beyond(low: { at: number; short: number }, start: number, way: number): number {
  const slope = (Math.log1p(low.short) - Math.log1p(start)) / low.at;
  const guess = slope * way < 0 ? -Math.log1p(start) / slope : low.at * 3;
  const furthest = Math.abs(low.at) * 3;
  const step = Math.min(Math.max(Math.abs(guess), Math.abs(low.at) * 1.0005), Math.max(furthest, PROBE * 3));
  return way * step * (1 + 1e-9);
}

function between(
  low: { at: number; short: number },
  high: { at: number; short: number },
  turn: number,
): number {
  // By turns the straight line between the two, and their middle, so that it closes from both sides.
  if (turn % 2 === 0) return (low.at + high.at) / 2;
  const share = low.short / (low.short - high.short);
  return low.at + (high.at - low.at) * Math.min(Math.max(share, 0.01), 0.99);
}

/** Digits that a figure is written to, and part of the last one that is let go: the coarsest that does is taken. */
const FINE = [
  [3, 1e-3],
  [3, 1e-9],
  [4, 1e-9],
  [6, 1e-9],
] as const;

/** A figure that is needed, in the unit and to the digits of the one that it replaces, and never short of it. */
export function atLeastWords(now: Value, si: number): string {
  return rounded(now, si, 'at least', 3, 1e-9).written;
}

/** To the digits that a person would write, never short of what is needed. */
function rounded(
  now: Value,
  si: number,
  bound: Needed['bound'],
  digits: number,
  slack: number,
): { si: number; written: string } {
  const unit = writtenUnit(now);
  const whole = now.dimension === 'number' && (now.figure?.decimals ?? 0) === 0;
  const round = (number: number, towards: Needed['bound']) =>
    roundedTo(number, whole ? 1 : stepOf(number, digits), towards, slack);
  if (unit) {
    const full = toSI(round(fromSI(si, unit), bound), unit);
    return { si: full, written: formatQuantity(full, unit, 8) };
  }
  const to = now.figure?.to;
  // A taper of 1:16 stays one to something.
  if (to !== undefined && to !== 1 && now.figure?.text === '1') {
    const second = round(1 / si, OPPOSITE[bound]);
    return { si: 1 / second, written: `1:${formatNumber(second, 8)}` };
  }
  const full = round(si * (to ?? 1), bound);
  const text = formatNumber(full, 8);
  if (to !== undefined) return { si: full / to, written: `${text}:${to}` };
  return { si: full, written: now.label === 'hours' ? `${text} per year` : text };
}

const OPPOSITE = { 'at least': 'at most', 'at most': 'at least', exactly: 'exactly' } as const;

function stepOf(number: number, digits: number): number {
  const size = Math.abs(number);
  return size >= 1000 && size < 10_000 ? 1 : 10 ** (Math.floor(Math.log10(size)) + 1 - digits);
}

function roundedTo(number: number, step: number, bound: Needed['bound'], slack: number): number {
  const steps = number / step;
  const counted =
    bound === 'exactly'
      ? Math.round(steps)
      : bound === 'at least'
        ? Math.ceil(steps - slack)
        : Math.floor(steps + slack);
  return Number((counted * step).toPrecision(12));
}
