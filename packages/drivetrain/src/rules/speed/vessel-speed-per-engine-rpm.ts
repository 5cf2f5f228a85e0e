import { percent, speedDifference } from '@tailshaft/mechanics';
import { changedOf, keptOf, missChanged } from '../../analysis/kept.js';
import { ratioWords } from '../../analysis/telling.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { ratedShaftSpeed } from '../capacity/retained-propeller.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { ratioTolerance } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'speed/vessel-speed-per-engine-rpm',
  title: 'The same engine speed gives the same vessel speed as before',
  mistakes: ['T15'],
  severity: 'note',
  criterion:
    'ratio ahead after the change against before, with the propeller retained and the shaft slower at rated speed',
  source: { title: 'shaft speed is engine speed over ratio', confidence: 'derived' },
  manual:
    'A deeper ratio turns a retained propeller slower at the same engine speed, and the vessel goes slower by ' +
    'about as much. This is not a fault, but the owner will find the old cruising speed at a different ' +
    'tachometer reading and should be told before the trial. The rule does not apply where the engine turns ' +
    'faster in the same proportion, so that the shaft turns as before. Tell the owner, and accept the note with ' +
    'that reason.',
  caution: 'Taken at equal slip; vessel speed itself is not computed here.',
  limitOf: 'a note on what changes: nothing is limited',
  noFigure: 'a note on what changes: nothing is limited',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REPOWER, [
      '      retain gear\n',
      '      replace gear Alder-63 ratio 2.1:1 ahead clutch B\n',
    ]),
    passing: REPOWER,
    cannotTell: changed(REPOWER, [
      '      retain gear\n',
      '      replace gear Alder-63 ratio unknown ahead clutch B\n',
    ]),
  })),
};

export const vesselSpeedPerEngineRpm: Rule = { ...INFO, scope: 'line', check };

/** With another propeller the speed at an engine speed is another, and is no consequence of the gear. */
const SPEED_RESTS_ON = ['pitch', 'effectivePitch', 'cup'] as const;

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, analysisOf, vessel } = context;
  const kept = line.propeller && keptOf(line.propeller, line, vessel);
  if (!kept || !(line.gear || kept.line.gear)) return undefined;
  if (line.motor || kept.line.motor) return undefined;
  const say = sayFor(INFO, line.path);
  const place = line.gear?.ratioUsed?.origin ?? line.gear?.origin ?? line.origin;
  const before = analysisOf(kept.line);
  const needs = new Needs();
  missChanged(needs, line.propeller!, changedOf(kept, SPEED_RESTS_ON), 'vessel speed at an engine speed');
  const now = needs.take(analysis.overallRatio('ahead'));
  const then = needs.take(before.overallRatio('ahead'));
  const speeds = [ratedShaftSpeed(before, needs), ratedShaftSpeed(analysis, needs)] as const;
  if (!now || !then || !speeds[0] || !speeds[1] || needs.any) {
    return say.cannotTell(needs, {
      place,
      message: cannotTellWords(
        `${line.name}: whether the same engine speed still gives the same vessel speed`,
        needs.missing,
      ),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const { share } = ratioTolerance(vessel);
  const more = speedDifference({ assumed: now, actual: then });
  const slower = speeds[0].si / speeds[1].si - 1 > share;
  if (more.si <= share || !slower) {
    return say.holds({
      place,
      workings: [more],
      message: `${line.name}: the ratio goes from ${ratioWords(then.si)} to ${ratioWords(now.si)}; the propeller turns no slower at rated speed.`,
    });
  }
  return say.fails({
    place,
    workings: [more],
    message:
      `${line.name}: with ${ratioWords(now.si)} instead of ${ratioWords(then.si)} the same vessel speed needs about ` +
      `${percent(more.si)} more engine speed. Tell the owner before the trial.`,
    related: [{ at: kept.line.gear?.ratioUsed?.origin ?? kept.line.origin, message: 'the ratio before' }],
  });
}
