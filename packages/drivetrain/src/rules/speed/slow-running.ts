import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Requirement } from '../../model/vessel.js';
import { DEFER, PART_SHEET } from '../capacity/sources.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const TROLLING = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  require trolling speed at most 2 kn\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'speed/slow-running',
  title: 'The gear is equipped for the slow running required',
  mistakes: ['T18'],
  severity: 'error',
  criterion:
    'estimated speed at idle against the trolling speed required; where it is higher, the gear has or offers a ' +
    'slip device',
  source: PART_SHEET,
  manual:
    'Trolling, survey and pilot work need less speed than a vessel makes in gear at idle. The clutch must then ' +
    'slip under control, by a device that the gear is offered with; a clutch slipped without one burns. Where ' +
    'the estimated idle speed is above the required speed, the sheet must offer such a device. Choose a gear ' +
    'that has one, or change the requirement.',
  caution: `${DEFER} A slip device works only below a stated engine speed, and only while the oil stays cool.`,
  limitOf: 'the owner’s requirement',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(TROLLING, ['slip device offered', 'slip device not offered']),
    passing: TROLLING,
    cannotTell: changed(TROLLING, ['  slip device offered\n', '']),
  })),
};

export const slowRunning: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, vessel } = context;
  if (!line.gear || !line.engine) return undefined;
  const asked = vessel.requirements.filter(
    one => one.mode === undefined && one.about === 'trolling speed' && one.bound === 'at most',
  );
  return each(asked, requirement => judge(context, requirement));
}

function judge(context: LineContext, requirement: Requirement): Verdict {
  const { line, analysis } = context;
  const gear = line.gear!;
  const say = sayFor(INFO, line.path);
  const place = gear.slipDevice?.origin ?? gear.nameOrigin ?? gear.origin;
  const wanted = requirement.quantity?.value;
  const speed = analysis.idleVesselSpeed.value;
  const answers = requirement.origin;
  const related = [{ at: answers, message: requirement.written }];
  const workings = speed ? [speed] : [];
  const limit = wanted ? (wanted.written ?? analysis.tell(wanted)) : 'an unknown speed';
  if (speed && wanted && speed.si <= wanted.si) {
    return say.holds({
      place,
      related,
      answers,
      workings,
      message: `${line.name}: about ${analysis.tell(speed, 2)} in gear at idle, at most ${limit} required: no slip device is needed.`,
    });
  }
  const needs = new Needs();
  const device = needs.fact(gear.slipDevice, {
    what: `whether ${nameOf(gear)} is offered with a slip device`,
    host: home(gear),
    property: 'slip device',
  });
  const why = speed
    ? `about ${analysis.tell(speed, 2)} in gear at idle, at most ${limit} required`
    : `at most ${limit} required`;
  if (device === undefined) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      related,
      answers,
      workings,
      message: `${line.name}: ${why}; the sheet of ${nameOf(gear)} does not say whether it is offered with a slip device.`,
      routes: () => stubRoutes(needs.missing),
    });
  }
  if (device === 'not offered') {
    return say.fails({
      place: gear.nameOrigin ?? gear.origin,
      answers,
      related: [
        ...related,
        ...(gear.slipDevice ? [{ at: gear.slipDevice.origin, message: 'not offered' }] : []),
      ],
      workings,
      ...(speed && wanted ? { balance: { more: wanted, less: speed } } : {}),
      message: `${line.name}: ${why}; ${nameOf(gear)} is not offered with a slip device. Choose another gear, or change the requirement.`,
    });
  }
  const order = device === 'offered' ? ': order it with the gear' : '';
  return say.holds({
    place,
    related,
    answers,
    workings,
    message: `${line.name}: ${why}; the slip device of ${nameOf(gear)} is ${device}${order}.`,
  });
}
