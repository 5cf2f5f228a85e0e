import type { Lock, Mesh } from '@tailshaft/drivetrain';
import { MESH_KINDS, UNKNOWN } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { isTok } from '../token.js';
import { takeNumber } from './number.js';
import { takeOpen } from './open.js';
import { wrongToken } from './words.js';

/** `A 23 with B 47 internal`, `sun 30 with planet 20 on carrier`. */
export function takeMesh(cursor: Cursor, property: string): Mesh | undefined {
  const wheel = () => {
    const nameOpen = takeOpen(cursor, 'name of a wheel');
    const name = nameOpen ? { text: UNKNOWN } : cursor.take('word');
    if (name && takeOpen(cursor, nameOpen ? 'its teeth' : `teeth of ${name.text}`))
      return { name: name.text, teeth: Number.POSITIVE_INFINITY };
    const teeth = name && takeNumber(cursor);
    return teeth && { name: name.text, teeth: teeth.number };
  };
  const driver = wheel();
  const driven = driver && cursor.takeJoin('with') ? wheel() : undefined;
  if (!driver || !driven || !(driver.teeth > 0) || !(driven.teeth > 0)) {
    return cursor.problem(
      'text/value',
      wrongToken(cursor),
      `"${property}" names two wheels with their tooth counts, driver first: ${property} A 23 with B 47.`,
    );
  }
  const kind = MESH_KINDS.find(([words]) => cursor.takeWords(words))?.[1] ?? 'external';
  const pair = {
    driver: driver.name,
    driverTeeth: driver.teeth,
    driven: driven.name,
    drivenTeeth: driven.teeth,
    kind,
  };
  const carried = cursor.takeJoin('on');
  if (carried) takeOpen(cursor, 'member that carries the planet');
  if (cursor.open.length > 0) {
    if (carried && cursor.previous && isTok(cursor.previous) && cursor.previous.text !== UNKNOWN)
      cursor.takeFreeWord();
    return undefined;
  }
  if (!carried) return pair;
  const carrier = cursor.takeFreeWord();
  if (carrier) return { ...pair, carrier: carrier.text };
  cursor.problem(
    'text/value-missing',
    wrongToken(cursor),
    `State which member carries the planet of this mesh: ${property} sun 30 with planet 20 on carrier.`,
  );
  return pair;
}

/** `sun with carrier`. */
export function takeLock(cursor: Cursor, property: string): Lock | undefined {
  const member = () => (takeOpen(cursor, 'member') ? { text: UNKNOWN } : cursor.takeFreeWord());
  const one = member();
  const other = one && cursor.takeJoin('with') ? member() : undefined;
  if (one && other && cursor.open.length > 0) return undefined;
  if (one && other && one.text !== other.text) return { one: one.text, other: other.text };
  return cursor.problem(
    'text/value',
    wrongToken(cursor),
    `"${property}" names the two members that turn as one: ${property} sun with carrier.`,
  );
}
