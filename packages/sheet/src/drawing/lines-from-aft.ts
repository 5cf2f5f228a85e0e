import type { Arrangement, Hand, Hull, LineAnalysis, ShaftLine } from '@tailshaft/drivetrain';
import { type Turn, turnFromAft } from '@tailshaft/mechanics';
import { element, joined, type Markup } from '../document/markup.js';
import type { Sheet } from '../sheet.js';
import { arrowTip, drawing, label, lineFrom, path } from './svg.js';
import { AHEAD, followed, type LinesView, senseOf, shownLines, turningOf } from './view.js';

const HEIGHT = 330;
/** Between the rows of words below a propeller. */
const LEADING = 15.5;
const KEEL = 176;
/** Room for a propeller and the words below it. */
const STEP = 172;

/** The lines seen from aft, looking forward: port is left. Every propeller with the way it turns ahead. */
export function linesFromAft(sheet: Sheet, arrangement: Arrangement, view: LinesView = AHEAD): Markup {
  const lines = shownLines(arrangement.lines, view);
  const id = `aft-${arrangement.path}`;
  const largest = Math.max(0, ...arrangement.lines.map(diameterOf));
  const places = placed(lines);
  const width = Math.max(520, places.length * STEP + 60);
  const middle = width / 2;
  // A propeller under the keel hangs lower, clear of it.
  const axis = places.some(([, x]) => Math.abs(x) < 60) ? 238 : 216;
  const warns = lines.some(line => sheet.analysis(line).hand?.state === 'wrong');
  return drawing(
    id,
    width,
    HEIGHT + axis - 216 + (warns ? LEADING : 0),
    `${arrangement.name}: seen from aft, looking forward`,
    lines.map(line => `${line.name}: ${describe(sheet.analysis(line), view)}.`).join(' '),
    hullSection(sheet.vessel.hull, width),
    lineFrom(middle, 14, middle, axis + 50, 'centre-line'),
    label(78, 22, 'port', 'label quiet'),
    label(width - 78, 22, 'starboard', 'label quiet'),
    places.map(([line, x]) =>
      followed(
        sheet,
        line.propeller ?? line,
        undefined,
        propeller(sheet.analysis(line), line, middle + x, axis, largest, view),
      ),
    ),
  );
}

/** Every line with its distance from the middle; port is to the left. */
function placed(lines: readonly ShaftLine[]): [ShaftLine, number][] {
  const spread = (side: string, from: number, step: number): [ShaftLine, number][] =>
    lines.filter(line => line.side?.value === side).map((line, index) => [line, from + index * step]);
  const unsided = lines.filter(line => line.side?.value === undefined);
  const centre = lines.filter(line => line.side?.value === 'centre');
  const first = centre.length > 0 ? STEP : 120;
  return [
    ...spread('port', -first, -STEP),
    ...spread('starboard', first, STEP),
    ...centre.map((line, index): [ShaftLine, number] => [line, (index - (centre.length - 1) / 2) * STEP]),
    // A line without a side is drawn in the middle of its fellows and says so.
    ...unsided.map((line, index): [ShaftLine, number] => [line, (index - (unsided.length - 1) / 2) * STEP]),
  ];
}

function propeller(
  analysis: LineAnalysis,
  line: ShaftLine,
  x: number,
  y: number,
  largest: number,
  view: LinesView,
): Markup {
  const { hand } = analysis;
  const turn = turnOf(analysis, view);
  const size = diameterOf(line);
  const radius = size > 0 && largest > 0 ? 38 * (size / largest) : 34;
  const wrong = hand?.state === 'wrong';
  const below: [text: string, kind: string][] = [
    [`${line.name}${line.side ? '' : ' (side ?)'}`, 'label strong'],
    [hand?.hand ? `${hand.hand}-hand propeller` : 'hand not known', 'label'],
    // Two rows: beside each other the words of a twin would meet.
    ...turnText(turn, analysis, view)
      .split(', ')
      .map((text): [string, string] => [text, 'label']),
    ...(wrong ? [['✕ drives ASTERN', 'label warning'] as [string, string]] : []),
  ];
  return element(
    'g',
    {},
    element('circle', { cx: x, cy: y, r: radius, class: wrong ? 'disc wrong' : 'disc' }),
    blades(x, y, radius, line.propeller?.blades?.value?.si, hand?.hand),
    element('circle', { cx: x, cy: y, r: radius * 0.18, class: 'part' }),
    turn
      ? turnArrow(x, y, radius + 8, turn)
      : analysis.rotation.either
        ? joined()
        : label(x, y - radius - 8, '?', 'label warning'),
    below.map(([text, kind], row) => label(x, y + radius + 24 + row * LEADING, text, kind)),
  );
}

