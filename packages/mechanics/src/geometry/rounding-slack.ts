/**
 * Comparisons that a change of units does not tip over: 350 rpm in rad/s, or 8 in over 2 in, may miss the printed limit
 * by the last bit of a double. One part in 10⁹ is far below anything that is measured.
 */
const SLACK = 1e-9;

export const atMost = (value: number, limit: number): boolean => value <= limit + Math.abs(limit) * SLACK;
export const atLeast = (value: number, limit: number): boolean => value >= limit - Math.abs(limit) * SLACK;
/** Below, and not merely by rounding. */
export const below = (value: number, limit: number): boolean => value < limit - Math.abs(limit) * SLACK;
