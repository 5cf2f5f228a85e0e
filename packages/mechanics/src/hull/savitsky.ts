import { firstRoot, rootBetween } from '../propeller/roots.js';
import { STANDARD_GRAVITY } from '../units/constants.js';
import { frictionCoefficient } from './friction-line.js';

/** A prismatic planing hull, in SI; angles in degrees as the method's formulas take them. */
export interface PlaningNumbers {
  readonly weight: number;
  /** Centre of gravity forward of the transom and above the keel. */
  readonly gravityForward: number;
  readonly gravityHeight: number;
  readonly chineBeam: number;
  readonly deadrise: number;
  /** Thrust line against the keel, and its distance from the centre of gravity. */
  readonly shaftAngle: number;
  readonly thrustArm: number;
  readonly roughness: number;
  readonly density: number;
  readonly viscosity: number;
}

/** State of the hull at one speed and trim; lengths in m, forces in N. */
export interface PlaningState {
  readonly trim: number;
  readonly speedCoefficient: number;
  /** Lift coefficient with deadrise and of the flat plate that stands for it. */
  readonly liftWithDeadrise: number;
  readonly lift: number;
  /** Mean wetted length over beam. */
  readonly wettedRatio: number;
  readonly meanSpeed: number;
  readonly reynoldsNumber: number;
  readonly friction: number;
  readonly frictionForce: number;
  readonly resistance: number;
  /** Centre of pressure forward of the transom. */
  readonly pressureForward: number;
  readonly keelWettedLength: number;
  /** Moment that is left over at this trim; zero at equilibrium. */
  readonly moment: number;
}

const RADIAN = Math.PI / 180;

/** The hull at a given trim, or undefined where the method has no state there. */
export function planingState(hull: PlaningNumbers, V: number, trim: number): PlaningState | undefined {
  const { weight: W, chineBeam: b, deadrise: beta, density } = hull;
  const Cv = V / Math.sqrt(STANDARD_GRAVITY * b);
  const liftWithDeadrise = W / (0.5 * density * V * V * b * b);
  const lift = flatPlateLift(liftWithDeadrise, beta);
  const lambda = wettedRatio(lift, trim, Cv);
  if (lift === undefined || lambda === undefined) return undefined;
  const tau = trim * RADIAN;
  const dynamic = 0.012 * Math.sqrt(lambda) * trim ** 1.1;
  const reduction = (dynamic - 0.0065 * beta * dynamic ** 0.6) / (lambda * Math.cos(tau));
  if (!(reduction < 1)) return undefined;
  const meanSpeed = V * Math.sqrt(1 - reduction);
  const reynoldsNumber = (meanSpeed * lambda * b) / hull.viscosity;
  if (!(reynoldsNumber > 1e3)) return undefined;
  const friction = frictionCoefficient(reynoldsNumber) + hull.roughness;
  const frictionForce =
    (0.5 * density * meanSpeed ** 2 * lambda * b * b * friction) / Math.cos(beta * RADIAN);
  const pressureForward = centreOfPressure(lambda, b, Cv);
  const c = hull.gravityForward - pressureForward;
  const a = hull.gravityHeight - (b / 4) * Math.tan(beta * RADIAN);
  const thrustTilt = (trim + hull.shaftAngle) * RADIAN;
  return {
    trim,
    speedCoefficient: Cv,
    liftWithDeadrise,
    lift,
    wettedRatio: lambda,
    meanSpeed,
    reynoldsNumber,
    friction,
    frictionForce,
    resistance: W * Math.tan(tau) + frictionForce / Math.cos(tau),
    pressureForward,
    keelWettedLength: lambda * b + (b * Math.tan(beta * RADIAN)) / (2 * Math.PI * Math.tan(tau)),
    moment:
      W *
        (((1 - Math.sin(tau) * Math.sin(thrustTilt)) * c) / Math.cos(tau) - hull.thrustArm * Math.sin(tau)) +
      frictionForce * (a - hull.thrustArm),
  };
}

/** The trim at which moments balance, found between half a degree and 20 degrees. */
export function planingEquilibrium(hull: PlaningNumbers, V: number): PlaningState | undefined {
  const moment = (trim: number): number => planingState(hull, V, trim)?.moment ?? Number.NaN;
  const trim = firstRoot(moment, 0.5, 20, 78);
  return trim === undefined ? undefined : planingState(hull, V, trim);
}

/** Distance of the centre of pressure from the transom. */
export function centreOfPressure(lambda: number, beam: number, Cv: number): number {
  return lambda * beam * (0.75 - 1 / ((5.21 * Cv * Cv) / (lambda * lambda) + 2.39));
}

/** CL0 of CLβ = CL0 - 0.0065 β CL0^0.60; the right-hand side rises once it is above zero. */
function flatPlateLift(withDeadrise: number, deadrise: number): number | undefined {
  if (!(withDeadrise > 0 && Number.isFinite(withDeadrise))) return undefined;
  const over = (lift: number): number => lift - 0.0065 * deadrise * lift ** 0.6 - withDeadrise;
  let high = withDeadrise + 1;
  while (over(high) < 0 && high < 1e6) high *= 2;
  return over(high) >= 0 ? rootBetween(over, withDeadrise, high, 1e-14) : undefined;
}

/** λ of CL0 = τ^1.1 (0.0120 λ^½ + 0.0055 λ^2.5 / Cv²), which rises with λ. */
function wettedRatio(lift: number | undefined, trim: number, Cv: number): number | undefined {
  if (lift === undefined || !(trim > 0)) return undefined;
  const wanted = lift / trim ** 1.1;
  const over = (x: number): number => 0.012 * Math.sqrt(x) + (0.0055 * x ** 2.5) / Cv ** 2 - wanted;
  return over(50) > 0 ? rootBetween(over, 0, 50, 1e-13) : undefined;
}
