import { type Arrangement, Needs, type ShaftLine, spanWhirls, type Verdict } from '@tailshaft/drivetrain';
import { percent } from '@tailshaft/mechanics';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { type Block, section } from '../document/blocks.js';
import { VERDICT_SIGN } from '../document/text.js';
import { arrowTip, box, drawing, label, lineFrom } from '../drawing/svg.js';
import type { Sheet } from '../sheet.js';
import { partNames, spanWords } from './check-parts.js';

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
        'Margin = capacity ÷ demand − 1. Where a criterion requires a margin, the verdict includes it; the bar shows the margin available.',
    },
  ]);
}

interface Group {
  readonly name: string;
  readonly rows: readonly Row[];
}

interface Row {
  readonly name: string;
  /** Which of several checks of the rule, where there are several. */
  readonly part: string | undefined;
  readonly verdict: Verdict;
  readonly margin: number;
}

function rowsOf(sheet: Sheet, line: ShaftLine): Row[] {
  const counted = sheet.ofLine(line).filter(one => one.margin !== undefined);
  const spans = line.shafts.flatMap((shaft, index) => spanWhirls(shaft, line.shafts[index - 1], new Needs()));
  const names = partNames(counted, {
    path: line.path,
    entries: line.chain.flatMap(one => (one.entry ? [one.entry.name] : [])),
    spanOf: whirling => {
      const found = spans.find(one => one.whirling.si === whirling);
      return found && spanWords(found.span.name);
    },
    placeOf: one => sheet.input.placeText?.(one.place),
  });
  return counted.map(one => ({
    name: one.rule,
    part: names.get(one) || undefined,
    verdict: one,
    margin: one.margin!,
  }));
}

function keyOf(rows: readonly Row[]): string {
  return JSON.stringify(rows.map(one => [one.name, one.part, one.verdict.outcome, one.margin]));
}

function bars(arrangement: Arrangement, groups: readonly Group[]) {
  const rows = groups.flatMap(one => one.rows);
  const heads = groups.flatMap(one => one.rows.filter(headed)).length;
  const height = TOP + (rows.length + groups.length + heads) * ROW + 10;
  const least = Math.min(-0.25, ...rows.map(one => one.margin));
  const most = Math.max(0.5, ...rows.map(one => one.margin));
  const scale = scaleLinear([Math.max(-1, least), Math.min(2, most)], [NAMES, WIDTH - 76])
    .nice(4)
    .clamp(true);
  const words = (one: Row) =>
    `${one.name}${one.part ? `, ${one.part},` : ''} ${one.verdict.outcome}, ${percent(one.margin)}.`;
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
        label(scale(tick), TOP - 14, percent(tick), 'label quiet'),
      ]),
    groups.map(group => [
      label(0, next() + 15, group.name, 'label strong', 'start'),
      group.rows.map((one, index, all) => [
        headed(one, index, all) ? label(0, next() + 15, one.name, 'label quiet', 'start') : undefined,
        bar(one, next(), scale),
      ]),
    ]),
  );
}

/** Where several checks of one rule begin, the rule stands on a line of its own. */
function headed(one: Row, index: number, all: readonly Row[]): boolean {
  return one.part !== undefined && all[index - 1]?.name !== one.name;
}

function bar({ name, part, verdict, margin }: Row, y: number, scale: ScaleLinear<number, number>) {
  const [zero, end] = [scale(0), scale(margin)];
  return [
    label(part ? 12 : 0, y + 15, `${VERDICT_SIGN[verdict.outcome]} ${part ?? name}`, 'label', 'start'),
    box(
      Math.min(zero, end),
      y + 4,
      Math.max(1.5, Math.abs(end - zero)),
      14,
      `bar ${verdict.outcome.replaceAll(' ', '-')}`,
    ),
    // A bar that runs out of the picture ends in an arrow.
    margin > scale.domain()[1]! ? arrowTip(end + 9, y + 11, 0, 10, 'axis-tip') : undefined,
    label(WIDTH - 2, y + 15, percent(margin), 'label strong', 'end'),
  ];
}
