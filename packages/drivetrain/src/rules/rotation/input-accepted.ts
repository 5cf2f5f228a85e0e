import { senseThatDrivesAhead } from '@tailshaft/mechanics';
import { acceptsRotation } from '../../analysis/gear-choice.js';
import { handOf } from '../../analysis/hand.js';
import { boxBefore } from '../../analysis/stages.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { gearRoutes } from './hand-routes.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const TAKES = 'input rotation standard viewed from flywheel';

const INFO: RuleInfo = {
  id: 'rotation/input-accepted',
  title: 'The gear accepts the engine rotation',
  mistakes: [],
  severity: 'error',
  criterion: 'input rotation that the gear accepts against the engine rotation, both at the flywheel',
  source: MAKER,
  manual:
    'Gears with a handed pump, helical thrust or one-way parts accept one engine rotation only. Driven the other ' +
    'way they make no oil pressure or wear out their bearings. The maker states whether a gear accepts standard, ' +
    'opposite or either rotation. Choose a gear that accepts this engine, or an engine of the rotation that the ' +
    'gear accepts.',
  caution: `${DOCK_CAUTION} Ask the gear supplier before turning any gear against its stated input rotation.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [TAKES, 'input rotation opposite viewed from flywheel']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, [`  ${TAKES}\n`, '']),
  })),
};

export const inputAccepted: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { gear, engine, motor } = line;
  const mover = engine ?? motor;
  // A line that says nothing of rotation at all is the concern of the propeller, when there is one.
  if (!gear || !mover || (!gear.inputRotation && !mover.rotation)) return undefined;
  const say = sayFor(INFO, line.path);
  const { rotation } = analysis;
  const accepts = acceptsRotation(gear, rotation);
  const place = gear.nameOrigin ?? gear.origin;
  if (accepts === undefined) {
    const needs = new Needs();
    const wanted = {
      what: `which engine rotation ${nameOf(gear)} takes`,
      host: home(gear),
      property: 'input rotation',
    };
    const said = needs.fact(gear.inputRotation, wanted);
    if (said && !said.viewedFrom) needs.miss(wanted, gear.inputRotation?.origin);
    if (!rotation.atGearInput && !rotation.either)
      needs.take({ value: undefined, missing: rotation.missingAtGear });
    return say.cannotTell(needs, {
      place: gear.inputRotation?.origin ?? place,
      message: cannotTellWords(
        `${line.name}: whether ${nameOf(gear)} accepts the rotation of ${nameOf(mover)}`,
        needs.missing,
      ),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const takes = gear.inputRotation!.written;
  if (accepts) {
    return say.holds({
      place,
      message: `${line.name}: ${nameOf(gear)} accepts the rotation of ${nameOf(mover)} ("${takes}").`,
    });
  }
  const hand = handOf(line);
  const wanted = hand ? senseThatDrivesAhead(hand) : rotation.ahead;
  return say.fails({
    place,
    message: `${line.name}: ${nameOf(gear)} accepts "${takes}", but ${turnsIt(line, nameOf(mover))} ${rotation.neededPump ?? 'another'} rotation.`,
    related: [
      { at: gear.inputRotation!.origin, message: 'rotation that the gear accepts' },
      { at: mover.rotation?.origin ?? mover.origin, message: 'how the engine turns' },
    ],
    routes: () => (wanted ? gearRoutes(context, wanted) : []),
  });
}

/** Who gives a gear its rotation: a box may stand between. */
function turnsIt(line: ShaftLine, mover: string): string {
  const box = line.gear && boxBefore(line, line.gear);
  return box ? `${mover} through ${nameOf(box)} gives it` : `${mover} has`;
}
