import { given } from '@tailshaft/mechanics';
import { amount, spell } from '@tailshaft/vocabulary';
import { LineAnalysis } from '../../analysis/line.js';
import { type BladeAreaCheck, bladeAreaBy } from '../../analysis/propulsion/blade-area.js';
import type { Propulsion } from '../../analysis/propulsion/propulsion.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import type { BladeAreaMethod } from '../../model/propeller.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes, writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { demandBand, isInBand } from './demand-band.js';
import { PROPELLED } from './example-hull.js';
import { demandWords } from './run-words.js';
import { DEFER_PROPELLER } from './sources.js';

const CHOSEN = changed(
  PROPELLED,
  ['  arrangement proposed {', '  criteria { blade area by Burrill 10 % }\n  arrangement proposed {'],
  ['area ratio 0.72  cup none', 'area ratio 0.9  cup none  shaft depth 0.7 m'],
);

const INFO: RuleInfo = {
  id: 'propeller/blade-area',
  title: 'Blade area meets the chosen criterion',
  mistakes: ['P05'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'area ratio of the propeller against the least one by the named criterion (Keller; Burrill at 2.5, 5 or 10 % ' +
    'back cavitation; flat-face blades at 10 %), or its blade loading against the handbook limit, at full ' +
    'throttle',
  source: {
    author: 'Burrill and Emerson; Keller',
    title: 'propeller cavitation criteria, as in Carlton, Marine Propellers and Propulsion',
    clause: 'limit lines and additions from memory',
    confidence: 'from memory',
  },
  manual:
    'Too much thrust on too little blade area causes cavitation: erosion, noise, vibration, and finally loss of ' +
    'thrust. The criteria differ on how much area is enough, so the spec must name one: "blade area by Burrill 5 ' +
    '%". Merchant practice accepts 5 % of back cavitation, fast small craft 10 %. Thrust comes from the speed ' +
    'method, pressure from the shaft depth. Choose more area, more or larger blades, or a slower and larger ' +
    'propeller.',
  caution:
    `${DEFER_PROPELLER} The criteria disagree among themselves; none of them takes account of the wake of ` +
    'this hull.',
  standsWithout: ['peak torque', 'high idle'],
  examples: examples(() => ({
    failing: changed(CHOSEN, ['area ratio 0.9', 'area ratio 0.7']),
    passing: CHOSEN,
    cannotTell: changed(CHOSEN, ['  shaft depth 0.7 m', '']),
  })),
};

export const bladeArea: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { propeller } = line;
  const chosen = vessel.criteria?.bladeAreaBy;
  if (!propeller || !chosen || !(line.engine || line.motor)) return undefined;
  if (propeller.kind?.value === 'controllable pitch') return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const method = needs.fact(chosen, {
    what: 'the criterion that judges the blade area',
    host: vessel.criteria!.origin,
    property: 'blade area by',
  });
  const depth = needs.fact(propeller.shaftDepth, {
    what: `shaft depth of ${nameOf(propeller)}`,
    host: propeller.origin,
    property: 'shaft depth',
  });
  const result = analysis.propulsion;
  if (result) needs.take({ value: result.value, missing: result.missing });
  else {
    const host = vessel.hull?.origin ?? vessel.origin;
    needs.miss({
      what: 'resistance of the hull at two speeds or more, for the thrust',
      host,
      property: vessel.hull ? 'resistance' : 'hull',
    });
  }
  const propulsion = result?.value;
  const fact = propeller.areaRatio ?? propeller.developedAreaRatio;
  const place = (fact ?? propeller).origin;
  if (!method || !depth || !propulsion) {
    const why = result?.refusal ? ` The speed method does not apply here: ${result.refusal}` : '';
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: `${cannotTellWords(`${line.name}: whether the blade area is sufficient`, needs.missing)}${why}`,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const found = bladeAreaBy(method, propulsion, depth, vessel);
  if (found.outside.length > 0) {
    needs.miss(
      {
        what: `a blade-area criterion that covers this propeller: ${method} does not apply here`,
        host: vessel.criteria!.origin,
        property: 'blade area by',
      },
      chosen.origin,
    );
    return say.cannotTell(needs, {
      place: chosen.origin,
      message: `${line.name}: ${method} does not apply here: ${found.outside.join('; ')}. Another criterion, or the propeller maker's own, must judge the blade area.`,
    });
  }
  return judge(context, method, propulsion, found);
}

function judge(
  context: LineContext,
  method: BladeAreaMethod,
  propulsion: Propulsion,
  { capacity, demand, needed, thrust }: BladeAreaCheck,
): Verdict {
  const { line, vessel, analysis } = context;
  const propeller = line.propeller!;
  const fact = (propeller.areaRatio ?? propeller.developedAreaRatio)!;
  const numbers = needed
    ? `by ${method} the blade area ratio needs ${needed.si.toFixed(2)}; the propeller has ${capacity.si.toFixed(2)}`
    : `By the handbook, blade loading may be ${analysis.tell(capacity, 3)}; it is ${analysis.tell(demand, 3)}`;
  const at = `${line.name}: ${numbers}, at a thrust of ${analysis.tell(thrust, 3)}.`;
  return sayFor(INFO, line.path).compare({
    place: fact.origin,
    criterion: `blade area by ${method}, chosen in the criteria`,
    capacity,
    demand,
    workings: [capacity, demand, thrust],
    related: [{ at: vessel.criteria!.bladeAreaBy!.origin, message: 'the criterion chosen' }],
    message: at,
    failMessage: `${at} Choose more blade area, more or larger blades, or a slower and larger propeller.`,
    routes: () =>
      needed && propeller.areaRatio && capacity.si < needed.si
        ? moreArea(context, method, propulsion, needed.si)
        : [],
  });
}

/** More area on the same diameter: what it asks for is worked out again, since it changes the load as well. */
function moreArea(context: LineContext, method: BladeAreaMethod, now: Propulsion, needed: number): Route[] {
  const { line, vessel } = context;
  const band = demandBand(vessel);
  const first = Math.ceil(needed * 100 + 1);
  for (let step = 0; step <= 6; step += 1) {
    if (first + step > 105) return [];
    const ratio = (first + step) / 100;
    const value = amount({ dimension: 'ratio', si: ratio, decimals: 2 });
    const analysis = new LineAnalysis(withArea(line, ratio, spell(value)), vessel);
    const then = analysis.propulsion?.value;
    if (!then || then.curve.series.name !== now.curve.series.name) continue;
    const found = bladeAreaBy(method, then, line.propeller!.shaftDepth!.value!, vessel);
    const fits = isInBand(then, band);
    if (found.outside.length > 0 || found.capacity.si < found.demand.si || !fits) continue;
    return [
      {
        title: `Take blades of area ratio ${spell(value)}: ${method} needs ${found.demand.si.toFixed(2)}, and the propeller absorbs ${demandWords(then)}`,
        edits: [writeInPlace(line.propeller!, 'area ratio', value)],
      },
    ];
  }
  return [];
}

function withArea(line: ShaftLine, ratio: number, written: string): ShaftLine {
  const { origin } = line.propeller!;
  const areaRatio = { value: given('area ratio', 'i', 'ratio', ratio, { written }), written, origin };
  const propeller = { ...line.propeller!, areaRatio };
  return { ...line, propeller, chain: line.chain.map(part => (part === line.propeller ? propeller : part)) };
}
