import { handFor, listed, type Side } from '@tailshaft/mechanics';
import { handFact } from '../../analysis/hand.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { handNeeded, twoPropellers, type WithPropeller } from './same-hand.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';
import { inwardReason, turningRoutes } from './turning-routes.js';

const INWARD = changed(
  TWIN_LINES,
  ['ahead clutch A', 'ahead clutch C'],
  ['ahead clutch B', 'ahead clutch A'],
  ['ahead clutch C', 'ahead clutch B'],
  ['hand left', 'hand middle'],
  ['hand right', 'hand left'],
  ['hand middle', 'hand right'],
);

const INFO: RuleInfo = {
  id: 'rotation/inward-turning',
  title: 'The propellers of a twin turn outward, or a reason is given',
  mistakes: ['R10'],
  severity: 'warning',
  criterion: 'hand of each propeller against its side',
  source: PRACTICE,
  manual:
    'By convention the starboard propeller of a twin is right-hand and the port one left-hand, so that the tops ' +
    'of the blades move outward. Inward-turning propellers can draw air between them and handle differently ' +
    'alongside. Where they are chosen on purpose, write `reason for inward turning "..."` in the arrangement.',
  caution: `${DOCK_CAUTION} Tell whoever handles the vessel when the turning sense of a pair changes.`,
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: INWARD,
    passing: changed(INWARD, [
      'arrangement proposed {',
      'arrangement proposed {\n    reason for inward turning "as built: tunnels shaped for inward-turning screws"',
    ]),
    cannotTell: changed(
      TWIN_LINES,
      ['shaftline Port {', 'shaftline Inner {'],
      ['shaftline Starboard {', 'shaftline Outer {'],
    ),
  })),
};

export const inwardTurning: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement } = context;
  const two = twoPropellers(arrangement);
  if (!two) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const needs = new Needs();
  const hands = two.map(line => handNeeded(line, needs));
  if (!needs.any && hands[0] === hands[1]) return undefined;
  const sides = sidesNeeded(two, needs);
  if (needs.any) {
    return say.cannotTell(needs, {
      place: needs.missing[0]!.at ?? needs.missing[0]!.host,
      message: cannotTellWords(`Whether the propellers of ${arrangement.path} turn outward`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const starboard = sides[0] === 'starboard' ? 0 : 1;
  const place = handFact(two[starboard].propeller)?.origin ?? two[starboard].propeller.origin;
  if (hands[starboard] === handFor('starboard', 'outward')) {
    return say.holds({
      place,
      message: 'Starboard is right-hand and port left-hand: the propellers turn outward.',
    });
  }
  const reason = inwardReason(context);
  if (reason) {
    return say.holds({ place, message: `The propellers turn inward, ${reason}.` });
  }
  return say.fails({
    place,
    message:
      'Starboard is left-hand and port right-hand: the propellers turn inward, and the convention is outward. Make them turn outward, or write reason for inward turning "...".',
    routes: () => turningRoutes(context, 'outward'),
  });
}

/** The sides of a twin, one port and one starboard, or the gap. */
export function sidesNeeded(two: readonly WithPropeller[], needs: Needs): (Side | undefined)[] {
  const sides = two.map(line => sideNeeded(line, needs));
  const [one, other] = sides;
  if (
    one !== undefined &&
    other !== undefined &&
    !(one === 'port' ? other === 'starboard' : one === 'starboard' && other === 'port')
  ) {
    const last = two[1]!;
    needs.miss(
      {
        what: `which of ${listed(two.map(line => line.path))} stands to port and which to starboard (${one} and ${other} are said)`,
        host: last.origin,
        property: 'side',
        example: 'port',
      },
      last.side?.origin,
    );
  }
  return sides;
}

/** The side of a line of a twin, or the gap. */
function sideNeeded(line: WithPropeller, needs: Needs): Side | undefined {
  return needs.fact(line.side, {
    what: `side of ${line.path}`,
    host: line.origin,
    property: 'side',
    example: 'port',
  });
}
