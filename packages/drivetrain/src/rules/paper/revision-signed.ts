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

const INFO: RuleInfo = {
  id: 'paper/revision-signed',
  title: 'Each revision is checked by someone other than its author',
  mistakes: [],
  severity: 'warning',
  criterion:
    'a revision that names who prepared it is checked by another person, each in a named role, and no ' +
    'signature is older than the revision',
  source: { title: 'independent checking as design offices keep it', confidence: 'common practice' },
  manual:
    'Authors overlook their own errors. A revision is therefore checked by a person other than its author, and both sign in a stated role. A signature older than the revision was given for another ' +
    'text. Have the revision checked, and enter who did, in which role and on which day.',
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

function check({ vessel }: Context): Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  const signed = vessel.revisions.filter(one => signaturesOf(one).length > 0);
  return each(signed, revision => {
    const { origin: place, name, prepared = [], checked = [], dated } = revision;
    const all = signaturesOf(revision);
    const early = all.find(one => dated !== undefined && (one.dated?.value ?? dated) < dated);
    if (early)
      return say.fails({
        place: early.origin,
        message: `${early.name} signed revision ${name} on ${early.dated?.value}, before its date, ${dated}: the signature is for another text.`,
      });
    const others = [...checked, ...(revision.approved ?? [])];
    const both = others.find(one => prepared.some(author => same(author, one)));
    if (both)
      return say.fails({
        place: both.origin,
        message: `${both.name} prepared revision ${name} and also checks or approves it, so it has no independent check. Have another person check it.`,
      });
    const needs = new Needs();
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
