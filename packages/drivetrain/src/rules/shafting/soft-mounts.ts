import { outputCouplings } from '../../analysis/couplings.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

/** Soft mounts, with a seal that takes their movement. */
export const WITH_MOUNTS = changed(
  SINGLE_LINE,
  [
    'engine Kittiwake-9 at medium { flywheel aft }',
    'engine Kittiwake-9 at medium {\n        flywheel aft\n        mounts { kind soft  deflection 3 mm  thrust at most 40 kN  torque at most 3200 N.m }\n      }',
  ],
  [
    'diameter 65 mm [drawing] }',
    'diameter 65 mm [drawing]  seal face seal  seal water from own engine  seal movement at most 4 mm }',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/soft-mounts',
  title: 'Movement of soft mounts is taken up',
  mistakes: ['L20'],
  severity: 'warning',
  criterion: 'with soft mounts, a flexible element behind the gear, or a seal that accepts the movement',
  source: PRACTICE,
  manual:
    'Soft mounts let engine and gear move some millimetres at idle and on a shift. A rigid coupling passes that ' +
    'movement to shaft and seal: a seal bolted to a rigid tube tears or runs hot, and a first bearing near the ' +
    'gear is hammered. Fit a flexible coupling, stiffer mounts, or a seal whose maker allows the movement; state ' +
    '"deflection" of the mounts and "seal movement at most".',
  caution: `${DEFER} The shaft also needs free length, commonly 12 to 20 diameters, between gear and first bearing.`,
  limitOf: 'the makers’ limits',
  noCure: 'A part that takes the movement must be chosen.',
  examples: examples(() => ({
    failing: changed(WITH_MOUNTS, ['seal movement at most 4 mm', 'seal movement at most 2 mm']),
    passing: WITH_MOUNTS,
    cannotTell: changed(WITH_MOUNTS, ['deflection 3 mm  ', '']),
  })),
};

export const softMounts: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const prime = line.engine ?? line.motor;
  const mounts = prime?.mounts;
  const shaft = line.shafts.at(-1);
  if (!mounts || !shaft) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const place = mounts.kind?.origin ?? mounts.origin;
  const what = `${line.name}: whether something takes the movement of the mounts`;
  const kind = needs.fact(mounts.kind, {
    what: `kind of the mounts of ${nameOf(prime)}`,
    host: mounts.origin,
    property: 'kind',
  });
  if (!kind) return waits(say, needs, place, what);
  if (kind === 'rigid')
    return say.holds({
      place,
      message: `${line.name}: the mounts are rigid, so there is no movement to take up.`,
    });
  const flexible = outputCouplings(line).find(
    one => one.kind?.value === 'flexible' || one.kind?.value === 'joint',
  );
  if (flexible) {
    return say.holds({
      place,
      message: `${line.name}: ${nameOf(flexible)} takes the movement of the soft mounts.`,
    });
  }
  const deflection = needs.fact(mounts.deflection, {
    what: 'deflection of the mounts',
    host: mounts.origin,
    property: 'deflection',
  });
  const movement = needs.fact(shaft.sealMovement, {
    what: 'movement that the seal takes',
    host: shaft.origin,
    property: 'seal movement at most',
  });
  if (!deflection || !movement) return waits(say, needs, place, what);
  const numbers = `soft mounts move ${analysis.tell(deflection)} behind a rigid coupling, the seal takes ${analysis.tell(movement)}`;
  return say.compare({
    place,
    capacity: movement,
    demand: deflection,
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. Fit a flexible coupling, stiffer mounts, or a seal that takes it.`,
    related: [{ at: shaft.sealMovement!.origin, message: 'movement that the seal takes' }],
  });
}
