import { given, type Value } from '../core/value.js';
import { computed, doesNotApply, type Outcome } from '../propeller/outcome.js';
import { monotoneCurve } from './monotone-curve.js';

/** Resistance of a hull against its speed, by whatever means it was found. */
export interface ResistanceCurve {
  readonly method: string;
  /** Speeds between which the curve speaks, m/s. */
  readonly lowest: number;
  readonly highest: number;
  /** Resistance in N, or undefined outside these speeds. */
  readonly numberAt: (vesselSpeed: number) => number | undefined;
  /** The same with its working. */
  readonly valueAt: (vesselSpeed: Value<'speed'>) => Value<'force'> | undefined;
}

export type SpeedRow = { readonly speed: Value<'speed'> } & (
  | { readonly resistance: Value<'force'> }
  | { readonly effectivePower: Value<'power'> }
  /** Power at the propeller, with the efficiency from there to the effective power. */
  | { readonly deliveredPower: Value<'power'>; readonly propulsiveEfficiency: Value<'ratio'> }
);

/**
 * A curve from a declared table: a tank test, a trial, or a designer's estimate. Between rows it never overshoots
 * them; outside them it does not answer, since a guess there would look like data.
 */
export function resistanceTable(
  rows: readonly SpeedRow[],
  what = 'resistance table',
): Outcome<ResistanceCurve> {
  if (rows.length < 2) return doesNotApply(`The ${what} needs at least two rows.`);
  const points = rows.map(row => [row.speed.si, resistanceOf(row)] as const).sort((a, b) => a[0] - b[0]);
  for (const [index, [speed, force]] of points.entries()) {
    if (!(Number.isFinite(speed) && speed >= 0 && Number.isFinite(force) && force >= 0))
      return doesNotApply(
        `Every row of the ${what} needs a speed and a resistance or power of zero or more; a power row also needs a speed above zero.`,
      );
    if (index > 0 && speed === points[index - 1]![0])
      return doesNotApply(`Two rows of the ${what} have the same speed; only one of them can be right.`);
  }
  const curve = monotoneCurve(points);
  const inputs = rows.flatMap(row => Object.values(row) as Value[]);
  const source = { title: `declared ${what}`, confidence: 'published' } as const;
  const lowest = points[0]![0];
  const highest = points.at(-1)![0];
  return {
    applies: true,
    method: what,
    lowest,
    highest,
    numberAt: curve,
    valueAt: vesselSpeed => {
      const force = curve(vesselSpeed.si);
      if (force === undefined) return undefined;
      const method = {
        name: `${what}, between rows`,
        text: 'R = table value at V, shape-preserving cubic between rows',
        source,
      };
      return computed(
        'resistance',
        'R',
        'force',
        force,
        method,
        [vesselSpeed, ...inputs],
        [{ condition: 'speed within the table; nothing is extrapolated', met: true }],
      );
    },
  };
}

/** A speed as a value, for looking a curve up. */
export function speedValue(si: number): Value<'speed'> {
  return given('vessel speed', 'V', 'speed', si);
}

function resistanceOf(row: SpeedRow): number {
  if ('resistance' in row) return row.resistance.si;
  const effective =
    'effectivePower' in row ? row.effectivePower.si : row.deliveredPower.si * row.propulsiveEfficiency.si;
  if (row.speed.si > 0) return effective / row.speed.si;
  return effective === 0 ? 0 : Number.NaN;
}
