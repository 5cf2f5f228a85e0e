import { percent } from '@tailshaft/mechanics';
import { idleSlip } from '../../analysis/idle.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { Requirement, Vessel } from '../../model/vessel.js';
import { findOffered } from '../capacity/offered-ratios.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { IDLE_ESTIMATE } from './sources.js';

const REQUIRED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  require speed at most 5.0 kn at idle ahead "owner\'s note 3"\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'speed/idle-in-gear',
  title: 'Speed in gear at idle is within the requirement',
  mistakes: ['T16'],
  severity: 'warning',
  criterion: 'estimated speed at idle ahead, pitch × shaft speed × (1 − slip), against the required speed',
  source: IDLE_ESTIMATE,
  manual:
    'At idle with the clutch engaged, vessel speed follows from pitch, idle speed and ratio, less slip. Fast ' +
    'craft with small ratios make 6 kn and more and must be handled by clutching in and out. The estimate is ' +
    'compared with the required speed "at idle ahead". A deeper ratio, less pitch, a lower idle speed or a slip ' +
    'device costs little at specification time and much after delivery.',
  caution:
    'An estimate: the slip at idle is assumed, 30 % from memory, unless "assume slip" sets it. Wind, load and ' +
    'running on one engine change it. Only a trial proves it.',
  limitOf: 'the owner’s requirement',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REQUIRED, ['low idle 650 rpm', 'low idle 900 rpm']),
    passing: REQUIRED,
    cannotTell: changed(REQUIRED, ['  low idle 650 rpm\n', '']),
  })),
};

export const idleInGear: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, vessel } = context;
  if (!line.engine || !line.propeller) return undefined;
  return each(idleRequirements(vessel), requirement => judge(context, requirement));
}

/** `require speed at most 5.0 kn at idle ahead`. */
function idleRequirements(vessel: Vessel): Requirement[] {
  return vessel.requirements.filter(
    one =>
      one.mode === undefined &&
      one.about === 'speed' &&
      one.bound === 'at most' &&
      /\bidle\b/.test(one.condition ?? '') &&
      !/astern/.test(one.condition ?? ''),
  );
}

function judge(context: LineContext, requirement: Requirement): Verdict {
  const { line, analysis, vessel } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const wanted = requirement.quantity?.value;
  const place = line.propeller!.pitch?.origin ?? line.propeller!.origin;
  if (wanted?.dimension !== 'speed') {
    needs.miss(
      { what: 'the speed that is required at idle', host: requirement.origin, property: 'speed at most' },
      requirement.quantity?.origin,
    );
  }
  const speed = needs.take(analysis.idleVesselSpeed);
  if (!speed || wanted?.dimension !== 'speed') {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? requirement.origin,
      message: cannotTellWords(`${line.name}: the speed in gear at idle`, needs.missing),
      related: [{ at: requirement.origin, message: requirement.written }],
      answers: requirement.origin,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const slip = idleSlip(vessel);
  const shaft = analysis.idleShaftSpeed.value!;
  const numbers = `about ${analysis.tell(speed, 2)} in gear at idle (${analysis.tell(shaft)} of shaft speed, ${percent(slip.si)} slip assumed)`;
  const limit = wanted.written ?? analysis.tell(wanted);
  return say.compare({
    place,
    capacity: wanted,
    demand: speed,
    workings: [speed],
    related: [{ at: requirement.origin, message: requirement.written }],
    answers: requirement.origin,
    message: `${line.name}: ${numbers}; at most ${limit} is required.`,
    failMessage: `${line.name}: ${numbers}; at most ${limit} is required${requirement.note ? ` (${requirement.note})` : ''}. A slip device also meets it.`,
    routes: () =>
      findOffered(
        context,
        other => (other.idleVesselSpeed.value?.si ?? Number.POSITIVE_INFINITY) <= wanted.si,
      ).map(({ ratio, gear, change, other }) => ({
        title: `Use ${ratio}: about ${analysis.tell(other.idleVesselSpeed.value!, 2)} at idle, ${change} at every engine speed`,
        edits: gearEdits(line.gear!, gear),
      })),
  });
}
