/**
 * Rotation worked out a second way: angular velocities as vectors in ship axes (x forward, y to port, z up), surface
 * speeds by cross products, observers by their line of sight. Shares no code with the sign algebra.
 */
export type Vector = readonly [number, number, number];

const UP: Vector = [0, 0, 1];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (a: Vector, k: number): Vector => [a[0] * k, a[1] * k, a[2] * k];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** The topmost point of the wheel runs to the observer's right when the wheel turns clockwise. */
export function looksClockwise(omega: Vector, sight: Vector): boolean {
  return dot(cross(omega, UP), cross(sight, UP)) > 0;
}

/** The spin about the x axis that an observer with this line of sight calls clockwise, or not. */
export function spinSeen(clockwise: boolean, sight: Vector): Vector {
  const trial: Vector = [1, 0, 0];
  return looksClockwise(trial, sight) === clockwise ? trial : [-1, 0, 0];
}

export const FORWARD: Vector = [1, 0, 0];
export const AFTWARD: Vector = [-1, 0, 0];

/** Line of sight of an observer who stands at that end of an engine whose flywheel points along `flywheel`. */
export function sightFrom(view: 'flywheel' | 'front' | 'aft' | 'forward', flywheel: Vector): Vector {
  if (view === 'flywheel') return times(flywheel, -1);
  if (view === 'front') return flywheel;
  return view === 'aft' ? FORWARD : AFTWARD;
}

/** Spin of a wheel about `centre` whose rim moves with `speed` at `point`. */
function spinOf(centre: Vector, point: Vector, speed: Vector): Vector {
  const arm = minus(point, centre);
  return times(cross(arm, speed), 1 / dot(arm, arm));
}

export function throughExternalMesh(omega: Vector): Vector {
  const point: Vector = [0, 0, 2];
  return spinOf([0, 0, 5], point, cross(omega, point));
}

export function throughInternalMesh(omega: Vector): Vector {
  const point: Vector = [0, 0, 2];
  return spinOf([0, 0, -4], point, cross(omega, point));
}

/** The upper run of the belt leaves the first pulley's top and meets the second one's top, or bottom when crossed. */
export function throughBelt(omega: Vector, crossed: boolean): Vector {
  const speed = cross(omega, [0, 0, 2]);
  return spinOf([0, 9, 0], [0, 9, crossed ? -3 : 3], speed);
}

/** A gear whose output looks the same as, or opposite to, its input, to observers with these lines of sight. */
export function throughDeclared(omega: Vector, same: boolean, sightIn: Vector, sightOut: Vector): Vector {
  return spinSeen(looksClockwise(omega, sightIn) === same, sightOut);
}

/**
 * How far a screw moves along x in a fixed nut when it turns with this spin. A right-hand helix about x is x = θ,
 * a left-hand one x = -θ; turned by δ it is x = ±(θ - δ) + shift, which still fits the nut when shift = ±δ.
 */
export function advance(right: boolean, omega: Vector): number {
  const lead = right ? 1 : -1;
  const turned = omega[0];
  return lead * turned;
}

/** Whether the tops of the blades move away from the centre line. */
export function topsMoveOutboard(omega: Vector, side: 'port' | 'starboard'): boolean {
  return dot(cross(omega, UP), [0, side === 'port' ? 1 : -1, 0]) > 0;
}
