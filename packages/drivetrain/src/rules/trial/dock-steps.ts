import { turnFromAft } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, apart, each, isSaid } from '../../model/reads.js';
import type { DockStep, Trial } from '../../model/trial.js';
import type { Arrangement, ShaftLine } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { TRIAL_PRACTICE, TRIED, trialName, triedIn } from './trial-specs.js';

const STEPPED = changed(TRIED, [
  '    run Centre at rated speed',
  `    dock Centre {
      station "wheelhouse"
      with lever ahead pulls ahead
      with lever astern pulls astern
      neutral no drive
      shaft turns clockwise
    }
    run Centre at rated speed`,
]);

const INFO: RuleInfo = {
  id: 'trial/dock-steps',
  title: 'Each line drives the way of its lever, from each station',
  mistakes: [],
  severity: 'error',
  overModes: 'fails in any',
  criterion:
    'lever ahead pulls ahead, lever astern pulls astern, neutral drives nothing, for each line and station',
  source: TRIAL_PRACTICE,
  manual:
    'At the dock, made fast and at low power, each line is tried alone from every station: this is the ' +
    'cheapest place to find crossed cables, a wrong hand, a pump set for the other rotation or a station ' +
    'wired backwards. Write one "dock" step for each line and station, with the turning sense of the shaft ' +
    'seen from aft: it is compared with the sense that follows from the spec. Where the helm declares its ' +
    'stations, each of them needs a step.',
  caution: 'A step proves cable and hand as they were that day: repeat it after any work on the controls.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  examples: examples(() => ({
    failing: changed(STEPPED, ['lever ahead pulls ahead', 'lever ahead pulls astern']),
    passing: STEPPED,
    cannotTell: changed(STEPPED, ['      with lever astern pulls astern\n', '']),
  })),
};

export const dockSteps: Rule = { ...INFO, scope: 'vessel', check };

function check(context: Context): Apart<Verdict> {
  return each(context.vessel.trials ?? [], trial => {
    const tried = triedIn(context.vessel, trial);
    const steps = trial.docks ?? [];
    if (!tried || steps.length === 0) return undefined;
    return apart(
      () => each(steps, step => judge(context, trial, tried, step)),
      () => notRun(context, trial, tried, steps),
    );
  });
}

function judge(context: Context, trial: Trial, tried: Arrangement, step: DockStep): Verdict | undefined {
  const line = tried.lines.find(one => one.name === step.line);
  const say = sayFor(INFO, line?.path ?? tried.path);
  const from = step.station?.value ? ` from ${step.station.value}` : '';
  const name = `${step.line}${from} in ${trialName(trial)}`;
  if (!line)
    return say.fails({
      place: step.origin,
      message: `${name}: the arrangement that was tried has no line of that name. Write the name of the line that was run.`,
    });
  const needs = new Needs();
  const ask = <T>(fact: DockStep[keyof DockStep] & object, what: string, property: string) =>
    needs.fact(fact as never, { what: `${what} of ${name}`, host: step.origin, property }) as T | undefined;
  const ahead = ask<string>(step.ahead as object, 'what lever ahead did', 'with lever ahead');
  const astern = ask<string>(step.astern as object, 'what lever astern did', 'with lever astern');
  const neutral = ask<string>(step.neutral as object, 'what neutral did', 'neutral');
  // Whoever did not look which way the shaft turned says nothing of it.
  const turned = isSaid(() => step.shaftTurns)
    ? ask<string>(step.shaftTurns as object, 'the way that the shaft turned', 'shaft turns')
    : undefined;
  const wanted = turned && turnOf(context, line, needs);
  const wrong = [
    ...(ahead && ahead !== 'pulls ahead' ? [`lever ahead ${ahead}`] : []),
    ...(astern && astern !== 'pulls astern' ? [`lever astern ${astern}`] : []),
    ...(neutral === 'drives' ? ['neutral drives'] : []),
    ...(turned && wanted && turned !== wanted
      ? [`the shaft turns ${turned} ahead, seen from aft, and the spec works out ${wanted}`]
      : []),
  ];
  if (wrong.length > 0)
    return say.fails({
      place: (ahead && ahead !== 'pulls ahead' ? step.ahead : undefined)?.origin ?? step.origin,
      message: `${name}: ${wrong.join('; ')}. Do not leave the dock: find the crossed cable, wrong hand or wrong pump setting, and run the step again.`,
    });
  if (needs.any)
    return waits(say, needs, step.origin, `${name}: whether the line drives the way its lever is put`);
  return say.holds({
    place: step.origin,
    message: `${name}: ahead, astern and neutral do what the lever says${wanted ? `, and the shaft turns ${wanted} ahead` : ''}.`,
  });
}

/** The way that the shaft should turn with the lever ahead, seen from aft. */
function turnOf({ analysisOf }: Context, line: ShaftLine, needs: Needs): string | undefined {
  const { ahead: sense, missing } = analysisOf(line).rotation;
  if (sense === undefined) needs.take({ value: undefined, missing });
  return sense && turnFromAft(sense);
}

/** A line, or a station of the helm, that no step was run for. */
function notRun(
  { vessel }: Context,
  trial: Trial,
  tried: Arrangement,
  steps: readonly DockStep[],
): Verdict | undefined {
  const stations = (vessel.helm?.stations ?? []).map(one => one.name);
  const open = tried.lines.flatMap(({ name }) => {
    const of = steps.filter(one => one.line === name);
    if (of.length === 0) return [`a step of ${name}`];
    return stations
      .filter(station => !of.some(one => one.station?.value?.toLowerCase() === station.toLowerCase()))
      .map(station => `a step of ${name} from ${station}`);
  });
  if (open.length === 0) return undefined;
  const needs = new Needs();
  needs.miss({ what: `${open.join('; ')} in ${trialName(trial)}`, host: trial.origin, property: 'dock' });
  return waits(
    sayFor(INFO, tried.path),
    needs,
    trial.origin,
    'Whether every line drives the way its lever is put, from every station',
  );
}
