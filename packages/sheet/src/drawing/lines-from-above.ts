import type { Arrangement, LineAnalysis, Part, Role, Shaft, ShaftLine } from '@tailshaft/drivetrain';
import type { Turn } from '@tailshaft/mechanics';
import { type Child, element, joined, type Markup } from '../document/markup.js';
import type { Sheet } from '../sheet.js';
import { bearingsOf } from './bearings.js';
import { shaftBody } from './shaft-body.js';
import { arrowTip, box, drawing, label, lineFrom } from './svg.js';
import { AHEAD, followed, type LinesView, pointOf, shownLines, stepsOf } from './view.js';

/** Parts that the steps of the rotation name, one after the other. */
const TURNED: readonly Role[] = ['gear', 'transfer', 'coupling', 'shaft'];

const WIDTH = 560;
const ROW = 144;
const TOP = 46;
const RIGHT = WIDTH - 24;
const STERN = 46;
/** Words beside each other stand at least so far apart; below each other, so far. */
const APART = 8;
const LEADING = 15;
/** How wide a letter is taken to be: text cannot be measured here. */
const LETTER = 7.3;
/** How far beside its own shaft an engine is drawn that faces forward. */
const RAISED = -35;

/** Lengths on paper of what declares no length. */
const SIZE: Readonly<Record<Part['role'], readonly [length: number, height: number]>> = {
  engine: [104, 58],
  motor: [84, 46],
  coupling: [12, 30],
  gear: [56, 50],
  transfer: [46, 46],
  shaft: [0, 6],
  propeller: [10, 60],
};

interface Station {
  readonly part: Part;
  readonly from: number;
  readonly to: number;
  readonly turn: Turn | undefined;
}

/** The lines seen from above, bow to the right, port on top: the parts in their order with the turn at each. */
export function linesFromAbove(sheet: Sheet, arrangement: Arrangement, view: LinesView = AHEAD): Markup {
  const lines = [...shownLines(arrangement.lines, view)].sort((one, other) => RANK(one) - RANK(other));
  const longest = Math.max(0, ...lines.map(shaftLength));
  const height = TOP + lines.length * ROW + 12;
  return drawing(
    `above-${arrangement.path}`,
    WIDTH,
    height,
    `${arrangement.name}: seen from above, bow to the right`,
    lines.map(line => `${line.name}: ${describe(sheet.analysis(line), line, view)}.`).join(' '),
    label(STERN - 44, 20, '← aft', 'label quiet', 'start'),
    label(RIGHT, 20, 'forward →', 'label quiet', 'end'),
    lines.map((line, index) => row(sheet, line, TOP + index * ROW + ROW / 2, longest, view)),
  );
}

const RANK = (line: ShaftLine) => ({ port: 0, centre: 1, starboard: 2, none: 3 })[line.side?.value ?? 'none'];

function row(sheet: Sheet, line: ShaftLine, y: number, longest: number, view: LinesView): Markup {
  const analysis = sheet.analysis(line);
  const back = turnsBack(line);
  const stations = laid(analysis, line, longest, view);
  const [first, last] = [stations[0], stations.at(-1)];
  // Where the line turns back the engine stands over its own shaft: it is drawn beside it.
  const raised = (station: Station) => (back && station === first ? RAISED : 0);
  const named = placesOfNames(stations, y + 46);
  const bodies = stations.map(station =>
    followed(
      sheet,
      station.part,
      `${line.name}, ${partWords(station)}`,
      drawPart(station, y + raised(station), back),
      label(...named.get(station)!, nameOf(station.part), isSoft(station.part) ? 'label quiet' : 'label'),
    ),
  );
  const bearings = stations.map(({ part, from, to }) =>
    part.role === 'shaft' ? bearingsOf(sheet, part as Shaft, from, to, y) : undefined,
  );
  const arrows = stations.map(station => arrow(station, y + raised(station), station === last));
  const speeds = numbers(analysis, stations, station => y + raised(station), view);
  const name = label(STERN - 44, y - 48, line.name, 'label strong', 'start');
  return element('g', {}, name, bodies, bearings, arrows, speeds);
}

function partWords({ part, turn }: Station): string {
  return `${part.role}${part.entry ? ` ${part.entry.name}` : ''}, ${turn ? `turns ${turn}` : 'rotation not known'}`;
}

/** Speeds and torque at the operating point of the view, where they change along the line. */
function numbers(
  analysis: LineAnalysis,
  stations: readonly Station[],
  yOf: (station: Station) => number,
  view: LinesView,
): Child[] {
  const point = pointOf(analysis, view);
  if (!point) return [];
  const speedAt = (part: Part) => point.stations.find(one => one.part === part)?.speed;
  return stations.flatMap((station): Child[] => {
    const { part, from, to } = station;
    const middle = (from + to) / 2;
    const y = yOf(station);
    const speed = speedAt(part);
    if (isMover(part) && speed) return [label(middle, y - 38, analysis.tell(speed), 'label reading')];
    if (part.role !== 'shaft' || !speed) return [];
    const words = [speed, point.shaftTorque].filter(one => one !== undefined).map(one => analysis.tell(one));
    return [label(middle, y - 28, words.join(' · '), 'label reading')];
  });
}

