import type { Value } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Engine, EngineFacts } from '../../model/engine.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const WITH_SPACE = changed(
  SINGLE_LINE,
  ['  housing SAE-3\n', '  housing SAE-3\n  length 1310 mm\n  width 860 mm\n  height 980 mm\n'],
  ['{ flywheel aft }', '{ flywheel aft  space height 1050 mm  space width 1100 mm  way out width 900 mm }'],
);

const INFO: RuleInfo = {
  id: 'interface/engine-space',
  title: 'The engine fits its space and its access',
  mistakes: ['I06'],
  severity: 'error',
  criterion: 'length, width and height of the engine against the space with access, and against the way out',
  source: PRACTICE,
  manual:
    'An engine an inch too high is discovered under the deck beam on the day it is lowered in. Its length, width and ' +
    'height are compared with the space left for it, including room for filters, dipstick and heat exchanger, ' +
    'and with the hatch it must pass. Choose another engine, a down-angle gear that levels it, or a structural ' +
    'change that is designed.',
  caution: `${DEFER} Boxes are compared, not shapes: sump, mounts and exhaust elbow need their own check.`,
  limitOf: 'the clear opening, as measured',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_SPACE, ['space height 1050 mm', 'space height 940 mm']),
    passing: WITH_SPACE,
    cannotTell: changed(WITH_SPACE, ['  height 980 mm\n', '']),
  })),
};

export const engineSpace: Rule = { ...INFO, scope: 'line', check };

interface Room {
  readonly room: 'spaceLength' | 'spaceWidth' | 'spaceHeight' | 'removalWidth' | 'removalLength';
  readonly property: string;
  readonly size: 'length' | 'width' | 'height';
}

const ROOMS: readonly Room[] = [
  { room: 'spaceLength', property: 'space length', size: 'length' },
  { room: 'spaceWidth', property: 'space width', size: 'width' },
  { room: 'spaceHeight', property: 'space height', size: 'height' },
  { room: 'removalWidth', property: 'way out width', size: 'width' },
  { room: 'removalLength', property: 'way out length', size: 'length' },
];

function check(context: LineContext): Apart<Verdict> | undefined {
  const { engine } = context.line;
  if (!engine) return undefined;
  return each(ROOMS, room => {
    const fact = engine[room.room];
    return fact && judge(context, engine, room, fact);
  });
}

function judge(
  { line, analysis }: LineContext,
  engine: Engine,
  room: Room,
  fact: Quantity<'length'>,
): Verdict {
  const say = sayFor(INFO, `${engine.path}.${room.property.replaceAll(' ', '-')}`);
  const needs = new Needs();
  const space = needs.fact(fact, {
    what: `${room.property} for ${nameOf(engine)}`,
    host: engine.origin,
    property: room.property,
  });
  const size: Value<'length'> | undefined = needs.fact((engine as EngineFacts)[room.size], {
    what: `${room.size} of ${nameOf(engine)}`,
    host: home(engine),
    property: room.size,
  });
  const place = fact.origin;
  if (!space || !size) return waits(say, needs, place, `${line.name}: whether ${nameOf(engine)} fits`);
  const numbers = `${nameOf(engine)} has a ${room.size} of ${analysis.tell(size)}, ${room.property} is ${analysis.tell(space)}`;
  return say.compare({
    place,
    capacity: space,
    demand: size,
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${analysis.tell({ ...size, si: size.si - space.si }, 3)} too much. Choose another engine, a gear that levels it, or a structural change.`,
    related: [{ at: (engine as EngineFacts)[room.size]!.origin, message: `${room.size} of the engine` }],
  });
}
