import {
  oppositeSense,
  type Sense,
  senseThatDrivesAhead,
  type TwinClutch,
  type TwinCombination,
  type TwinLine,
  twinCombinations,
} from '@tailshaft/mechanics';
import type { Arrangement, ShaftLine } from '../model/vessel.js';
import { clutchesOf } from './gear-data.js';
import { handOf } from './hand.js';
import type { RotationAnalysis } from './rotation.js';
import { rotationOf } from './rotation.js';

/** The two outer lines of an arrangement. */
export interface Pair {
  readonly port: ShaftLine;
  readonly starboard: ShaftLine;
}

/** Port and starboard line, where there is exactly one of each. */
export function pairOf(arrangement: Arrangement): Pair | undefined {
  const on = (side: string) => arrangement.lines.filter(line => line.side?.value === side);
  const [port, ...morePort] = on('port');
  const [starboard, ...moreStarboard] = on('starboard');
  return port && starboard && !morePort.length && !moreStarboard.length ? { port, starboard } : undefined;
}

/** Every way in which both lines of a pair can drive ahead, the allowed and cheapest first. */
export function combinationsOf(
  pair: Pair,
  rotation: (line: ShaftLine) => RotationAnalysis,
): readonly TwinCombination[] {
  const port = twinLine('port', pair.port, rotation(pair.port));
  const starboard = twinLine('starboard', pair.starboard, rotation(pair.starboard));
  return twinCombinations(port, starboard).combinations;
}

/** The same line with another clutch engaged for ahead. */
export function withClutch(line: ShaftLine, name: string): ShaftLine {
  const gear = line.gear;
  if (!gear) return line;
  const written = gear.aheadClutch ?? { origin: gear.origin };
  const changed = { ...gear, aheadClutch: { origin: written.origin, written: name, value: name } };
  return { ...line, gear: changed, chain: line.chain.map(part => (part === gear ? changed : part)) };
}

function twinLine(side: 'port' | 'starboard', line: ShaftLine, rotation: RotationAnalysis): TwinLine {
  return {
    side,
    engine: rotation.either ? motorSense(line, rotation) : rotation.source,
    eitherRotation: rotation.either,
    clutches: clutchChoices(line, rotation),
    clutch: rotation.clutch?.name ?? (line.gear ? undefined : DIRECT),
    hand: handOf(line),
  };
}

/** A motor that runs either way runs as the propeller in the line wants it. */
function motorSense(line: ShaftLine, rotation: RotationAnalysis): Sense {
  const hand = handOf(line);
  const shaft = hand ? senseThatDrivesAhead(hand) : 1;
  return rotation.factor === -1 ? oppositeSense(shaft) : shaft;
}

/** The one way of a line without clutches. */
const DIRECT = 'none';

function clutchChoices(line: ShaftLine, rotation: RotationAnalysis): TwinClutch[] {
  const clutches = line.gear ? clutchesOf(line.gear, line.gear.variant) : [];
  if (clutches.length === 0) return [{ name: DIRECT, factor: rotation.factor, ahead: 'continuous' }];
  return clutches.map(one => ({
    name: one.name,
    factor: factorWith(line, one.name),
    ahead: one.ahead?.value,
  }));
}

function factorWith(line: ShaftLine, clutch: string): Sense | undefined {
  return rotationOf(withClutch(line, clutch)).factor;
}
