import type { Bolts, GearLayout, OutputSense, Pilot, Rotation, View } from '@tailshaft/drivetrain';
import { LAYOUTS, OUTPUT_SENSES, PILOT_KINDS, ROTATIONS, SEEN, VIEWS } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { takeNumber } from './number.js';
import { takeOpen } from './open.js';
import { takeQuantity } from './quantity.js';
import { takeWord, wrongToken } from './words.js';

/** `standard viewed from flywheel`. The view may be absent: then no check takes the word for a fact. */
export function takeRotation(cursor: Cursor, property: string): Rotation | undefined {
  const wordOpen = takeOpen(cursor, 'rotation');
  const word = wordOpen ? undefined : (takeWord(cursor, property, ROTATIONS) as Rotation['word'] | undefined);
  if (wordOpen) {
    if (!cursor.takeWords('viewed from') || takeOpen(cursor, 'viewing point')) return undefined;
    const view = takeWord(cursor, 'viewed from', VIEWS);
    if (view) cursor.known = { viewedFrom: view };
    return undefined;
  }
  if (!word || !cursor.takeJoin('viewed')) return word && { word };
  if (!cursor.takeJoin('from')) {
    cursor.problem(
      'text/value-missing',
      wrongToken(cursor),
      'State the viewpoint: viewed from flywheel, or viewed from front.',
    );
    return { word };
  }
  if (takeOpen(cursor, 'viewing point')) return { word };
  const view = takeWord(cursor, 'viewed from', VIEWS) as View | undefined;
  return view ? { word, viewedFrom: view } : { word };
}

/** `same`, `opposite seen from aft`, `opposite each seen at its own end`. */
export function takeOutputSense(cursor: Cursor, property: string): OutputSense | undefined {
  const wordOpen = takeOpen(cursor, 'output sense');
  const word = wordOpen
    ? undefined
    : (takeWord(cursor, property, OUTPUT_SENSES) as OutputSense['word'] | undefined);
  if (!word && !wordOpen) return undefined;
  if (cursor.takeWords('seen from unknown')) {
    cursor.open.push('viewing point');
    return word && { word };
  }
  const seen = SEEN.find(one => cursor.takeWords(one.startsWith('each') ? one : `seen ${one}`));
  if (wordOpen && seen) cursor.known = { seen };
  return word && (seen ? { word, seen } : { word });
}

/** `down-angle 8 deg`. */
export function takeLayout(cursor: Cursor, property: string): GearLayout | undefined {
  const wordOpen = takeOpen(cursor, 'layout');
  const word = wordOpen ? undefined : (takeWord(cursor, property, LAYOUTS) as GearLayout['word'] | undefined);
  if (!word && !wordOpen) return undefined;
  if (takeOpen(cursor, 'angle', 'angle') || cursor.peek()?.kind !== 'number') return word && { word };
  const downAngle = takeQuantity(cursor, property, 'angle');
  if (wordOpen && downAngle) cursor.known = { downAngle };
  return word && (downAngle ? { word, downAngle } : { word });
}

/** `4 x 1/2 in`. */
export function takeBolts(cursor: Cursor, property: string): Bolts | undefined {
  const countOpen = takeOpen(cursor, 'number of bolts');
  const count = countOpen ? undefined : takeNumber(cursor);
  if ((!count && !countOpen) || !(cursor.takeJoin('x') || cursor.take('mark', '×'))) {
    return cursor.problem(
      'text/value',
      wrongToken(cursor),
      `"${property}" is a number of bolts and their size: ${property} 4 x 1/2 in.`,
    );
  }
  const size = takeOpen(cursor, 'size of the bolts', 'length')
    ? undefined
    : takeQuantity(cursor, property, 'length');
  if (cursor.open.length > 0)
    cursor.known = { ...(count ? { count: count.number } : {}), ...(size ? { size } : {}) };
  return size && count && !count.refused ? { count: count.number, size } : undefined;
}

/** `63.5 mm female`. */
export function takePilot(cursor: Cursor, property: string): Pilot | undefined {
  const diameterOpen = takeOpen(cursor, 'diameter', 'length');
  const diameter = diameterOpen ? undefined : takeQuantity(cursor, property, 'length');
  if ((diameter || diameterOpen) && takeOpen(cursor, 'male or female')) return diameter && { diameter };
  const kind = PILOT_KINDS.find(one => cursor.takeWords(one));
  if (!diameter && kind) cursor.known = { kind };
  return diameter && (kind ? { diameter, kind } : { diameter });
}
