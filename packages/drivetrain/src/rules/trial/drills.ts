import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { Drill, Trial } from '../../model/trial.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { TRIAL_PRACTICE, TRIED, trialName, triedIn } from './trial-specs.js';

const DRILLED = changed(TRIED, [
  '    run Centre at rated speed',
  `    drill loss of control { result as required  remark "engine stopped at the helm, anchor ready" }
    drill full astern { result as required  engine speed 1800 rpm }
    drill stop { result as required  time 14 s  distance 46 m }
    run Centre at rated speed`,
]);

const INFO: RuleInfo = {
  id: 'trial/drills',
  title: 'Loss of control, full astern and a stop were drilled, and went as required',
  mistakes: [],
  severity: 'warning',
  criterion: 'each drill of the trial sheet, and the three that every trial needs',
  source: TRIAL_PRACTICE,
  manual:
    'A gear stuck ahead, a linkage that fell off or a control that failed as set all mean loss of thrust ' +
    'control, and vessels hit the quay that way. Before hand-over the crew therefore practises it: simulates ' +
    'the failure and stops the engine or clutch by the other means, goes full astern, and stops from full ' +
    'speed, with time and distance recorded. Write each as a "drill"; a trial sheet that has one drill, and ' +
    'any trial of a vessel that carries passengers, needs all three.',
  caution: 'Owner, flag and class decide what the trial plan requires.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  examples: examples(() => ({
    failing: changed(DRILLED, [
      'drill full astern { result as required',
      'drill full astern { result not as required',
    ]),
    passing: DRILLED,
    cannotTell: changed(DRILLED, [
      '    drill loss of control { result as required  remark "engine stopped at the helm, anchor ready" }\n',
      '',
    ]),
  })),
};

export const drills: Rule = { ...INFO, scope: 'vessel', check };

const WANTED = ['loss of control', 'full astern', 'stop'] as const;

function check(context: Context): Apart<Verdict> {
  const { vessel } = context;
  return each(vessel.trials ?? [], trial => {
    const run = trial.drills ?? [];
    return apart(
      () => each(run, drill => judge(context, trial, drill)),
      () => {
        const carried = trial.runs.length > 0 && vessel.duty?.passengers?.value === 'carried';
        return run.length > 0 || carried ? notRun(context, trial, run) : undefined;
      },
    );
  });
}

function subjectOf({ vessel }: Context, trial: Trial): string {
  return triedIn(vessel, trial)?.path ?? vessel.name;
}

function judge(context: Context, trial: Trial, drill: Drill): Verdict {
  const say = sayFor(INFO, subjectOf(context, trial));
  const needs = new Needs();
  const name = `${drill.what} in ${trialName(trial)}`;
  const result = needs.fact(drill.result, {
    what: `result of ${name}`,
    host: drill.origin,
    property: 'result',
  });
  if (!result) return waits(say, needs, drill.origin, `Whether ${name} went as required`);
  const seen = [
    ...[drill.engineSpeed, drill.time, drill.distance].flatMap(one => (one ? [one.written] : [])),
    ...(drill.remark?.value ? [`"${drill.remark.value}"`] : []),
  ].join(', ');
  if (result === 'not as required')
    return say.fails({
      place: drill.result!.origin,
      message: `The drill ${name} did not go as required${seen ? ` (${seen})` : ''}. Correct what was found and repeat the drill before hand-over.`,
    });
  return say.holds({
    place: drill.origin,
    message: `The drill ${name} went as required${seen ? `: ${seen}` : ''}.`,
  });
}

function notRun(context: Context, trial: Trial, run: readonly Drill[]): Verdict | undefined {
  const open = WANTED.filter(what => !run.some(one => one.what === what));
  if (open.length === 0) return undefined;
  const needs = new Needs();
  needs.miss({
    what: `the ${open.length > 1 ? 'drills' : 'drill'} ${open.join(', ')} in ${trialName(trial)}`,
    host: trial.origin,
    property: 'drill',
  });
  const say = sayFor(INFO, subjectOf(context, trial));
  return waits(say, needs, trial.origin, 'Whether the crew has control when the controls fail');
}
