import {
  formatValue,
  jointHighestSpeed,
  percent,
  renamed,
  residualAngleInPhase,
  residualAngleOutOfPhase,
  type Value,
} from '@tailshaft/mechanics';
import { asStated } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each, isSaid } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_JOINT } from './joint-thrust.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/joint-angles',
  title: 'The two joints of a shaft run at equal angles',
  mistakes: ['L14'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'angle of the single joint that would be as uneven as the pair, at most one degree',
  source: { ...residualAngleInPhase.spec.source, clause: 'limit of one degree: common practice' },
  manual:
    'A universal joint at an angle speeds up and slows down its output twice in every turn. A second joint at ' +
    'the same angle, with its yokes in line, cancels this; at another angle, or with the yokes turned, it does ' +
    'not, and shaft and gear vibrate at twice shaft speed, as they do with any single joint. State both ' +
    'angles. Lay gear and shaft parallel, or at equal angles to the shaft between.',
  caution: `${DEFER} Yokes in line are assumed; angles athwartships add to those in height.`,
  examples: examples(() => ({
    failing: changed(WITH_JOINT, ['second joint angle 4 deg', 'second joint angle 9 deg']),
    passing: WITH_JOINT,
    cannotTell: changed(WITH_JOINT, ['second joint angle 4 deg', 'second joint angle unknown']),
  })),
};

export const jointAngles: Rule = { ...INFO, scope: 'line', check };

const ALLOWED = Math.PI / 180;

function check(context: LineContext): Verdict | Apart<Verdict> {
  const joints = context.line.couplings.filter(one => isSaid(() => one.jointAngle));
  const [first, second] = joints;
  // Two couplings with a joint each are a pair as well.
  if (joints.length === 2 && !first!.secondJointAngle && !second!.secondJointAngle)
    return judge(context, first!, { of: second!, fact: second!.jointAngle!, property: 'joint angle' });
  return each(joints, one =>
    one.secondJointAngle
      ? judge(context, one, { of: one, fact: one.secondJointAngle, property: 'second joint angle' })
      : judgeAlone(context, one),
  );
}

/** A joint that has no other one behind it: nothing takes back what it does. */
function judgeAlone({ line }: LineContext, joint: Coupling): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(joint);
  const place = joint.jointAngle!.origin;
  const wanted = { what: `joint angle of ${name}`, host: joint.origin, property: 'joint angle' };
  const declared = needs.fact(joint.jointAngle, wanted);
  if (!declared) return waits(say, needs, place, `${line.name}: whether the shaft turns evenly`);
  const angle = renamed(declared, 'angle of the joint', 'β');
  const swing: Value<'ratio'> = jointHighestSpeed({ angle });
  const numbers = `the joint of ${name} is at ${formatValue(declared)}, and no second joint is declared`;
  return say.within({
    place,
    difference: angle.si,
    differs: angle,
    allowed: ALLOWED,
    workings: [angle, swing],
    message: `${line.name}: ${numbers}: within the limit of one degree.`,
    failMessage: `${line.name}: ${numbers}: alone it varies shaft speed by ${percent(swing.si - 1)} twice in every turn. Fit a second joint at the same angle, or lay the shaft within 1 deg of the gear.`,
  });
}

/** The joint that is to take back what the first one does. */
interface SecondJoint {
  readonly of: Coupling;
  readonly fact: Quantity<'angle'>;
  readonly property: string;
}

function judge({ line }: LineContext, joint: Coupling, other: SecondJoint): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(joint);
  const place = other.fact.origin;
  const wanted = (of: Coupling, property: string) => ({
    what: `${property} of ${nameOf(of)}`,
    host: of.origin,
    property,
  });
  const first = needs.fact(joint.jointAngle, wanted(joint, 'joint angle'));
  const second = needs.fact(other.fact, wanted(other.of, other.property));
  if (!first || !second) return waits(say, needs, place, `${line.name}: whether the shaft turns evenly`);
  const firstAngle = renamed(first, 'angle of the first joint', 'β₁');
  const secondAngle = renamed(second, 'angle of the second joint', 'β₂');
  const residual = residualAngleInPhase({ firstAngle, secondAngle });
  const swing: Value<'ratio'> = jointHighestSpeed({ angle: residual });
  const turned = residualAngleOutOfPhase({ firstAngle, secondAngle });
  const numbers = `the joints of ${other.of === joint ? name : `${name} and ${nameOf(other.of)}`} are at ${formatValue(first)} and ${formatValue(second)}`;
  return say.within({
    place,
    difference: residual.si,
    balance: {
      same: [firstAngle, secondAngle],
      within: ALLOWED ** 2 / (firstAngle.si + secondAngle.si),
    },
    allowed: ALLOWED,
    workings: [residual, swing, turned],
    message: `${line.name}: ${numbers}: with the yokes in line the shaft turns evenly; a quarter turn out they act as one joint at ${formatValue(turned, 2)}.`,
    failMessage: `${line.name}: ${numbers}: together they vary shaft speed by ${percent(swing.si - 1)} twice in every turn, as one joint at ${formatValue(residual, 2)} would. Lay both ends at equal angles.`,
    related: [{ at: joint.jointAngle!.origin, message: 'angle of the first joint' }],
    routes: () => [
      {
        title: `Lay the second joint at ${first.written ?? formatValue(first)}: the two then cancel out`,
        edits: [writeInPlace(other.of, other.property, asStated(joint.jointAngle!))],
      },
    ],
  });
}
