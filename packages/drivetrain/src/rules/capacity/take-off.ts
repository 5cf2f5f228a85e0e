import { outputPower, percent, powerLessTakeOff, renamed } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import { gearEfficiency } from '../../analysis/efficiencies.js';
import { takeOffState } from '../../analysis/propeller-power.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes, writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const WITH_TAKE_OFF = changed(SINGLE_LINE, [
  'engine Kittiwake-9 at medium { flywheel aft }',
  'engine Kittiwake-9 at medium { flywheel aft  power take-off 12 kW  take-off on }',
]);

const INFO: RuleInfo = {
  id: 'capacity/take-off',
  title: 'The spec states whether the power take-off is running',
  mistakes: ['T12'],
  severity: 'warning',
  criterion:
    'a power take-off is declared with "take-off on" or "take-off off" for propeller matching and trial',
  source: { title: 'balance of power at the crankshaft', confidence: 'derived' },
  manual:
    'A pump, generator or winch driven by the propulsion engine takes its power before the gear. With it running ' +
    'the propeller gets less, so a propeller matched with it off overloads the engine with it on, and a trial ' +
    'must state which applied. Write "take-off on" or "take-off off". For propeller matching its power is ' +
    'deducted when it is on; for the parts that carry torque it is never deducted, because it may be off, and ' +
    'for the engine it is always part of the load.',
  caution: 'A pump clutched in at idle may stall a small engine; that is not computed here.',
  limitOf: 'what is asked is whether it runs',
  noFigure: 'no number is compared',
  curesRecord: true,
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_TAKE_OFF, ['  take-off on }', ' }']),
    passing: WITH_TAKE_OFF,
    cannotTell: changed(WITH_TAKE_OFF, ['power take-off 12 kW', 'power take-off unknown']),
  })),
};

export const takeOff: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { engine } = line;
  if (!engine?.takeOff) return undefined;
  const say = sayFor(INFO, line.path);
  const place = engine.takeOff.origin;
  const needs = new Needs();
  const wanted = {
    what: `power that the take-off of ${nameOf(engine)} takes`,
    host: engine.origin,
    property: 'power take-off',
  };
  const power = needs.fact(engine.takeOff, wanted);
  const state = takeOffState(line, engine);
  if (state && state.value === undefined) {
    const what = `whether the take-off of ${nameOf(engine)} counts as running`;
    needs.miss({ what, host: engine.origin, property: 'take-off' }, state.origin);
  }
  if (needs.any || !power) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(`${line.name}: what power is left for the propeller`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const rated = analysis.rated.value?.power;
  const left = rated && powerLessTakeOff({ power: rated, takeOff: renamed(power, 'power take-off', 'P_t') });
  const shaft =
    left &&
    (line.gear ? outputPower({ inputPower: left, efficiency: gearEfficiency(line.gear, vessel) }) : left);
  const taken = `the take-off takes ${analysis.tell(power)}${rated ? ` of ${analysis.tell(rated)} (${percent(power.si / rated.si)})` : ''}`;
  if (left && !(left.si > 0)) {
    return say.fails({
      place,
      severity: 'error',
      message: `${line.name}: ${taken}: nothing is left for the propeller. One of the two figures is wrong.`,
      workings: [left],
    });
  }
  const remains = shaft
    ? ` With it running, ${analysis.tell(shaft)} is delivered to the propeller shaft.`
    : '';
  if (!state) {
    return say.fails({
      place,
      message: `${line.name}: ${taken} at rated speed, and the spec does not say whether propeller matching and trial count it as running.${remains}`,
      workings: shaft ? [shaft] : [],
      routes: () => [
        {
          title: `Count it as running: ${shaft ? `the propeller gets ${analysis.tell(shaft)}` : 'it is deducted from the propeller'}`,
          edits: [writeInPlace(engine, 'take-off', newWord('on'))],
        },
        {
          title: 'Count it as off: the propeller gets all the power, and the trial must be run with it off',
          edits: [writeInPlace(engine, 'take-off', newWord('off'))],
        },
      ],
    });
  }
  return say.holds({
    place,
    message: `${line.name}: ${taken}; propeller and trial count it as ${state.value}.${state.value === 'on' ? remains : ''}`,
    workings: shaft ? [shaft] : [],
  });
}
