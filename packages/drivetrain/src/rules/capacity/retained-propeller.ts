import type { Value } from '@tailshaft/mechanics';
import { count, percent, plural } from '@tailshaft/mechanics';
import type { FullLoadPoint } from '../../analysis/engine-points.js';
import { changedOf, fieldWords, keptOf } from '../../analysis/kept.js';
import type { LineAnalysis } from '../../analysis/line.js';
import { beforeWords } from '../../analysis/mode-before.js';
import { motorLimits } from '../../analysis/motor-limits.js';
import { type Bounds, demandOfModified, POWER_RESTS_ON } from '../../analysis/other-propeller.js';
import { scaledDemand, scaledSpeed } from '../../analysis/propeller-law.js';
import { comparedWith } from '../../analysis/same-stages.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { home, nameOf } from '../../model/part.js';
import type { ShaftLine } from '../../model/vessel.js';
import { surelyDelivered } from './surely-delivered.js';

/** What a kept propeller asks behind the new engine and gear, scaled from what it took before. */
export interface RetainedPropeller {
  /** Power it would ask at the new rated shaft speed, as far as that is bounded: equal ends where it is known. */
  readonly asked: Bounds;
  /** Power that reaches it there. */
  readonly available: Value<'power'>;
  /** So much of it at least: less where nobody says whether the rating was measured before the gear or behind it. */
  readonly leastAvailable: Value<'power'>;
  readonly speedBefore: Value<'rotational speed'>;
  readonly speedNow: Value<'rotational speed'>;
  /** What those are speeds of: the shaft, or the engine where a ratio that nobody knows is the same on both sides. */
  readonly of: string;
  /** Where that is on the curve of what drives. */
  readonly where: string;
  /** `before`, with the mode where it is compared with one of another name. */
  readonly then: string;
  /** Shaft speed at which it asks what is available, by what it asks at least. */
  readonly balance: Value<'rotational speed'> | undefined;
  /** Why what it asks is not one figure: names what would have to be known. */
  readonly open: Needs;
}

/**
 * Where a line keeps its propeller under another engine, gear or ratio; with the gaps when it cannot be scaled. A motor by itself
 * gives its power from the slowest speed at which its torque reaches it, where a propeller is soonest too much, to its top
 * speed, where it is last too little.
 */
export function retainedPropeller(
  context: LineContext,
  end: 'slowest' | 'fastest',
  analysis: LineAnalysis = context.analysis,
): { readonly needs: Needs; readonly result: RetainedPropeller | undefined } | undefined {
  const { line, analysisOf, vessel } = context;
  const { propeller } = line;
  const kept = propeller && keptOf(propeller, line, vessel);
  if (!kept || propeller.kind?.value === 'controllable pitch') return undefined;
  const needs = new Needs();
  const { now, before, cancels } = comparedWith(analysis, analysisOf(kept.line), vessel);
  const powerBefore = needs.take(before.propellerPower);
  const speedBefore = ratedShaftSpeed(before, needs);
  const available = needs.take(now.propellerPower);
  const { shaftSpeed: speedNow, where, openTop } = shaftSpeedAtEnd(now, end, needs);
  if (!powerBefore || !speedBefore || !available || !speedNow) return { needs, result: undefined };
  const taken = {
    ...powerBefore,
    assumed:
      'the propeller is taken to have absorbed the rated power of the engine before, at its rated speed',
  };
  const open = new Needs();
  const scaled = scaledDemand(taken, speedBefore, speedNow, vessel);
  if (openTop) open.miss(openTop, now.line.motor?.topSpeed?.origin);
  const scaledTo = openTop ? { low: scaled } : { low: scaled, high: scaled };
  const shared = sharedPower(scaledTo, context, kept.line, open);
  const changed = changedOf(kept, POWER_RESTS_ON);
  const { unscaled, ...asked } = demandOfModified(shared, kept.was, propeller, changed);
  if (!(asked.low && asked.low === asked.high) && changed.length > 0)
    for (const field of unscaled.length > 0 ? unscaled : changed)
      open.miss(
        {
          what: `power that ${line.name}'s propeller absorbs with its ${fieldWords(propeller, field)} changed`,
          host: propeller.origin,
          property: fieldWords(propeller, field),
        },
        originOf(propeller, field),
      );
  const leastAvailable = surelyDelivered(available, context, open);
  const least = asked.low && scaledSpeed(asked.low, speedNow, available, vessel);
  const then = beforeWords(line, kept.line);
  const of = cancels ? 'engine speed, whatever the ratio that stays' : 'shaft speed';
  return {
    needs,
    result: {
      asked,
      available,
      leastAvailable,
      speedBefore,
      speedNow,
      of,
      where,
      then,
      balance: least,
      open,
    },
  };
}

