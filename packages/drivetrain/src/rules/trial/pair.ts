import { percent } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { TrialPoint } from '../../model/trial.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { possibleModes, wantMode } from './in-modes.js';
import { isOfLine, type PlacedRun, runsOf, TRIAL_PRACTICE, trialName } from './trial-specs.js';

const PAIR = changed(TWIN_LINES, [
  '  arrangement proposed {',
  `  trial "sea trial" dated 2026-02-20 {
    displacement 11.8 t
    bottom clean
    tachometers checked
    direction at the dock proven
    astern and stop recorded
    run Port at part throttle { engine speed 1800 rpm }
    run Starboard at part throttle { engine speed 1815 rpm }
  }

  arrangement proposed {`,
]);

const INFO: RuleInfo = {
  id: 'trial/pair',
  title: 'Engines of a pair run at the same speed under the same lever',
  mistakes: [],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'engine speeds read on the lines of one arrangement at one point, at most 3 % apart',
  source: TRIAL_PRACTICE,
  manual:
    'Two equal lines at equal levers run within 2 or 3 % of each other. Otherwise one of them carries more than ' +
    'its share: check throttle travel first, then the ratio on the plates of both gears, then the pitch of both ' +
    'propellers, measured with one gauge.',
  caution: 'Runs are taken to be at one lever setting when the sheet gives them the same point.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  examples: examples(() => ({
    failing: changed(PAIR, ['engine speed 1815 rpm', 'engine speed 1690 rpm']),
    passing: PAIR,
    cannotTell: changed(PAIR, ['engine speed 1815 rpm', 'engine speed unknown']),
  })),
};

export const trialPair: Rule = { ...INFO, scope: 'vessel', check };

const APART = 0.03;
const POINTS: readonly TrialPoint[] = ['idle ahead', 'part throttle', 'rated speed', 'full throttle'];

function check(context: Context): Apart<Verdict> {
  const runs = runsOf(context);
  return each(context.vessel.trials ?? [], trial =>
    apart(
      () => askedOf(runs.filter(one => one.trial === trial && one.line)),
      () =>
        each(POINTS, point => {
          const at = runs.filter(one => one.trial === trial && one.line && one.run.at?.value === point);
          const lines = new Set(at.map(one => one.line));
          // Several runs of one line at part throttle are not at one lever.
          return lines.size === 2 && at.length === 2 ? judge(context, point, at[0]!, at[1]!) : undefined;
        }),
    ),
  );
}

/** Runs of two lines that do not say at which point: whether they are a pair is open. */
function askedOf(runs: readonly PlacedRun[]): Verdict | undefined {
  const open = runs.filter(one => one.run.at?.value === undefined);
  const [first] = open;
  if (!first || new Set(runs.map(one => one.line)).size < 2) return undefined;
  const needs = new Needs();
  for (const { run, line, trial } of open)
    needs.fact(run.at, {
      what: `point of the run of ${line!.name} in ${trialName(trial)}`,
      host: run.origin,
      property: 'at',
    });
  const say = sayFor(INFO, first.line!.arrangement);
  return waits(say, needs, first.run.origin, 'Whether both engines run at the same speed');
}

function judge(
  { analysisOf }: Context,
  point: TrialPoint,
  one: PlacedRun,
  other: PlacedRun,
): Verdict | undefined {
  const line = one.line!;
  const say = sayFor(INFO, line.arrangement);
  const needs = new Needs();
  const pair = [one, other].filter(isOfLine).map(run => ({ run, modes: possibleModes(run) }));
  const [a, b] = pair.map(({ modes }) => modes.map(({ mode }) => mode?.name));
  // Runs in two modes are no pair.
  const meets = (name: string | undefined) =>
    name === undefined || b!.includes(name) || b!.includes(undefined);
  if (!a!.some(meets)) return undefined;
  for (const { run, modes } of pair) if (modes.length > 1) wantMode(run, modes, needs);
  const [first, second] = [one, other].map(({ run, line: own }) =>
    needs.fact(run.engineSpeed, {
      what: `engine speed of ${own!.name} at ${point} in ${trialName(one.trial)}`,
      host: run.origin,
      property: 'engine speed',
    }),
  );
  if (!first || !second || needs.any)
    return waits(say, needs, one.run.origin, `Whether both engines run at the same speed at ${point}`);
  const apart = Math.max(first.si, second.si) / Math.min(first.si, second.si) - 1;
  const { tell } = analysisOf(line);
  const numbers = `${line.name} ${tell(first)}, ${other.line!.name} ${tell(second)} at ${point} in ${trialName(one.trial)}: ${percent(apart)} apart`;
  return say.within({
    place: other.run.engineSpeed!.origin,
    difference: apart,
    allowed: APART,
    workings: [first, second],
    related: [{ at: one.run.engineSpeed!.origin, message: `${line.name}: ${tell(first)}` }],
    message: `${numbers}.`,
    failMessage: `${numbers}, at most ${percent(APART)} is usual. Compare throttle travel, then the ratios on both plates, then both pitches.`,
  });
}
