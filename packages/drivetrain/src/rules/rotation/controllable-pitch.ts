import { newWord } from '@tailshaft/vocabulary';
import { clutchesOf } from '../../analysis/gear-data.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes, turnWords, writeInPlace } from './edits.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';

const PITCH = changed(SINGLE_LINE, ['hand right [drawing]', 'kind controllable pitch  hand right [drawing]']);
const ONE_WAY = changed(PITCH, [
  'ratio 2.04:1 ahead clutch B',
  'ratio 2.04:1 ahead clutch B { reversing no }',
]);

const INFO: RuleInfo = {
  id: 'rotation/controllable-pitch',
  title: 'A controllable-pitch propeller has a shaft that turns one way only',
  mistakes: ['R18'],
  severity: 'warning',
  criterion: 'a controllable-pitch propeller against a gear that can reverse its shaft',
  source: PRACTICE,
  manual:
    'A controllable-pitch propeller goes astern by its blades while the shaft keeps turning the same way; its ' +
    'hand still matters. A reversing gear adds a second way of going astern, and the two together cancel out. ' +
    'Write `reversing no` at the gear in its line where its astern clutch is not used, or confirm that the ' +
    'reversing gear is intended: such installations exist.',
  caution:
    `${DOCK_CAUTION} A step in pitch when control changes station has caused collisions: include the transfer in ` +
    'the trial.',
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: PITCH,
    passing: ONE_WAY,
    cannotTell: changed(
      ONE_WAY,
      [' { reversing no }', ''],
      ['    clutch A output same ahead continuous\n', ''],
    ),
  })),
};

export const controllablePitch: Rule = { ...INFO, scope: 'line', check };

function check({ line, analysis }: LineContext): Verdict | undefined {
  const { gear, propeller } = line;
  if (propeller?.kind?.value !== 'controllable pitch' || !gear) return undefined;
  const say = sayFor(INFO, line.path);
  const clutches = clutchesOf(gear, gear.variant);
  const place = gear.reversing?.origin ?? gear.nameOrigin ?? gear.origin;
  const related = [{ at: propeller.kind.origin, message: 'the propeller reverses by its pitch' }];
  const ahead = analysis.rotation.ahead;
  const way = ahead ? `turns ${turnWords(ahead)}` : 'turns one way';
  if (gear.reversing?.value === 'no') {
    return say.holds({
      place,
      message: `${line.name}: the gear does not reverse; the shaft ${way} ahead and astern.`,
    });
  }
  const oneWay = (title: string) => ({ title, edits: [writeInPlace(gear, 'reversing', newWord('no'))] });
  if (gear.reversing?.value !== 'yes' && clutches.length < 2) {
    const needs = new Needs();
    needs.fact(gear.reversing, {
      what: `whether ${nameOf(gear)} reverses`,
      host: home(gear),
      property: 'reversing',
    });
    return say.cannotTell(needs, {
      place,
      message: `${line.name}: the propeller has controllable pitch, and ${nameOf(gear)} does not say whether it reverses.`,
      related,
      routes: () => [
        oneWay(`State that the gear does not reverse: the shaft ${way} only`),
        ...stubRoutes(needs.missing),
      ],
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: the propeller has controllable pitch, and ${nameOf(gear)} can reverse its shaft. Such a shaft turns one way: ` +
      'state which way and which hand, or confirm that the reversing gear is intended.',
    related,
    routes: () => [oneWay(`State that the astern clutch is not used: the shaft ${way} only`)],
  });
}
