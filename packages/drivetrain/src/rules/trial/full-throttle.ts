import { percent } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import { motorLimits } from '../../analysis/motor-limits.js';
import { spansOf, valuesOf, type WorkedBack, workedBack } from '../../analysis/trial-back.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { causesOf } from './causes.js';
import { inItsModes, type RunOfLine } from './in-modes.js';
import {
  isOfLine,
  type PlacedRun,
  runsOf,
  TRIAL_PRACTICE,
  TRIED,
  trialName,
  wantFit,
} from './trial-specs.js';

const INFO: RuleInfo = {
  id: 'trial/full-throttle',
  title: 'At full throttle the engine reaches rated speed and stays below its governor',
  mistakes: [],
  severity: 'error',
  criterion: 'engine speed read at full throttle, from 1 % under rated speed to 5 % over it',
  source: TRIAL_PRACTICE,
  manual:
    'The trial proves the propeller: loaded and clean, the engine must reach rated speed at full throttle, ' +
    'or slightly more. Below rated speed something holds the engine back. Causes are listed in the order that the readings suggest. A run at no load separates tachometer, ' +
    'governor and throttle travel from load; engine and shaft speeds in the exact ratio confirm the gear ' +
    'plate; no smoke points away from overload. Causes without a reading follow in the usual order, the propeller last. Scaled by ' +
    'the propeller law, the run also gives the ratio, pitch or diameter that would have reached rated speed, ' +
    'as a range. An engine that runs into its governor has too light a propeller, unless that is a reserve ' +
    'for growth and fouling: then accept the finding with that reason.',
  caution:
    'A low reading does not point to the propeller by itself: most causes are found earlier in the list.',
  limitOf: 'the speed that the maker rates',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(TRIED, ['engine speed 2310 rpm', 'engine speed 2150 rpm']),
    passing: TRIED,
    cannotTell: changed(TRIED, ['engine speed 2310 rpm', 'engine speed unknown']),
  })),
};

export const fullThrottle: Rule = { ...INFO, scope: 'vessel', check };

const READING = 0.01;
const LIGHT = 0.05;

function check(context: Context): Apart<Verdict> {
  const runs = runsOf(context);
  return each(runs, one =>
    isOfLine(one) && one.run.at?.value === 'full throttle'
      ? inItsModes(
          one,
          sayFor(INFO, one.line.path),
          REACHES,
          mode => judge(context, mode, runs),
          'if it fails',
        )
      : undefined,
  );
}

const REACHES = 'whether it reaches its rated speed';

function judge({ analysisOf }: Context, one: RunOfLine, runs: readonly PlacedRun[]): Verdict {
  const { trial, run, line } = one;
  const say = sayFor(INFO, line!.path);
  const analysis = analysisOf(line!);
  const needs = new Needs();
  const read = needs.fact(run.engineSpeed, {
    what: `engine speed of ${line!.name} at full throttle in ${trialName(trial)}`,
    host: run.origin,
    property: 'engine speed',
  });
  const rated = needs.take(analysis.rated);
  // A motor gives its power over a range of speeds, from where its torque reaches it up to its top speed.
  const byMotor = line!.engine === undefined && line!.motor !== undefined;
  const limits = rated && motorLimits(line!, rated);
  wantFit(trial, needs, 'speed of rotation');
  if (!read || !rated || needs.any)
    return waits(
      say,
      needs,
      run.origin,
      `${line!.name}: whether the ${byMotor ? 'motor' : 'engine'} reaches its rated speed`,
    );
  const from = limits?.from ?? rated.speed;
  const isRated = from.si === rated.speed.si;
  const reached = `${line!.name} reached ${analysis.tell(read)}`;
  const numbers = isRated
    ? `${reached} of ${analysis.tell(from)} at full throttle in ${trialName(trial)}`
    : `${reached} at full throttle in ${trialName(trial)}; its motor gives ${analysis.tell(limits!.power)} from ${analysis.tell(from)} up`;
  // Below rated speed and above that from which it gives its power, a motor is neither short nor over.
  const off =
    isRated || read.si < from.si ? read.si / from.si - 1 : Math.max(read.si / rated.speed.si - 1, 0);
  const said = { place: run.engineSpeed!.origin, workings: [read, from] };
  if (off < -READING) {
    const { order, reasons } = causesOf(one, runs, analysis, 'short');
    const back = workedBack(run, analysis);
    return say.fails({
      ...said,
      workings: [read, from, ...valuesOf(back)],
      message: `${numbers}: ${percent(-off)} short of ${isRated ? 'rated speed' : 'that'}. ${order}.${reasons}${isRated ? wordsOfBack(back, analysis) : ''}`,
    });
  }
  const governed = analysis.governedSpeed.value;
  if ((off > LIGHT && !byMotor) || (governed && read.si >= governed.si * (1 - READING))) {
    const { order, reasons } = causesOf(one, runs, analysis, 'over');
    return say.fails({
      ...said,
      severity: 'warning',
      message: `${numbers}: ${percent(off)} over, ${governed ? `near its ${byMotor ? 'top speed' : 'governor'} at ${analysis.tell(governed)}, ` : ''}more than a loaded ${byMotor ? 'motor' : 'engine'} reaches. ${order}; reserve meant for growth is accepted.${reasons}`,
    });
  }
  const how =
    Math.abs(off) < 5e-4
      ? isRated
        ? 'as rated'
        : 'within its range'
      : `${percent(Math.abs(off))} ${off < 0 ? 'under, within what a tachometer shows' : 'over'}`;
  return say.holds({ ...said, message: `${numbers}: ${how}.` });
}

/** What would have brought rated speed, where the run says so: a range, and only where the engine was let give its power. */
function wordsOfBack(back: WorkedBack, analysis: LineAnalysis): string {
  const spans = spansOf(back, analysis);
  if (!back.demand || spans.length === 0) return '';
  const asked = `${percent(back.demand.low.si)} to ${percent(back.demand.high.si)}`;
  return ` If the engine gave its full-load power there, the propeller would absorb ${asked} of rated power at rated speed, scaled by the propeller law (${back.range}); ${spans.join(', or ')} would have reached rated speed, with nothing else changed.`;
}
