import type { Value } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { type Apart, each } from '../../model/reads.js';
import type { TrialPoint, TrialRun } from '../../model/trial.js';
import type { Requirement } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { modeRoutes, possibleModes, type RunOfLine, wantMode } from './in-modes.js';
import { isOfLine, type PlacedRun, runsOf, TRIED, trialName, wantFit } from './trial-specs.js';

const REQUIRED = changed(TRIED, [
  '  trial "sea trial"',
  '  require shaft speed at most 1200 rpm at rated power "silencing note 4"\n  trial "sea trial"',
]);

const INFO: RuleInfo = {
  id: 'trial/requirement',
  title: 'Every required quantity was met on trial',
  mistakes: [],
  severity: 'error',
  criterion: 'the reading at the point that a requirement names, against its bound',
  source: { title: 'the requirement itself, by whoever set it', confidence: 'common practice' },
  manual:
    'A computed figure that meets a requirement is only a prediction; the owner accepts the vessel on trial. ' +
    'Where a trial reads speed or shaft speed at the point that a requirement names, the reading is compared ' +
    'with it and shown beside the prediction on the sheet. Where it is not met, check the trial conditions ' +
    'first.',
  caution: 'A reading is judged as recorded: nothing is corrected for load, bottom, wind or depth.',
  limitOf: 'the owner’s requirement',
  noFigure: 'a reading of a trial',
  noCure: 'Only a repeat trial after the correction settles it.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(REQUIRED, ['at most 1200 rpm', 'at most 1127 rpm']),
    passing: REQUIRED,
    cannotTell: changed(REQUIRED, ['shaft speed 1128 rpm', 'shaft speed unknown']),
  })),
};

export const trialRequirement: Rule = { ...INFO, scope: 'vessel', check };

const POINTS: Readonly<Record<string, TrialPoint>> = {
  'full power': 'full throttle',
  'full throttle': 'full throttle',
  'rated power': 'rated speed',
  'idle ahead': 'idle ahead',
  idle: 'idle ahead',
};

function check(context: Context): Apart<Verdict> {
  return each(context.vessel.requirements, requirement => {
    const point = POINTS[requirement.condition ?? ''];
    if (!point) return undefined;
    return each(runsOf(context), one => {
      const reading = one.line && one.run.at?.value === point ? readingFor(requirement, one.run) : undefined;
      return reading && isOfLine(one) ? ofItsMode(context, requirement, one, reading) : undefined;
    });
  });
}

/** A requirement that names no mode speaks of the plainest one, as everywhere. */
function ofItsMode(
  context: Context,
  requirement: Requirement,
  one: RunOfLine,
  reading: Quantity,
): Verdict | undefined {
  const modes = possibleModes(one);
  const wanted = requirement.mode ?? one.line.mode?.name;
  if (!modes.some(({ mode }) => mode?.name === wanted)) return undefined;
  if (modes.length === 1) return judge(context, requirement, one, reading);
  const needs = new Needs();
  wantMode(one, modes, needs);
  return waits(
    sayFor(INFO, one.line.path),
    needs,
    one.run.origin,
    `${one.line.name}: whether the trial met "${requirement.written}"`,
    {
      related: [{ at: requirement.origin, message: requirement.written }],
      answers: requirement.origin,
      routes: () => [...modeRoutes(one, modes), ...stubRoutes(needs.missing)],
    },
  );
}

function readingFor({ about }: Requirement, run: TrialRun): Quantity | undefined {
  return about === 'speed' ? run.speed : about === 'shaft speed' ? run.shaftSpeed : undefined;
}

function judge(
  { analysisOf }: Context,
  requirement: Requirement,
  { trial, run, line }: PlacedRun,
  reading: Quantity,
): Verdict {
  const say = sayFor(INFO, line!.path);
  const { tell } = analysisOf(line!);
  const needs = new Needs();
  const measured = needs.fact(reading, {
    what: `${requirement.about} of ${line!.name} at ${run.at!.value} in ${trialName(trial)}`,
    host: run.origin,
    property: requirement.about,
  });
  wantFit(trial, needs, requirement.about === 'speed' ? 'speed of the vessel' : 'speed of rotation');
  const required: Value | undefined = requirement.quantity?.value;
  const related = [{ at: requirement.origin, message: requirement.written }];
  const answers = requirement.origin;
  if (!measured || !required || required.dimension !== measured.dimension || needs.any) {
    if (measured && required?.dimension !== measured.dimension)
      needs.miss({
        what: 'the figure that is required',
        host: requirement.origin,
        property: requirement.about,
      });
    return waits(
      say,
      needs,
      reading.origin,
      `${line!.name}: whether the trial met "${requirement.written}"`,
      {
        related,
        answers,
      },
    );
  }
  const least = requirement.bound === 'at least';
  const text = `${line!.name} at ${run.at!.value} in ${trialName(trial)}: ${requirement.about} ${tell(measured)} read; ${requirement.bound} ${requirement.quantity!.written} is required`;
  return say.compare({
    place: reading.origin,
    related,
    answers,
    capacity: least ? measured : required,
    demand: least ? required : measured,
    criterion: requirement.written,
    message: `${text}.`,
    failMessage: `${text}${requirement.note ? ` (${requirement.note})` : ''}. Check the state of the trial first; then change the spec or the requirement.`,
  });
}
