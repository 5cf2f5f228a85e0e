import { type Hand, otherHand } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import { handFact } from '../../analysis/hand.js';
import { handByAnswer } from '../../analysis/hand-by-answer.js';
import { isPair } from '../../analysis/pair.js';
import { answerWords } from '../../judge/answer-words.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { ByAnswer, Verdict } from '../../judge/verdict.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes, turnWords, writeInPlace } from './edits.js';
import { handRoutes } from './hand-routes.js';
import { openRoutes } from './open-routes.js';
import { pairFolds } from './pair-folds.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';
import { foldOn } from './uses.js';

const INFO: RuleInfo = {
  id: 'rotation/propeller-hand',
  title: 'The propeller drives ahead with the lever ahead',
  mistakes: ['R01'],
  severity: 'error',
  criterion: 'hand of the propeller against the shaft rotation in the ahead clutch, seen from aft',
  source: ALGEBRA,
  manual:
    'The rotation is followed from the engine through the ahead clutch and every other stage to the propeller ' +
    'shaft, always seen from aft looking forward. A shaft that turns clockwise ahead needs a right-hand ' +
    'propeller, one that turns counter-clockwise a left-hand one. With the wrong hand the vessel goes astern ' +
    'when the lever goes ahead. Of a counter-rotating pair the forward one follows ' +
    'the shaft that the sense of the leg is stated for, and the after one is of the other hand. ' +
    'Fit a propeller of the other hand, run ahead on the other clutch where the sheet ' +
    'allows it continuously, or fit a gear of the other output sense.',
  caution: `${DOCK_CAUTION} Crossing the shift cables is not a cure: it runs the gear ahead in its astern clutch.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['hand right [drawing]  ', '']),
  })),
};

export const propellerHand: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, arrangement } = context;
  const { rotation, hand: checked } = analysis;
  const propeller = line.propeller;
  if (!checked || !propeller) return undefined;
  const say = sayFor(INFO, line.path);
  const place = handFact(propeller)?.origin ?? propeller.origin;
  const steps = rotation.steps.map(step => step.text);
  if (checked.state === 'cannot tell') {
    const byAnswer = handsByAnswer(line, checked.hand);
    const known =
      rotation.neededHand && rotation.ahead
        ? ` The shaft turns ${turnWords(rotation.ahead)} seen from aft, which needs a ${rotation.neededHand}-hand one.`
        : answerWords(byAnswer);
    return say.cannotTell(checked.needs, {
      place: checked.needs.missing[0]?.at ?? place,
      message: `${cannotTellWords(`${line.name}: which hand drives ahead`, checked.needs.missing)}${known}`,
      steps,
      byAnswer,
      explains: [...pairFolds(arrangement.path), ...foldOn([line], ...WAITING)],
      routes: () => [...openRoutes(context, checked.needs.missing), ...stubRoutes(checked.needs.missing)],
    });
  }
  if (checked.afterAlike) {
    const other = otherHand(checked.hand!);
    return say.fails({
      place: propeller.afterHand!.origin,
      message: `${line.name}: both propellers of the pair are ${checked.hand}-hand, and they turn against each other: the after one must be ${other}-hand, or it drives astern with the lever ahead.`,
      related: [{ at: place, message: 'hand of the forward one' }],
      steps,
      routes: () => [
        {
          title: `Fit a ${other}-hand after propeller in the pair of ${line.name}`,
          edits: [writeInPlace(propeller, 'after hand', newWord(other))],
        },
      ],
    });
  }
  if (checked.state === 'either' || !checked.needed || !checked.hand) {
    const turn = checked.hand === 'left' ? 'counter-clockwise' : 'clockwise';
    return say.holds({
      place,
      message: `${line.name}: the motor runs either way; set it so that the shaft turns ${turn} ahead, as the ${checked.hand}-hand propeller needs.`,
      steps,
    });
  }
  const turn = turnWords(rotation.ahead!);
  const clutch = rotation.clutch ? `with clutch ${rotation.clutch.name} ahead ` : '';
  if (checked.state === 'right') {
    return say.holds({
      place,
      message: `${line.name}: ${clutch}the shaft turns ${turn} seen from aft, and the ${checked.hand}-hand propeller drives ahead${isPair(propeller) ? `, and its after one, of the other hand, with it` : ''}.`,
      steps,
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: ${clutch}the shaft turns ${turn} seen from aft, which needs a ${checked.needed}-hand propeller. ` +
      `The spec lists a ${otherHand(checked.needed)}-hand one: the vessel would go astern with the lever ahead.`,
    related: rotation.steps.slice(0, -1).map(step => ({ at: step.at, message: step.text })),
    steps,
    explains: pairFolds(arrangement.path),
    routes: () => handRoutes(context),
  });
}

/** What each answer would mean for the propeller that is listed, or for the one to be chosen. */
function handsByAnswer(line: ShaftLine, hand: Hand | undefined): ByAnswer[] {
  return handByAnswer(line).map(({ given, hand: needed }) => ({
    given,
    result:
      hand === undefined
        ? `a ${needed}-hand propeller is needed`
        : hand === needed
          ? `a ${needed}-hand propeller is needed, as listed`
          : `a ${needed}-hand propeller is needed, and a ${hand}-hand one is listed`,
  }));
}

/** Rules that may ask for the same fact of this line. */
const WAITING = [
  'rotation/input-accepted',
  'rotation/pump-index',
  'rotation/accessory',
  'rotation/shift-cable',
];
