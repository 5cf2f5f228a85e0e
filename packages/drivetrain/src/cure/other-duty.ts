import { amount, asStated, named } from '@tailshaft/vocabulary';
import { compareDuty, lighterFirst } from '../analysis/duty-class.js';
import { ratingsOf } from '../analysis/gear-data.js';
import { hoursWords } from '../analysis/hours-words.js';
import type { ValueChange } from '../judge/route.js';
import type { Engine, EngineRating } from '../model/engine.js';
import type { Gear, GearRating } from '../model/gear.js';
import type { Vessel } from '../model/vessel.js';
import { leastChange } from './least-change.js';
import { otherFact, quantityAs } from './swap.js';
import type { OtherStated, Trial } from './trial.js';

/** An engine like this one whose rating is for the duty and the hours of the vessel. */
export function dutyOfEngine(engine: Engine, { duty }: Vessel, trial: Trial): OtherStated[] {
  const { rating, ratedAt } = engine;
  const wanted = duty?.class?.value;
  const hours = duty?.hours;
  if (!rating?.dutyFact) return [];
  const lighter = wanted !== undefined && compareDuty(rating.duty, wanted) === 'lighter';
  const short = hours?.value && rating.hours?.value && rating.hours.value.si < hours.value.si;
  if ((!lighter && !short) || (lighter && engine.ratings.some(one => one.duty === wanted))) return [];
  const other: EngineRating = {
    ...rating,
    ...(lighter ? { duty: wanted, dutyFact: otherFact(rating.dutyFact, wanted, wanted) } : {}),
    ...(short ? { hours: otherFact(rating.hours!, hours.value!, hours.written) } : {}),
  };
  const others = new Map<object, object>([[rating, other]]);
  if (lighter && ratedAt) others.set(ratedAt, otherFact(ratedAt, wanted, wanted));
  const settled = trial(others);
  if (!settled.settles) return [];
  const power = rating.power?.written;
  const changes: ValueChange[] = [
    ...(lighter ? [{ at: rating.dutyFact.origin, value: named(wanted) }] : []),
    ...(short ? [{ at: rating.hours!.origin, value: asStated(hours) }] : []),
  ];
  return [
    {
      says: `a ${other.duty} rating of ${power ?? 'the same power'}${short ? ` for ${hoursWords(hours)}` : ''}`,
      settled,
      changes,
      ...(lighter ? { placed: wanted } : {}),
    },
  ];
}

/** A gear like this one that is rated for the duty of the vessel, with the figure that the engine asks of it. */
export function dutyOfGear(gear: Gear, { duty }: Vessel, trial: Trial): OtherStated[] {
  const wanted = duty?.class?.value;
  const ratings = [...ratingsOf(gear, gear.variant)].sort((a, b) => lighterFirst(b.duty, a.duty));
  const rating = ratings[0];
  if (wanted === undefined || !rating?.dutyFact || compareDuty(rating.duty, wanted) !== 'lighter') return [];
  const head = otherFact(rating.dutyFact, wanted, wanted);
  const as = (more: Partial<GearRating>) =>
    new Map<object, object>([[rating, { ...rating, duty: wanted, dutyFact: head, ...more }]]);
  const alone = trial(as({}));
  if (!alone.settles) return [];
  const renamed: ValueChange = { at: rating.dutyFact.origin, value: named(wanted) };
  const field = rating.powerPerSpeed ? 'powerPerSpeed' : 'torque';
  const figure = rating[field];
  const enough = trial(as({}), [TORQUE]).verdict?.outcome !== 'fails';
  if (enough || !figure?.value)
    return [
      {
        says: `a ${wanted} rating${figure ? ` of ${figure.written}` : ''}`,
        settled: alone,
        changes: [renamed],
      },
    ];
  const settling = leastChange(
    figure.value,
    { metric: 0.005, inch: 1 / 8 },
    { times: 30, ways: [1], strides: 8 },
    value => trial(as({ [field]: quantityAs(figure, value) }), [TORQUE]),
  );
  if (!settling) return [];
  const { size, tried } = settling;
  return [
    {
      says: `a ${wanted} rating of ${size.written}`,
      settled: tried,
      changes: [renamed, { at: figure.origin, value: amount(size.quantity) }],
    },
  ];
}

const TORQUE = 'capacity/gear-input-torque';
