import { scaleLinear } from 'd3-scale';
import type { Markup } from '../document/markup.js';
import { box, drawing, label, lineFrom } from './svg.js';

/** One critical speed, or the two between which it lies. */
export interface SpeedRow {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Told, and held against nothing. */
  readonly told?: boolean;
}

export interface SpeedsSpec {
  readonly id: string;
  readonly title: string;
  /** Where the shaft runs. */
  readonly running: { readonly from: number; readonly to: number };
  readonly rows: readonly SpeedRow[];
}

const WIDTH = 560;
const NAMES = 218;
const ROW = 26;
const TOP = 46;

/** Critical speeds on one scale, with the running range as a band through all of them. In rpm. */
export function speedsPicture({ id, title, running, rows }: SpeedsSpec): Markup {
  const height = TOP + rows.length * ROW + 12;
  const x = scaleLinear(
    [0, Math.max(running.to, ...rows.map(one => one.to)) * 1.04],
    [NAMES, WIDTH - 112],
  ).nice(5);
  return drawing(
    id,
    WIDTH,
    height,
    title,
    `Running range ${whole(running.from)} to ${whole(running.to)} rpm. ${rows.map(one => `${one.name}: ${words(one)}.`).join(' ')}`,
    box(x(running.from), TOP - 8, x(running.to) - x(running.from), height - TOP, 'band'),
    label((x(running.from) + x(running.to)) / 2, 14, 'running range', 'label quiet'),
    x
      .ticks(4)
      .map(tick => [
        lineFrom(x(tick), TOP - 8, x(tick), height - 8, tick === 0 ? 'axis' : 'grid'),
        label(x(tick), TOP - 14, whole(tick), 'label quiet'),
      ]),
    rows.map((one, index) => {
      const y = TOP + index * ROW;
      const inside = one.from <= running.to && one.to >= running.from;
      const kind = one.told ? 'possible' : inside ? 'fails' : 'holds';
      return [
        label(0, y + 15, one.name, 'label', 'start'),
        box(x(one.from), y + 4, Math.max(4, x(one.to) - x(one.from)), 14, `bar ${kind}`),
        label(WIDTH - 2, y + 15, words(one), 'label strong', 'end'),
      ];
    }),
  );
}

function words({ from, to }: SpeedRow): string {
  return whole(from) === whole(to) ? `${whole(from)} rpm` : `${whole(from)}–${whole(to)} rpm`;
}

function whole(number: number): string {
  return String(Math.round(number));
}
