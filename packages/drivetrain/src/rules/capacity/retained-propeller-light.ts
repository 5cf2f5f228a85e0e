import { percent } from '@tailshaft/mechanics';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { findOffered } from './offered-ratios.js';
import { retainedPropeller, shareOf, shareWords } from './retained-propeller.js';
import { PROPELLER_LAW } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/retained-propeller-light',
  title: 'A retained propeller absorbs the power of the new engine',
  mistakes: ['T14'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'power that the retained propeller absorbs at the new rated shaft speed, scaled by the propeller law, at ' +
    'least 90 % of the power delivered to it',
  source: PROPELLER_LAW,
  manual:
    'Behind more power or a slower shaft, a retained propeller does not absorb what the engine gives: the engine ' +
    'runs up to its governor below full load and the new power never reaches the water. The power it absorbed ' +
    'before is scaled to the new shaft speed. Fit more pitch or diameter, or a shallower ratio. A few per cent ' +
    'may be an intended allowance for growth and fouling: then accept the finding with that reason.',
  caution:
    'A scaling: it assumes that the old propeller suited the old engine at the same vessel speed; the band of 85 ' +
    'to 90 % is common practice. A propeller calculation or a trial is better.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REPOWER, ['power 300 kW at 2300 rpm', 'power 250 kW at 2300 rpm']),
    passing: REPOWER,
    cannotTell:
      'Everything that this rule needs is asked for by capacity/retained-propeller-overload; until it is there this one is silent.',
  })),
};

const LEAST = 0.9;

export const retainedPropellerLight: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const result = retainedPropeller(context, 'fastest')?.result;
  if (!result) return undefined;
  const say = sayFor(INFO, line.path);
  const place = line.propeller!.origin;
  const { asked, available, speedBefore, speedNow, of, where, then, open } = result;
  const { least, most } = shareOf(result);
  if (least !== undefined && least >= LEAST) {
    return say.holds({
      place,
      workings: [asked.low!, available],
      message: `${line.name}: the retained propeller absorbs about ${percent(Math.min(least, 1))} of the ${analysis.tell(available)} delivered to it.`,
    });
  }
  if (most === undefined || most >= LEAST) {
    return say.cannotTell(open, {
      place,
      workings: [...(asked.low ? [asked.low] : []), ...(asked.high ? [asked.high] : []), available],
      message: cannotTellWords(
        `${line.name}: ${where} the retained propeller absorbs ${shareWords(result)} of the ${analysis.tell(available)} delivered to it; whether it absorbs at least ${percent(LEAST)}`,
        open.missing,
      ),
    });
  }
  const taken = asked.high!;
  return say.fails({
    place,
    over: LEAST / most,
    balance: { more: taken, less: available, wanted: LEAST - 1 },
    workings: [taken, available],
    message:
      `${line.name}: ${where} the retained propeller absorbs about ${percent(most)} of the power delivered to it: ` +
      `${analysis.tell(taken)} of ${analysis.tell(available)}, at ${analysis.tell(speedNow)} of ${of} ` +
      `(${analysis.tell(speedBefore)} ${then}). The rest is never used: more pitch or diameter, or a shallower ratio.`,
    routes: () =>
      findOffered(context, other => {
        const result = retainedPropeller(context, 'fastest', other)?.result;
        const { least, most } = result ? shareOf(result) : {};
        return least !== undefined && most !== undefined && least >= LEAST && most <= 1.1;
      }).map(({ ratio, gear, change, other }) => ({
        title: `Use ${ratio}: ${change}, and the propeller takes ${shareWords(retainedPropeller(context, 'fastest', other)!.result!)} of the power`,
        edits: gearEdits(line.gear!, gear),
      })),
  });
}
