import {
  cannotTell,
  type FlywheelFacing,
  otherTurn,
  type Sense,
  senseSeen,
  type Told,
  type Turn,
  told,
  type ViewPoint,
} from './sense.js';

/**
 * Words for an engine's rotation. `standard` and `opposite` are defined by SAE J824 from the principal output end:
 * counter-clockwise and clockwise there. All others mean nothing without a viewing point.
 */
export type RotationWord = 'standard' | 'opposite' | Turn | 'left' | 'right';

/** What a data sheet says of an engine's rotation. */
export interface RotationStatement {
  readonly word: RotationWord;
  readonly view?: ViewPoint | undefined;
}

/** The sense of a crankshaft from what is said of it and how the engine stands in the vessel. */
export function engineSense(
  statement: RotationStatement | undefined,
  facing: FlywheelFacing | undefined,
): Told<Sense> {
  if (!statement) return cannotTell('engine rotation', 'the engine does not say which way it turns');
  const seen = observed(statement);
  if (!seen.known) return seen;
  const sense = senseSeen(seen.value.turn, seen.value.view, facing);
  return sense.known ? told(sense.value, [seen.why, sense.why].filter(Boolean).join('; ')) : sense;
}

/** The crankshaft's turn as seen at the flywheel, which no mounting changes. Known from an end view alone. */
export function turnAtFlywheel(
  statement: RotationStatement | undefined,
  facing?: FlywheelFacing,
): Told<Turn> {
  if (!statement) return cannotTell('engine rotation', 'the engine does not say which way it turns');
  const seen = observed(statement);
  if (!seen.known) return seen;
  const { turn, view } = seen.value;
  if (view === 'flywheel') return told(turn, seen.why || `${turn} seen from the flywheel end`);
  if (view === 'front') {
    return told(
      otherTurn(turn),
      `${turn} seen from the front is ${otherTurn(turn)} seen from the flywheel end`,
    );
  }
  if (!facing) {
    return cannotTell(
      'flywheel facing',
      `"${turn} seen from ${view}" needs to know which way the flywheel faces`,
    );
  }
  const atFlywheel = view === facing ? turn : otherTurn(turn);
  return told(
    atFlywheel,
    `${turn} seen from ${view}, flywheel ${facing}, is ${atFlywheel} seen from the flywheel end`,
  );
}

function observed({ word, view }: RotationStatement): Told<{ turn: Turn; view: ViewPoint }> {
  if (word === 'standard' || word === 'opposite') {
    if (view && view !== 'flywheel') {
      return cannotTell(
        'engine rotation in plain words',
        `"${word}" is defined from the flywheel end (SAE J824) and cannot be seen from ${view}; write clockwise or counter-clockwise with that viewing point`,
      );
    }
    const turn = word === 'standard' ? 'counter-clockwise' : 'clockwise';
    return told(
      { turn, view: 'flywheel' as const },
      `${word} (SAE J824) is ${turn} seen from the flywheel end`,
    );
  }
  if (!view) {
    return cannotTell(
      'viewing point',
      `"${word}" needs a viewing point, flywheel end or front: the words swap between the two`,
    );
  }
  if (word === 'left' || word === 'right') {
    const turn = word === 'right' ? 'clockwise' : 'counter-clockwise';
    return told({ turn, view }, `${word}-hand is ${turn} from where it is seen`);
  }
  return told({ turn: word, view }, '');
}
