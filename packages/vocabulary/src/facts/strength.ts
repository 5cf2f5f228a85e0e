import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';
import type { Flange } from './gear.js';

/** A length of a shaft that has another diameter or bore than the rest of it. */
export interface ShaftSection {
  readonly name: string;
  readonly origin: Origin;
  /** Where it begins, aft from the forward coupling face of the shaft. */
  readonly from?: Quantity<'length'>;
  readonly length?: Quantity<'length'>;
  readonly diameter?: Quantity<'length'>;
  /** That of the shaft when not said. */
  readonly boreDiameter?: Quantity<'length'>;
}

/** The key of a shaft in its propeller or in its half-coupling. */
export interface ShaftKey {
  readonly name: 'propeller' | 'coupling';
  readonly origin: Origin;
  /** That of the keyway when not said. */
  readonly width?: Quantity<'length'>;
  readonly height?: Quantity<'length'>;
  /** Of its straight part, which bears. */
  readonly length?: Quantity<'length'>;
  readonly material?: Fact<string>;
  /** That of its material when not said. */
  readonly tensileYield?: Quantity<'pressure'>;
}

/** The flange of a coupling, with what its bolts are made of and how they carry the torque. */
export interface BoltedFlange extends Flange {
  /** `8.8`, `A4-70`. */
  readonly boltClass?: Fact<string>;
  readonly boltYield?: Quantity<'pressure'>;
  readonly boltStrength?: Quantity<'pressure'>;
  /** Fitted bolts stand in reamed holes and carry in shear; others only clamp. */
  readonly boltFit?: Fact<'fitted' | 'clearance'>;
  /** Clamping force of one bolt as tightened. */
  readonly boltPreload?: Quantity<'force'>;
}

/** Safety factors of shaft, keys and bolts that the author chose. */
export interface StrengthCriteria {
  readonly shaftYieldFactor?: Quantity<'ratio'>;
  readonly shaftFatigueFactor?: Quantity<'ratio'>;
  readonly keyFactor?: Quantity<'ratio'>;
  readonly boltFactor?: Quantity<'ratio'>;
}