function turnOf(analysis: LineAnalysis, view: LinesView): Turn | undefined {
  const sense = senseOf(analysis, view);
  return sense && turnFromAft(sense);
}

function turnText(turn: Turn | undefined, analysis: LineAnalysis, view: LinesView): string {
  // A motor of no fixed rotation turns either way.
  if (!turn && analysis.rotation.either) return `${view.direction} as the drive is set`;
  if (!turn) return `turn ${view.direction}: cannot tell`;
  const way = turningOf(analysis, view, turn);
  return `${turn} ${view.direction}${way ? `, ${way}-turning` : ''}`;
}

/** An arc over the top of the disc: most of a half turn, with a tip at the end it moves to. */
function turnArrow(x: number, y: number, radius: number, turn: Turn): Markup {
  const half = 62;
  const [fromX, fromY] = onCircle(x, y, radius, -90 - half);
  const [toX, toY] = onCircle(x, y, radius, -90 + half);
  const arc = `M${fromX} ${fromY}A${radius} ${radius} 0 0 1 ${toX} ${toY}`;
  const clockwise = turn === 'clockwise';
  return joined(
    path(arc, 'turn'),
    clockwise
      ? arrowTip(toX, toY, half + 10, 11, 'turn-tip')
      : arrowTip(fromX, fromY, 180 - half - 10, 11, 'turn-tip'),
  );
}

/** Blades swept against the turn, so that the hand can be seen; plain where the hand is not known. */
function blades(
  x: number,
  y: number,
  radius: number,
  count: number | undefined,
  hand: Hand | undefined,
): Markup {
  const number = count && count >= 2 && count <= 7 ? Math.round(count) : 3;
  const sweep = hand === 'left' ? 1 : hand === 'right' ? -1 : 0;
  return joined(
    ...Array.from({ length: number }, (_, index) => {
      const angle = (360 / number) * index;
      const r = radius * 0.94;
      const d =
        `M0 ${-radius * 0.14}C${-r * 0.34} ${-r * 0.4} ${-r * 0.36 + sweep * r * 0.18} ${-r * 0.84} ${sweep * r * 0.2} ${-r}` +
        `C${r * 0.36 + sweep * r * 0.18} ${-r * 0.84} ${r * 0.34} ${-r * 0.4} 0 ${-radius * 0.14}Z`;
      return element('path', {
        d: d.replace(/-?\d+\.\d+/g, number => String(Number(Number(number).toFixed(2)))),
        transform: `translate(${x} ${y}) rotate(${Number(angle.toFixed(2))})`,
        class: 'blade',
      });
    }),
  );
}

function onCircle(x: number, y: number, radius: number, degrees: number): [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [
    Number((x + radius * Math.cos(angle)).toFixed(2)),
    Number((y + radius * Math.sin(angle)).toFixed(2)),
  ];
}

/** A stern section by the declared form: a vee with chines, or a round bilge with a skeg. An outline, no lines plan. */
function hullSection(hull: Hull | undefined, width: number): Markup {
  const [left, right, middle] = [56, width - 56, width / 2];
  const round = /displacement|round/.test(hull?.form?.value ?? '') && !/semi/.test(hull?.form?.value ?? '');
  const outline = round
    ? `M${left} 32C${left} 120 ${left + 70} ${KEEL - 16} ${middle - 16} ${KEEL - 8}L${middle - 6} ${KEEL + 4}H${middle + 6}L${middle + 16} ${KEEL - 8}C${right - 70} ${KEEL - 16} ${right} 120 ${right} 32`
    : `M${left - 10} 32L${left + 14} 128L${middle} ${KEEL}L${right - 14} 128L${right + 10} 32`;
  return joined(
    path(outline, 'hull'),
    lineFrom(6, 82, width - 6, 82, 'water'),
    label(22, 77, 'water', 'label quiet'),
  );
}

function diameterOf(line: ShaftLine): number {
  const size = line.propeller?.diameter?.value?.si ?? 0;
  return Number.isFinite(size) && size > 0 ? size : 0;
}

function describe(analysis: LineAnalysis, view: LinesView): string {
  const { hand } = analysis;
  const fitted = hand?.hand ? `${hand.hand}-hand propeller` : 'hand of the propeller not known';
  const wrong = hand?.state === 'wrong' ? ', which drives astern with the lever ahead' : '';
  return `${fitted}${wrong}, ${turnText(turnOf(analysis, view), analysis, view)}`;
}
