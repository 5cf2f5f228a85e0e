import { laterThanRevision } from '../../analysis/order-of-days.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { Revision, Vessel } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { RECORDED } from './record-specs.js';

const INFO: RuleInfo = {
  id: 'paper/revision-order',
  title: 'Revisions follow each other by name and by date',
  mistakes: [],
  severity: 'warning',
  criterion:
    'each revision has a name of its own and a date, no earlier than that of the revision before it and no ' +
    'later than the day of the check; no document that a part rests on is later than the last of them',
  source: { title: 'document control as design offices and yards keep it', confidence: 'common practice' },
  manual:
    'Yards, makers and surveyors work from the revision that they hold. Two revisions of one name, or a later one with an ' +
    'earlier date, leave it unclear which one governs, and parts are made to the wrong one. Give each revision the next ' +
    'letter or number, and the date on which it was issued.',
  caution:
    'The order of letters and of numbers is checked; where an office mixes both, the order in the file governs.',
  noFigure: 'a record or its dates',
  curesRecord: true,
  judgesEvidence: true,
  noCure: 'Only the issuer knows the name and date of a revision.',
  examples: examples(() => ({
    failing: changed(RECORDED, ['revision B dated 2025-11-20', 'revision B dated 2025-09-20']),
    passing: RECORDED,
    cannotTell: changed(RECORDED, ['revision A dated 2025-10-02', 'revision A']),
  })),
};

export const revisionOrder: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel, today }: Context): Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  const ordered = inOrder(vessel.revisions);
  return apart(
    () => inTurn(ordered, say, today),
    () => each(afterTheLast(ordered, vessel), one => one),
  );
}

/** What the record rests on, and is dated after its last revision: that revision was of another text. */
function afterTheLast(ordered: readonly Revision[], vessel: Vessel): Verdict[] {
  const last = ordered.at(-1);
  const say = sayFor(INFO, vessel.name);
  return (last ? laterThanRevision(last, vessel.arrangements) : []).map(({ fact, date, words }) =>
    say.fails({
      place: last!.origin,
      severity: last!.approved?.length ? 'warning' : 'note',
      related: [{ at: fact.origin, message: `${words} ${fact.written}` }],
      message: `Revision ${last!.name} is dated ${last!.dated}, and the record rests on ${words} ${fact.written} of ${date}: ${last!.approved?.length ? 'what was approved is another text' : 'what was issued is another text'}. Correct the date, or issue the next revision.`,
    }),
  );
}

function inTurn(ordered: readonly Revision[], say: ReturnType<typeof sayFor>, today: string): Apart<Verdict> {
  return each(ordered, one => {
    const { origin: place, name, dated } = one;
    const before = ordered[ordered.indexOf(one) - 1];
    const what = `Revision ${name || 'without a name'}`;
    if (before && before.name === name)
      return say.fails({
        place,
        related: [{ at: before.origin, message: `The other revision ${name}` }],
        message: `There are two revisions ${name}: it is unclear to which one a part was made. Give the later one the next name.`,
      });
    if (dated !== undefined && dated > today)
      return say.fails({
        place,
        message: `${what} is dated ${dated}, after the day of this check, ${today}. Give it the day on which it was issued.`,
      });
    if (dated !== undefined && before?.dated !== undefined && dated < before.dated)
      return say.fails({
        place,
        related: [{ at: before.origin, message: `Revision ${before.name}, dated ${before.dated}` }],
        message: `${what} is dated ${dated}, before revision ${before.name} of ${before.dated}. Correct the dates or the names.`,
      });
    if (dated !== undefined && (before === undefined || before.dated !== undefined))
      return say.holds({ place, message: `${what} of ${dated} follows in order.` });
    const undated = dated === undefined ? one : before!;
    const needs = new Needs();
    needs.miss({ what: `date of revision ${undated.name}`, host: undated.origin, property: 'dated' });
    return say.cannotTell(needs, {
      place,
      message: `Revision ${undated.name} has no date: write it as revision ${undated.name} dated 2025-01-31.`,
    });
  });
}

/** By letters or by numbers where all have the one or the other, else as they are written. */
export function inOrder(revisions: readonly Revision[]): readonly Revision[] {
  const kinds = [/^\d+$/, /^[A-Za-z]+$/, /^[A-Za-z]+\d+$/];
  const kind = kinds.find(one => revisions.every(({ name }) => one.test(name)));
  if (!kind) return revisions;
  const rank = (name: string) => {
    const [, letters = '', number = ''] = /^([A-Za-z]*)(\d*)$/.exec(name)!;
    return [letters.length, letters.toUpperCase(), Number(number)] as const;
  };
  return [...revisions].sort((a, b) => {
    const [one, other] = [rank(a.name), rank(b.name)];
    return one[0] - other[0] || (one[1] < other[1] ? -1 : one[1] > other[1] ? 1 : one[2] - other[2]);
  });
}
