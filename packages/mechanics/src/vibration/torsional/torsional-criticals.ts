import { given, type Value } from '../../core/value.js';
import { criticalSpeed } from '../critical-speed.js';
import { type CriticalPlace, placeCritical, type RunningRange } from '../running-range.js';
import { type ExcitationOrder, orderBehindGear } from './excitation-orders.js';
import type { TorsionalMode, TorsionalSolution } from './torsional-modes.js';

/** Where one order meets one mode, as a speed of the shaft that the running range is given for. */
export interface TorsionalCritical {
  readonly mode: number;
  readonly order: ExcitationOrder;
  /** The order counted per turn of the shaft of the running range. */
  readonly orderHere: Value<'number'>;
  readonly speed: Value<'rotational speed'>;
  readonly place: CriticalPlace | undefined;
}

/**
 * Every critical speed of these orders and modes, lowest speed first, placed against a running range of the shaft
 * that inertia `at` belongs to. Orders of an inertia that the train does not have are left out.
 */
export function torsionalCriticals(
  solution: TorsionalSolution,
  orders: readonly ExcitationOrder[],
  range: RunningRange & { readonly at: string },
): TorsionalCritical[] {
  return orders
    .flatMap(order => {
      const orderHere = orderAt(solution, order, range.at);
      return orderHere ? solution.modes.map(mode => critical(mode, order, orderHere, range)) : [];
    })
    .sort((a, b) => a.speed.si - b.speed.si);
}

/** An order counted per turn of another inertia's shaft. */
export function orderAt(
  { speeds }: TorsionalSolution,
  order: ExcitationOrder,
  at: string,
): Value<'number'> | undefined {
  const [here, there] = [speeds.get(at), speeds.get(order.at)];
  if (here === undefined || there === undefined) return undefined;
  const q = given(order.label, 'q', 'number', order.order, {
    assumed: order.source.title,
  });
  const i = given(`speed of ${order.at} per speed of ${at}`, 'i', 'ratio', Math.abs(there / here), {
    assumed: 'from the gear ratios between them',
  });
  return orderBehindGear({ q, i });
}

function critical(
  mode: TorsionalMode,
  order: ExcitationOrder,
  orderHere: Value<'number'>,
  range: RunningRange,
): TorsionalCritical {
  const speed = criticalSpeed({ f: mode.frequency, q: orderHere });
  return { mode: mode.number, order, orderHere, speed, place: placeCritical(speed, range) };
}
