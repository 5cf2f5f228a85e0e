import { type Origin, renamed, tipClearanceAfterChange, tipGap, type Value } from '@tailshaft/mechanics';
import { amount, inUnit, type NewValue, numberIn, spell } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { RECKONED } from './example-place.js';
import { writePropeller } from './propeller-edits.js';

const INFO: RuleInfo = {
  id: 'propeller/clearance-by-diameter',
  title: 'Tip clearance changes by half the change of diameter',
  mistakes: ['P02'],
  severity: 'note',
  criterion:
    'declared tip clearance against that of the propeller before, less half the change of diameter; or against ' +
    'the height of the hull over the axis, less half the diameter',
  source: { title: 'geometry: the tip is on the radius', confidence: 'derived' },
  manual:
    'The tip is at the radius, so an inch more diameter takes half an inch of clearance, not one. A clearance ' +
    'computed with the whole change rejects a good propeller; one carried over unchanged accepts a bad one. ' +
    'Compute it again, or measure it with the new propeller in place. Differences up to 1.5 mm are taken as ' +
    'rounding.',
  caution:
    'It assumes that the shaft lies where it did; where it does not, write the new clearance as measured.',
  limitOf: 'the rounding of a reading',
  examples: examples(() => ({
    failing: changed(RECKONED, ['tip clearance 112 mm', 'tip clearance 125 mm']),
    passing: RECKONED,
    cannotTell: changed(RECKONED, ['diameter 27 in', 'diameter unknown']),
  })),
};

export const clearanceByDiameter: Rule = { ...INFO, scope: 'line', check };

/** What rounding to whole millimetres or sixteenths leaves. */
const ROUNDING = 0.0015;

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { propeller } = line;
  const before = line.before?.propeller;
  if (!propeller?.tipClearance || propeller.change === 'retained') return undefined;
  const byAxis = isSaid(() => propeller.axisToHull);
  if (!before && !byAxis) return undefined;
  const measured = propeller.tipClearance.evidence?.kind === 'measured';
  // What was measured in place needs nothing to be worked out from.
  if (measured && !byAxis && !isSaid(() => before!.tipClearance)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const stated = read(propeller, propeller.tipClearance, 'tip clearance', needs, propeller.origin);
  const diameter = read(propeller, propeller.diameter, 'diameter', needs);
  const expected = byAxis ? fromAxis(propeller, diameter, needs) : fromOld(before!, diameter, needs);
  const place = propeller.tipClearance.origin;
  if (!stated || !expected)
    return waits(say, needs, place, `${line.name}: whether the tip clearance is computed correctly`);
  const old = byAxis ? propeller.axisToHull! : before!.tipClearance!;
  const related = [{ at: old.origin, message: `${old.written} here` }];
  const words = `half the ${byAxis ? 'diameter' : 'change of diameter'} leaves ${analysis.tell(expected, 3)}`;
  const said = { place, related, workings: [expected] };
  if (measured || Math.abs(stated.si - expected.si) <= ROUNDING) {
    return say.holds({
      ...said,
      message: `${line.name}: a tip clearance of ${propeller.tipClearance.written} ${measured ? 'was measured' : 'goes with the diameter'}; ${words}.`,
    });
  }
  return say.fails({
    ...said,
    balance: { same: [stated, expected], within: ROUNDING },
    message: `${line.name}: the tip clearance is given as ${propeller.tipClearance.written}, but ${words}: the tip is on the radius, so clearance changes by half of the diameter.`,
    routes: () => [
      {
        title: `Write the tip clearance that the diameter leaves: ${spell(whole(expected))}`,
        edits: writePropeller(propeller, { 'tip clearance': whole(expected) }),
      },
    ],
  });
}

function fromAxis(
  propeller: Propeller,
  propellerDiameter: Value<'length'> | undefined,
  needs: Needs,
): Value<'length'> | undefined {
  const axis = read(propeller, propeller.axisToHull, 'axis to hull', needs, propeller.origin);
  if (!axis || !propellerDiameter) return undefined;
  return tipGap({ axisToHull: renamed(axis, 'shaft axis to hull', 's'), propellerDiameter });
}

function fromOld(
  before: Propeller,
  newDiameter: Value<'length'> | undefined,
  needs: Needs,
): Value<'length'> | undefined {
  const clearance = read(before, before.tipClearance, 'tip clearance', needs, before.origin);
  const diameter = read(before, before.diameter, 'diameter', needs);
  if (!clearance || !diameter || !newDiameter) return undefined;
  return tipClearanceAfterChange({
    clearance: renamed(clearance, 'tip clearance before', 'c'),
    diameter: renamed(diameter, 'diameter before', 'D'),
    newDiameter: renamed(newDiameter, 'diameter now', "D'"),
  });
}

function read(
  propeller: Propeller,
  fact: Quantity<'length'> | undefined,
  property: string,
  needs: Needs,
  host: Origin = home(propeller),
): Value<'length'> | undefined {
  return needs.fact(fact, { what: `${property} of ${nameOf(propeller)}`, host, property });
}

function whole(value: Value<'length'>): NewValue {
  return amount(inUnit('length', Math.round(numberIn(value, 'mm')), 'mm'));
}