/** How much of the power delivered to it a propeller asks at least and at most. */
export function shareOf({ asked, available, leastAvailable }: RetainedPropeller): {
  least?: number;
  most?: number;
} {
  const { low, high } = asked;
  return {
    ...(low ? { least: low.si / available.si } : {}),
    ...(high ? { most: high.si / leastAvailable.si } : {}),
  };
}

/** `106 %`, `between 98 % and 112 %`, `at least 98 %`. */
export function shareWords(result: RetainedPropeller): string {
  const { least, most } = shareOf(result);
  const [low, high] = [least, most].map(one => (one === undefined ? undefined : percent(one)));
  if (low && high) return low === high ? `about ${low}` : `between ${low} and ${high}`;
  return low ? `at least ${low}` : high ? `at most ${high}` : 'an unknown share';
}

/**
 * The scaling takes the water that the propeller meets to be as before. With fewer lines to drive it the vessel is slower
 * and each propeller asks more than it says; with more of them, less.
 */
function sharedPower({ low, high }: Bounds, context: LineContext, was: ShaftLine, open: Needs): Bounds {
  const { vessel, arrangement, line } = context;
  const driving = (name: string) =>
    vessel.arrangements.find(one => one.name === name)?.lines.filter(one => one.propeller).length ?? 0;
  const [then, now] = [driving(was.arrangement), driving(arrangement.name)];
  if (then === now) return { ...(low ? { low } : {}), ...(high ? { high } : {}) };
  open.miss(
    {
      what: `what the propeller of ${line.name} absorbs at the speed that ${count(now, 'line')} ${plural(now, 'gives', 'give')}, where ${then} drove the vessel before: a trial or a propeller calculation`,
      host: line.propeller!.origin,
      property: 'propeller',
    },
    line.propeller!.origin,
  );
  return now < then ? (low ? { low } : {}) : high ? { high } : {};
}

function originOf(part: object, field: string) {
  return (part as Record<string, { origin?: object } | undefined>)[field]?.origin;
}

/** Shaft speed at rated speed of the engine, or at one end of the speeds at which a motor by itself gives its power. */
function shaftSpeedAtEnd(analysis: LineAnalysis, end: 'slowest' | 'fastest', needs: Needs) {
  const rated = analysis.rated.value;
  const limits = rated && motorLimits(analysis.line, rated);
  const speed = end === 'slowest' ? limits?.from : limits?.top;
  const openTop: Parameters<Needs['miss']>[0] | undefined =
    limits && end === 'fastest' && !speed
      ? {
          what: `top speed of ${nameOf(limits.motor)}`,
          host: home(limits.motor),
          property: 'top speed',
        }
      : undefined;
  const other = speed && (end === 'slowest' ? speed.si < rated!.speed.si : speed.si > rated!.speed.si);
  const at = other ? { ...rated!, speed } : undefined;
  const where = !at
    ? 'at rated speed'
    : end === 'slowest'
      ? `at ${analysis.tell(at.speed)}, from where the motor gives its power,`
      : 'at the top speed of the motor';
  return { shaftSpeed: ratedShaftSpeed(analysis, needs, at), where, openTop };
}

/** Shaft speed at rated engine speed, or at another one. */
export function ratedShaftSpeed(
  analysis: LineAnalysis,
  needs: Needs,
  at?: FullLoadPoint,
): Value<'rotational speed'> | undefined {
  const point = at ?? needs.take(analysis.rated);
  const loads = point && analysis.loads(point);
  if (loads && !loads.shaft) needs.take({ value: undefined, missing: loads.missing });
  return loads?.shaft?.speed;
}
