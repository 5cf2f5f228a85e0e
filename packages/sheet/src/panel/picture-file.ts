import type { Block } from '../document/blocks.js';
import { element, Markup } from '../document/markup.js';
import { linesFromAbove } from '../drawing/lines-from-above.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { label } from '../drawing/svg.js';
import type { SheetInput } from '../input.js';
import { CAUTION_LINE } from '../sections/cautions.js';
import { chartsSection } from '../sections/charts.js';
import { criticalsSection } from '../sections/criticals.js';
import { propulsionSection } from '../sections/propulsion-chart.js';
import { Sheet } from '../sheet.js';
import { SHEET_STYLE } from '../style.js';
import { choicesOf, find, type PanelChoice, viewOf } from './choice.js';

export interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

const MARGIN = 24;
const WIDTH = 760;
/** As much of the caution as fits the width. */
const FIRST_CAUTION = CAUTION_LINE.replace(/;.*/, '.');
/** Room for the title. */
const HEAD = 28;

/** The lines as one SVG file that needs nothing else: from aft, and below it from above. Ink on paper. */
export function picturesFile(input: SheetInput, choice: PanelChoice): Picture | undefined {
  const choices = choicesOf(input, choice);
  const arrangement = find(input.vessel, choices.chosen.arrangement);
  if (!arrangement) return undefined;
  // A file leads nowhere: no part of it is to be followed.
  const { placeKey: _, ...still } = input;
  const sheet = new Sheet(still);
  const view = viewOf(arrangement, choices);
  const [aft, above] = [linesFromAft(sheet, arrangement, view), linesFromAbove(sheet, arrangement, view)];
  const [first, second] = [sizeOf(aft), sizeOf(above)];
  const width = WIDTH + 2 * MARGIN;
  const height = HEAD + first.height + second.height + 4 * MARGIN;
  const lever = `lever ${view.direction}${view.point ? `, numbers at ${view.point}` : ''}`;
  const svg = sheetSvg(input, arrangement, width, height, [
    words(MARGIN, MARGIN + 24, lever, 'quiet'),
    placed(aft, (width - first.width) / 2, MARGIN + HEAD),
    placed(above, MARGIN, first.height + 2 * MARGIN + HEAD),
    words(MARGIN, height - MARGIN, caution(input), 'quiet'),
  ]);
  return { svg, width, height };
}

/** The charts of an arrangement as one SVG file, one below the other; nothing where none can be drawn. */
export function chartsFile(input: SheetInput, choice: PanelChoice): Picture | undefined {
  const choices = choicesOf(input, choice);
  const arrangement = find(input.vessel, choices.chosen.arrangement);
  if (!arrangement) return undefined;
  const { placeKey: _, ...still } = input;
  const sheet = new Sheet(still);
  const { line } = choices.chosen;
  const part = line
    ? { ...arrangement, lines: arrangement.lines.filter(one => one.name === line) }
    : arrangement;
  const charts = [
    chartsSection(sheet, part),
    propulsionSection(sheet, part),
    criticalsSection(sheet, part),
  ].flatMap(one => (one ? figuresIn(one) : []));
  if (charts.length === 0) return undefined;
  const sizes = charts.map(sizeOf);
  const width = Math.max(...sizes.map(one => one.width)) + 2 * MARGIN;
  let y = MARGIN + HEAD;
  const stacked = charts.map((one, index) => {
    const at = placed(one, MARGIN, y);
    y += sizes[index]!.height + MARGIN;
    return at;
  });
  const height = y + MARGIN;
  const svg = sheetSvg(input, arrangement, width, height, [
    ...stacked,
    words(MARGIN, height - MARGIN / 2, caution(input), 'quiet'),
  ]);
  return { svg, width, height };
}

/** A picture on paper of its own, headed by vessel and arrangement. */
function sheetSvg(
  { vessel }: SheetInput,
  arrangement: { readonly name: string; readonly title?: string },
  width: number,
  height: number,
  content: readonly Markup[],
): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      class: 'sheet',
    },
    element('style', {}, new Markup(paperOnly(SHEET_STYLE))),
    element('rect', { width, height, fill: 'var(--paper)' }),
    words(
      MARGIN,
      MARGIN + 6,
      `${vessel.title ?? vessel.name}: ${arrangement.title ?? arrangement.name}`,
      'strong',
    ),
    ...content,
  ).source;
}

function caution({ today }: SheetInput): string {
  return `Judged on ${today}. ${FIRST_CAUTION}`;
}

/** The drawings of a part of the sheet, however deep they stand. */
function figuresIn(block: Block): Markup[] {
  if (block.block === 'figure') return [block.svg];
  if (block.block === 'row') return block.figures.flatMap(figuresIn);
  if (block.block === 'section' || block.block === 'details') return block.blocks.flatMap(figuresIn);
  return [];
}

/** Text outside of the two drawings, in a drawing of its own so that the same style holds. */
function words(x: number, y: number, text: string, kind: string): Markup {
  return element('svg', {}, label(x, y, text, `label ${kind}`, 'start'));
}

function sizeOf({ source }: Markup) {
  const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(source) ?? [];
  return { width: Number(width), height: Number(height) };
}

function placed({ source }: Markup, x: number, y: number): Markup {
  return new Markup(source.replace('<svg ', `<svg x="${x}" y="${y}" `));
}

/** The style without what depends on the reader's screen; of rules for pages and print only those of drawings matter. */
function paperOnly(style: string): string {
  const light = /:root \{[^}]*\}/.exec(style)?.[0] ?? '';
  const drawings = style
    .split('\n')
    .filter(rule => rule.startsWith('.sheet svg'))
    .join('\n')
    .replace(/\.sheet svg \{[^}]*\}/, '');
  const reading = '.sheet svg text.reading { font-weight: 600; }';
  return `${light.replace('color-scheme: light dark;', '')}\n${drawings}\n${reading}`;
}
