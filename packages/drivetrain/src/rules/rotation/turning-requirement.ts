import { type Hand, handFor, handThatDrivesAhead, type Turning } from '@tailshaft/mechanics';
import { handFact } from '../../analysis/hand.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isAsFound } from '../../model/as-found.js';
import { type Apart, each } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import type { Requirement, ShaftLine } from '../../model/vessel.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { facingsPutRight } from './flywheel-facing.js';
import { sidesNeeded } from './inward-turning.js';
import { handNeeded, twoPropellers } from './same-hand.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';
import { turningRoutes } from './turning-routes.js';

const REQUIRED = changed(TWIN_LINES, [
  '  arrangement proposed {',
  '  require propellers turn outward\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'rotation/turning-requirement',
  title: 'The propellers turn as required',
  mistakes: [],
  severity: 'error',
  criterion: 'the way that each shaft of a pair turns ahead, and its side, against `require propellers turn`',
  source: PRACTICE,
  manual:
    'An owner or class may require that the propellers of a twin turn outward, or inward. The requirement ' +
    'applies to the proposed arrangement, not to the one it replaces. Change clutches and hands together, or ' +
    'agree another requirement with whoever set it.',
  caution: DOCK_CAUTION,
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(REQUIRED, ['turn outward', 'turn inward']),
    passing: REQUIRED,
    cannotTell: changed(
      REQUIRED,
      ['shaftline Port {', 'shaftline Inner {'],
      ['shaftline Starboard {', 'shaftline Outer {'],
    ),
  })),
};

export const turningRequirement: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Apart<Verdict> | undefined {
  if (isAsFound(context.arrangement, context.vessel)) return undefined;
  const turning = context.vessel.requirements.filter(one => one.about === 'propellers turn');
  return each(turning, one =>
    one.word === 'outward' || one.word === 'inward' ? judge(context, one, one.word) : undefined,
  );
}

/** The hand that would drive ahead as the shaft turns; of a motor that runs either way, the hand that it has. */
function turningHand(
  { analysisOf }: ArrangementContext,
  line: ShaftLine & { readonly propeller: Propeller },
  needs: Needs,
): Hand | undefined {
  const { ahead, either, missing } = analysisOf(line).rotation;
  if (ahead) return handThatDrivesAhead(ahead);
  if (either || !(line.engine || line.motor)) return handNeeded(line, needs);
  needs.take({ value: undefined, missing });
  return undefined;
}

function judge(context: ArrangementContext, requirement: Requirement, wanted: Turning): Verdict {
  const { arrangement } = context;
  const say = sayFor(INFO, arrangement.path);
  const place = requirement.origin;
  const needs = new Needs();
  const two = twoPropellers(arrangement);
  if (!two) {
    needs.miss(
      {
        what: `two propellers of ${arrangement.path} that could turn ${wanted} as a pair`,
        host: arrangement.origin,
        property: 'shaftline',
      },
      arrangement.nameOrigin,
    );
    return say.cannotTell(needs, {
      place,
      answers: place,
      message: `${arrangement.path} has no two propellers that could turn ${wanted} as a pair, so the requirement cannot be judged.`,
    });
  }
  // How they turn is how the shafts turn, whatever hands the spec lists.
  const hands = two.map(line => turningHand(context, line, needs));
  const sides = sidesNeeded(two, needs);
  if (needs.any) {
    return say.cannotTell(needs, {
      place,
      answers: place,
      message: cannotTellWords(
        `Whether the propellers of ${arrangement.path} turn ${wanted} as required`,
        needs.missing,
      ),
      explains: ['rotation/same-hand', 'rotation/inward-turning'].map(rule => ({
        rule,
        subject: arrangement.path,
      })),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const turns = two.map((_, index) => {
    const side = sides[index];
    return side !== 'port' && side !== 'starboard' ? undefined : handFor(side, wanted) === hands[index];
  });
  if (turns.every(Boolean)) {
    return say.holds({
      place,
      answers: place,
      message: `The propellers of ${arrangement.path} turn ${wanted}, as required.`,
    });
  }
  const now =
    hands[0] === hands[1]
      ? `both turn ${hands[0] === 'right' ? 'clockwise' : 'counter-clockwise'} seen from aft`
      : `turn ${wanted === 'outward' ? 'inward' : 'outward'}`;
  return say.fails({
    place,
    answers: place,
    message: `The propellers of ${arrangement.path} are required to turn ${wanted}; they ${now}.`,
    related: two.map(line => ({
      at: handFact(line.propeller)?.origin ?? line.propeller.origin,
      message: `propeller of ${line.path}`,
    })),
    explains: ['rotation/same-hand', 'rotation/inward-turning'].map(rule => ({
      rule,
      subject: arrangement.path,
    })),
    routes: () => {
      const faced = facingsPutRight(two);
      return faced ? [faced] : turningRoutes(context, wanted);
    },
  });
}
