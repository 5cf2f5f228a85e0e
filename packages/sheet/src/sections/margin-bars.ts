import type { Arrangement, ShaftLine, Verdict } from '@tailshaft/drivetrain';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { type Block, section } from '../document/blocks.js';
import { VERDICT_SIGN } from '../document/text.js';
import { arrowTip, box, drawing, label, lineFrom } from '../drawing/svg.js';
import type { Sheet } from '../sheet.js';
import { percentWords } from '../words.js';

const WIDTH = 560;
const NAMES = 232;
const ROW = 26;
const TOP = 34;

/** How much is left in each part, as bars from zero: to the left where capacity is short. Lines alike share theirs. */
export function marginSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const groups: Group[] = [];
  for (const line of arrangement.lines) {
    const rows = rowsOf(sheet, line);
    const same = groups.find(one => keyOf(one.rows) === keyOf(rows));
    if (same) groups[groups.indexOf(same)] = { ...same, name: `${same.name} and ${line.name}` };
    else if (rows.length > 0) groups.push({ name: line.name, rows });
  }
  if (groups.length === 0) return undefined;
  return section(`margins-${arrangement.path}`, 'Margins', [
    {
      block: 'figure',
      svg: bars(arrangement, groups),
      caption:
        'Margin = capacity ÷ demand − 1. Where a criterion asks for a margin, the verdict counts it; the bar shows what there is.',
    },
  ]);
}

interface Group {
  readonly name: string;
  readonly rows: readonly Row[];
}

interface Row {
  readonly name: string;
  readonly verdict: Verdict;
  readonly margin: number;
}

function rowsOf(sheet: Sheet, line: ShaftLine): Row[] {
  return sheet
    .ofLine(line)
    .filter(one => one.margin !== undefined)
    .map(one => ({ name: one.rule, verdict: one, margin: one.margin! }));
}

function keyOf(rows: readonly Row[]): string {
  return JSON.stringify(rows.map(one => [one.name, one.verdict.outcome, one.margin]));
}

function bars(arrangement: Arrangement, groups: readonly Group[]) {
  const rows = groups.flatMap(one => one.rows);
  const height = TOP + (rows.length + groups.length) * ROW + 10;
  const least = Math.min(-0.25, ...rows.map(one => one.margin));
  const most = Math.max(0.5, ...rows.map(one => one.margin));
  const scale = scaleLinear([Math.max(-1, least), Math.min(2, most)], [NAMES, WIDTH - 76])
    .nice(4)
    .clamp(true);
  const words = (one: Row) => `${one.name} ${one.verdict.outcome}, ${percentWords(one.margin)}.`;
  let y = TOP;
  const next = () => {
    y += ROW;
    return y - ROW;
  };
  return drawing(
    `margin-bars-${arrangement.path}`,
    WIDTH,
    height,
    `${arrangement.name}: margins`,
    groups.map(one => `${one.name}: ${one.rows.map(words).join(' ')}`).join(' '),
    scale
      .ticks(4)
      .map(tick => [
        lineFrom(scale(tick), TOP - 8, scale(tick), height - 8, tick === 0 ? 'axis' : 'grid'),
        label(scale(tick), TOP - 14, percentWords(tick), 'label quiet'),
      ]),
    groups.map(group => [
      label(0, next() + 15, group.name, 'label strong', 'start'),
      group.rows.map(one => bar(one, next(), scale)),
    ]),
  );
}

function bar({ name, verdict, margin }: Row, y: number, scale: ScaleLinear<number, number>) {
  const [zero, end] = [scale(0), scale(margin)];
  return [
    label(0, y + 15, `${VERDICT_SIGN[verdict.outcome]} ${name}`, 'label', 'start'),
    box(
      Math.min(zero, end),
      y + 4,
      Math.max(1.5, Math.abs(end - zero)),
      14,
      `bar ${verdict.outcome.replaceAll(' ', '-')}`,
    ),
    // A bar that runs out of the picture ends in an arrow.
    margin > scale.domain()[1]! ? arrowTip(end + 9, y + 11, 0, 10, 'axis-tip') : undefined,
    label(WIDTH - 2, y + 15, percentWords(margin), 'label strong', 'end'),
  ];
}
