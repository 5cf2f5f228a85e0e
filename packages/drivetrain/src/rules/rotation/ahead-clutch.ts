import { otherHand } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { clutchPermission } from './clutch-permission.js';
import { withoutClutchRoutes } from './permission-routes.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const PERMITTED = 'clutch B output opposite ahead continuous';

const INFO: RuleInfo = {
  id: 'rotation/ahead-clutch',
  title: 'The ahead clutch is rated for continuous full power ahead',
  mistakes: ['R02'],
  severity: 'error',
  criterion: 'clutch engaged for ahead against what the gear sheet allows it to do continuously',
  source: MAKER,
  manual:
    'Some gears may run ahead continuously on either clutch, some on one clutch only, and some on the second ' +
    'clutch at certain ratios only. The permission applies to one exact gear and ratio. A clutch meant for ' +
    'manoeuvring astern overheats and fails when it carries full power ahead. Run ahead on the clutch that is ' +
    'rated for it and fit the propeller hand that this needs, or fit a gear whose clutches are both rated ahead.',
  caution: `${DOCK_CAUTION} Only the gear maker can give this permission; nothing here infers it from the type of gear.`,
  noFigure: 'a sense, a hand or a clutch',
  standsWithout: ['ahead'],
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [PERMITTED, 'clutch B output opposite ahead never']),
    passing: SINGLE_LINE,
    cannotTell: `A permission that is not stated is the concern of ${clutchPermission.id}, which says so; this rule speaks once it is stated.`,
  })),
};

export const aheadClutch: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const clutch = analysis.aheadClutch.value;
  const gear = line.gear;
  const said = clutch?.ahead?.value;
  if (!gear || !clutch || !said) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.aheadClutch?.origin ?? gear.origin;
  const ratio = gear.variant ? ` at ${gear.variant.nominalFact.written}` : '';
  const subject = `clutch ${clutch.name} of ${nameOf(gear)}${ratio}`;
  if (said === 'continuous') {
    return say.holds({ place, message: `${line.name}: ${subject} may run ahead continuously.` });
  }
  // What this clutch needs follows from how the shaft turns, whatever hand is listed.
  const { neededHand } = analysis.rotation;
  const other = neededHand
    ? ` A clutch that turns the shaft the other way needs a ${otherHand(neededHand)}-hand propeller.`
    : '';
  return say.fails({
    place,
    message:
      `${line.name}: ${subject} may never carry full power ahead, and this line runs ahead on it. ` +
      `Running so is a known cause of clutch failure.${other}`,
    related: [{ at: clutch.ahead!.origin, message: 'the gear sheet says so here' }],
    routes: () => withoutClutchRoutes(context),
  });
}
