import type { Hand } from '@tailshaft/mechanics';
import { handFact } from '../../analysis/hand.js';
import { pairOf } from '../../analysis/twin.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { Arrangement, ShaftLine } from '../../model/vessel.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';
import { turningRoutes } from './turning-routes.js';

const BOTH_RIGHT = changed(TWIN_LINES, ['ahead clutch A', 'ahead clutch B'], ['hand left', 'hand right']);

const INFO: RuleInfo = {
  id: 'rotation/same-hand',
  title: 'The propellers of a twin turn opposite ways, or a reason is given',
  mistakes: ['R09'],
  severity: 'warning',
  criterion: 'hands of the two propellers against each other',
  source: PRACTICE,
  manual:
    'Two propellers of one hand push the stern to the same side, ahead and astern, and heel the vessel the same ' +
    'way: the vessel steers with a bias and handles little better than with one screw. Some older vessels and ' +
    'some drives are built that way; then write `reason for same hand "..."` in the arrangement. Otherwise run ' +
    'one side ahead on the other clutch, where that is allowed, with a propeller of the other hand.',
  caution: `${DOCK_CAUTION} Rudder and trim tabs may have been set for the old bias.`,
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: BOTH_RIGHT,
    passing: changed(BOTH_RIGHT, [
      'arrangement proposed {',
      'arrangement proposed {\n    reason for same hand "both gears may run ahead on one clutch only; rudders offset for it"',
    ]),
    cannotTell:
      'vessel Ternhaven "harbour pilot cutter" {\n  arrangement proposed {\n    shaftline Port { propeller { hand left } }\n' +
      '    shaftline Starboard { propeller { kind fixed } }\n  }\n}\n',
  })),
};

export const sameHand: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement } = context;
  const two = twoPropellers(arrangement);
  if (!two) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const needs = new Needs();
  const hands = two.map(line => handNeeded(line, needs));
  const place = handFact(two[1].propeller)?.origin ?? two[1].propeller.origin;
  if (needs.any) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? needs.missing[0]?.host ?? place,
      message: cannotTellWords(
        `Whether the propellers of ${arrangement.path} turn opposite ways`,
        needs.missing,
      ),
      explains: [{ rule: 'rotation/inward-turning', subject: arrangement.path }],
      routes: () => stubRoutes(needs.missing),
    });
  }
  const related = [
    { at: handFact(two[0].propeller)?.origin ?? two[0].propeller.origin, message: 'the other propeller' },
  ];
  if (hands[0] !== hands[1]) {
    return say.holds({
      place,
      message: `The propellers are ${hands.join('- and ')}-hand: they turn opposite ways.`,
    });
  }
  const reason = arrangement.reasons.find(one => one.about === 'same hand');
  if (reason) {
    return say.holds({
      place,
      message: `Both propellers are ${hands[0]}-hand, with the reason given: ${reason.text}`,
    });
  }
  return say.fails({
    place,
    message: `Both propellers are ${hands[0]}-hand: expect a steering and heeling bias, and less use of the two screws in handling. Make them turn opposite ways, or write reason for same hand "...".`,
    related,
    routes: () => turningRoutes(context),
  });
}

/** The lines of a twin, where both have a propeller. */
export function twoPropellers(arrangement: Arrangement): readonly [WithPropeller, WithPropeller] | undefined {
  const pair = pairOf(arrangement);
  const [one, other, ...more] = pair ? [pair.port, pair.starboard] : arrangement.lines;
  if (!one?.propeller || !other?.propeller || more.length > 0) return undefined;
  return [one as WithPropeller, other as WithPropeller];
}

export type WithPropeller = ShaftLine & { readonly propeller: Propeller };

/** The hand of a line's propeller, or the gap. */
export function handNeeded({ path, propeller }: WithPropeller, needs: Needs): Hand | undefined {
  const what = `hand of the propeller of ${path}`;
  return needs.fact(handFact(propeller), { what, host: home(propeller), property: 'hand' });
}
