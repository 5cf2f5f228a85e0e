import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { Revision, Signature } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { RECORDED } from './record-specs.js';
import { inOrder } from './revision-order.js';

const INFO: RuleInfo = {
  id: 'paper/revision-signed',
  title: 'Each revision is checked by someone other than its author',
  mistakes: [],
  severity: 'warning',
  criterion:
    'a revision that names who prepared it is checked by another person, each in a named role; signatures follow ' +
    'each other as prepared, checked, approved, none older than the revision, and none after the next revision or the day of the check',
  source: { title: 'independent checking as design offices keep it', confidence: 'common practice' },
  manual:
    'Authors overlook their own errors. A revision is therefore checked by a person other than its author, and both sign in a stated role. A signature older than the revision was given for another ' +
    'text, and so was one given after the next revision was issued; an approval before the check approved something unchecked. Have the revision checked, and enter who did, in which role and on which day.',
  caution: 'Names are compared as written; the signed document governs, not this record.',
  noFigure: 'a record or its dates',
  curesRecord: true,
  judgesEvidence: true,
  noCure: 'Only the signatory can be named.',
  examples: examples(() => ({
    failing: changed(RECORDED, ['checked by "R. Marram"', 'checked by "J. Fennick"']),
    passing: RECORDED,
    cannotTell: changed(RECORDED, ['    checked by "R. Marram" as "checker" dated 2025-11-21\n', '']),
  })),
};

export const revisionSigned: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel, today }: Context): Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  const signed = vessel.revisions.filter(one => signaturesOf(one).length > 0);
  return each(signed, revision => {
    const { origin: place, name, prepared = [], checked = [], dated } = revision;
    const all = signaturesOf(revision);
    const disorder = outOfTurn(revision, inOrder(vessel.revisions), today);
    const early = all.find(one => dated !== undefined && (one.dated?.value ?? dated) < dated);
    if (early)
      return say.fails({
        place: early.origin,
        message: `${early.name} signed revision ${name} on ${early.dated?.value}, before its date, ${dated}: the signature is for another text.`,
      });
    if (disorder) return say.fails({ place: disorder.at, message: disorder.message, ...disorder.beside });
    const others = [...checked, ...(revision.approved ?? [])];
    const both = others.find(one => prepared.some(author => same(author, one)));
    if (both)
      return say.fails({
        place: both.origin,
        message: `${both.name} prepared revision ${name} and also checks or approves it, so it has no independent check. Have another person check it.`,
      });
    const needs = new Needs();
    if (dated === undefined && all.some(one => one.dated))
      needs.miss({ what: `date of revision ${name}`, host: place, property: 'dated' });
    const what = (said: string) => `who ${said} revision ${name}`;
    if (prepared.length === 0) needs.miss({ what: what('prepared'), host: place, property: 'prepared by' });
    if (checked.length === 0) needs.miss({ what: what('checked'), host: place, property: 'checked by' });
    for (const one of all)
      needs.fact(one.role, { what: `role of ${one.name}`, host: one.origin, property: 'as' });
    if (needs.any)
      return say.cannotTell(needs, {
        place,
        message: cannotTellWords(`whether revision ${name} was checked independently`, needs.missing),
      });
    return say.holds({
      place,
      message: `Revision ${name} is prepared by ${named(prepared)} and checked by ${named(checked)}.`,
    });
  });
}

interface OutOfTurn {
  readonly at: Signature['origin'];
  readonly message: string;
  readonly beside: Partial<Pick<Verdict, 'related'>>;
}

/** A signature that was given before one which it relies on, or for a text that had been superseded by then. */
function outOfTurn(revision: Revision, ordered: readonly Revision[], today: string): OutOfTurn | undefined {
  const { prepared = [], checked = [], approved = [], name } = revision;
  const dayOf = (one: Signature) => one.dated?.value ?? revision.dated;
  const turns = [
    ...prepared.map(one => ({ one, did: 'prepared', turn: 0 })),
    ...checked.map(one => ({ one, did: 'checked', turn: 1 })),
    ...approved.map(one => ({ one, did: 'approved', turn: 2 })),
  ].flatMap(signed => {
    const day = dayOf(signed.one);
    return day === undefined ? [] : [{ ...signed, day }];
  });
  for (const { one, did, turn, day } of turns) {
    const first = turns.find(other => other.turn < turn && other.day > day);
    if (first)
      return {
        at: one.origin,
        beside: { related: [{ at: first.one.origin, message: `${first.did} on ${first.day}` }] },
        message: `${one.name} ${did} revision ${name} on ${day}, before ${first.one.name} ${first.did} it on ${first.day}. Correct the dates, or have it ${did} again.`,
      };
    // A revision that is itself still to come is told as such.
    if (day > today && !(revision.dated !== undefined && revision.dated > today))
      return {
        at: one.origin,
        beside: {},
        message: `${one.name} ${did} revision ${name} on ${day}, after the day of this check, ${today}. Give it the day on which it was signed.`,
      };
    const next = ordered[ordered.indexOf(revision) + 1];
    if (next?.dated !== undefined && day > next.dated)
      return {
        at: one.origin,
        beside: { related: [{ at: next.origin, message: `Revision ${next.name}, dated ${next.dated}` }] },
        message: `${one.name} ${did} revision ${name} on ${day}, after revision ${next.name} of ${next.dated} had taken its place: the signature is for a text that no longer governs. Correct the dates.`,
      };
  }
  return undefined;
}

function signaturesOf({ prepared = [], checked = [], approved = [] }: Revision): Signature[] {
  return [...prepared, ...checked, ...approved];
}

function same(one: Signature, other: Signature): boolean {
  const plain = ({ name }: Signature) =>
    name
      .toLowerCase()
      .replace(/[^\p{L}\d]+/gu, ' ')
      .trim();
  return plain(one) === plain(other);
}

function named(signatures: readonly Signature[]): string {
  return signatures.map(({ name, role }) => (role?.value ? `${name}, ${role.value}` : name)).join(' and ');
}
