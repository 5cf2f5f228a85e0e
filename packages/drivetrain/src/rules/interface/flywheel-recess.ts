import { flywheelSize } from '@tailshaft/mechanics';
import { inputCouplings } from '../../analysis/couplings.js';
import type { LineContext } from '../../judge/context.js';
import { asMissing, Needs } from '../../judge/needs.js';
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
import { DEFER, FLYWHEELS } from './sources.js';

const INFO: RuleInfo = {
  id: 'interface/flywheel-recess',
  title: 'The damper sits flat on the flywheel',
  mistakes: ['I02'],
  severity: 'error',
  criterion:
    'flywheel size of damper and engine, and rivet ring of the damper against the recess of the flywheel',
  source: FLYWHEELS,
  manual:
    'A damper is bolted to the flywheel on a standard pilot and bolt circle, the flywheel size, and its hub and ' +
    'rivets enter the recess. A damper of the right size whose rivet ring is wider than the recess does not sit ' +
    'flat: tightened, it warps and breaks. State "flywheel size" of both, the "flywheel recess diameter" of the ' +
    'engine and the "rivet ring diameter" of the damper. Order a damper for this flywheel; machine the flywheel ' +
    'only with the maker’s consent.',
  caution: `${DEFER} Recess depth and hub reach are measured at fitting.`,
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_DAMPER, ['rivet ring diameter 300 mm', 'rivet ring diameter 322 mm']),
    passing: WITH_DAMPER,
    cannotTell: changed(WITH_DAMPER, ['  flywheel recess diameter 314 mm\n', '']),
  })),
};

export const flywheelRecess: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { engine } = context.line;
  if (!engine) return undefined;
  // What says which flywheel it is made for stands on one, whatever its kind.
  return each(inputCouplings(context.line), one =>
    one.flywheelSize || one.rivetRing ? judge(context, engine, one) : undefined,
  );
}

function judge(context: LineContext, engine: Engine, damper: Coupling): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const [name, of] = [nameOf(damper), nameOf(engine)];
  const place = damper.nameOrigin ?? damper.origin;
  const wanted = (what: string, part: Engine | Coupling, property: string) => ({
    what: `${what} of ${nameOf(part)}`,
    host: home(part),
    property,
  });
  const size = needs.fact(damper.flywheelSize, wanted('flywheel size', damper, 'flywheel size'));
  const flywheel = needs.fact(engine.flywheelSize, wanted('flywheel size', engine, 'flywheel size'));
  const ring = needs.fact(damper.rivetRing, wanted('rivet ring diameter', damper, 'rivet ring diameter'));
  const recess = needs.fact(
    engine.recessDiameter,
    wanted('flywheel recess diameter', engine, 'flywheel recess diameter'),
  );
  const related = [
    ...(engine.flywheelSize ? [{ at: engine.flywheelSize.origin, message: `flywheel of ${of}` }] : []),
    ...(damper.rivetRing ? [{ at: damper.rivetRing.origin, message: `rivet ring of ${name}` }] : []),
  ];
  if (size !== undefined && flywheel !== undefined && !isSameSize(size, flywheel)) {
    return say.fails({
      place,
      related,
      message: `${line.name}: ${name} is made for flywheel ${size}, ${of} has ${flywheel}. Order the damper for this flywheel.`,
      // Another damper has another rivet ring.
      open: [
        ...needs.missing,
        ...(damper.rivetRing
          ? [asMissing(wanted('rivet ring diameter', damper, 'rivet ring diameter'))]
          : []),
      ],
      routes: () => couplingRoutes(context, damper),
    });
  }
  if (ring && recess && ring.si >= recess.si) {
    return say.fails({
      place,
      related,
      // One of the very size of the other does not go in.
      balance: { more: recess, less: ring, wanted: 1e-6 },
      message: `${line.name}: the rivet ring of ${name} is ${analysis.tell(ring)}, the recess of the flywheel ${analysis.tell(recess)}: the damper does not sit flat. Order one that fits; machine the flywheel only with the maker’s consent.`,
      routes: () => couplingRoutes(context, damper),
    });
  }
  if (needs.any)
    return waits(say, needs, place, `${line.name}: whether ${name} sits flat on the flywheel`, { related });
  return say.holds({
    place,
    related,
    message: `${line.name}: ${name} and ${of} are both size ${size}; its rivet ring of ${analysis.tell(ring!)} fits the recess of ${analysis.tell(recess!)}.`,
  });
}

/** By the table of sizes, so that 11.5 and 290 are one; by name where the table has none. */
function isSameSize(one: string, other: string): boolean {
  const [a, b] = [flywheelSize(one), flywheelSize(other)];
  return a && b ? a === b : one === other;
}
