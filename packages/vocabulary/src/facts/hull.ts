import type { Fact, Point, Quantity } from './fact.js';

export const SPEED_METHODS = [
  'Savitsky',
  'Holtrop 1982',
  'Holtrop 1984',
  'given resistance',
  'given speed',
  'Crouch',
  'handbook displacement',
] as const;
export type SpeedMethod = (typeof SPEED_METHODS)[number];

export type HullMaterial = 'steel' | 'aluminium' | 'fibreglass' | 'wood' | 'ferrocement';

/** What a hull says that its resistance, and the flow to its propellers, can be worked out from. */
export interface HullForm {
  readonly material?: Fact<HullMaterial>;
  /** Anodes, bonding, coating: what is done about unlike metals. */
  readonly corrosionProtection?: Fact<string>;
  // Displacement hulls
  readonly blockCoefficient?: Quantity<'ratio'>;
  readonly prismaticCoefficient?: Quantity<'ratio'>;
  readonly midshipCoefficient?: Quantity<'ratio'>;
  readonly waterplaneCoefficient?: Quantity<'ratio'>;
  /** Centre of buoyancy forward of half the waterline length, as a share of it; aft is negative. */
  readonly centreOfBuoyancy?: Quantity<'ratio'>;
  readonly wettedSurface?: Quantity<'area'>;
  readonly transomArea?: Quantity<'area'>;
  readonly appendageArea?: Quantity<'area'>;
  readonly appendageFactor?: Quantity<'ratio'>;
  // Planing hulls
  readonly chineBeam?: Quantity<'length'>;
  readonly deadrise?: Quantity<'angle'>;
  /** Centre of gravity forward of the transom, and above the keel. */
  readonly gravityForward?: Quantity<'length'>;
  readonly gravityHeight?: Quantity<'length'>;
  /** Resistance of shafts, struts and rudders as a share of that of the bare hull. */
  readonly appendageResistance?: Quantity<'ratio'>;
  // Flow to the propeller
  readonly wakeFraction?: Quantity<'ratio'>;
  readonly thrustDeduction?: Quantity<'ratio'>;
  readonly propulsiveEfficiency?: Quantity<'ratio'>;
  readonly waterDensity?: Quantity<'density'>;
  // Given
  readonly resistance?: readonly Fact<Point<'force', 'speed'>>[];
  readonly effectivePower?: readonly Fact<Point<'power', 'speed'>>[];
  /** Power at the propellers, all together. */
  readonly shaftPower?: readonly Fact<Point<'power', 'speed'>>[];
  readonly speedAtRatedPower?: Quantity<'speed'>;
  readonly crouchConstant?: Quantity<'number'>;
}

/** How speed is to be worked out. */
export interface HullCriteria {
  readonly speedMethod?: Fact<SpeedMethod>;
}
