import { listed } from '@tailshaft/mechanics';
import { runningLines } from '../model/running.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { propellerPower } from './propeller-power.js';

/**
 * The line of an earlier arrangement in the mode with which this one, in its own mode, is compared: the one of its name; where
 * there was none, those in which the same movers drive, for a name decides nothing; else every mode there was. Of several it
 * is the most loaded, for that is what the shaft has carried and what the propeller was chosen for.
 */
export function asRunningBefore(line: ShaftLine, there: ShaftLine, vessel: Vessel): ShaftLine {
  const running = runningLines(there);
  if (!running || 'unclear' in running) return there;
  const { lines } = running;
  const sameName = lines.filter(one => one.mode?.name === line.mode?.name);
  const sameMovers = lines.filter(one => moversOf(one) === moversOf(line));
  const [first, ...rest] = [sameName, sameMovers].find(some => some.length > 0) ?? lines;
  return rest.reduce((one, other) => (load(other, vessel) > load(one, vessel) ? other : one), first!);
}

/** What kinds of mover drive: `engine and motor`. */
export function moversOf({ engine, joined = [] }: ShaftLine): string {
  return listed([engine ? 'engine' : 'motor', ...joined.map(one => one.role)]);
}

/** A load that nobody knows may be the greatest: the check then asks for what it waits for. */
function load(line: ShaftLine, vessel: Vessel): number {
  return propellerPower(line, vessel).value?.si ?? Number.POSITIVE_INFINITY;
}

/** `before`, with the mode that is meant where it is not the one of the same name. */
export function beforeWords({ mode }: ShaftLine, before: ShaftLine): string {
  const other = before.mode?.name;
  return other === undefined || other === mode?.name ? 'before' : `before, in mode ${other}`;
}
