import {
  formatValue,
  jointHighestSpeed,
  renamed,
  residualAngleInPhase,
  type Value,
} from '@tailshaft/mechanics';
import { percent } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
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
  title: 'The two joints of a shaft stand at equal angles',
  mistakes: ['L14'],
  severity: 'warning',
  criterion: 'angle of the single joint that would be as uneven as the pair, at most one degree',
  source: { ...residualAngleInPhase.spec.source, clause: 'limit of one degree: common practice' },
  manual:
    'A universal joint at an angle turns its output faster and slower twice in every turn. A second joint at the same angle, ' +
    'with its yokes in line, takes it back; at another angle, or with the yokes turned, it does not, and shaft and gear ' +
    'shake at twice their speed. Give both angles. Put it right by laying gear and shaft parallel, or at equal angles to ' +
    'the shaft between.',
  caution: `${DEFER} Yokes in line is assumed; angles across the vessel add to those in height.`,
  examples: examples(() => ({
    failing: changed(WITH_JOINT, ['second joint angle 4 deg', 'second joint angle 9 deg']),
    passing: WITH_JOINT,
    cannotTell: changed(WITH_JOINT, ['second joint angle 4 deg', 'second joint angle unknown']),
  })),
};

export const jointAngles: Rule = { ...INFO, scope: 'line', check };

const ALLOWED = Math.PI / 180;

function check(context: LineContext): Verdict[] {
  return context.line.couplings
    .filter(one => one.jointAngle && one.secondJointAngle)
    .map(one => judge(context, one));
}

function judge({ line }: LineContext, joint: Coupling): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(joint);
  const place = joint.secondJointAngle!.origin;
  const wanted = (property: string) => ({ what: `${property} of ${name}`, host: joint.origin, property });
  const first = needs.fact(joint.jointAngle, wanted('joint angle'));
  const second = needs.fact(joint.secondJointAngle, wanted('second joint angle'));
  if (!first || !second) return waits(say, needs, place, `${line.name}: whether the joints turn evenly`);
  const firstAngle = renamed(first, 'angle of the first joint', 'β₁');
  const secondAngle = renamed(second, 'angle of the second joint', 'β₂');
  const residual = residualAngleInPhase({ firstAngle, secondAngle });
  const swing: Value<'ratio'> = jointHighestSpeed({ angle: residual });
  const numbers = `the joints of ${name} stand at ${formatValue(first)} and ${formatValue(second)}`;
  const said = { place, workings: [residual, swing] };
  if (residual.si <= ALLOWED) {
    return say.holds({
      ...said,
      message: `${line.name}: ${numbers}: with the yokes in line they turn evenly.`,
    });
  }
  return say.fails({
    ...said,
    message: `${line.name}: ${numbers}: together they swing the shaft by ${percent(swing.si - 1)} twice in every turn, as one joint at ${formatValue(residual, 2)} would. Lay both ends at equal angles.`,
    related: [{ at: joint.jointAngle!.origin, message: 'angle of the first joint' }],
    routes: () => [
      {
        title: `Lay the second joint at ${first.written ?? formatValue(first)}: the two take each other back`,
        edits: [writeInPlace(joint, 'second joint angle', first.written ?? formatValue(first))],
      },
    ],
  });
}
