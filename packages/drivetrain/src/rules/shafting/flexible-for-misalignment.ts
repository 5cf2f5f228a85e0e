import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

/** A flexible coupling behind the gear. */
const WITH_FLEXIBLE = changed(
  SINGLE_LINE,
  ['  layout down-angle 8 deg\n', '  layout down-angle 8 deg\n  thrust at most 50 kN\n'],
  [
    'shaft material high-strength-stainless {',
    `coupling Flex-6 "flexible shaft coupling" {
  source "Flex 6 sheet" dated 2024-09-01
  kind flexible
  torque at most 3600 N.m
  passes thrust yes
}

shaft material high-strength-stainless {`,
  ],
  [
    '      shaft { material',
    '      coupling Flex-6 { chosen for torsional vibration }\n      shaft { material',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/flexible-for-misalignment',
  title: 'A flexible coupling is not used to cover misalignment',
  mistakes: ['L13'],
  severity: 'warning',
  criterion: 'purpose that a flexible coupling is chosen for',
  source: PRACTICE,
  manual:
    'A flexible coupling is soft in torsion, moves firing criticals below idle and absorbs noise. Makers require ' +
    'the same alignment with it as without, 0.003 in at the faces: out of line it heats, wears, and loads gear ' +
    'bearing and seal on every turn. Realign engine and shaft; where the lines do not meet, use a down-angle or ' +
    'offset gear, or joints with a thrust bearing.',
  caution: `${DEFER} The maker states what misalignment a coupling accepts; that allowance is for movement under way.`,
  noFigure: 'no number is compared',
  noCure: 'Alignment is the cure; the spec has nothing to change.',
  examples: examples(() => ({
    failing: changed(WITH_FLEXIBLE, ['chosen for torsional vibration', 'chosen for misalignment']),
    passing: WITH_FLEXIBLE,
    cannotTell: changed(WITH_FLEXIBLE, ['chosen for torsional vibration', 'chosen for unknown']),
  })),
};

export const flexibleForMisalignment: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.couplings, one =>
    one.chosenFor && one.kind?.value !== 'joint' ? judge(context, one) : undefined,
  );
}

function judge({ line }: LineContext, coupling: Coupling): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(coupling);
  const place = coupling.chosenFor!.origin;
  const purpose = needs.fact(coupling.chosenFor, {
    what: `what ${name} is chosen for`,
    host: coupling.origin,
    property: 'chosen for',
  });
  if (!purpose) return waits(say, needs, place, `${line.name}: whether ${name} is used for its purpose`);
  if (purpose !== 'misalignment')
    return say.holds({ place, message: `${line.name}: ${name} is fitted for ${purpose}.` });
  return say.fails({
    place,
    message: `${line.name}: ${name} is chosen to cover misalignment, which it cannot do: it needs the alignment of a rigid coupling. Realign, use a down-angle or offset gear, or joints with a thrust bearing.`,
  });
}
