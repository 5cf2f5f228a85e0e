import type { Verdict } from '../../judge/verdict.js';

/** Rules on how a pair turns: they judge its hands once each of them is settled. A requirement is always answered by itself. */
export function pairFolds(arrangementPath: string): Verdict['explains'] {
  return ['rotation/same-hand', 'rotation/inward-turning'].map(rule => ({
    rule,
    subject: arrangementPath,
  }));
}

/** What a finding on a wrong hand explains: the plain one on its line, and those on the pair. */
export function handFolds(linePath: string, arrangementPath: string): Verdict['explains'] {
  return [{ rule: 'rotation/propeller-hand', subject: linePath }, ...pairFolds(arrangementPath)];
}
