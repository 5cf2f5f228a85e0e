import type { Value } from '../core/value.js';
import { computed, doesNotApply, type Outcome } from './outcome.js';
import { DEFINITION } from './sources.js';

/** One row of an engine's table: its speed, and either the torque or the power it gives there. */
export type EnginePoint = { readonly speed: Value<'rotational speed'> } & (
  | { readonly torque: Value<'torque'> }
  | { readonly power: Value<'power'> }
);

/** Torque an engine or motor can give against speed, between its lowest and highest declared speed only. */
export interface EngineCurve {
  readonly lowest: number;
  readonly highest: number;
  /** Speeds of the table, rising. */
  readonly speeds: readonly number[];
  /** The values the curve was made of, for the working. */
  readonly inputs: readonly Value[];
  /** Torque available, straight lines between rows; undefined outside the table. */
  readonly torqueAt: (speed: number) => number | undefined;
}

/**
 * A curve from a table. Rows with power are turned into torque first, since torque is the smoother of the two.
 * A governor's droop is a row of zero torque at the highest no-load speed.
 */
export function engineCurve(points: readonly EnginePoint[]): Outcome<EngineCurve> {
  if (points.length < 2)
    return doesNotApply('An engine curve needs at least two rows of speed with torque or power.');
  const rows = points.map(point => ({
    speed: point.speed.si,
    torque: 'torque' in point ? point.torque.si : point.power.si / point.speed.si,
  }));
  rows.sort((one, other) => one.speed - other.speed);
  for (const [index, row] of rows.entries()) {
    if (!(Number.isFinite(row.speed) && row.speed > 0 && Number.isFinite(row.torque) && row.torque >= 0))
      return doesNotApply(
        'Every row of an engine curve needs a positive speed and a torque or power of zero or more.',
      );
    if (index > 0 && row.speed === rows[index - 1]!.speed)
      return doesNotApply('Two rows of the engine curve have the same speed; only one of them can be right.');
  }
  return {
    applies: true,
    lowest: rows[0]!.speed,
    highest: rows.at(-1)!.speed,
    speeds: rows.map(row => row.speed),
    inputs: points.flatMap(point => [point.speed, 'torque' in point ? point.torque : point.power]),
    torqueAt: speed => torqueBetween(rows, speed),
  };
}

/** Torque the engine can give at a speed, with its working; undefined outside its table. */
export function engineTorque(
  engine: EngineCurve,
  engineSpeed: Value<'rotational speed'>,
): Value<'torque'> | undefined {
  const torque = engine.torqueAt(engineSpeed.si);
  if (torque === undefined) return undefined;
  return computed(
    'engine torque available',
    'Qe,max',
    'torque',
    torque,
    {
      name: 'engine torque between rows of its table',
      text: 'Qe,max = table value at ωe, straight line between rows',
      source: DEFINITION,
    },
    [engineSpeed, ...engine.inputs],
  );
}

function torqueBetween(
  rows: readonly { speed: number; torque: number }[],
  speed: number,
): number | undefined {
  const last = rows.length - 1;
  const slack = 1e-9 * rows[last]!.speed;
  if (!(speed >= rows[0]!.speed - slack && speed <= rows[last]!.speed + slack)) return undefined;
  let index = 1;
  while (index < last && rows[index]!.speed < speed) index++;
  const left = rows[index - 1]!;
  const right = rows[index]!;
  const share = Math.min(1, Math.max(0, (speed - left.speed) / (right.speed - left.speed)));
  return left.torque + share * (right.torque - left.torque);
}
