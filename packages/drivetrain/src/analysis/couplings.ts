import type { Flange } from '../model/gear.js';
import { nameOf, type Part } from '../model/part.js';
import type { Coupling, Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';

/** What drives the first shaft, with the flange that it ends in. */
export interface Output {
  readonly part: Part;
  readonly name: string;
  readonly flange: Flange | undefined;
}

/** Couplings between the last gear, transfer or motor and the shaft behind it. */
export function outputCouplings(line: ShaftLine): Coupling[] {
  const { chain } = line;
  const from = Math.max(...chain.flatMap((part, at) => (drives(part) ? [at] : [])), -1);
  return line.couplings.filter(one => chain.indexOf(one) > from && from >= 0 && !isDamper(one));
}

/** A damper at the flywheel, or whatever coupling stands between engine and gear. */
export function inputCouplings(line: ShaftLine): Coupling[] {
  const gearAt = line.gear ? line.chain.indexOf(line.gear) : -1;
  return line.couplings.filter(one => isDamper(one) || (gearAt >= 0 && line.chain.indexOf(one) < gearAt));
}

export function outputBefore(line: ShaftLine, coupling: Coupling): Output | undefined {
  const at = line.chain.indexOf(coupling);
  // One that stands behind a length of shaft meets that, not the gear.
  const part = line.chain
    .slice(0, at)
    .reverse()
    .find(one => drives(one) || one.role === 'shaft');
  if (!part || part.role === 'shaft') return undefined;
  const flange = (part as { outputFlange?: Flange }).outputFlange;
  return { part, name: nameOf(part), flange };
}

/** The shaft that a coupling drives. */
export function shaftBehind(line: ShaftLine, coupling: Coupling): Shaft | undefined {
  const at = line.chain.indexOf(coupling);
  return line.shafts.find(shaft => line.chain.indexOf(shaft) > at);
}

export function isDamper(coupling: Coupling): boolean {
  return coupling.kind?.value === 'damper';
}

function drives(part: Part): boolean {
  return part.role === 'gear' || part.role === 'transfer' || part.role === 'motor' || part.role === 'engine';
}
