import { newWord } from '@tailshaft/vocabulary';
import { isConvertible } from '../../analysis/hand.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes, writeInPlace } from './edits.js';
import { handFolds } from './pair-folds.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const FOLDING = changed(SINGLE_LINE, [
  'hand right [drawing]',
  'kind folding  hand right [drawing]  set for hand right',
]);

const INFO: RuleInfo = {
  id: 'rotation/convertible-hand',
  title: 'A folding or feathering propeller is assembled for its hand',
  mistakes: ['R16'],
  severity: 'error',
  criterion: 'hand that the propeller is assembled for against the hand that the spec asks for',
  source: MAKER,
  manual:
    'Many folding and feathering propellers can be assembled for either hand. After a service some have been put ' +
    'together for the wrong hand, and the vessel went astern on launching day. Record the assembly with `set for ' +
    'hand`; it must be the hand that the spec asks for.',
  caution: `${DOCK_CAUTION} Have the shop state the setting on its sheet, and check it again after every service.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(FOLDING, ['set for hand right', 'set for hand left']),
    passing: FOLDING,
    cannotTell: changed(FOLDING, ['  set for hand right', '']),
  })),
};

export const convertibleHand: Rule = { ...INFO, scope: 'line', check };

function check({ line, arrangement, analysis }: LineContext): Verdict | undefined {
  const { propeller } = line;
  if (!propeller || !isConvertible(propeller)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const set = needs.fact(propeller.handSetting, {
    what: `hand that the propeller of ${line.path} is set for`,
    host: propeller.origin,
    property: 'set for hand',
  });
  const place = propeller.handSetting?.origin ?? propeller.hand?.origin ?? propeller.origin;
  if (!set) {
    const wanted = propeller.hand?.value ?? analysis.rotation.neededHand;
    return say.cannotTell(needs, {
      place,
      message:
        `${line.name}: this propeller can be set for either hand, and the setting is not recorded.` +
        (wanted ? ` It is to be set for ${wanted} hand.` : ''),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const hand = propeller.hand?.value;
  if (hand === undefined || hand === set) {
    return say.holds({ place, message: `${line.name}: the propeller is set for ${set} hand.` });
  }
  return say.fails({
    place,
    message: `${line.name}: the propeller is to be ${hand}-hand and is set for ${set} hand: it would drive astern with the lever ahead.`,
    related: [{ at: propeller.hand!.origin, message: 'the hand that is asked for' }],
    explains: handFolds(line.path, arrangement.path),
    routes: () => [
      ...(analysis.rotation.neededHand !== set
        ? [
            {
              title: `Have the propeller of ${line.name} assembled for ${hand} hand`,
              edits: [writeInPlace(propeller, 'set for hand', newWord(hand))],
            },
          ]
        : []),
      ...(analysis.rotation.neededHand === set
        ? [
            {
              title: `Ask for a ${set}-hand propeller, as it is set and as the shaft needs`,
              edits: [writeInPlace(propeller, 'hand', newWord(set))],
            },
          ]
        : []),
    ],
  });
}
