import type { Value } from '@tailshaft/mechanics';
import { amount, inUnit, numberIn, spell } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Motor } from '../../model/engine.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, apart, isSaid } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { HYBRID } from '../hybrid-specs.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/mode-power',
  title: 'Motor power in each mode is within its continuous power',
  mistakes: [],
  severity: 'error',
  criterion: 'power that the motor gives or takes in the mode against its continuous power',
  source: { title: 'the continuous power that the maker of the motor states', confidence: 'derived' },
  manual:
    'A mode may state how much power the motor gives beside the engine, and how much it takes when charging. ' +
    'Neither may exceed its continuous power; peak power is for seconds. Where the mode limits the motor ' +
    'below its own power, the motor control must enforce that limit: shaft, gear and propeller are judged ' +
    'with it.',
  caution: `${DEFER} Battery, cables and control may allow less.`,
  limitOf: 'the maker’s rating',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(HYBRID, ['motor power at most 30 kW', 'motor power at most 60 kW']),
    passing: HYBRID,
    cannotTell: changed(HYBRID, ['motor power at most 30 kW', 'motor power at most unknown']),
  })),
};

export const modePower: Rule = { ...INFO, scope: 'line', check };

function check({ line, analysis }: LineContext): Apart<Verdict> | undefined {
  const { mode } = line;
  const motor = line.chain.find(one => one.role === 'motor') as Motor | undefined;
  if (!mode || !motor) return undefined;
  const say = sayFor(INFO, line.path);
  const judge = (asked: Quantity<'power'> | undefined, property: string, words: string): Verdict => {
    const needs = new Needs();
    const demand = needs.fact(asked, {
      what: `${property} of mode ${mode.name}`,
      host: mode.origin,
      property,
    });
    const power = needs.fact(motor.power, {
      what: `continuous power of ${nameOf(motor)}`,
      host: home(motor),
      property: 'power',
    });
    const place = asked?.origin ?? mode.origin;
    if (!demand || !power)
      return waits(
        say,
        needs,
        place,
        `${line.name}: whether ${nameOf(motor)} can do what mode ${mode.name} takes`,
      );
    const both = `${line.name}: ${nameOf(motor)} ${words} ${analysis.tell(demand)}`;
    return say.compare({
      place,
      capacity: power.y,
      demand,
      message: `${both} of its ${analysis.tell(power.y)}.`,
      failMessage: `${both}, and its continuous power is ${analysis.tell(power.y)}. Limit it in this mode, or choose a larger motor.`,
      routes: () => [within(asked!, power.y, `${nameOf(motor)} ${words} in mode ${mode.name}`)],
    });
  };
  return apart(
    () =>
      isSaid(() => mode.motorPower) ? judge(mode.motorPower, 'motor power at most', 'gives') : undefined,
    () =>
      isSaid(() => mode.generatorLoad) ? judge(mode.generatorLoad, 'generator load', 'takes') : undefined,
  );
}

/** What the mode asks set to what the motor stands, in the author's unit and no more than it. */
function within(asked: Quantity<'power'>, most: Value<'power'>, what: string): Route {
  const unit = asked.value?.unit ?? 'kW';
  const value = amount(inUnit('power', Math.floor(numberIn(most, unit) * 10) / 10, unit));
  return {
    title: `Limit what ${what} to ${spell(value)}, its continuous power; the motor control must enforce it`,
    edits: [{ do: 'replace', at: asked.origin, value }],
  };
}
