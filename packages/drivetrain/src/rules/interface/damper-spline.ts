import { inputCouplings } from '../../analysis/couplings.js';
import { boxBefore } from '../../analysis/stages.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
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
  id: 'interface/damper-spline',
  title: 'The damper hub fits the gear input spline',
  mistakes: ['I04'],
  severity: 'error',
  criterion: 'teeth and pitch of the hub against those of the gear input',
  source: PART_SHEET,
  manual:
    'The damper hub slides on the splined gear input. Teeth and pitch must be the same, and with an old gear ' +
    'behind a new engine they often are not: this shows only when the gear is offered up. State "spline teeth" ' +
    'and "spline pitch" of the damper and "input spline teeth" and "input spline pitch" of the gear. Order the ' +
    'damper with the hub for this gear.',
  caution: `${DEFER} Pressure angle and fit count as well: a hub that slides on may still be wrong.`,
  noFigure: 'a spline of a standard list',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_DAMPER, ['  spline teeth 26\n  spline pitch', '  spline teeth 10\n  spline pitch']),
    passing: WITH_DAMPER,
    cannotTell: changed(WITH_DAMPER, ['  input spline pitch 16/32\n', '']),
  })),
};

export const damperSpline: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  const { gear } = line;
  if (!gear) return undefined;
  // One ahead of a box drives that, and not the gear.
  const box = boxBefore(line, gear);
  const drives = (one: Coupling) => !box || line.chain.indexOf(one) > line.chain.indexOf(box);
  return each(inputCouplings(line).filter(drives), one =>
    one.splineTeeth || one.splinePitch ? judge(context, gear, one) : undefined,
  );
}

function judge(context: LineContext, gear: Gear, damper: Coupling): Verdict {
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const [name, of] = [nameOf(damper), nameOf(gear)];
  const place = damper.nameOrigin ?? damper.origin;
  const wanted = (part: Gear | Coupling, property: string) => ({
    what: `${property} of ${nameOf(part)}`,
    host: home(part),
    property,
  });
  const teeth = needs.fact(damper.splineTeeth, wanted(damper, 'spline teeth'));
  const pitch = needs.fact(damper.splinePitch, wanted(damper, 'spline pitch'));
  const gearTeeth = needs.fact(gear.splineTeeth, wanted(gear, 'input spline teeth'));
  const gearPitch = needs.fact(gear.splinePitch, wanted(gear, 'input spline pitch'));
  const wrong = [
    ...(teeth && gearTeeth && teeth.si !== gearTeeth.si ? [`${teeth.si} teeth against ${gearTeeth.si}`] : []),
    ...(pitch && gearPitch && pitch !== gearPitch ? [`pitch ${pitch} against ${gearPitch}`] : []),
  ];
  const related = gear.splineTeeth ? [{ at: gear.splineTeeth.origin, message: `input of ${of}` }] : [];
  if (wrong.length > 0) {
    return say.fails({
      place,
      related,
      message: `${line.name}: the hub of ${name} does not fit the input of ${of}: ${wrong.join(', ')}. Order the damper with the hub of this gear.`,
      routes: () => couplingRoutes(context, damper),
    });
  }
  if (needs.any)
    return waits(say, needs, place, `${line.name}: whether the hub of ${name} fits the input of ${of}`);
  return say.holds({
    place,
    related,
    message: `${line.name}: hub of ${name} and input of ${of} agree: ${teeth!.si} teeth, pitch ${pitch}.`,
  });
}
