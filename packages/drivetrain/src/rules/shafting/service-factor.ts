import { given, type Value } from '@tailshaft/mechanics';
import { amount } from '@tailshaft/vocabulary';
import { serviceFactor } from '../../analysis/shaft-criteria.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact } from '../../model/fact.js';
import { type Apart, each } from '../../model/reads.js';
import type { ShaftCriterion } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, SHAFT_DIAMETER } from './sources.js';

const CHOSEN = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  criteria { shaft diameter by small-craft formula factor 5.0 "pilot service" }\n\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'shafting/service-factor',
  title: 'The shaft safety factor suits the service of the vessel',
  mistakes: ['L02'],
  severity: 'error',
  criterion:
    'factor chosen for the small-craft shaft formula against the one published for duty and passengers',
  source: SHAFT_DIAMETER,
  manual:
    'The factor in the small-craft formula covers the keyway, shock and fatigue of a service: 3 is published for ' +
    'the average yacht, 5 and more for commercial use, 7.5 for inspected passenger vessels, 8 for heavy ' +
    'commercial use and towing. A shaft that passes with a yacht factor proves nothing for a passenger ferry. ' +
    'The factor in the criteria is compared with the published one for the duty and passengers of the vessel. ' +
    'Raise the factor, or correct the duty.',
  caution: `${DEFER} Published sets differ; flag and class may require more, and their figure takes precedence.`,
  limitOf: 'the published factors: one below them is not of that use',
  noFigure: 'the author’s criterion: no part is to be changed',
  examples: examples(() => ({
    failing: changed(CHOSEN, ['factor 5.0', 'factor 3.0']),
    passing: CHOSEN,
    cannotTell: changed(CHOSEN, ['  passengers none', '']),
  })),
};

export const serviceFactorChosen: Rule = { ...INFO, scope: 'vessel', check };

function check(context: Context): Apart<Verdict> {
  const { vessel } = context;
  return each(vessel.criteria?.shaftDiameter ?? [], fact => {
    const factor = fact.value?.formula === 'small-craft' ? fact.value.factor : undefined;
    return factor && judge(context, fact, factor);
  });
}

function judge({ vessel }: Context, fact: Fact<ShaftCriterion>, factor: Value<'number'>): Verdict {
  const say = sayFor(INFO, vessel.name);
  const needs = new Needs();
  const published = serviceFactor(vessel, needs);
  if (!published) {
    return waits(say, needs, fact.origin, `Whether factor ${factor.si} suits the service of ${vessel.name}`);
  }
  const carries = vessel.duty?.passengers?.value === 'carried';
  const service = carries ? 'carrying passengers' : `${vessel.duty?.class?.value} duty`;
  const known = given('factor published for the service', 'SF', 'number', published.low, {
    assumed: `${published.use} (${published.source.title})`,
  });
  const numbers = `factor ${factor.written ?? factor.si} is chosen for the shaft; ${published.low} is published for ${service} (${published.use})`;
  return say.compare({
    place: factor.origin ?? fact.origin,
    capacity: factor,
    demand: known,
    message: `${vessel.name}: ${numbers}.`,
    failMessage: `${vessel.name}: ${numbers}. A lower factor does not cover this service: raise the factor, or correct duty and passengers.`,
    related: vessel.duty ? [{ at: vessel.duty.origin, message: `the service: ${service}` }] : [],
    routes: () =>
      factor.origin
        ? [
            {
              title: `Judge with factor ${published.low}, published for ${published.use}`,
              edits: [
                {
                  do: 'replace',
                  at: factor.origin,
                  value: amount({ dimension: 'number', si: published.low }),
                },
              ],
            },
          ]
        : [],
  });
}
