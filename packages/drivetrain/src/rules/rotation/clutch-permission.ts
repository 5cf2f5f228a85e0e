import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isWeak } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { gearRoutes } from './hand-routes.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const PERMITTED = 'clutch B output opposite ahead continuous';

const INFO: RuleInfo = {
  id: 'rotation/clutch-permission',
  title: 'The gear sheet states whether the ahead clutch may run continuously',
  mistakes: ['R03'],
  severity: 'error',
  criterion: 'a permission for the ahead clutch, stated by something better than hearsay',
  source: MAKER,
  manual:
    'Whether a clutch may carry full power ahead is stated by the gear maker for each gear, ratio and ' +
    'clutch. A sheet that does not mention it settles nothing, and word of mouth does not count: wrong ' +
    'propellers have been bought and clutches burnt on the strength of it. Ask the gear supplier, write ' +
    '`ahead continuous` or `ahead never` at the clutch, and record the source with its date.',
  caution: `${DOCK_CAUTION} Never infer the permission from the type of gear or from a sister vessel.`,
  noFigure: 'a sense, a hand or a clutch',
  judgesEvidence: true,
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [PERMITTED, `${PERMITTED} [hearsay]`]),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, [PERMITTED, 'clutch B output opposite']),
  })),
};

export const clutchPermission: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const clutch = analysis.aheadClutch.value;
  const gear = line.gear;
  if (!gear || !clutch) return undefined;
  const say = sayFor(INFO, line.path);
  const ratio = gear.variant ? ` at ${gear.variant.nominalFact.written}` : '';
  const subject = `clutch ${clutch.name} of ${nameOf(gear)}${ratio}`;
  const fact = clutch.ahead;
  const place = gear.aheadClutch?.origin ?? gear.origin;
  const others = () => {
    const { ahead } = analysis.rotation;
    return ahead ? gearRoutes(context, ahead) : [];
  };
  if (fact?.value && isWeak(fact)) {
    const what =
      fact.value === 'never'
        ? `that ${subject} may never run ahead`
        : `the permission of ${subject} to run ahead`;
    return say.fails({
      place: fact.origin,
      message: `${line.name}: ${what} is only ${fact.evidence?.kind}. Ask the gear supplier and record source and date.`,
      related: [{ at: place, message: 'the line runs ahead on this clutch' }],
      // What may never run ahead fails all the same, and that is told.
      ...(fact.value === 'never'
        ? {}
        : { explains: [{ rule: 'rotation/ahead-clutch', subject: line.path }] }),
      routes: others,
    });
  }
  const needs = new Needs();
  const said = needs.fact(fact, {
    what: `whether ${subject} may run ahead continuously`,
    host: clutch.origin,
    property: 'ahead',
  });
  if (!said) {
    return say.cannotTell(needs, {
      place,
      message:
        `${line.name}: the gear sheet does not say whether ${subject} may be used continuously ahead. ` +
        'Ask the gear supplier and record source and date.',
      related: [{ at: clutch.origin, message: 'the answer belongs here' }],
      routes: () => [...stubRoutes(needs.missing), ...others()],
    });
  }
  return say.holds({ place, message: `${line.name}: for ${subject} the sheet states ahead ${said}.` });
}
