import { percent, powerFromTorque, renamed, torqueFromPower, type Value } from '@tailshaft/mechanics';
import { ratingOf } from '../../analysis/engine-points.js';
import type { LineContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Engine, Motor } from '../../model/engine.js';
import type { Fact } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { type Apart, apart, aside } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/power-and-torque',
  title: 'Power, torque and speed of an engine or motor agree',
  mistakes: [],
  severity: 'warning',
  criterion:
    'power against torque times speed, within 3 %; no torque above peak torque; motor power at base speed; ' +
    'speeds in order, from low idle to the governed maximum',
  source: PART_SHEET,
  manual:
    'Power is torque times speed, so a sheet that states all three states one of them twice. One figure is misread, belongs to another rating or is in another unit where one of these is found: ' +
    'peak torque below the torque at rated power; a point of the full-load curve above peak torque; motor ' +
    'power that is not torque at base speed; a governed maximum below rated speed; low idle above it. Every torque and speed of the line ' +
    'rests on these figures. Look them up again; do not adjust one to fit the other.',
  caution: 'Sheets are rounded, and test-bench tolerances reach a few per cent: 3 % is allowed for both.',
  limitOf: 'two statements of one engine: their own rounding is allowed for',
  noFigure: 'two statements of one thing, either of which may be true',
  noCure: 'Only the maker’s sheet or a measurement can tell which figure is wrong.',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['peak torque 1480 N.m at 1500 rpm', 'peak torque 1020 N.m at 1500 rpm']),
    passing: SINGLE_LINE,
    cannotTell: 'It speaks where two of the figures are declared, and these can always be compared.',
  })),
};

export const powerAndTorque: Rule = { ...INFO, scope: 'line', check };

/** Rounding of sheets and tolerance of test benches; common practice, no source. */
const TOLERANCE = 0.03;

function check(context: LineContext): Apart<Verdict> {
  const { engine, motor } = context.line;
  return apart(
    () => engine && ofEngine(context, engine),
    () => engine && aside(() => twoTorques(context, engine)),
    () =>
      engine &&
      disordered(
        context,
        engine,
        aside(() => pairsOfEngine(engine)),
      ),
    () => motor && ofMotor(context, motor),
    () =>
      motor &&
      disordered(
        context,
        motor,
        aside(() => pairsOfMotor(motor)),
      ),
  );
}

/** Two speeds of one machine of which the first cannot be above the second. */
interface Pair {
  readonly lower: Speed | undefined;
  readonly upper: Speed | undefined;
}

interface Speed {
  readonly fact: Fact<unknown>;
  readonly words: string;
  readonly si: number;
}

type Point = Fact<{ readonly y: Value; readonly x: Value<'rotational speed'> }>;

const speedIn = (fact: Fact<Value<'rotational speed'>> | undefined, words: string): Speed | undefined =>
  fact?.value && { fact, words: `${words} ${fact.written}`, si: fact.value.si };
const speedAt = (fact: Point | undefined, words: string): Speed | undefined =>
  fact?.value && { fact, words: `${words} ${fact.written}`, si: fact.value.x.si };

function pairsOfEngine(engine: Engine): Pair[] {
  const idle = speedIn(engine.lowIdle, 'low idle');
  const most = speedIn(engine.highIdle, 'high idle');
  const rated = speedAt(ratingOf(engine)?.power, 'rated power');
  const peak = speedAt(engine.peakTorque, 'peak torque');
  return [
    { lower: rated, upper: most },
    { lower: peak, upper: most },
    { lower: idle, upper: rated },
    { lower: idle, upper: most },
  ];
}

function pairsOfMotor({ power, baseSpeed, topSpeed }: Motor): Pair[] {
  const most = speedIn(topSpeed, 'top speed');
  return [
    { lower: speedAt(power, 'power'), upper: most },
    { lower: speedIn(baseSpeed, 'base speed'), upper: most },
  ];
}

/** Speeds that are written in another order than they can have; where they are in order nothing more is said. */
function disordered(
  { line }: LineContext,
  mover: Engine | Motor,
  pairs: readonly Pair[],
): Verdict | undefined {
  for (const { lower, upper } of pairs) {
    if (!lower || !upper || lower.si <= upper.si * (1 + ROUNDING)) continue;
    return sayFor(INFO, mover.path).fails({
      place: upper.fact.origin,
      message: `${line.name}: ${nameOf(mover)} cannot have ${lower.words} with ${upper.words}: the first speed is above the second. One of the two is misread or belongs to another rating: look both up.`,
      disputes: [lower.fact, upper.fact],
      related: [{ at: lower.fact.origin, message: lower.words }],
    });
  }
  return undefined;
}

/** Speeds are rounded as they are written. */
const ROUNDING = 1e-6;

interface Stated {
  readonly fact: Fact<unknown>;
  readonly torque: Value<'torque'>;
  readonly words: string;
}

