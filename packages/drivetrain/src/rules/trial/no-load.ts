import { percent } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { inItsModes, type RunOfLine } from './in-modes.js';
import { isOfLine, runsOf, TRIAL_PRACTICE, TRIED, trialName } from './trial-specs.js';

const UNLOADED = changed(TRIED, [
  '    run Centre at rated speed',
  '    run Centre at no load { engine speed 2520 rpm  throttle at its stop }\n    run Centre at rated speed',
]);

const INFO: RuleInfo = {
  id: 'trial/no-load',
  title: 'Out of gear at full throttle the engine reaches its high idle',
  mistakes: [],
  severity: 'warning',
  overModes: 'asks every mover',
  estimate: USUAL_ESTIMATE,
  criterion: 'engine speed read at no load against high idle, at most 2 % apart (common practice, no source)',
  source: TRIAL_PRACTICE,
  manual:
    'Out of gear there is no propeller, no hull and no ratio: an engine short of high idle there has a ' +
    'governor, throttle travel or tachometer fault, and load plays no part. The run therefore separates ' +
    'these three from load: where no-load speed is right, a low speed in gear comes from load, fuel or air. ' +
    'Run it warm and briefly, with the pump lever seen at its stop, before the runs in gear.',
  caution:
    'Some makers forbid or limit running at high idle without load, and electronic governors may cap it: ask.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  examples: examples(() => ({
    failing: changed(UNLOADED, ['engine speed 2520 rpm', 'engine speed 2390 rpm']),
    passing: UNLOADED,
    cannotTell: changed(UNLOADED, ['engine speed 2520 rpm', 'engine speed unknown']),
  })),
};

export const noLoad: Rule = { ...INFO, scope: 'vessel', check };

const ALLOWED = 0.02;

function check(context: Context): Apart<Verdict> {
  return each(runsOf(context), one =>
    isOfLine(one) && one.run.at?.value === 'no load'
      ? inItsModes(one, sayFor(INFO, one.line.path), REACHES, mode => judge(context, mode), 'if it fails')
      : undefined,
  );
}

const REACHES = 'whether it reaches its high idle without load';

function judge({ analysisOf }: Context, { trial, run, line }: RunOfLine): Verdict {
  const say = sayFor(INFO, line!.path);
  const analysis = analysisOf(line!);
  const needs = new Needs();
  const read = needs.fact(run.engineSpeed, {
    what: `engine speed of ${line!.name} at no load in ${trialName(trial)}`,
    host: run.origin,
    property: 'engine speed',
  });
  const high = needs.take(analysis.governedSpeed);
  if (!read || !high)
    return waits(
      say,
      needs,
      run.origin,
      `${line!.name}: whether the engine reaches its high idle without load`,
    );
  const off = read.si / high.si - 1;
  const numbers = `${line!.name} ran ${analysis.tell(read)} at no load in ${trialName(trial)}, high idle is ${analysis.tell(high)}`;
  const size = percent(Math.abs(off));
  const first =
    trial.tachometers?.value === 'checked'
      ? 'The tachometer was checked, so look at governor setting and throttle travel'
      : 'Hold the tachometer against a counter first, then look at governor setting and throttle travel';
  return say.within({
    place: run.engineSpeed!.origin,
    difference: off,
    allowed: ALLOWED,
    workings: [read, high],
    message: `${numbers}: ${off === 0 ? 'no difference' : `${size} apart`}. This confirms governor, throttle travel and tachometer.`,
    failMessage: `${numbers}: ${size} ${off < 0 ? 'short' : 'over'}, and load plays no part in it. ${first}; nothing read in gear points to the propeller until that is corrected.`,
  });
}
