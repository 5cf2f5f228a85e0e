import type { Value } from '@tailshaft/mechanics';
import { percent, signedPercent } from '@tailshaft/mechanics';
import type { NewValue } from '@tailshaft/vocabulary';
import { READINGS, readingsOf, type TrialReading } from '../../analysis/trial.js';
import { workedBack } from '../../analysis/trial-back.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { type Apart, each, isSaid } from '../../model/reads.js';
import type { Vessel } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
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
  id: 'trial/prediction',
  title: 'Trial readings agree with the prediction',
  mistakes: [],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'each reading against the prediction of the spec at the engine speed of the run',
  source: TRIAL_PRACTICE,
  manual:
    'A spec states its figures before the trial, so that the trial can confirm or correct them. Shaft speed ' +
    'follows from the engine speed read and the exact ratio: a difference there means that the ratio or a ' +
    'tachometer is not as documented. Vessel speed, engine speed and power at the shaft rest on the speed ' +
    'method, the propeller and the hull. Where a reading is further off than the criterion, find out which ' +
    'of the two is wrong, and correct the spec with what was measured. Where the speed was read, the ratio ' +
    'of the resistance on trial to that of the method is offered as an "assume resistance correlation" line ' +
    'for the next prediction.',
  caution:
    'A prediction is no better than its method, and a reading no better than its instrument and the day.',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial or a better prediction settles it.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(TRIED, ['shaft speed 1128 rpm', 'shaft speed 913 rpm']),
    passing: TRIED,
    cannotTell: changed(TRIED, ['shaft speed 1128 rpm', 'shaft speed unknown']),
  })),
};

export const trialPrediction: Rule = { ...INFO, scope: 'vessel', check };

/** Where the criteria choose none; common practice. */
const USUAL = 0.05;

function check(context: Context): Apart<Verdict> {
  const criterion = wanted(context.vessel);
  return each(runsOf(context), one =>
    // What is read out of gear has a check of its own.
    isOfLine(one) && one.run.at?.value !== 'no load'
      ? each(READINGS, (what, index) =>
          inItsModes(
            one,
            sayFor(INFO, subjectOf(one, what)),
            `whether the ${what} reading agrees with the prediction`,
            mode => {
              const reading = readingsOf(mode.run, context.analysisOf(mode.line))[index]!();
              const told = reading && (reading.predicted || reading.missing.length > 0);
              return told ? judge(context, mode, reading, criterion) : undefined;
            },
            // By the ratio alone, whatever drives.
            what === 'shaft speed' && isSaid(() => one.run.engineSpeed) ? 'wholly' : 'not',
          ),
        )
      : undefined,
  );
}

/** Each reading is a subject of its own: what is read elsewhere says nothing of one that is left open. */
function subjectOf({ run, line }: RunOfLine, what: string): string {
  return `${line.path}.${`${run.at?.value ?? 'run'} ${what}`.replaceAll(' ', '-')}`;
}

function judge(
  context: Context,
  one: RunOfLine,
  { what, measured, predicted, missing, difference, origin }: TrialReading,
  { share, criterion }: Wanted,
): Verdict {
  const { analysisOf } = context;
  const { trial, run, line } = one;
  const say = sayFor(INFO, subjectOf(one, what));
  const { tell } = analysisOf(line!);
  const where = `${what} of ${line!.name}${run.at?.value ? ` at ${run.at.value}` : ''} in ${trialName(trial)}`;
  const needs = new Needs();
  if (!measured) needs.miss({ what: where, host: run.origin, property: what }, origin);
  needs.take({ value: undefined, missing });
  // A shaft speed is held against the engine speed of the same run, whatever the bottom was like.
  if (what !== 'shaft speed')
    wantFit(trial, needs, what === 'speed' ? 'speed of the vessel' : 'speed of rotation');
  if (!measured || !predicted || !difference || needs.any) {
    return waits(
      say,
      needs,
      origin,
      `${line!.name}: whether the ${what} reading agrees with the prediction`,
      {
        criterion,
      },
    );
  }
  const off = difference.si;
  const numbers = `${where}: ${tell(measured)} read, ${tell(predicted)} predicted, ${differenceWords(off)}`;
  return say.within({
    place: origin,
    criterion,
    difference: off,
    allowed: share,
    workings: [predicted, difference],
    message: `${numbers}.`,
    ...(what === 'speed' ? { routes: () => correlationRoutes(context, one) } : {}),
    failMessage: `${numbers}; at most ${percent(share)} is required. ${ADVICE[what] ?? ADVICE.speed}`,
  });
}