/** Places the chain from the stern forward; a turned-back engine stands aft of its gear. */
function laid(analysis: LineAnalysis, line: ShaftLine, longest: number, view: LinesView): Station[] {
  const turns = turnsOf(analysis, line, view);
  const chain = [...line.chain].reverse();
  const moverIsAft = turnsBack(line);
  const fixed = chain.reduce((sum, part) => sum + (isMover(part) && moverIsAft ? 0 : SIZE[part.role][0]), 0);
  const room = RIGHT - STERN - fixed - 10;
  let x = STERN;
  const stations: Station[] = [];
  for (const part of chain) {
    if (isMover(part) && moverIsAft) {
      const gear = stations.at(-1);
      const at = (gear?.from ?? x) - SIZE[part.role][0] - 6;
      stations.push({ part, from: at, to: at + SIZE[part.role][0], turn: turns.get(part) });
      continue;
    }
    const length = part.role === 'shaft' ? shaftOnPaper(line, part, longest, room) : SIZE[part.role][0];
    stations.push({ part, from: x, to: x + length, turn: turns.get(part) });
    x += length;
  }
  return stations.reverse();
}

const isMover = (part: Part) => part.role === 'engine' || part.role === 'motor';

function shaftOnPaper(line: ShaftLine, part: Part, longest: number, room: number): number {
  const share = Math.max(70, room) / line.shafts.length;
  const length = (part as ShaftLine['shafts'][number]).length?.value?.si;
  return length && longest > 0 ? Math.max(60, (share * line.shafts.length * length) / longest) : share * 0.8;
}

function shaftLength(line: ShaftLine): number {
  return line.shafts.reduce((sum, shaft) => {
    const length = shaft.length?.value?.si ?? 0;
    return sum + (Number.isFinite(length) && length > 0 ? length : 0);
  }, 0);
}

/** Whether the engine faces forward, as in front of a V-drive. */
function turnsBack(line: ShaftLine): boolean {
  const layout = line.gear?.layout?.value?.word;
  return line.engine?.flywheelFaces?.value === 'forward' || layout === 'V-drive' || layout === 'U-drive';
}

/** The turn behind each part: the steps of the rotation stand in the order of the chain. */
function turnsOf(analysis: LineAnalysis, line: ShaftLine, view: LinesView): Map<Part, Turn | undefined> {
  const steps = stepsOf(analysis, view);
  const turns = new Map<Part, Turn | undefined>();
  const mover = line.engine ?? line.motor;
  if (mover) turns.set(mover, steps[0]?.turn);
  const stages = line.chain.filter(part => TURNED.includes(part.role));
  stages.forEach((part, index) => {
    turns.set(part, steps[index + 1]?.turn);
  });
  if (line.propeller) turns.set(line.propeller, steps[stages.length + 1]?.turn);
  return turns;
}

function drawPart({ part, from, to }: Station, y: number, back: boolean): Markup {
  const [, height] = SIZE[part.role];
  if (part.role === 'shaft') return shaftBody(part as Shaft, from, to, y);
  if (part.role === 'propeller')
    return element('ellipse', { cx: (from + to) / 2, cy: y, rx: 6, ry: height / 2, class: 'disc' });
  const flywheel = back ? to - 10 : from + 10;
  return joined(
    box(from, y - height / 2, to - from, height, part.change === 'retained' ? 'part kept' : 'part'),
    part.role === 'engine' ? lineFrom(flywheel, y - height / 2, flywheel, y + height / 2, 'edge') : undefined,
  );
}

/** Names stand below their parts, a row lower where they would meet the one beside them. */
function placesOfNames(stations: readonly Station[], y: number): Map<Station, [x: number, y: number]> {
  const ends: number[] = [];
  const places = new Map<Station, [number, number]>();
  for (const station of [...stations].sort((one, other) => one.from - other.from)) {
    const half = (nameOf(station.part).length * LETTER) / 2;
    const middle = Math.min(WIDTH - half, Math.max(half, (station.from + station.to) / 2));
    const free = ends.findIndex(end => end + APART <= middle - half);
    const row = free < 0 ? ends.length : free;
    ends[row] = middle + half;
    places.set(station, [middle, y + row * LEADING]);
  }
  return places;
}

const isSoft = ({ role }: Part) => role === 'shaft' || role === 'propeller';

/** Very long names are cut; the table beside the drawing has them whole. */
function nameOf(part: Part): string {
  const name = isSoft(part) ? part.role : (part.entry?.name ?? part.role);
  return name.length > 26 ? `${name.slice(0, 25)}…` : name;
}

/** How the top of the part moves: towards starboard (down the page) when it turns clockwise seen from aft. */
function arrow({ part, from, to, turn }: Station, y: number, last: boolean): Markup {
  if (part.role === 'coupling') return joined();
  const x = last ? from - 20 : part.role === 'engine' ? (from + to) / 2 + 6 : (from + to) / 2;
  if (!turn) return label(x, y + 5, '?', 'label warning');
  const down = turn === 'clockwise';
  const [tail, tip] = down ? [y - 17, y + 17] : [y + 17, y - 17];
  return joined(
    lineFrom(x, tail, x, tip + (down ? -8 : 8), 'turn'),
    arrowTip(x, tip, down ? 90 : -90, 11, 'turn-tip'),
  );
}

function describe(analysis: LineAnalysis, line: ShaftLine, view: LinesView): string {
  const turns = turnsOf(analysis, line, view);
  return line.chain
    .map(part => {
      const turn = turns.get(part);
      return `${part.role}${part.entry ? ` ${part.entry.name}` : ''} ${turn ?? 'cannot tell'}`;
    })
    .join(', ');
}
