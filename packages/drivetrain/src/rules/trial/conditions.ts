import { percent } from '@tailshaft/mechanics';
import { laterThanTrial } from '../../analysis/order-of-days.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact } from '../../model/fact.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { Trial } from '../../model/trial.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { possibleModes } from './in-modes.js';
import { isOfLine, runsOf, TRIAL_PRACTICE, TRIED, trialName, triedIn } from './trial-specs.js';

const INFO: RuleInfo = {
  id: 'trial/conditions',
  title: 'The trial was run in a state that allows its readings to be judged',
  mistakes: [],
  severity: 'warning',
  criterion:
    'loaded as in the spec, bottom clean, tachometers checked, direction proven at the dock, astern and stop ' +
    'recorded; dated after the survey of what it replaces, and after the documents of its parts',
  source: TRIAL_PRACTICE,
  manual:
    'Readings are meaningful only with the state they were taken in. A trial run light, or with a foul bottom, ' +
    'tells little about the loaded vessel; an unchecked tachometer makes a good propeller look wrong. That the ' +
    'lever ahead drives ahead, each side alone and from every station, is proven at the dock before departure; ' +
    'astern and a stop are run and recorded. What is not stated is listed as missing; what was not as required is a finding: run it again, or accept it with the reason.',
  caution: 'No reading is corrected for load, bottom or weather here: such corrections would be invented.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial settles it.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(TRIED, ['astern and stop recorded', 'astern and stop not recorded']),
    passing: TRIED,
    cannotTell: changed(TRIED, ['    tachometers checked\n', '']),
  })),
};

export const trialConditions: Rule = { ...INFO, scope: 'vessel', check };

/** Within this much of the displacement that the hull declares, the vessel counts as loaded; common practice. */
const LOADED = 0.03;

function check(context: Context): Apart<Verdict> {
  const trials = context.vessel.trials ?? [];
  return apart(
    () => each(trials, trial => judge(context, trial)),
    () => each(trials, trial => each(outOfOrder(context, trial), one => one)),
  );
}

/** What the vessel rests on, and is dated after it was tried. */
function outOfOrder({ vessel }: Context, trial: Trial): Verdict[] {
  const tried = triedIn(vessel, trial);
  const say = sayFor(INFO, vessel.name);
  return (tried ? laterThanTrial(trial, tried) : []).map(({ fact, date, words, grave }) => {
    const what = `${words} ${fact.written}`;
    return say.fails({
      place: trial.origin,
      severity: grave ? 'warning' : 'note',
      related: [{ at: fact.origin, message: what }],
      message: grave
        ? `${trialName(trial)} is dated ${trial.dated}, and what it replaces was measured aboard on ${date} (${what}): one of the two dates is wrong.`
        : `${trialName(trial)} is dated ${trial.dated}, before ${what} of ${date}: say whether what was tried is what this document describes, or name the issue it was built to.`,
    });
  });
}

function judge(context: Context, trial: Trial): Verdict {
  const { vessel, today } = context;
  const say = sayFor(INFO, vessel.name);
  const name = trialName(trial);
  const needs = new Needs();
  const fact = <T>(one: Fact<T> | undefined, what: string, property: string): T | undefined =>
    needs.fact(one, { what: `${what} in ${name}`, host: trial.origin, property });
  const mass = fact(trial.displacement, 'displacement', 'displacement');
  const bottom = fact(trial.bottom, 'state of the bottom', 'bottom');
  const tachometers = fact(trial.tachometers, 'whether the tachometers were checked', 'tachometers');
  const dock = fact(trial.dockDirection, 'direction at the dock', 'direction at the dock');
  const stop = fact(trial.sternAndStop, 'astern and stopping run', 'astern and stop');
  const loaded = vessel.hull?.displacement?.value;
  const light = mass && loaded && mass.si / loaded.si - 1;
  const tried = triedIn(vessel, trial);
  if (!tried)
    needs.miss({
      what: `which arrangement ${name} was run with`,
      host: trial.origin,
      property: 'of',
    });
  const strangers = tried ? runsOf(context).filter(one => one.trial === trial && !one.line) : [];
  const elsewhere = runsOf(context).filter(
    one => one.trial === trial && isOfLine(one) && possibleModes(one).length === 0,
  );
  if (trial.runs.length === 0)
    needs.miss({ what: `a run with its readings in ${name}`, host: trial.origin, property: 'run' });
  const wrong = [
    ...(trial.dated !== undefined && trial.dated > today
      ? [`it is dated ${trial.dated}, which is still to come`]
      : []),
    ...(light !== undefined && light < -LOADED
      ? [
          `the vessel was run light, ${trial.displacement!.written} against ${vessel.hull!.displacement!.written} (${percent(light)}): engine speed falls when loaded`,
        ]
      : []),
    ...(bottom === 'foul' ? ['the bottom was foul'] : []),
    ...(tachometers === 'not checked' ? ['no tachometer was checked against an independent counter'] : []),
    ...(dock === 'not proven'
      ? ['it was not proven at the dock that lever ahead drives ahead, each side and from every station']
      : []),
    ...(stop === 'not recorded' ? ['no astern and stopping run was recorded'] : []),
    ...strangers.map(
      ({ run }) => `it has a run of ${run.line}, and the arrangement that was tried has no line of that name`,
    ),
    ...elsewhere.map(
      ({ run }) => `it has a run of ${run.line} in mode ${run.mode!.written}, and that line has no such mode`,
    ),
  ];
  if (wrong.length > 0) {
    const at = [trial.bottom, trial.tachometers, trial.dockDirection, trial.sternAndStop].find(
      one => one?.value === 'foul' || one?.value?.startsWith('not '),
    );
    return say.fails({
      place:
        at?.origin ??
        [...strangers, ...elsewhere][0]?.run.origin ??
        trial.displacement?.origin ??
        trial.origin,
      message: `${name}: ${wrong.join('; ')}. Repeat the trial in the required state, or accept it and state why its readings are valid.`,
    });
  }
  if (needs.any) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? trial.origin,
      message: cannotTellWords(`what the readings of ${name} show`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  return say.holds({
    place: trial.origin,
    message: `${name} was run at ${trial.displacement!.written}, clean, with checked tachometers, direction proven, astern and stop recorded.`,
  });
}
