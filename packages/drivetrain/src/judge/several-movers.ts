/**
 * Checks of a line that hold what they say when two movers drive it at once: they take torque and power from the load path,
 * where both are added, or they look at one mover by itself. Every other check that rests on a mover cannot tell.
 */
export const COUNTS_TOGETHER: ReadonlySet<string> = new Set([
  // Torque and power of the load path.
  'capacity/gear-input-torque',
  'capacity/coupling-torque',
  'capacity/transfer-torque',
  'capacity/mode-power',
  'capacity/clutch-holding',
  'capacity/retained-shaft-torque',
  'capacity/retained-propeller-overload',
  'capacity/retained-propeller-light',
  'shafting/diameter',
  'shafting/key-strength',
  'shafting/coupling-bolts',
  'shafting/thrust-capacity',
  'shafting/mount-rating',
  'shafting/thrust-collar',
  'shafting/thrust-bearing-life',
  'shafting/combined-stress',
  'propeller/absorbed-power',
  'propeller/cup',
  // Which way and how fast it turns, which the engine sets.
  'rotation/propeller-hand',
  'rotation/movers-agree',
  'rotation/ahead-clutch',
  'rotation/clutch-permission',
  'rotation/pump-index',
  'rotation/input-accepted',
  'rotation/line-turns-back',
  'rotation/shift-cable',
  'rotation/convertible-hand',
  'rotation/controllable-pitch',
  'rotation/engine-changed',
  'rotation/ratio-flips-output',
  'ratio/train',
  'ratio/nominal-for-exact',
  'ratio/clutch-ratio',
  'ratio/not-offered',
  'speed/gear-input-maximum',
  'speed/transfer-input-maximum',
  'speed/mover-turned-along',
  'speed/idle-in-gear',
  'speed/idle-pressure',
  'speed/tip-speed',
  'speed/vessel-speed-per-engine-rpm',
  'speed/slow-running',
  'shafting/propeller-whirl',
  'shafting/bearing-span',
  // One mover by itself, or how it is fitted.
  'capacity/engine-duty',
  'capacity/rating-duty',
  'capacity/rating-fuel',
  'capacity/rating-speed',
  'capacity/rating-undefined',
  'capacity/power-and-torque',
  'capacity/power-point',
  'capacity/take-off',
  'interface/flywheel-housing',
  'interface/flywheel-recess',
  'interface/damper-match',
  'interface/damper-spline',
  'interface/gear-gauges',
  'interface/engine-space',
  'interface/torsional-statement',
  'interface/bed-centres',
  'paper/sheet-age',
  'paper/place-against-entry',
  'shafting/angle-limit',
  'shafting/angle-stack',
  'shafting/length-stack',
]);

/** Of those, checks that ask each engine by itself, and the input of the gear that it drives. */
export const OF_ONE_MOVER: ReadonlySet<string> = new Set([
  'capacity/gear-input-torque',
  'capacity/clutch-holding',
  'rotation/ahead-clutch',
  'rotation/clutch-permission',
  'rotation/pump-index',
  'rotation/input-accepted',
  'rotation/line-turns-back',
  'ratio/clutch-ratio',
  'speed/gear-input-maximum',
  'capacity/engine-duty',
  'capacity/rating-duty',
  'capacity/rating-fuel',
  'capacity/rating-speed',
  'capacity/rating-undefined',
  'capacity/power-and-torque',
  'capacity/power-point',
  'capacity/take-off',
  'interface/flywheel-housing',
  'interface/flywheel-recess',
  'interface/damper-match',
  'interface/damper-spline',
  'interface/engine-space',
  'interface/bed-centres',
]);

/** Of those, checks that cannot tell which part of the torque of two engines enters by which input of the gear. */
export const KNOWS_ONE_INPUT: ReadonlySet<string> = new Set([
  'capacity/gear-input-torque',
  'capacity/coupling-torque',
  'capacity/clutch-holding',
  'speed/gear-input-maximum',
]);

/** Checks of an arrangement or vessel that look at one mover of a line in its modes: what that one exceeds stays exceeded. */
export const FAILS_IN_ANY_MODE: ReadonlySet<string> = new Set([
  'capacity/certificate',
  'trial/full-throttle',
]);

/**
 * Checks of an arrangement or vessel that hold for a line in its modes: they ask every mover by itself, or speak of the
 * first mode, as the reference says.
 */
export const SHOWS_FIRST_MODE: ReadonlySet<string> = new Set([
  'trace/requirement-met',
  'trace/requirement-unverified',
  'interface/weight-change',
  'ratio/unequal-sides',
  'rotation/viewpoint',
  'rotation/sheet-view',
  'rotation/unproven-source',
  'rotation/accessory',
  'rotation/train-sense',
  'rotation/engines-exchanged',
  'rotation/gears-exchanged',
  'rotation/same-hand',
  'rotation/inward-turning',
  'rotation/turning-requirement',
  'trial/conditions',
]);
