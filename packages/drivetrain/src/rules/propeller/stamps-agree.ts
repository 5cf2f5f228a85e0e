import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, apart } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';

const TWICE_STAMPED = changed(SINGLE_LINE, [
  'pitch 24 in',
  'pitch 23.6 in [measured 2026-01-14]  stamped pitch 24 in  stamped pitch 24 in',
]);

const INFO: RuleInfo = {
  id: 'propeller/stamps-agree',
  title: 'Stamps on one propeller agree',
  mistakes: ['P06'],
  severity: 'warning',
  criterion: 'each stamped diameter and each stamped pitch of a propeller against the first',
  source: {
    title: 'propeller shops stamp anew what they repitch or cut down, beside the old stamp',
    confidence: 'common practice',
  },
  manual:
    'A second stamp that differs shows that a propeller was cut down, repitched or taken from another set. ' +
    'Neither stamp then gives its size. Have diameter and pitch of every blade measured, write them with ' +
    '"[measured ...]", and find out who stamped it last: the figures of the old trial may belong to the ' +
    'other one.',
  caution: 'Stamps that agree prove nothing: see propeller/stamped-size.',
  noFigure: 'two statements of one thing, either of which may be true',
  noCure: 'Only the shop that stamped it, or measuring every blade, settles it.',
  examples: examples(() => ({
    failing: changed(TWICE_STAMPED, [
      'stamped pitch 24 in  stamped pitch 24 in',
      'stamped pitch 24 in  stamped pitch 22 in',
    ]),
    passing: TWICE_STAMPED,
    cannotTell: changed(TWICE_STAMPED, [
      'stamped pitch 24 in  stamped pitch 24 in',
      'stamped pitch 24 in  stamped pitch unknown',
    ]),
  })),
};

export const stampsAgree: Rule = { ...INFO, scope: 'line', check };

function check({ line }: LineContext): Apart<Verdict> | undefined {
  const { propeller } = line;
  if (!propeller) return undefined;
  return apart(
    () => judge(line.name, propeller, 'diameter', propeller.stampedDiameter ?? []),
    () => judge(line.name, propeller, 'pitch', propeller.stampedPitch ?? []),
  );
}

function judge(
  line: string,
  propeller: Propeller,
  what: 'diameter' | 'pitch',
  stamps: readonly Quantity<'length'>[],
): Verdict | undefined {
  const [first, ...others] = stamps;
  if (!first || others.length === 0) return undefined;
  const say = sayFor(INFO, propeller.path);
  const needs = new Needs();
  const read = stamps.flatMap(fact => {
    const value = needs.fact(fact, {
      what: `stamped ${what} of ${nameOf(propeller)}`,
      host: home(propeller),
      property: `stamped ${what}`,
    });
    return value ? [{ fact, value }] : [];
  });
  const [known] = read;
  const differs = known && read.find(({ value }) => Math.abs(value.si / known.value.si - 1) > 1e-6);
  if (known && differs) {
    return say.fails({
      place: differs.fact.origin,
      related: [{ at: known.fact.origin, message: `the other stamp: ${known.fact.written}` }],
      message: `${line}: ${nameOf(propeller)} is stamped with ${what} ${known.fact.written} and ${differs.fact.written}. It was cut down, repitched or taken from another set: have every blade measured.`,
    });
  }
  if (needs.any)
    return waits(say, needs, first.origin, `${line}: whether the stamps of ${nameOf(propeller)} agree`);
  return say.holds({
    place: first.origin,
    message: `${line}: ${stamps.length} stamps of ${nameOf(propeller)} say ${what} ${first.written}.`,
  });
}
