import { pairOf } from '../../analysis/twin.js';
import type { ArrangementContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Engine } from '../../model/engine.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { engineWord, exchange, otherEngineWord } from './edits.js';
import { ENGINES_EXCHANGED, HANDED_ENGINES } from './exchange-examples.js';
import { pairRoutes } from './hand-routes.js';
import { handFolds } from './pair-folds.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';
import { foldOn } from './uses.js';

const INFO: RuleInfo = {
  id: 'rotation/engines-exchanged',
  title: 'Each engine of a handed pair stands on its own side',
  mistakes: ['R07'],
  severity: 'error',
  criterion: 'rotation of both engines of a pair against the hands of their propellers',
  source: ALGEBRA,
  manual:
    'A pair with one engine of each rotation works only with each engine on its own side. Where both ' +
    'propellers would drive astern and exchanging the engines corrects both, the engines are on the wrong ' +
    'sides. Exchange them in the spec; where they already stand in the vessel, compare the cost of the other ' +
    'remedies.',
  caution:
    `${DOCK_CAUTION} Check serial numbers against the plan; once installed, exchanging engines means lifting ` +
    'them out.',
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: ENGINES_EXCHANGED,
    passing: HANDED_ENGINES,
    cannotTell:
      'It speaks once the rotation of both lines is known; until then rotation/propeller-hand names what is missing.',
  })),
};

export const enginesExchanged: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement, analysisOf } = context;
  const pair = pairOf(arrangement);
  if (!pair?.port.engine || !pair.starboard.engine) return undefined;
  const { port, starboard } = pair;
  const [p, s] = [analysisOf(port), analysisOf(starboard)];
  const [atPort, atStarboard] = [p.rotation.atFlywheel, s.rotation.atFlywheel];
  if (!atPort || !atStarboard || atPort === atStarboard) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const place = pair.port.engine.nameOrigin ?? pair.port.engine.origin;
  const states = [p.hand?.state, s.hand?.state];
  if (states.every(state => state === 'right')) {
    return say.holds({
      place,
      message: `Each engine stands on its side: ${engineWord(atPort)} to port, ${engineWord(atStarboard)} to starboard.`,
    });
  }
  // The engines differ in their sense as they stand, so exchanging them turns both shafts round.
  if (!states.every(state => state === 'wrong') || p.rotation.source === s.rotation.source) return undefined;
  const edits = exchange(pair.port.engine, pair.starboard.engine);
  return say.fails({
    place,
    message:
      `The engine to port${named(pair.port.engine)} has ${engineWord(atPort)} rotation, but the port side needs ${otherEngineWord(atPort)}; ` +
      `to starboard it is the reverse. Both propellers would drive astern with the lever ahead: the engines are exchanged.`,
    related: [
      { at: pair.starboard.engine.nameOrigin ?? pair.starboard.engine.origin, message: 'the other engine' },
    ],
    steps: [...p.rotation.steps, ...s.rotation.steps].map(step => step.text),
    explains: [
      ...handFolds(port.path, arrangement.path),
      ...handFolds(starboard.path, arrangement.path),
      ...foldOn([port, starboard], 'rotation/engine-changed', 'rotation/gears-exchanged'),
      { rule: 'rotation/gears-exchanged', subject: arrangement.path },
    ],
    routes: () => [
      ...(edits.length > 0
        ? [
            {
              title: `Exchange the engines: ${engineWord(atStarboard)} to port, ${engineWord(atPort)} to starboard; both propellers then drive ahead`,
              edits,
            },
          ]
        : []),
      ...pairRoutes(context),
    ],
  });
}

function named(engine: Engine): string {
  return engine.entry ? `, ${engine.entry.name},` : '';
}
