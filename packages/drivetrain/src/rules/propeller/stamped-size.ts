import { percent } from '@tailshaft/mechanics';
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
import { SHOP_PRACTICE } from './sources.js';

const STAMPED = changed(SINGLE_LINE, [
  'pitch 24 in',
  'pitch 23.6 in [measured 2026-01-14]  stamped pitch 24 in',
]);

const INFO: RuleInfo = {
  id: 'propeller/stamped-size',
  title: 'A propeller is taken at its measured size, not at its stamp',
  mistakes: ['P06'],
  severity: 'warning',
  criterion: 'diameter and pitch that are stamped, or read from the plate, have a measured one beside them',
  source: SHOP_PRACTICE,
  manual:
    'A stamp gives the size of a propeller as cast. Repairs, damage and repitching do not change it, and two ' +
    'sides with one stamp and two pitches look like trouble with a throttle cable. Have the pitch measured, ' +
    'blade by blade, and write it with "[measured ...]"; keep the stamp as "stamped pitch" beside it. Nothing ' +
    'here computes with a stamp.',
  caution: 'Measure both sides of a pair with the same gauge.',
  noFigure: 'no number is compared',
  curesRecord: true,
  noCure: 'Only a measurement establishes the size of the blades.',
  examples: examples(() => ({
    failing: changed(STAMPED, [
      'pitch 23.6 in [measured 2026-01-14]  stamped pitch 24 in',
      'pitch 24 in [plate]',
    ]),
    passing: STAMPED,
    cannotTell: changed(STAMPED, ['pitch 23.6 in [measured 2026-01-14]', 'pitch unknown']),
  })),
};

export const stampedSize: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { propeller } = context.line;
  if (!propeller) return undefined;
  return apart(
    () => judge(context, propeller, 'diameter', propeller.diameter, propeller.stampedDiameter?.[0]),
    () => judge(context, propeller, 'pitch', propeller.pitch, propeller.stampedPitch?.[0]),
  );
}

function judge(
  { line }: LineContext,
  propeller: Propeller,
  what: 'diameter' | 'pitch',
  actual: Quantity<'length'> | undefined,
  stamped: Quantity<'length'> | undefined,
): Verdict | undefined {
  const fromPlate = actual?.evidence?.kind === 'plate';
  if (!stamped && !fromPlate) return undefined;
  const say = sayFor(INFO, line.path);
  const place = (actual ?? stamped)!.origin;
  if (fromPlate || !actual) {
    const words = (fromPlate ? actual : stamped)!.written;
    const risk =
      propeller.change === 'retained' || propeller.change === 'modified'
        ? 'and the propeller has been at work since'
        : 'and it has not been measured';
    const then = fromPlate ? '' : `, so no check has a ${what} to work with`;
    return say.fails({
      place,
      message: `${line.name}: the ${what} of ${nameOf(propeller)}, ${words}, is as stamped, ${risk}${then}. Have it measured and write it with [measured ...].`,
    });
  }
  const needs = new Needs();
  const value = needs.fact(actual, {
    what: `measured ${what} of ${nameOf(propeller)}`,
    host: home(propeller),
    property: what,
  });
  if (!value) return waits(say, needs, place, `${line.name}: the ${what} that the propeller really has`);
  const off = stamped?.value ? value.si / stamped.value.si - 1 : undefined;
  const differs =
    off !== undefined && Math.abs(off) > 1e-6
      ? `, ${percent(Math.abs(off))} ${off > 0 ? 'above' : 'below'} its stamp of ${stamped!.written}`
      : ', as stamped';
  return say.holds({ place, message: `${line.name}: the ${what} is ${actual.written}${differs}.` });
}
