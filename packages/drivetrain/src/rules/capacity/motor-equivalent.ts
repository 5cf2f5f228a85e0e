import {
  given,
  motorTorque,
  outputTorque,
  renamed,
  shaftSpeedThroughGear,
  speedAtTorqueLimit,
  torqueFromPower,
  type Value,
} from '@tailshaft/mechanics';
import { gearEfficiency } from '../../analysis/efficiencies.js';
import { scaledDemand, scaledSpeed } from '../../analysis/propeller-law.js';
import { tellLike } from '../../analysis/telling.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const ELECTRIC = `motor Eddy-30 "liquid-cooled motor" {
  source "Eddy 30 sheet" dated 2025-06-01
  rotation either
  power 30 kW at 1100 rpm
  torque 270 N.m
  base speed 1060 rpm
  top speed 2400 rpm
  thrust at most 8 kN
  said to equal 40 hp at 1100 rpm
}

vessel Siskin "harbour launch" {
  duty medium { hours 600 per year  passengers none }
  arrangement proposed {
    shaftline Centre {
      motor Eddy-30
      propeller { hand right [measured 2026-01-14]  blades 3  diameter 20 in  pitch 14 in  area ratio 0.5 }
    }
  }
}
`;

const INFO: RuleInfo = {
  id: 'capacity/motor-equivalent',
  title: 'The motor gives the torque of the engine it is said to equal',
  mistakes: ['T20'],
  severity: 'warning',
  criterion:
    'motor torque at the propeller shaft against that of the power and shaft speed it is said to equal',
  source: {
    title: 'definition of power, P = T ω; torque of a fixed-pitch propeller by the square of speed',
    confidence: 'derived',
  },
  manual:
    'Motors are sold as equal to engines of two or three times their power. The propeller sees only torque: ' +
    'it needs a certain torque at each shaft speed and turns only as fast as the torque allows. The torque ' +
    'of the claim is compared with the continuous motor torque at the propeller shaft, and the resulting ' +
    'shaft speed is shown. Fit a reduction gear where the motor has speed to spare; otherwise fit a larger ' +
    'motor.',
  caution:
    'Short-time torque does not count: a vessel at full speed runs for hours. The propeller law is a scaling.',
  limitOf: 'the seller’s claim, at its own torque',
  noCure: 'A buyer cannot correct what a seller claims; another motor is a new choice.',
  examples: examples(() => ({
    failing: ELECTRIC.replace('torque 270 N.m', 'torque 122 N.m').replace(
      'power 30 kW at 1100 rpm',
      'power 14 kW at 1100 rpm',
    ),
    passing: ELECTRIC,
    cannotTell: ELECTRIC.replace('  power 30 kW at 1100 rpm\n  torque 270 N.m\n', ''),
  })),
};

export const motorEquivalent: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { motor } = line;
  if (!motor?.saidToEqual) return undefined;
  const say = sayFor(INFO, line.path);
  const place = motor.saidToEqual.origin;
  const needs = new Needs();
  const claim = needs.fact(motor.saidToEqual, {
    what: `what ${nameOf(motor)} is said to equal`,
    host: home(motor),
    property: 'said to equal',
  });
  const own = limitsOf(context, needs);
  const ratio = needs.take(analysis.overallRatio('ahead'));
  if (!claim || !own || !ratio) {
    // Whatever the ratio and the torque: no gear makes power.
    const power = motor.power?.value?.y;
    if (claim && power && power.si < claim.y.si) {
      const tell = tellLike(claim.y);
      return say.fails({
        place,
        capacity: renamed(power, 'continuous power of the motor', 'P_max'),
        demand: renamed(claim.y, 'power of the claim', 'P_d'),
        message: `${line.name}: ${nameOf(motor)} is said to equal ${tell(claim.y)} and gives ${tell(power)} at most, at any ratio. Fit a motor of ${tell(claim.y)} or more.`,
      });
    }
    const known =
      claim && power
        ? ` Known so far: it gives ${tellLike(claim.y)(power)} of the ${tellLike(claim.y)(claim.y)}.`
        : '';
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: `${cannotTellWords(`${line.name}: what ${nameOf(motor)} equals`, needs.missing)}${known}`,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const tell = tellLike(claim.y);
  const demandSpeed = renamed(claim.x, 'shaft speed of the claim', 'ω_d');
  const demandPower = renamed(claim.y, 'power of the claim', 'P_d');
  const demandTorque = renamed(
    torqueFromPower({ power: demandPower, speed: demandSpeed }),
    'torque of the claim',
  );
  const efficiency = line.gear
    ? gearEfficiency(line.gear, vessel)
    : given('gear efficiency', 'η', 'ratio', 1, { assumed: '100 %: no gear in the line' });
  const atShaft = (inputTorque: Value<'torque'>) => outputTorque({ inputTorque, ratio, efficiency });
  const torque = renamed(atShaft(torqueThere(own, claim.x, ratio)), 'torque of the motor at the shaft', 'T');
  const reached = reachedSpeed(context, own, { demandTorque, demandSpeed, demandPower, atShaft });
  const power = scaledDemand(demandPower, demandSpeed, reached, vessel);
  const needed = `${tell(claim.y)} at ${tell(claim.x)} of shaft speed needs ${tell(demandTorque)}`;
  const top = motor.topSpeed?.value && shaftSpeedThroughGear({ engineSpeed: motor.topSpeed.value, ratio });
  const said = {
    place,
    capacity: torque,
    demand: demandTorque,
    workings: [demandTorque, torque, reached, power],
  };
  if (top && top.si < claim.x.si) {
    return say.fails({
      ...said,
      message: `${line.name}: ${needed}, but ${nameOf(motor)} turns the shaft at most ${tell(top)}: fit less ratio or another motor.`,
      workings: [...said.workings, top],
    });
  }
  return say.compare({
    ...said,
    message: `${line.name}: ${needed}; ${nameOf(motor)} gives ${tell(torque)} there.`,
    failMessage:
      `${line.name}: ${needed}; ${nameOf(motor)} gives ${tell(torque)}. Expect about ${tell(reached, 3)} and ${tell(power, 2)} ` +
      'with the same propeller. Fit a reduction gear or a larger motor.',
  });
}

interface MotorLimits {
  readonly torque: Value<'torque'>;
  readonly power: Value<'power'> | undefined;
  readonly topSpeed: Value<'rotational speed'> | undefined;
}

/** Continuous limits of the motor: its torque as declared, or that of its continuous power at its speed. */
function limitsOf({ line, analysis }: LineContext, needs: Needs): MotorLimits | undefined {
  const motor = line.motor!;
  const declared = motor.torque?.value;
  const torque = declared ?? needs.take(analysis.rated)?.torque;
  return (
    torque && {
      torque: renamed(torque, 'continuous torque of the motor', 'T_max'),
      power: motor.power?.value && renamed(motor.power.value.y, 'continuous power of the motor', 'P_max'),
      topSpeed: motor.topSpeed?.value,
    }
  );
}

/** What the motor gives when the shaft turns this fast: above base speed its power is the limit. */
function torqueThere(
  limits: MotorLimits,
  shaftSpeed: Value<'rotational speed'>,
  ratio: Value<'ratio'>,
): Value<'torque'> {
  if (!limits.power) return limits.torque;
  const speed = { ...shaftSpeed, label: 'motor speed', si: shaftSpeed.si * ratio.si };
  return motorTorque({
    torqueLimit: limits.torque,
    powerLimit: limits.power,
    greatestSpeed: limits.topSpeed ?? {
      ...speed,
      assumed: 'the greatest speed of the motor is not declared',
    },
    speed,
  });
}

interface Claim {
  readonly demandTorque: Value<'torque'>;
  readonly demandSpeed: Value<'rotational speed'>;
  readonly demandPower: Value<'power'>;
  readonly atShaft: (torque: Value<'torque'>) => Value<'torque'>;
}

/** Where the propeller of the claim takes all that the motor has: its torque or its power, whichever gives out first. */
function reachedSpeed({ vessel }: LineContext, limits: MotorLimits, claim: Claim): Value<'rotational speed'> {
  const { demandTorque, demandSpeed, demandPower, atShaft } = claim;
  const byTorque = speedAtTorqueLimit({ torqueLimit: atShaft(limits.torque), demandTorque, demandSpeed });
  if (!limits.power) return byTorque;
  const byPower = scaledSpeed(demandPower, demandSpeed, limits.power, vessel);
  return byPower.si < byTorque.si ? byPower : byTorque;
}
