import { oppositeSense, type Sense } from './sense.js';

/** Hand of a propeller: a right-hand one turns clockwise seen from aft to drive ahead. */
export type Hand = 'left' | 'right';

/** Side of the vessel, seen looking forward. */
export type Side = 'port' | 'starboard' | 'centre';

/** Which way the tops of the blades move when running ahead. */
export type Turning = 'outward' | 'inward';

/** The hand that drives ahead when the shaft turns this way in the ahead clutch. */
export function handThatDrivesAhead(shaftAhead: Sense): Hand {
  return shaftAhead === 1 ? 'right' : 'left';
}

/** The sense a propeller of this hand must turn in to drive ahead. */
export function senseThatDrivesAhead(hand: Hand): Sense {
  return hand === 'right' ? 1 : -1;
}

/** Whether the tops of the blades move outboard or inboard; a centre line shaft does neither. */
export function turning(side: Side, shaftAhead: Sense): Turning | undefined {
  if (side === 'centre') return undefined;
  const outward: Sense = side === 'starboard' ? 1 : -1;
  return shaftAhead === outward ? 'outward' : 'inward';
}

/** The hand that turns outward, or inward, on this side. */
export function handFor(side: Exclude<Side, 'centre'>, wanted: Turning): Hand {
  const outward: Sense = side === 'starboard' ? 1 : -1;
  return handThatDrivesAhead(wanted === 'outward' ? outward : oppositeSense(outward));
}

/** The other hand. */
export function otherHand(hand: Hand): Hand {
  return hand === 'left' ? 'right' : 'left';
}
