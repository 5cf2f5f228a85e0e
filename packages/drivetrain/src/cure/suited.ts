import { analysesOf } from '../judge/judge.js';
import type { Route } from '../judge/route.js';
import type { Verdict } from '../judge/verdict.js';
import type { Part, Role } from '../model/part.js';
import { suiting } from '../suits/index.js';
import { type Judgement, lineOf } from './judgement.js';

/** The parts whose size a rule is about, and when what would suit them is a way out of it. */
const SIZED: Readonly<
  Record<string, { readonly role: Role; readonly outcomes: readonly Verdict['outcome'][] }>
> = {
  'propeller/absorbed-power': { role: 'propeller', outcomes: ['fails', 'cannot tell'] },
  // A shaft that is too thin has routes of its own.
  'shafting/diameter': { role: 'shaft', outcomes: ['cannot tell'] },
};

/** Sizes that would suit, where a check fails for a size or waits for one. */
export function suitedParts(verdict: Verdict, judgement: Judgement): Route[] {
  const sized = SIZED[verdict.rule];
  const { vessel } = judgement;
  const line = lineOf(verdict, vessel);
  const arrangement = vessel.arrangements.find(one => line && one.lines.includes(line));
  if (!sized?.outcomes.includes(verdict.outcome) || !line || !arrangement) return [];
  const analysisOf = analysesOf(vessel);
  const context = { ...judgement, analysisOf, arrangement, line, analysis: analysisOf(line) };
  return line.chain
    .filter((part: Part) => part.role === sized.role)
    .flatMap(part => suiting(part, context).routes.map(({ title, edits }) => ({ title, edits })));
}
