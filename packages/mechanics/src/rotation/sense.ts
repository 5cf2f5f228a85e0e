/** Direction of rotation in the frame of the vessel: +1 is clockwise seen from aft looking forward. */
export type Sense = 1 | -1;

/** Direction of rotation as an observer sees it; nothing without the observer's place. */
export type Turn = 'clockwise' | 'counter-clockwise';

/** Which way a flywheel faces: `aft` is the usual mounting, `forward` is a V-drive or a reversed engine. */
export type FlywheelFacing = 'aft' | 'forward';

/**
 * Where the observer of a rotation stands, looking at the machine.
 * `flywheel`: the principal output (driving) end. `front`: the free, pulley end.
 * `aft`: astern of it, looking forward. `forward`: ahead of it, looking aft.
 */
export type ViewPoint = 'flywheel' | 'front' | 'aft' | 'forward';

/** An answer, or what must be known before there is one. Never guessed. */
export type Told<T> =
  | { readonly known: true; readonly value: T; readonly why: string }
  | { readonly known: false; readonly missing: string; readonly why: string };

export const told = <T>(value: T, why: string): Told<T> => ({ known: true, value, why });
export const cannotTell = (missing: string, why: string): Told<never> => ({ known: false, missing, why });

/** The other sense. */
export function oppositeSense(sense: Sense): Sense {
  return sense === 1 ? -1 : 1;
}

/** The other way round. */
export function otherTurn(turn: Turn): Turn {
  return turn === 'clockwise' ? 'counter-clockwise' : 'clockwise';
}

/** A sense as somebody aft of the machine, looking forward, sees it. */
export function turnFromAft(sense: Sense): Turn {
  return sense === 1 ? 'clockwise' : 'counter-clockwise';
}

/** The sense behind what an observer reports. The ends of an engine lie fore and aft only once its facing is known. */
export function senseSeen(
  turn: Turn,
  view: ViewPoint | undefined,
  facing: FlywheelFacing | undefined,
): Told<Sense> {
  if (!view)
    return cannotTell('viewing point', `"${turn}" means nothing until it says from where it is seen`);
  const fromAft: Sense = turn === 'clockwise' ? 1 : -1;
  if (view === 'aft') return told(fromAft, `${turn} seen from aft`);
  if (view === 'forward') {
    return told(oppositeSense(fromAft), `${turn} seen from forward is ${otherTurn(turn)} seen from aft`);
  }
  if (!facing) {
    return cannotTell(
      'flywheel facing',
      `"${turn} seen from the ${view} end" needs to know which way the flywheel faces`,
    );
  }
  const looksForward = (view === 'flywheel') === (facing === 'aft');
  const sense = looksForward ? fromAft : oppositeSense(fromAft);
  return told(
    sense,
    `${turn} seen from the ${view} end, flywheel ${facing}, is ${turnFromAft(sense)} seen from aft`,
  );
}
