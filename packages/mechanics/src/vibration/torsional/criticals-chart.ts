import type { RunningRange } from '../running-range.js';
import type { ExcitationOrder } from './excitation-orders.js';
import { orderAt, torsionalCriticals } from './torsional-criticals.js';
import type { TorsionalSolution } from './torsional-modes.js';

/** Lines and points of a chart of frequency (Hz) over shaft speed (rad/s). */
export interface CriticalsChart {
  /** Axis ends: speed from zero, frequency from zero. */
  readonly highestSpeed: number;
  readonly highestFrequency: number;
  readonly running: { readonly from: number; readonly to: number };
  /** Level lines: natural frequencies do not depend on speed while nothing in the train is non-linear. */
  readonly frequencyLines: readonly { readonly mode: number; readonly frequency: number }[];
  /** Lines through the origin. They end at an edge of the chart. */
  readonly orderLines: readonly {
    readonly order: ExcitationOrder;
    readonly end: { readonly speed: number; readonly frequency: number };
  }[];
  readonly crossings: readonly {
    readonly mode: number;
    readonly order: ExcitationOrder;
    readonly speed: number;
    readonly frequency: number;
    readonly insideRange: boolean;
  }[];
}

/** Room to the right of the highest running speed, so that criticals just above it show. */
const ROOM = 1.25;

/**
 * Chart of criticals over the speed of the shaft of inertia `at`: modes as level lines, orders as rays, and their
 * crossings, up to a quarter above the running range. Modes that no order reaches in that width are left off.
 */
export function criticalsChart(
  solution: TorsionalSolution,
  orders: readonly ExcitationOrder[],
  range: RunningRange & { readonly at: string },
): CriticalsChart {
  const highestSpeed = range.to.si * ROOM;
  const rays = orders.flatMap(order => {
    const q = orderAt(solution, order, range.at)?.si;
    return q === undefined ? [] : [{ order, slope: q / (2 * Math.PI) }];
  });
  const reach = Math.max(0, ...rays.map(ray => ray.slope * highestSpeed));
  const shown = solution.modes.filter(mode => mode.frequency.si <= reach);
  const highestFrequency = shown.length > 0 ? Math.max(...shown.map(mode => mode.frequency.si)) * 1.1 : reach;
  return {
    highestSpeed,
    highestFrequency,
    running: { from: range.from.si, to: range.to.si },
    frequencyLines: shown.map(({ number, frequency }) => ({ mode: number, frequency: frequency.si })),
    orderLines: rays.map(({ order, slope }) => {
      const speed = Math.min(highestSpeed, highestFrequency / slope);
      return { order, end: { speed, frequency: speed * slope } };
    }),
    crossings: torsionalCriticals(solution, orders, range)
      .filter(({ speed }) => speed.si <= highestSpeed)
      .map(({ mode, order, speed, orderHere, place }) => ({
        mode,
        order,
        speed: speed.si,
        frequency: (speed.si * orderHere.si) / (2 * Math.PI),
        insideRange: place?.position === 'inside',
      })),
  };
}