function ofEngine(context: LineContext, engine: Engine): Verdict | undefined {
  const peak = engine.peakTorque;
  if (!peak?.value) return undefined;
  const most = renamed(peak.value.y, 'peak torque', 'T');
  const others: Stated[] = [];
  const rated = ratingOf(engine)?.power;
  const atPower = (fact: Fact<{ y: Value<'power'>; x: Value<'rotational speed'> }>) => {
    if (!fact.value) return;
    const torque = torqueFromPower({
      power: renamed(fact.value.y, 'power', 'P'),
      speed: renamed(fact.value.x, 'speed', 'ω'),
    });
    others.push({ fact, torque, words: fact.written });
  };
  if (rated) atPower(rated);
  for (const fact of engine.powerCurve) atPower(fact);
  for (const fact of engine.torqueCurve)
    if (fact.value) others.push({ fact, torque: fact.value.y, words: fact.written });
  const over = others
    .filter(one => one.torque.si > most.si * (1 + TOLERANCE))
    .sort((a, b) => b.torque.si - a.torque.si)[0];
  const { line, analysis } = context;
  const say = sayFor(INFO, engine.path);
  if (!over)
    return others.length === 0
      ? undefined
      : say.holds({
          place: peak.origin,
          workings: [most, ...others.map(one => one.torque)],
          message: `${line.name}: no stated point of ${nameOf(engine)} has more than its peak torque of ${analysis.tell(most)}.`,
        });
  return say.fails({
    place: peak.origin,
    workings: [over.torque],
    message:
      `${line.name}: ${over.words} of ${nameOf(engine)} is ${analysis.tell(over.torque)}, ${percent(over.torque.si / most.si - 1)} more than its ` +
      `peak torque of ${peak.written}, the largest it has. One of the two is misread or belongs to another rating: look both up.`,
    disputes: [peak, over.fact],
    related: [{ at: over.fact.origin, message: `${analysis.tell(over.torque)} by power and speed` }],
  });
}

/** Power and torque of the full-load curve at one speed that are not the same torque; where they are nothing more is said. */
function twoTorques({ line, analysis }: LineContext, engine: Engine): Verdict | undefined {
  for (const one of engine.powerCurve) {
    if (!one.value) continue;
    const { x: speed, y: power } = one.value;
    const torque = torqueFromPower({
      power: renamed(power, 'power', 'P'),
      speed: renamed(speed, 'speed', 'ω'),
    });
    const other = [engine.peakTorque, ...engine.torqueCurve].find(
      fact =>
        fact?.value &&
        Math.abs(fact.value.x.si / speed.si - 1) < ROUNDING &&
        Math.abs(fact.value.y.si / torque.si - 1) > TOLERANCE,
    );
    if (!other) continue;
    return sayFor(INFO, engine.path).fails({
      place: one.origin,
      workings: [torque],
      message: `${line.name}: full-load power ${one.written} of ${nameOf(engine)} is ${analysis.tell(torque)}, but ${other.written} is declared at the same speed. One of the two is misread or belongs to another rating: look both up.`,
      disputes: [one, other],
      related: [{ at: other.origin, message: 'torque at that speed' }],
    });
  }
  return undefined;
}

function ofMotor({ line, analysis }: LineContext, motor: Motor): Verdict | undefined {
  const { power, torque, baseSpeed } = motor;
  if (!power?.value || !torque?.value) return undefined;
  const at = (speed: Value<'rotational speed'>) =>
    powerFromTorque({
      torque: renamed(torque.value!, 'torque of the motor', 'T'),
      speed: renamed(speed, 'speed', 'ω'),
    });
  // Up to base speed the torque is constant, above it the power: either speed may stand beside the power.
  const possible = [power.value.x, ...(baseSpeed?.value ? [baseSpeed.value] : [])].map(at);
  const stated = renamed(power.value.y, 'power of the motor', 'P');
  const off = (one: Value<'power'>) => Math.abs(stated.si / one.si - 1);
  const nearest = possible.reduce((best, one) => (off(one) < off(best) ? one : best));
  const say = sayFor(INFO, motor.path);
  const numbers = `${torque.written} of ${nameOf(motor)} at its speed is ${analysis.tell(nearest)}`;
  if (off(nearest) <= TOLERANCE || (!baseSpeed?.value && stated.si < nearest.si))
    return say.holds({
      place: power.origin,
      workings: [nearest],
      message: `${line.name}: ${numbers}, beside ${power.written}.`,
    });
  return say.fails({
    place: power.origin,
    workings: possible,
    message: `${line.name}: ${numbers}, but ${power.written} is declared, ${percent(off(nearest))} off. One of power, torque and speed is misread or belongs to another rating: look them up.`,
    // Without a base speed the torque is a limit of the motor: nothing says up to which speed it is given.
    ...(baseSpeed?.value ? { disputes: [power, torque, baseSpeed] } : {}),
    related: [{ at: torque.origin, message: 'torque' }],
  });
}
