import type { FlywheelFacing } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import { rotationOf } from '../../analysis/rotation.js';
import { turnsBack } from '../../analysis/stages.js';
import type { Route } from '../../judge/route.js';
import type { ShaftLine } from '../../model/vessel.js';
import { turnWords, writeInPlace } from './edits.js';

/** The other facing, where the flywheel as it faces sends the power forward. */
export function facingNeeded({ engine, gear, transfers }: ShaftLine): FlywheelFacing | undefined {
  const facing = engine?.flywheelFaces?.value;
  const boxes = [...(gear ? [gear] : []), ...transfers].map(turnsBack);
  if (!facing || boxes.includes(undefined)) return undefined;
  const wanted = boxes.filter(Boolean).length % 2 === 0 ? 'aft' : 'forward';
  return facing === wanted ? undefined : wanted;
}

/** What follows when the flywheel faces this way. */
export function facingRoute(line: ShaftLine, way: FlywheelFacing): Route {
  const engine = line.engine!;
  const flywheelFaces = { value: way, written: way, origin: engine.flywheelFaces?.origin ?? engine.origin };
  const { ahead, neededHand } = rotationOf({ ...line, engine: { ...engine, flywheelFaces } });
  const then = ahead
    ? `: the shaft then turns ${turnWords(ahead)} ahead and needs a ${neededHand}-hand propeller`
    : '';
  return {
    title: `Face the flywheel of ${line.name} ${way}${then}`,
    edits: [writeInPlace(engine, 'flywheel', newWord(way))],
  };
}

/** What puts right the lines of a pair whose power would leave forward: nothing else of how they turn is of use before that. */
export function facingsPutRight(lines: readonly ShaftLine[]): Route | undefined {
  const routes = lines.flatMap(line => {
    const way = lines.some(one => one.name === line.mirrors) ? undefined : facingNeeded(line);
    return way ? [facingRoute(line, way)] : [];
  });
  if (routes.length < 2) return routes[0];
  return { title: routes.map(one => one.title).join('; '), edits: routes.flatMap(one => one.edits) };
}
