import type { Judged, Told } from '../rejudge.js';

/** Verdicts of one rule on one subject. */
export interface Tally {
  readonly rule: string;
  readonly subject: string;
  readonly fails: number;
  readonly holds: number;
  readonly open: number;
  readonly told: readonly Told[];
}

const NONE = { fails: 0, holds: 0, open: 0, told: [] };

/** How often each rule says what of each subject; an accepted failure is one. */
export function tallies(judged: Judged, renamed = (subject: string) => subject): Map<string, Tally> {
  const found = new Map<string, Tally>();
  for (const one of judged.told) {
    const subject = renamed(one.subject);
    const key = `${one.rule} ${subject}`;
    const had = found.get(key) ?? { rule: one.rule, subject, ...NONE };
    found.set(key, {
      ...had,
      fails: had.fails + Number(one.outcome === 'fails' || one.outcome === 'accepted'),
      holds: had.holds + Number(one.outcome === 'holds'),
      open: had.open + Number(one.outcome === 'cannot tell'),
      told: [...had.told, one],
    });
  }
  return found;
}

/** Each rule on each subject, before and after. */
export function pairs(
  before: ReadonlyMap<string, Tally>,
  after: ReadonlyMap<string, Tally>,
): { readonly was: Tally; readonly is: Tally }[] {
  return [...new Set([...before.keys(), ...after.keys()])].map(key => {
    const either = before.get(key) ?? after.get(key)!;
    const none = { rule: either.rule, subject: either.subject, ...NONE };
    return { was: before.get(key) ?? none, is: after.get(key) ?? none };
  });
}

/** Errors of the text that were not there before. */
export function newRefusals(before: Judged, after: Judged): string[] {
  const had = new Set(before.refused);
  return after.refused.filter(one => !had.has(one));
}

/** What became of failures that are no longer there. */
export function fateOf(was: Tally, is: Tally): 'holds' | 'cannot tell' | 'silence' | undefined {
  const lost = was.fails - is.fails;
  if (lost <= 0) return undefined;
  if (is.open - was.open >= lost) return 'cannot tell';
  return is.holds > was.holds ? 'holds' : 'silence';
}
