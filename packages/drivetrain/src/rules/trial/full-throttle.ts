import { percent } from '../../analysis/telling.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { type PlacedRun, runsOf, TRIAL_PRACTICE, TRIED, trialName, wantFit } from './trial-specs.js';

const INFO: RuleInfo = {
  id: 'trial/full-throttle',
  title: 'At full throttle the engine reaches rated speed and stays below its governor',
  mistakes: [],
  severity: 'error',
  criterion: 'engine speed read at full throttle, from 1 % under rated speed to 5 % over it',
  source: TRIAL_PRACTICE,
  manual:
    'The trial proves the propeller: loaded and clean, the engine must reach rated speed at full throttle, or ' +
    'slightly more. Below rated speed something holds the engine back. Check the tachometer first, then throttle ' +
    'travel, fuel and air, then hull and load, the ratio on the gear plate, and the propeller last. An engine ' +
    'that runs into its governor has too light a propeller, unless that is a reserve for growth and fouling: ' +
    'then accept the finding with that reason.',
  caution:
    'A low reading does not point to the propeller by itself: most causes are found earlier in the list.',
  noCure: 'Only a repeat trial after the correction settles it.',
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
  return each(runsOf(context), one =>
    one.line && one.run.at?.value === 'full throttle' ? judge(context, one) : undefined,
  );
}

function judge({ analysisOf }: Context, { trial, run, line }: PlacedRun): Verdict {
  const say = sayFor(INFO, line!.path);
  const analysis = analysisOf(line!);
  const needs = new Needs();
  const read = needs.fact(run.engineSpeed, {
    what: `engine speed of ${line!.name} at full throttle in ${trialName(trial)}`,
    host: run.origin,
    property: 'engine speed',
  });
  const rated = needs.take(analysis.rated);
  wantFit(trial, needs, 'speed of rotation');
  if (!read || !rated || needs.any)
    return waits(say, needs, run.origin, `${line!.name}: whether the engine reaches its rated speed`);
  const off = read.si / rated.speed.si - 1;
  const numbers = `${line!.name} reached ${analysis.tell(read)} of ${analysis.tell(rated.speed)} at full throttle in ${trialName(trial)}`;
  const said = { place: run.engineSpeed!.origin, workings: [read, rated.speed] };
  if (off < -READING) {
    return say.fails({
      ...said,
      message: `${numbers}: ${percent(-off)} short of rated speed. Look, in this order, at tachometer, throttle travel, fuel and air, hull and load, the ratio on the plate of the gear, and the propeller last.`,
    });
  }
  const governed = analysis.governedSpeed.value;
  if (off > LIGHT || (governed && read.si >= governed.si * (1 - READING))) {
    return say.fails({
      ...said,
      severity: 'warning',
      message: `${numbers}: ${percent(off)} over, ${governed ? `near its governor at ${analysis.tell(governed)}, ` : ''}more than a loaded engine reaches. Look, in this order, at tachometer, governor setting, load, the ratio on the plate of the gear, and the propeller last; reserve meant for growth is accepted.`,
    });
  }
  const how =
    Math.abs(off) < 5e-4
      ? 'as rated'
      : `${percent(Math.abs(off))} ${off < 0 ? 'under, within what a tachometer shows' : 'over'}`;
  return say.holds({ ...said, message: `${numbers}: ${how}.` });
}
