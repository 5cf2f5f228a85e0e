import { angleLeftOpen, angleUnderWay, given, renamed, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';

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

/** How much steeper the output of the gear lies; 0 without a gear and for parallel ones. */
export function gearDownAngle(line: ShaftLine, needs: Needs): Value<'angle'> | undefined {
  const { gear } = line;
  if (!gear) return given('gear down-angle', 'α_g', 'angle', 0, { assumed: 'no gear in the line' });
  const wanted = { what: `layout of ${nameOf(gear)} with its angle`, host: home(gear), property: 'layout' };
  const layout = needs.fact(gear.layout, wanted);
  if (!layout) return undefined;
  if (layout.word === 'coaxial' || layout.word === 'parallel-offset') {
    return given('gear down-angle', 'α_g', 'angle', 0, {
      assumed: `${layout.word}: output parallel to input`,
    });
  }
  if (!layout.downAngle) return needs.miss(wanted, gear.layout?.origin);
  return renamed(layout.downAngle, 'gear down-angle', 'α_g');
}

/**
 * Whether engine, gear and shaft lie in one chain of angles: no joint and no box that turns the line between them. A belt or
 * a chain runs between parallel shafts only.
 */
export function hasAngleStack(line: ShaftLine): boolean {
  const word = line.gear?.layout?.value?.word;
  const turns = word === 'V-drive' || word === 'U-drive';
  const parallel = line.transfers.every(
    one => PARALLEL.has(one.kind?.value) && one.turnsBack?.value !== 'yes',
  );
  return parallel && !turns && !line.couplings.some(one => one.kind?.value === 'joint');
}

const PARALLEL: ReadonlySet<string | undefined> = new Set(['belt', 'chain']);

export interface AngleStack {
  readonly engine: Value<'angle'>;
  readonly gear: Value<'angle'>;
  readonly shaft: Value<'angle'>;
  readonly leftOpen: Value<'angle'>;
}

/** The three angles and what they leave open. */
export function angleStack(line: ShaftLine, needs: Needs): AngleStack | undefined {
  const engine = engineAngle(line, needs);
  const gear = gearDownAngle(line, needs);
  const shaft = declaredShaftAngle(line, needs);
  if (!engine || !gear || !shaft) return undefined;
  const leftOpen = angleLeftOpen({ engineAngle: engine, gearDownAngle: gear, shaftAngle: shaft });
  return { engine, gear, shaft, leftOpen };
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
