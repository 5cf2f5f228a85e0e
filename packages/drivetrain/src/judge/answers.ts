import { proposalsOf } from '../model/as-found.js';
import type { Requirement, Vessel } from '../model/vessel.js';
import { REQUIREMENT_MET } from '../rules/trace/requirement-met.js';
import { Needs } from './needs.js';
import { sayFor } from './say.js';
import type { Verdict } from './verdict.js';

const ANSWERS: readonly Verdict['outcome'][] = ['holds', 'fails', 'accepted', 'cannot tell'];

/**
 * A requirement is met, fails, or cannot be told, and whichever it is is said. Where every check that could answer it does
 * not apply or keeps silent, that is said here.
 */
export function withAnswers(verdicts: Verdict[], vessel: Vessel): Verdict[] {
  if (proposalsOf(vessel).every(one => one.lines.length === 0)) return verdicts;
  const all = verdicts.flatMap(one => [one, ...(one.folds ?? [])]);
  const open = vessel.requirements.filter(
    one => !all.some(verdict => verdict.answers === one.origin && ANSWERS.includes(verdict.outcome)),
  );
  return [...verdicts, ...open.map(one => unanswered(one, vessel))];
}

function unanswered(requirement: Requirement, vessel: Vessel): Verdict {
  const needs = new Needs();
  needs.miss(
    { what: `what "${requirement.written}" is judged by`, host: vessel.origin, property: 'require' },
    requirement.origin,
  );
  return sayFor(REQUIREMENT_MET, vessel.name).cannotTell(needs, {
    place: requirement.origin,
    answers: requirement.origin,
    message: `"${requirement.written}" is neither met nor failed: no check that could judge it has the data it needs.`,
  });
}
