import type { Context } from '../../judge/context.js';
import type { Needs } from '../../judge/needs.js';
import type { Trial, TrialRun } from '../../model/trial.js';
import type { Arrangement, ShaftLine, Vessel } from '../../model/vessel.js';
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

/** The line is one of the arrangement that was tried. */
export const isOfLine = (one: PlacedRun): one is PlacedRun & { readonly line: ShaftLine } =>
  one.line !== undefined;

/** Every run of every trial, on the lines of the arrangement that was tried and of no other. */
export function runsOf({ vessel }: Pick<Context, 'vessel'>): PlacedRun[] {
  return (vessel.trials ?? []).flatMap(trial => {
    const tried = triedIn(vessel, trial);
    return trial.runs.map(run => ({
      trial,
      run,
      line: tried?.lines.find(one => one.name === run.line),
    }));
  });
}

/** The arrangement that a trial says it is of; the only one where there is one. */
export function triedIn(
  { arrangements }: Pick<Vessel, 'arrangements'>,
  { of }: Trial,
): Arrangement | undefined {
  if (of !== undefined) return arrangements.find(one => one.name === of);
  return arrangements.length === 1 ? arrangements[0] : undefined;
}

/** What keeps readings of a trial from saying anything of the spec: then no rule concludes from them. */
export function wantFit(
  trial: Trial,
  needs: Needs,
  reading: 'speed of the vessel' | 'speed of rotation',
): void {
  const name = trialName(trial);
  const bottom = needs.fact(trial.bottom, {
    what: `state of the bottom in ${name}`,
    host: trial.origin,
    property: 'bottom',
  });
  if (bottom === 'foul')
    needs.miss(
      {
        what: `readings of ${name} with a clean bottom: it was foul`,
        host: trial.origin,
        property: 'bottom',
      },
      trial.bottom!.origin,
    );
  if (reading === 'speed of the vessel') return;
  const tachometers = needs.fact(trial.tachometers, {
    what: `whether the tachometers of ${name} were checked`,
    host: trial.origin,
    property: 'tachometers',
  });
  if (tachometers === 'not checked')
    needs.miss(
      {
        what: `readings of ${name} with checked tachometers: they were not`,
        host: trial.origin,
        property: 'tachometers',
      },
      trial.tachometers!.origin,
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
