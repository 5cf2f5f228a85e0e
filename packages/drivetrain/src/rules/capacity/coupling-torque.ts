import { percent } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { couplingRoutes } from '../coupling-routes.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { atLeast, greatestTorqueAt } from './greatest-torque.js';
import { DEFER, PART_SHEET } from './sources.js';

const WITH_COUPLING = changed(
  SINGLE_LINE,
  [
    'shaft material high-strength',
    `coupling Flex-4 "flexible shaft coupling" {
  source "Flex 4 sheet" dated 2024-09-01
  kind flexible
  torque at most 3600 N.m
}

coupling Flex-6 "larger flexible shaft coupling" {
  source "Flex 6 sheet" dated 2024-09-01
  kind flexible
  torque at most 4100 N.m
}

shaft material high-strength`,
  ],
  ['      shaft { material', '      coupling Flex-4\n      shaft { material'],
);

const INFO: RuleInfo = {
  id: 'capacity/coupling-torque',
  title: 'Torque is within the coupling rating',
  mistakes: ['L12'],
  severity: 'error',
  criterion: 'greatest torque at the coupling against the rating on its sheet',
  source: PART_SHEET,
  manual:
    'A damper between engine and gear carries engine torque; a flexible coupling behind the gear carries that ' +
    'torque times the ratio. A coupling that suited the old ratio may be too small for a deeper one. The ' +
    'greatest engine torque is carried to the place of the coupling in the line and compared with its rating. ' +
    'Rigid couplings are judged by their bolts instead.',
  caution: `${DEFER} Shock and torsional vibration come on top: the sheet states the factor for them.`,
  limitOf: 'the maker’s rating',
  severalMovers: 'together',
  oneInput: true,
  examples: examples(() => ({
    failing: changed(WITH_COUPLING, ['torque at most 3600 N.m', 'torque at most 950 N.m']),
    passing: WITH_COUPLING,
    cannotTell: changed(WITH_COUPLING, ['  torque at most 3600 N.m\n', '']),
  })),
};

export const couplingTorque: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.couplings, one =>
    one.torque !== undefined || one.kind?.value !== 'rigid' ? judge(context, one) : undefined,
  );
}

function judge(context: LineContext, coupling: Coupling): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const name = nameOf(coupling);
  const place = coupling.nameOrigin ?? coupling.origin;
  const needs = new Needs();
  const allowed = needs.fact(coupling.torque, {
    what: `torque rating of ${name}`,
    host: home(coupling),
    property: 'torque at most',
  });
  const torque = greatestTorqueAt(analysis, coupling, needs);
  const what = `${line.name}: whether torque is within the rating of ${name}`;
  if (!allowed || !torque) {
    const known = torque
      ? `${atLeast(analysis)}${analysis.tell(torque)} pass there`
      : allowedWords(context, coupling);
    return waits(say, needs, place, what, { ...(known ? { known } : {}), workings: torque ? [torque] : [] });
  }
  const [behind, gear] = [line.chain.indexOf(coupling), line.gear ? line.chain.indexOf(line.gear) : -1];
  const where = gear >= 0 && behind > gear ? 'behind the gear' : 'before the gear';
  return judgeKnown(say, needs, {
    place,
    capacity: allowed,
    demand: torque,
    workings: [torque],
    what,
    numbers: `${name}, ${gear < 0 ? 'behind the engine' : where}, transmits ${atLeast(analysis)}${analysis.tell(torque)}; it is rated for ${analysis.tell(allowed)}`,
    remedy: `: ${percent(torque.si / allowed.si - 1)} too much. Fit a coupling rated for it.`,
    related: [{ at: coupling.torque!.origin, message: 'its torque rating' }],
    routes: () => couplingRoutes(context, coupling),
  });
}

function allowedWords({ analysis }: LineContext, { torque }: Coupling): string | undefined {
  return torque?.value && `it is rated for ${analysis.tell(torque.value)}`;
}
