import { percent, ratioForSpeed, type Value } from '@tailshaft/mechanics';
import { allowing } from '../../analysis/allowing.js';
import { ratioWords } from '../../analysis/telling.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { findOffered } from './offered-ratios.js';
import { type RetainedPropeller, retainedPropeller, shareOf, shareWords } from './retained-propeller.js';
import { PROPELLER_LAW } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/retained-propeller-overload',
  title: 'A retained propeller absorbs no more than the engine gives',
  mistakes: ['T13'],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion:
    'power that the retained propeller absorbs at the new rated shaft speed, scaled by the propeller law, at ' +
    'most 110 % of the power delivered to it',
  source: PROPELLER_LAW,
  manual:
    'A propeller absorbs power roughly as the cube of its speed. Behind a faster shaft, or behind less ' +
    'power, a retained propeller holds the engine below rated speed: the engine is overloaded across the top ' +
    'of its range, smokes and wears, and no gauge shows it. Without the old reduction the same propeller ' +
    'demands many times the power. The power it absorbed before is scaled to the new shaft speed; up to 10 % ' +
    'over, about 3 % of speed, is left for the trial to show. Fit a deeper ratio or another propeller.',
  caution:
    'A scaling: it assumes that the old propeller suited the old engine at the same vessel speed. A trial of the ' +
    'old installation, or a propeller calculation, is better. "assume propeller exponent" changes the exponent.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(
      REPOWER,
      ['power 300 kW at 2300 rpm', 'power 280 kW at 2100 rpm'],
      ['high idle 2500 rpm', 'high idle 2310 rpm'],
    ),
    passing: REPOWER,
    cannotTell: changed(REPOWER, ['    power 300 kW at 2300 rpm', '    power unknown']),
  })),
};

/** About 3 % of speed; what a trial can still settle. */
const MOST = 1.1;

/** What the demand is held against, so that the margin says what the verdict says. */
function leftToTrial(available: Value<'power'>): Value<'power'> {
  return allowing(
    available,
    MOST - 1,
    'power delivered to it, with 10 % left to a trial',
    'about 3 % of speed, which a trial can still settle',
  );
}

export const retainedPropellerOverload: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const found = retainedPropeller(context, 'slowest');
  if (!found) return undefined;
  const say = sayFor(INFO, line.path);
  const place = line.propeller!.origin;
  const { needs, result } = found;
  if (!result) {
    return say.cannotTell(needs, {
      place,
      message: cannotTellWords(`${line.name}: whether the retained propeller suits`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const { asked, available, leastAvailable, balance, speedBefore, speedNow, of, where, then, open } = result;
  const { least, most } = shareOf(result);
  const turns = `at ${analysis.tell(speedNow)} of ${of} (${analysis.tell(speedBefore)} ${then})`;
  if (most !== undefined && most <= MOST) {
    const demand = asked.high!;
    return say.holds({
      place,
      capacity: leftToTrial(leastAvailable),
      demand,
      workings: [demand, leastAvailable],
      message: `${line.name}: the retained propeller absorbs ${least === undefined ? 'at most' : 'about'} ${percent(most)} of the ${analysis.tell(leastAvailable)} delivered to it ${turns}.`,
    });
  }
  const share = least;
  if (share === undefined || share <= MOST) {
    return say.cannotTell(open, {
      place,
      workings: [...(asked.low ? [asked.low] : []), ...(asked.high ? [asked.high] : []), available],
      message:
        `${line.name}: ${where} the retained propeller absorbs ${shareWords(result)} of the ${analysis.tell(available)} delivered to it, ${turns}. ` +
        cannotTellWords(
          `Up to ${percent(MOST)} is left to a trial; whether it stays under that`,
          open.missing,
        ),
    });
  }
  const demand = asked.low!;
  const said = { place, capacity: leftToTrial(available), demand, workings: [demand, available, balance!] };
  const keeps = ratioKept(context, result);
  const times =
    share >= 2 ? `about ${share.toFixed(1)} times the power` : `about ${percent(share)} of the power`;
  return say.fails({
    ...said,
    workings: [...said.workings, ...(keeps ? [keeps] : [])],
    message:
      `${line.name}: ${where} the retained propeller would absorb ${times} delivered to it: ${analysis.tell(demand)} ` +
      `against ${analysis.tell(available)}, ${turns}. The ${of.split(' ')[0]} would not exceed about ${analysis.tell(balance!)}, with the ` +
      `${line.engine ? 'engine overloaded' : 'motor at the limit of its torque'}. Fit a deeper ratio${keeps ? ` (${ratioWords(keeps.si, 2)} keeps the old shaft speed)` : ''} or another propeller.`,
    related: [
      {
        at: line.engine?.origin ?? line.origin,
        message: `${analysis.tell(available)} delivered to the propeller`,
      },
    ],
    routes: () => routes(context),
  });
}

/** The ratio at which the shaft turns as it did before; none where it is the engines that are compared. */
function ratioKept(
  { analysis }: LineContext,
  { speedBefore, of }: RetainedPropeller,
): Value<'ratio'> | undefined {
  const engineSpeed = analysis.rated.value?.speed;
  return engineSpeed && of === 'shaft speed'
    ? ratioForSpeed({ engineSpeed, shaftSpeed: speedBefore })
    : undefined;
}

function routes(context: LineContext) {
  const { line } = context;
  return findOffered(context, other => {
    const result = retainedPropeller(context, 'slowest', other)?.result;
    const { least, most } = result ? shareOf(result) : {};
    return least !== undefined && most !== undefined && most <= MOST && least >= 0.9;
  }).map(({ ratio, gear, change, other }) => ({
    title: `Use ${ratio}: ${change}, and the propeller absorbs ${shareWords(retainedPropeller(context, 'slowest', other)!.result!)} of the power`,
    edits: gearEdits(line.gear!, gear),
  }));
}
