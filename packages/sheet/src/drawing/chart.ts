import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import type { Markup } from '../document/markup.js';
import { element } from '../document/markup.js';
import { box, drawing, label, lineFrom, path } from './svg.js';

/** A point of a chart, in the units of its axes. */
export type XY = readonly [x: number, y: number];

/** One thing that a chart shows. Curves differ in dash, points in shape, so that colour is never needed. */
export interface Series {
  /** Series of one name share their place in the legend. */
  readonly name: string;
  /** Written at the end of a line, which tells it from others of its name. */
  readonly end?: string;
  readonly points: readonly XY[];
  readonly kind: 'solid' | 'dashed' | 'dotted' | 'level' | 'marks' | 'rings' | 'crosses';
}

export interface ChartSpec {
  readonly id: string;
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly Series[];
  /** Axes that begin near the least of the data, for what varies little. */
  readonly tight?: boolean;
  /** A stretch of the horizontal axis that stands out, with what it is. */
  readonly band?: Stretch;
  /** Stretches of it that may only be passed. */
  readonly barred?: readonly Stretch[];
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly name: string;
}

const WIDTH = 500;
const LEFT = 58;
/** Half of the last number under the axis stands beyond its end. */
const RIGHT = WIDTH - 24;
const BASE = 234;
const TOP = 34;
/** Where the second column of the legend begins: the longer names stand in it. */
const SECOND = 232;

/** A line chart from zero with its legend below. */
export function chart({ id, title, xTitle, yTitle, series, tight, band, barred = [] }: ChartSpec): Markup {
  const all = series.flatMap(one => one.points);
  const ends = series.some(one => one.end !== undefined);
  const named = series.filter((one, index) => series.findIndex(other => other.name === one.name) === index);
  const x = scaleLinear(reach(all, 0, ends ? 1.14 : 1.04, tight), [LEFT, RIGHT]).nice(6);
  const y = scaleLinear(reach(all, 1, 1.06, tight), [BASE, TOP]).nice(5);
  return drawing(
    id,
    WIDTH,
    Math.max(330, BASE + 60 + Math.ceil((named.length + Math.min(barred.length, 1)) / 2) * 18),
    title,
    `${[...(band ? [band] : []), ...barred].map(one => `${one.name}: ${fix(one.from)} to ${fix(one.to)}. `).join('')}${series
      .map(
        one =>
          `${one.name}${one.end ? `, ${one.end}` : ''}: ${one.points.map(([a, b]) => `${fix(b)} at ${fix(a)}`).join(', ')}.`,
      )
      .join(' ')}`,
    band ? drawBand(band, x) : undefined,
    barred.map(one => box(x(one.from), TOP, x(one.to) - x(one.from), BASE - TOP, 'barred')),
    y
      .ticks(5)
      .map(tick => [
        lineFrom(LEFT, y(tick), RIGHT, y(tick), tick === 0 ? 'axis' : 'grid'),
        label(LEFT - 7, y(tick) + 4, fix(tick), 'label quiet', 'end'),
      ]),
    x
      .ticks(6)
      .map(tick => [
        lineFrom(x(tick), BASE, x(tick), BASE + 5, 'axis'),
        label(x(tick), BASE + 19, fix(tick), 'label quiet'),
      ]),
    lineFrom(LEFT, TOP, LEFT, BASE, 'axis'),
    tight ? lineFrom(LEFT, BASE, RIGHT, BASE, 'axis') : undefined,
    label(RIGHT, BASE + 36, xTitle, 'label', 'end'),
    label(8, 18, yTitle, 'label', 'start'),
    series.map((one, index) => drawSeries(one, index, x, y)),
    endLabels(series, x, y),
    named.map((one, index) => legend(one, index)),
    barred.slice(0, 1).map(one => legend({ kind: 'barred', name: one.name }, named.length)),
  );
}

/** The ends of an axis: from zero to a little over the greatest, or a little beyond the least and the greatest. */
function reach(all: readonly XY[], axis: 0 | 1, over: number, tight = false): [number, number] {
  const values = all.map(point => point[axis]);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (!tight) return [0, most * over];
  // Less than a whole unit would write one number at several ticks.
  const room = Math.max((over - 1) * (most - least), (1 - most + least) / 2);
  return [least - room, most + room];
}

function drawBand({ from, to, name }: Stretch, x: Scale): Markup[] {
  return [
    box(x(from), TOP, x(to) - x(from), BASE - TOP, 'band'),
    label((x(from) + x(to)) / 2, TOP - 5, name, 'label quiet'),
  ];
}

function drawSeries({ kind, points }: Series, index: number, x: Scale, y: Scale) {
  if (isMark(kind)) return points.map(point => mark(kind, x(point[0]), y(point[1])));
  const drawn = line<XY>(
    point => x(point[0]),
    point => y(point[1]),
  )
    .digits(1)
    .curve(curveMonotoneX)(points);
  return drawn ? path(drawn, `series series-${index} ${kind}`) : undefined;
}

/** In a column behind the lines; those that stand close are moved apart, the lowest first. */
function endLabels(series: readonly Series[], x: Scale, y: Scale): Markup[] {
  const ends = series
    .flatMap(({ end, points }) => (end && points.length > 0 ? [{ end, at: points.at(-1)! }] : []))
    .sort((a, b) => a.at[1] - b.at[1]);
  const column = Math.max(...ends.map(one => x(one.at[0]))) + 10;
  let above = BASE + APART;
  return ends.map(({ end, at }) => {
    above = Math.min(y(at[1]) + 4, above - APART);
    return label(column, above, end, 'label', 'start');
  });
}

/** Between the feet of two labels. */
const APART = 13;

type Scale = ScaleLinear<number, number>;

type MarkKind = 'marks' | 'rings' | 'crosses';

function isMark(kind: Series['kind']): kind is MarkKind {
  return kind === 'marks' || kind === 'rings' || kind === 'crosses';
}

function mark(kind: MarkKind, x: number, y: number): Markup {
  if (kind === 'crosses')
    return element('path', {
      d: `M${fix(x - 4)} ${fix(y - 4)}l8 8M${fix(x + 4)} ${fix(y - 4)}l-8 8`,
      class: 'point',
    });
  return kind === 'rings'
    ? element('circle', { cx: x, cy: y, r: 4.5, class: 'point' })
    : element('path', { d: `M${fix(x)} ${fix(y - 5)}l5 5l-5 5l-5 -5Z`, class: 'point' });
}

function legend(
  { kind, name }: Pick<Series, 'name'> & { readonly kind: Series['kind'] | 'barred' },
  index: number,
): Markup {
  const y = BASE + 54 + Math.floor(index / 2) * 18;
  const x = index % 2 === 0 ? 8 : SECOND;
  return element(
    'g',
    {},
    kind === 'barred'
      ? box(x, y - 10, 26, 12, kind)
      : isMark(kind)
        ? mark(kind, x + 13, y - 4)
        : lineFrom(x, y - 4, x + 26, y - 4, `series series-${index} ${kind}`),
    label(x + 33, y, name, 'label', 'start'),
  );
}

function fix(number: number): string {
  return String(Number(number.toFixed(1)));
}
