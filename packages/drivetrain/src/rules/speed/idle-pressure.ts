import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { DEFER, PART_SHEET } from '../capacity/sources.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'speed/idle-pressure',
  title: 'The gear keeps clutch pressure at idle',
  mistakes: ['T17'],
  severity: 'warning',
  criterion: 'low idle of the engine against the least input speed that keeps clutch pressure',
  source: PART_SHEET,
  manual:
    'The oil pump of a hydraulic gear turns with its input. Below the least input speed on its sheet the ' +
    'clutches lose pressure and slip in gear, unnoticed, whenever the engine idles. Raise the low idle, choose a ' +
    'gear that keeps pressure at it, or fit an electric pump that the maker approves. A higher idle makes the ' +
    'vessel faster in gear. The rule applies where the sheet gives a least input speed.',
  caution: DEFER,
  limitOf: 'the maker’s limit',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['low idle 650 rpm', 'low idle 550 rpm']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['  low idle 650 rpm\n', '']),
  })),
};

export const idlePressure: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { gear, engine } = line;
  if (!gear?.inputSpeedMin || !engine) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const least = needs.fact(gear.inputSpeedMin, {
    what: `least input speed of ${nameOf(gear)}`,
    host: home(gear),
    property: 'input speed at least',
  });
  const idle = needs.take(analysis.idleSpeed);
  const place = engine.lowIdle?.origin ?? engine.nameOrigin ?? engine.origin;
  if (!least || !idle) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(
        `${line.name}: whether ${nameOf(gear)} has clutch pressure at idle`,
        needs.missing,
      ),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const numbers = `low idle of ${nameOf(engine)} is ${analysis.tell(idle)}, ${nameOf(gear)} needs ${analysis.tell(least)} for clutch pressure`;
  return say.compare({
    place,
    capacity: idle,
    demand: least,
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. Raise the low idle, or take another gear; a higher idle makes the vessel faster in gear.`,
    related: [{ at: gear.inputSpeedMin.origin, message: 'least input speed' }],
  });
}
