import type { Context } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { Acceptance } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const REQUIRED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  require noise at most 72 percent\n  accept trace/requirement-unverified on Ternhaven because "measured on the sea trial, step 9"\n      by "owner\'s superintendent" dated 2026-01-20 until 2026-12-31\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'paper/acceptance',
  title: 'Acceptances are signed, in date and still needed',
  mistakes: ['U12'],
  severity: 'error',
  criterion:
    'each acceptance names who gave it and why, is dated on or before the day of the check, and its last day ' +
    'has not passed',
  source: { title: 'deviation and concession records as yards keep them', confidence: 'common practice' },
  manual:
    'A departure is accepted by a person in a named role, for a reason, for a time. Without the role nobody ' +
    'is responsible for it, and after its last day the reason must be confirmed again. An acceptance without ' +
    'these covers nothing: its finding returns, and the acceptance is a finding too. One whose subject now ' +
    'holds is also a finding, because it would cover the next failure by chance. Have it renewed by whoever ' +
    'may give it, or correct the cause and remove it. Only removal is offered as a fix: who accepts, why and ' +
    'until when can only be filled in by the person who does.',
  caution: 'No date is extended and no name filled in here: only whoever accepts a departure can do that.',
  noFigure: 'a record or its dates',
  curesRecord: true,
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [
      '  arrangement proposed {',
      '  accept capacity/gear-input-torque on Centre because "rating is being asked for"\n      by "class surveyor" dated 2025-01-20 until 2025-12-31\n  arrangement proposed {',
    ]),
    passing: REQUIRED,
    cannotTell:
      'Person, reason and last day stand in the acceptance, or it is not one: their absence is the finding.',
  })),
};

export const PAPER_ACCEPTANCE = INFO.id;

export const acceptance: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel, today }: Context): Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  return each(vessel.acceptances, one => {
    const wrong = wrongWith(one, today);
    const what = `The acceptance of ${one.rule} on ${one.on}`;
    const loose = looseIn(one);
    if (wrong.length === 0 && loose.length > 0)
      return say.fails({
        place: one.origin,
        severity: 'warning',
        message: `${what} ${loose.join(', and ')}: a departure is accepted at a place and for a time. Have its author add ${loose.length > 1 ? 'both' : 'it'}.`,
      });
    if (wrong.length === 0)
      return say.holds({
        place: one.origin,
        message: `${what}, by ${one.by}, is in date until ${one.until}.`,
      });
    return say.fails({
      place: one.origin,
      message: `${what} ${wrong.join(', and ')}: it covers nothing. Have it renewed by someone authorised, or correct the cause and remove it.`,
      routes: () => [
        {
          title: 'Remove the acceptance: it covers nothing, and what it was for is already judged without it',
          edits: [{ do: 'remove', at: one.origin }],
        },
      ],
    });
  });
}

/**
 * The acceptance once what it was for holds without it. Only the judge knows that: it sees what the other rules say.
 * `held` is what holds now.
 */
export function noLongerNeeded(vessel: string, one: Acceptance, held: Verdict): Verdict {
  return sayFor(INFO, vessel).fails({
    place: one.origin,
    severity: 'note',
    related: [{ at: held.place, message: held.message }],
    message: `The acceptance of ${one.rule} on ${one.on} is no longer needed: ${held.rule} holds there now. Remove it, so that it cannot hide a later failure.`,
    routes: () => [
      {
        title: 'Remove the acceptance: what it was for holds without it',
        edits: [{ do: 'remove', at: one.origin }],
      },
    ],
  });
}

/** One that somebody gave who may not: what it was for stays a finding, and so is this. */
export function notCompetent(vessel: string, one: Acceptance, why: string): Verdict {
  return sayFor(INFO, vessel).fails({
    place: one.origin,
    message: `The acceptance of ${one.rule} on ${one.on} ${why}: it covers nothing. Have it renewed by someone authorised, or correct the cause and remove it.`,
  });
}

/** What keeps it from covering anything, whatever it is for and whoever may give it. */
export function wrongWith({ by, because, dated, until, open = [] }: Acceptance, today: string): string[] {
  return [
    ...(by?.trim() ? [] : ['does not say who gave it']),
    ...(because?.trim() ? [] : ['gives no reason']),
    ...(open.includes('dated') ? ['does not know when it was given'] : []),
    ...(open.includes('until') ? ['has an unknown last day'] : []),
    ...(dated !== undefined && dated > today ? [`is dated ${dated}, which is still to come`] : []),
    ...(dated !== undefined && until !== undefined && dated > until
      ? [`is dated ${dated}, after its last day, ${until}`]
      : []),
    ...(until !== undefined && until < today ? [`ran out on ${until}`] : []),
  ];
}

function looseIn({ until, placed }: Acceptance): string[] {
  return [
    ...(until === undefined ? ['has no last day'] : []),
    ...(placed === false ? ['names no subject'] : []),
  ];
}
