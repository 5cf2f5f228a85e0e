import type { Context } from '../../judge/context.js';
import { proposalsOf } from '../../model/as-found.js';
import type { Trial, TrialRun } from '../../model/trial.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';

/** A trial whose conditions are all stated, with readings that the spec bears out. */
export const TRIED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  `  trial "sea trial" dated 2026-02-20 {
    displacement 11.8 t
    bottom clean
    tachometers checked
    water depth 14 m
    direction at the dock proven
    astern and stop recorded
    run Centre at rated speed { engine speed 2300 rpm  shaft speed 1128 rpm }
    run Centre at full throttle { engine speed 2310 rpm }
  }

  arrangement proposed {`,
]);

/** A run of a trial with the line of the arrangement to be built that it was read on. */
export interface PlacedRun {
  readonly trial: Trial;
  readonly run: TrialRun;
  readonly line: ShaftLine | undefined;
}

/** Every run of every trial. */
export function runsOf({ vessel }: Pick<Context, 'vessel'>): PlacedRun[] {
  const lines = proposalsOf(vessel).flatMap(one => one.lines);
  return (vessel.trials ?? []).flatMap(trial =>
    trial.runs.map(run => ({ trial, run, line: lines.find(one => one.name === run.line) })),
  );
}

/** `Trial "sea trial"`, as messages begin. */
export function trialName({ name }: Trial): string {
  return name ? `"${name}"` : 'the trial';
}

export const TRIAL_PRACTICE = {
  title: 'sea-trial sheets as yards, surveyors and engine dealers keep them, no source',
  confidence: 'common practice',
} as const;
