import type { Origin } from '@tailshaft/mechanics';
import type { Hand } from '../words.js';
import type { Damageable } from './damage.js';
import type { Fact, Quantity, SourceNote } from './fact.js';
import type { Part } from './part.js';
import type { PropellerMake, PropellerPlace } from './propeller.js';
import type { BoltedFlange, ShaftKey, ShaftSection } from './strength.js';
import type {
  CollarThrustBearing,
  CouplingTorsion,
  PropellerTorsion,
  RollingThrustBearing,
  ShaftTorsion,
} from './torsion.js';

export interface CouplingFacts extends CouplingTorsion {
  readonly source?: Fact<SourceNote>;
  readonly kind?: Fact<'rigid' | 'flexible' | 'damper' | 'joint'>;
  readonly torque?: Quantity<'torque'>;
  readonly mass?: Quantity<'mass'>;
  readonly flange?: BoltedFlange;
  /** What it is there for, as the author says. */
  readonly chosenFor?: Fact<'torsional vibration' | 'noise' | 'mount movement' | 'misalignment'>;
  /** Bore for the shaft, of a half-coupling. */
  readonly bore?: Quantity<'length'>;
  readonly keyWidth?: Quantity<'length'>;
  /** Along the shaft line, face to face. */
  readonly length?: Quantity<'length'>;
  readonly stiffness?: Quantity<'torsional stiffness'>;
  readonly inertia?: Quantity<'moment of inertia'>;
  /** Whether propeller thrust may pass through it. */
  readonly passesThrust?: Fact<'yes' | 'no'>;
  readonly jointAngle?: Quantity<'angle'>;
  readonly secondJointAngle?: Quantity<'angle'>;
  // Of a damper at the flywheel
  readonly flywheelSize?: Fact<string>;
  /** Largest diameter of what stands into the recess of the flywheel. */
  readonly rivetRing?: Quantity<'length'>;
  readonly leastCylinders?: Quantity<'number'>;
  readonly splineTeeth?: Quantity<'number'>;
  readonly splinePitch?: Fact<string>;
}

export interface Coupling extends Part<'coupling'>, CouplingFacts, Damageable {
  readonly source?: Fact<SourceNote>;
}

/** A catalogue grade of shaft bar. */
export type ShaftMetal = 'stainless steel' | 'carbon steel' | 'bronze' | 'nickel-copper' | 'aluminium';

export interface ShaftMaterial {
  readonly name: string;
  readonly title?: string;
  readonly origin: Origin;
  readonly source?: Fact<SourceNote>;
  readonly torsionalYield?: Quantity<'pressure'>;
  /** What kind of metal it is, beside which others corrode or not. */
  readonly metal?: Fact<ShaftMetal>;
  readonly tensileYield?: Quantity<'pressure'>;
  readonly tensileStrength?: Quantity<'pressure'>;
  readonly youngsModulus?: Quantity<'pressure'>;
  readonly shearModulus?: Quantity<'pressure'>;
  readonly density?: Quantity<'density'>;
  /** Stress that it bears for ever when it alternates, in this shaft: size, finish, notch and sea water counted. */
  readonly enduranceLimit?: Quantity<'pressure'>;
}

export interface ShaftFacts extends ShaftTorsion, Damageable {
  readonly source?: Fact<SourceNote>;
  readonly material?: Fact<string>;
  readonly diameter?: Quantity<'length'>;
  readonly boreDiameter?: Quantity<'length'>;
  readonly length?: Quantity<'length'>;
  /** Lengths of it that have another diameter or bore. */
  readonly sections?: readonly ShaftSection[];
  readonly keys?: readonly ShaftKey[];
  readonly bearings?: readonly Bearing[];
  /** Greatest distance between bearing centres, where their places are not given. */
  readonly bearingSpan?: Quantity<'length'>;
  readonly overhang?: Quantity<'length'>;
  readonly taper?: Quantity<'ratio'>;
  readonly taperLength?: Quantity<'length'>;
  /** Diameter where the taper begins; that of the shaft when not said. */
  readonly taperLargeEnd?: Quantity<'length'>;
  readonly keywayWidth?: Quantity<'length'>;
  /** Shaft end that goes into the half-coupling. */
  readonly couplingEnd?: Quantity<'length'>;
  readonly couplingKeyWidth?: Quantity<'length'>;
  /** Total indicator reading, with the shaft turned. */
  readonly runout?: Quantity<'length'>;
  /** Greatest gap between the faces of the half-couplings less the least, all round. */
  readonly couplingAlignment?: Quantity<'length'>;
  /** Calculation or statement on fatigue of this shaft, its keyways and fillets. */
  readonly fatigueStatement?: Fact<string>;
  readonly seal?: Fact<SealKind>;
  readonly sealWater?: Fact<WaterSupply>;
  /** Movement that the seal takes, from its middle. */
  readonly sealMovement?: Quantity<'length'>;
  readonly tubeBore?: Quantity<'length'>;
  /** Axis of the shaft below the base line, aft end down. */
  readonly angle?: Quantity<'angle'>;
  readonly examined?: Fact<string>;
  readonly examDue?: Fact<string>;
  readonly examInScope?: Fact<'yes' | 'no'>;
}

export type SealKind = 'packed gland' | 'flexible gland' | 'lip seal' | 'face seal';
export type WaterSupply = 'open to sea' | 'own engine' | 'cross-fed' | 'separate pump' | 'none';

/** One support of the shaft. */
export interface Bearing extends RollingThrustBearing, CollarThrustBearing {
  readonly name: string;
  readonly origin: Origin;
  readonly kind?: Fact<'strut' | 'stern tube' | 'intermediate' | 'thrust'>;
  /** Centre of the bearing, from the forward coupling face of the shaft. */
  readonly position?: Quantity<'length'>;
  readonly length?: Quantity<'length'>;
  /** Bore of the bearing itself. */
  readonly bore?: Quantity<'length'>;
  /** Bore of the strut or tube that holds the bearing. */
  readonly housingBore?: Quantity<'length'>;
  readonly lubrication?: Fact<'water' | 'oil' | 'grease'>;
  readonly water?: Fact<WaterSupply>;
  readonly thrust?: Quantity<'force'>;
}

export interface Shaft extends Part<'shaft'>, ShaftFacts {
  readonly source?: Fact<SourceNote>;
  readonly grade?: ShaftMaterial;
}

export interface PropellerFacts extends PropellerMake, PropellerTorsion {
  readonly source?: Fact<SourceNote>;
  readonly kind?: Fact<'fixed' | 'folding' | 'feathering' | 'controllable pitch'>;
  readonly hand?: Fact<Hand>;
  /** For propellers that can be assembled for either hand: how it is set. */
  readonly handSetting?: Fact<Hand>;
  readonly blades?: Quantity<'number'>;
  readonly diameter?: Quantity<'length'>;
  readonly pitch?: Quantity<'length'>;
  readonly areaRatio?: Quantity<'ratio'>;
  readonly mass?: Quantity<'mass'>;
  readonly inertia?: Quantity<'moment of inertia'>;
}

export interface Propeller extends Part<'propeller'>, PropellerFacts, PropellerPlace, Damageable {
  readonly source?: Fact<SourceNote>;
}
