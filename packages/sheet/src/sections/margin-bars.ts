import type { Arrangement, Verdict } from '@tailshaft/drivetrain';
import { scaleLinear } from 'd3-scale';
import { type Block, section } from '../document/blocks.js';
import { VERDICT_SIGN } from '../document/text.js';
import { arrowTip, box, drawing, label, lineFrom } from '../drawing/svg.js';
import type { Sheet } from '../sheet.js';
import { percentWords } from '../words.js';

const WIDTH = 760;
const NAMES = 326;
const ROW = 26;
const TOP = 34;

/** How much is left in each part, as bars from zero: to the left where capacity is short. */
export function marginSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const rows = arrangement.lines.flatMap(line =>
    sheet
      .ofLine(line)
      .filter(one => one.margin !== undefined)
      .map(one => ({ name: `${line.name}: ${one.rule}`, verdict: one, margin: one.margin! })),
  );
  if (rows.length === 0) return undefined;
  return section(`margins-${arrangement.path}`, 'Margins', [
    {
      block: 'figure',
      svg: bars(arrangement, rows),
      caption:
        'Margin = capacity ÷ demand − 1. Where a criterion asks for a margin, the verdict counts it; the bar shows what there is.',
    },
  ]);
}

interface Row {
  readonly name: string;
  readonly verdict: Verdict;
  readonly margin: number;
}

function bars(arrangement: Arrangement, rows: readonly Row[]) {
  const height = TOP + rows.length * ROW + 10;
  const least = Math.min(-0.25, ...rows.map(one => one.margin));
  const most = Math.max(0.5, ...rows.map(one => one.margin));
  const scale = scaleLinear([Math.max(-1, least), Math.min(2, most)], [NAMES, WIDTH - 76])
    .nice(5)
    .clamp(true);
  const zero = scale(0);
  return drawing(
    `margin-bars-${arrangement.path}`,
    WIDTH,
    height,
    `${arrangement.name}: margins`,
    rows.map(one => `${one.name} ${one.verdict.outcome}, ${percentWords(one.margin)}.`).join(' '),
    scale
      .ticks(6)
      .map(tick => [
        lineFrom(scale(tick), TOP - 8, scale(tick), height - 8, tick === 0 ? 'axis' : 'grid'),
        label(scale(tick), TOP - 14, percentWords(tick), 'label quiet'),
      ]),
    rows.map(({ name, verdict, margin }, index) => {
      const y = TOP + index * ROW;
      const end = scale(margin);
      const [, top] = scale.domain();
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
        margin > top! ? arrowTip(end + 9, y + 11, 0, 10, 'axis-tip') : undefined,
        label(WIDTH - 2, y + 15, percentWords(margin), 'label strong', 'end'),
      ];
    }),
  );
}