/**
 * The share that this trial gives, as an assumption of the next prediction. Where power was read as well as speed, the hull is
 * calibrated by both: then the wake that the power gives goes with it.
 */
function correlationRoutes({ vessel, analysisOf }: Context, { trial, run, line }: PlacedRun): Route[] {
  const { correlation, byPower } = workedBack(run, analysisOf(line!));
  const known = vessel.assumptions.find(one => one.about === CORRELATION);
  const because = `${trial.name}${trial.dated ? `, ${trial.dated}` : ''}, ${line!.name} at ${run.at?.value ?? 'its run'}`;
  const assume = (share: Value<'ratio'>): ModelEdit | undefined => {
    const figure = Number(share.si.toFixed(2));
    // A share far from one is no correlation of the hull: something else is wrong.
    if (figure < 0.7 || figure > 1.5) return undefined;
    const value = asShare(figure);
    return known?.quantity
      ? { do: 'replace', at: known.quantity.origin, value }
      : { do: 'assume', vessel: vessel.origin, assumption: { about: CORRELATION, value, because } };
  };
  const routes: Route[] = [];
  const both = byPower && assume(byPower.correlation);
  const wake = byPower?.wakeFraction.si ?? Number.NaN;
  if (both && vessel.hull && wake > -0.1 && wake < 0.5)
    routes.push({
      title: `Assume ${CORRELATION} ${byPower.correlation.si.toFixed(2)} with a wake fraction of ${wake.toFixed(3)}, by the speed and power read: the next prediction of this vessel then starts from this trial`,
      kind: 'corrects the record',
      edits: [
        both,
        {
          do: 'set',
          host: vessel.hull.origin,
          property: 'wake fraction',
          value: {
            is: 'quantity',
            quantity: { dimension: 'ratio', si: Number(wake.toFixed(3)), decimals: 3 },
          },
        },
      ],
    });
  const alone = correlation && assume(correlation);
  if (alone)
    routes.push({
      title: `Assume ${CORRELATION} ${correlation.si.toFixed(2)}: the next prediction of this vessel then starts from this trial`,
      kind: 'corrects the record',
      edits: [alone],
    });
  return routes;
}

function asShare(si: number): NewValue {
  return { is: 'quantity', quantity: { dimension: 'ratio', si, decimals: 2 } };
}

const CORRELATION = 'resistance correlation';

/** `+2.1 %`, and no sign to what rounds to nothing. */
export function differenceWords(share: number): string {
  const words = signedPercent(share);
  return words === '0 %' ? 'no difference' : words;
}

const ADVICE: Readonly<Record<string, string>> = {
  'shaft speed':
    'The exact ratio links shaft and engine speed: read the gear plate again, and check both tachometers with a counter.',
  'engine speed': 'Check tachometer, throttle travel and governor, then the load, before the propeller.',
  speed:
    'Check that course, current, depth and load match the prediction, then correct the hull data from the measurements.',
};

interface Wanted {
  readonly share: number;
  readonly criterion: Criterion;
}

function wanted(vessel: Vessel): Wanted {
  const own = vessel.criteria?.trialDifference?.value;
  const share = own?.si ?? USUAL;
  return {
    share,
    criterion: {
      said: `${INFO.criterion}, at most ${own?.written ?? percent(share)} apart${own ? '' : ' (common practice, no source)'}`,
      chosenBy: own ? 'author' : 'default',
    },
  };
}
