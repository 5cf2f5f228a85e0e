import { uncapital } from '@tailshaft/mechanics';
import { handFact, handOf } from '../../analysis/hand.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { engineWord, stubRoutes, turnWords } from './edits.js';
import { handRoutes } from './hand-routes.js';
import { handFolds } from './pair-folds.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';

const OLD = 'dated 2018-05-04\n  rotation standard viewed from flywheel';
const GEAR_TAKES = 'input rotation standard viewed from flywheel';
const OLD_OPPOSITE = changed(
  REPOWER,
  [OLD, 'dated 2018-05-04\n  rotation opposite viewed from flywheel'],
  [GEAR_TAKES, 'input rotation either'],
  // In the old arrangement the opposite engine ran ahead on the clutch that keeps its sense.
  ['ahead clutch B', 'ahead clutch A'],
);

const INFO: RuleInfo = {
  id: 'rotation/engine-changed',
  title: 'A new engine of opposite rotation is allowed for',
  mistakes: ['R06'],
  severity: 'error',
  criterion: 'rotation of the new engine against the old, with the propeller and gear that stay',
  source: ALGEBRA,
  manual:
    'In a repower the new engine may turn the other way while everything behind it stays, so that every shaft of ' +
    'the line reverses. The retained propeller then drives astern with the lever ahead. The new engine needs the ' +
    'other propeller hand, the other clutch where the gear allows it to run ahead, or a gear of the other output ' +
    'sense.',
  caution: `${DOCK_CAUTION} Check the pump setting of the gear and the engine accessories as well.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: OLD_OPPOSITE,
    passing: REPOWER,
    cannotTell: changed(REPOWER, [
      'dated 2025-01-20\n  rotation standard viewed from flywheel',
      'dated 2025-01-20',
    ]),
  })),
};

export const engineChanged: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, analysisOf } = context;
  const { engine, propeller, before } = line;
  if (engine?.change !== 'replaced' || !before?.engine || !propeller || !before.propeller) return undefined;
  const [then, now] = [analysisOf(before), analysis];
  const hand = handOf(line);
  const say = sayFor(INFO, line.path);
  const place = engine.nameOrigin ?? engine.origin;
  if (!now.hand || hand === undefined || hand !== handOf(before)) return undefined;
  if (now.hand.state === 'cannot tell') {
    if (!now.hand.needs.missing.some(gap => gap.host === home(engine) && gap.property === 'rotation'))
      return undefined;
    const needs = new Needs();
    needs.take({ value: undefined, missing: now.hand.needs.missing });
    return say.cannotTell(needs, {
      place,
      message:
        `${line.name}: the engine is replaced and the ${hand}-hand propeller is as before, but which way ${nameOf(engine)} ` +
        'turns is not stated. If it turns the other way, the propeller no longer drives ahead.',
      related: [{ at: before.engine.origin, message: 'the engine that it replaces' }],
      explains: [{ rule: 'rotation/propeller-hand', subject: line.path }],
      routes: () => stubRoutes(needs.missing),
    });
  }
  if (now.hand.state === 'right') {
    return say.holds({
      place,
      message: `${line.name}: with ${nameOf(engine)} the ${hand}-hand propeller still drives ahead.`,
      steps: now.rotation.steps.map(step => step.text),
    });
  }
  const [was, is] = [then.rotation, now.rotation];
  if (now.hand.state !== 'wrong' || then.hand?.state !== 'right') return undefined;
  if (was.source === is.source || was.factor !== is.factor) return undefined;
  const how =
    was.atFlywheel !== is.atFlywheel && was.atFlywheel && is.atFlywheel
      ? `Engine rotation changes from ${engineWord(was.atFlywheel)} to ${engineWord(is.atFlywheel)}`
      : 'The engine now faces the other way';
  return say.fails({
    place,
    message:
      `${line.name}: ${uncapital(how)}, so the shaft turns ${turnWords(is.ahead!)} ahead instead of ` +
      `${turnWords(was.ahead!)}. The ${hand}-hand propeller no longer drives ahead: the vessel would go astern with the lever ahead.`,
    related: [
      {
        at: before.engine.rotation?.origin ?? before.engine.origin,
        message: 'rotation of the engine before',
      },
      { at: engine.rotation?.origin ?? engine.origin, message: 'rotation of the new engine' },
      { at: handFact(propeller)?.origin ?? propeller.origin, message: 'hand of the propeller' },
    ],
    steps: is.steps.map(step => step.text),
    explains: handFolds(line.path, context.arrangement.path),
    routes: () => handRoutes(context),
  });
}
