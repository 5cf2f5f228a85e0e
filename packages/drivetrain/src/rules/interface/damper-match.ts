import { inputCouplings, isDamper } from '../../analysis/couplings.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Engine } from '../../model/engine.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { couplingRoutes } from '../coupling-routes.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_DAMPER } from './damper-specs.js';
import { DEFER, PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'interface/damper-match',
  title: 'The damper suits the cylinders of the engine',
  mistakes: ['I03'],
  severity: 'error',
  criterion: 'cylinders that the damper is offered for, and its stiffness stated',
  source: PART_SHEET,
  manual:
    'Fewer cylinders give larger pulses: a damper that lasts behind six breaks behind three. Its stiffness sets ' +
    'the torsional criticals, and one that is too stiff lets the gear rattle at idle until splines wear. Its ' +
    'torque is judged with that of all couplings; here the number of cylinders is compared with what its maker ' +
    'offers it for, and its stiffness must be stated. Order the damper that engine and gear maker name together.',
  caution: `${DEFER} Only a torsional calculation proves a damper.`,
  noFigure: 'a number of cylinders: another damper is another part',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_DAMPER, ['cylinders at least 4', 'cylinders at least 8']),
    passing: WITH_DAMPER,
    cannotTell: changed(WITH_DAMPER, ['  torsional stiffness 8200 N.m/rad\n', '']),
  })),
};

export const damperMatch: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { engine } = context.line;
  if (!engine) return undefined;
  return each(inputCouplings(context.line), one => (isDamper(one) ? judge(context, engine, one) : undefined));
}

function judge(context: LineContext, engine: Engine, damper: Coupling): Verdict {
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(damper);
  const place = damper.nameOrigin ?? damper.origin;
  const least = needs.fact(damper.leastCylinders, {
    what: `fewest cylinders that ${name} is offered for`,
    host: home(damper),
    property: 'cylinders at least',
  });
  const cylinders = needs.fact(engine.cylinders, {
    what: `cylinders of ${nameOf(engine)}`,
    host: home(engine),
    property: 'cylinders',
  });
  needs.fact(damper.stiffness, {
    what: `torsional stiffness of ${name}`,
    host: home(damper),
    property: 'torsional stiffness',
  });
  if (least && cylinders && cylinders.si < least.si) {
    return say.fails({
      place,
      message: `${line.name}: ${name} is offered for ${least.si} cylinders and more, ${nameOf(engine)} has ${cylinders.si}: its pulses are larger. Order the damper that both makers name for this engine.`,
      related: [{ at: engine.cylinders!.origin, message: `cylinders of ${nameOf(engine)}` }],
      routes: () => couplingRoutes(context, damper),
    });
  }
  if (needs.any) return waits(say, needs, place, `${line.name}: whether ${name} is made for this engine`);
  return say.holds({
    place,
    message: `${line.name}: ${name} is offered for engines of ${least!.si} cylinders and more; its stiffness is ${damper.stiffness!.written}.`,
  });
}
