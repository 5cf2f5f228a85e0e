import {
  angleLeftOpen,
  angleUnderWay,
  downAngleOfTwo,
  given,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import type { Gear, Transfer } from '../model/gear.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { Coupling } from '../model/shafting.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { turnsBack } from './stages.js';

/** Angle of engine or motor at rest. */
export function engineAngle(line: ShaftLine, needs: Needs): Value<'angle'> | undefined {
  const prime = line.engine ?? line.motor;
  if (!prime) return undefined;
  const angle = needs.fact(prime.angle, {
    what: `installed angle of ${nameOf(prime)}`,
    host: prime.origin,
    property: 'angle',
  });
  return angle && renamed(angle, 'engine angle', 'α_e');
}

/** Angle of the aftmost shaft at rest. */
export function declaredShaftAngle(line: ShaftLine, needs: Needs): Value<'angle'> | undefined {
  const shaft = line.shafts.at(-1);
  if (!shaft) return undefined;
  const angle = needs.fact(shaft.angle, {
    what: 'angle of the shaft',
    host: shaft.origin,
    property: 'angle',
  });
  return angle && renamed(angle, 'shaft angle', 'α_s');
}

type Box = Gear | Transfer;

/** How much steeper the output of one box lies than its input, as its sheet says it; 0 where the two are parallel. */
function downAngleOf(box: Box, needs: Needs): Value<'angle'> | undefined {
  const parallel = (why: string) =>
    given(`down-angle of ${nameOf(box)}`, 'α_g', 'angle', 0, { assumed: `${why}: output parallel to input` });
  if (box.role === 'transfer') {
    const kind = box.kind?.value;
    if (!isSaid(() => box.downAngle) && (kind === 'belt' || kind === 'chain')) return parallel(kind);
    const said = needs.fact(box.downAngle, {
      what: `down-angle of ${nameOf(box)}`,
      host: home(box),
      property: 'down-angle',
      example: '12 deg',
    });
    return said && renamed(said, `down-angle of ${nameOf(box)}`, 'α_g');
  }
  const wanted = { what: `layout of ${nameOf(box)} with its angle`, host: home(box), property: 'layout' };
  const layout = needs.fact(box.layout, wanted);
  if (!layout) return undefined;
  if (layout.downAngle) return renamed(layout.downAngle, 'gear down-angle', 'α_g');
  if (PARALLEL.has(layout.word)) return parallel(layout.word);
  return needs.miss(wanted, box.layout?.origin);
}

const PARALLEL: ReadonlySet<string> = new Set(['coaxial', 'parallel-offset', 'U-drive']);

function boxesOf(line: ShaftLine): readonly Box[] {
  return line.chain.flatMap(part => {
    const box = part.role === 'gear' ? line.gear : line.transfers.find(one => one === part);
    return box ?? [];
  });
}

/**
 * How much steeper a box lays the line, aft end down. Where the line turns back behind it, its output looks forward, and what
 * leads down there leads up on the way aft.
 */
function steepens(line: ShaftLine, box: Box, needs: Needs): Value<'angle'> | undefined {
  const down = downAngleOf(box, needs);
  if (!down || down.si === 0) return down;
  const boxes = boxesOf(line);
  const behind = boxes.slice(boxes.indexOf(box) + 1);
  // As for rotation: with the flywheel aft, and no box that turns back, the line runs straight through.
  const straight = line.engine?.flywheelFaces?.value === 'aft' && !boxes.some(turnsBack);
  const open = straight ? undefined : behind.find(one => turnsBack(one) === undefined);
  if (open)
    return needs.miss({
      what: `whether ${nameOf(open)} turns the line back`,
      host: home(open),
      property: open.role === 'gear' ? 'layout' : 'turns the line back',
    });
  const looksAft = straight || behind.filter(turnsBack).length % 2 === 0;
  if (looksAft) return down;
  return given(`down-angle of ${nameOf(box)}, output forward`, 'α_g', 'angle', -down.si, {
    ...(down.origin ? { origin: down.origin } : {}),
    assumed: 'declared down-angle, counted negative because its output looks forward',
  });
}

/** How much steeper several boxes lay the line together; 0 without any. */
function steepenedBy(line: ShaftLine, boxes: readonly Box[], needs: Needs): Value<'angle'> | undefined {
  const angles = boxes.map(one => steepens(line, one, needs));
  if (angles.length === 0)
    return given('gear down-angle', 'α_g', 'angle', 0, { assumed: 'no gear in the line' });
  return angles.reduce((first, second) => first && second && downAngleOfTwo({ first, second }));
}

/** Couplings at which the line may bend: engine, gear and shaft lie in one chain of angles but for what these take up. */
export function jointsOf(line: ShaftLine): readonly Coupling[] {
  return line.couplings.filter(one => one.kind?.value === 'joint' || isSaid(() => one.jointAngle));
}

export interface JointBend {
  readonly angles: readonly Value<'angle'>[];
  /** All joints bend the line the same way. */
  readonly most: number;
  /** They bend it against each other: a pair at equal angles leaves it straight, one alone cannot. */
  readonly least: number;
}

/** How far the joints of a line bend it together; to which side each does, nobody says. */
export function jointBend(joints: readonly Coupling[], needs: Needs): JointBend | undefined {
  const found = joints.flatMap(one => {
    const angle = (fact: Quantity<'angle'> | undefined, property: string) =>
      needs.fact(fact, { what: `${property} of ${nameOf(one)}`, host: one.origin, property });
    return [
      angle(one.jointAngle, 'joint angle'),
      ...(isSaid(() => one.secondJointAngle) ? [angle(one.secondJointAngle, 'second joint angle')] : []),
    ];
  });
  const angles = found.flatMap(one => one ?? []);
  if (angles.length < found.length) return undefined;
  const sizes = angles.map(({ si }) => Math.abs(si));
  const most = sizes.reduce((sum, one) => sum + one, 0);
  return { angles, most, least: Math.max(0, 2 * Math.max(...sizes) - most) };
}

export interface AngleStack {
  readonly engine: Value<'angle'>;
  /** Of the gear and of every other box together. */
  readonly gear: Value<'angle'>;
  /** What the boxes are called. */
  readonly boxes: readonly string[];
  readonly shaft: Value<'angle'>;
  readonly leftOpen: Value<'angle'>;
}

/** The three angles and what they leave open. */
export function angleStack(line: ShaftLine, needs: Needs): AngleStack | undefined {
  const boxes = boxesOf(line);
  const engine = engineAngle(line, needs);
  const gear = steepenedBy(line, boxes, needs);
  const shaft = declaredShaftAngle(line, needs);
  if (!engine || !gear || !shaft) return undefined;
  const leftOpen = angleLeftOpen({ engineAngle: engine, gearDownAngle: gear, shaftAngle: shaft });
  return {
    engine,
    gear,
    boxes: boxes.map(one => (one.role === 'gear' ? 'gear' : nameOf(one))),
    shaft,
    leftOpen,
  };
}

/** Trim by the stern under way added. */
export function underWay(angle: Value<'angle'>, vessel: Vessel, needs: Needs): Value<'angle'> | undefined {
  const { hull } = vessel;
  const trim = needs.fact(hull?.runningTrim, {
    what: `running trim of ${vessel.name}`,
    host: hull?.origin ?? vessel.origin,
    property: hull ? 'running trim' : 'hull',
  });
  return trim && angleUnderWay({ staticAngle: angle, trim: renamed(trim, 'running trim', 'θ') });
}
