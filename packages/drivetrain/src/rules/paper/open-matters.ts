import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { Matter } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { RECORDED } from './record-specs.js';

const INFO: RuleInfo = {
  id: 'paper/open-matters',
  title: 'Open questions and actions have an owner and are not overdue',
  mistakes: [],
  severity: 'warning',
  criterion:
    'each open question and action of the project names its owner and its last day, and is done or not yet due on the day of the check',
  source: { title: 'action lists as design offices and yards keep them', confidence: 'common practice' },
  manual:
    'A question without an owner stays unanswered, and one without a due date is answered after the part was made. Enter the owner, the due date, and the date on which it was closed. Chase one that is overdue, or have whoever set the date extend it.',
  caution: 'A matter marked as done may still have a wrong answer.',
  noFigure: 'a record or its dates',
  curesRecord: true,
  judgesEvidence: true,
  noCure: 'Only its owner can say that a matter is done.',
  examples: examples(() => ({
    failing: changed(RECORDED, ['due 2036-05-01', 'due 2025-12-01']),
    passing: RECORDED,
    cannotTell: changed(RECORDED, [
      '"Weigh the gear on delivery" for "yard engineer"',
      '"Weigh the gear on delivery"',
    ]),
  })),
};

export const openMatters: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel, today }: Context): Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  const { questions = [], actions = [] } = vessel.project ?? {};
  const matters = [
    ...questions.map(one => ({ one, kind: 'question' })),
    ...actions.map(one => ({ one, kind: 'action' })),
  ];
  return each(matters, ({ one, kind }) => {
    const what = `The ${kind} "${one.what}"`;
    const place = one.origin;
    const done = one.done?.value;
    if (done !== undefined && done > today)
      return say.fails({
        place,
        message: `${what} is marked as done on ${done}, after the day of this check, ${today}.`,
      });
    if (done !== undefined) return say.holds({ place, message: `${what} was done on ${done}.` });
    const due = one.due?.value;
    if (due !== undefined && due < today)
      return say.fails({
        place,
        message: `${what}, ${ownerOf(one)}, was due on ${due} and is not done. Close it, or have whoever set the date extend it.`,
      });
    const needs = new Needs();
    needs.fact(one.owner, { what: `owner of the ${kind} "${one.what}"`, host: place, property: 'for' });
    needs.fact(one.due, { what: `last day of the ${kind} "${one.what}"`, host: place, property: 'due' });
    if (needs.any)
      return say.cannotTell(needs, {
        place,
        message: `${what} has no ${[one.owner?.value ? '' : 'owner', due ? '' : 'due date'].filter(Boolean).join(' and no ')}.`,
      });
    return say.holds({ place, message: `${what}, ${ownerOf(one)}, is due on ${due}.` });
  });
}

function ownerOf({ owner }: Matter): string {
  return owner?.value === undefined ? 'without an owner' : `for ${owner.value}`;
}
