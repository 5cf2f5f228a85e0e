import {
  clutchFaces,
  clutchTorqueUniformPressure,
  clutchTorqueUniformWear,
  given,
  hydraulicClamp,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs, Wanted } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import type { Clutch } from '../model/gear.js';
import { isSaid } from '../model/reads.js';

/** What the plates of a clutch hold: worn in, which is the cautious reading, and new. */
export interface HoldingTorque {
  readonly uniformWear: Value<'torque'>;
  readonly uniformPressure: Value<'torque'>;
}

/** Whether anything is said of the plates of a clutch. */
export function hasPlates(clutch: Clutch): boolean {
  return [
    () => clutch.faces,
    () => clutch.steelPlates,
    () => clutch.frictionPlates,
    () => clutch.outerDiameter,
    () => clutch.innerDiameter,
    () => clutch.pistonOuterDiameter,
    () => clutch.pistonInnerDiameter,
    () => clutch.clampForce,
  ].some(isSaid);
}

/** Holding torque of a clutch from its faces, radii, friction and clamp force. `name` is for the gaps. */
export function holdingTorque(
  clutch: Clutch,
  leastOilPressure: () => Quantity<'pressure'> | undefined,
  name: string,
  needs: Needs,
): HoldingTorque | undefined {
  const wanted = (property: string): Wanted => ({
    what: `${property} of ${name}`,
    host: clutch.origin,
    property,
  });
  const faces = facesOf(clutch, wanted, needs);
  const outer = needs.fact(clutch.outerDiameter, wanted('outer diameter'));
  const inner = needs.fact(clutch.innerDiameter, wanted('inner diameter'));
  const friction = needs.fact(clutch.friction, wanted('friction'));
  const clamp = clampOf(clutch, leastOilPressure, wanted, needs);
  if (!faces || !outer || !inner || !friction || !clamp) return undefined;
  const plates = {
    faces: renamed(faces, 'friction faces', 'N_f'),
    friction: renamed(friction, 'coefficient of friction', 'μ'),
    clamp: renamed(clamp, 'clamp force', 'F'),
    outerRadius: half(outer, 'outer radius of the faces', 'r_o'),
    innerRadius: half(inner, 'inner radius of the faces', 'r_i'),
  };
  return {
    uniformWear: clutchTorqueUniformWear(plates),
    uniformPressure: clutchTorqueUniformPressure(plates),
  };
}

function facesOf(
  clutch: Clutch,
  wanted: (property: string) => Wanted,
  needs: Needs,
): Value<'number'> | undefined {
  const plates = [() => clutch.frictionPlates, () => clutch.steelPlates];
  if (isSaid(() => clutch.faces) || !plates.every(isSaid)) return needs.fact(clutch.faces, wanted('faces'));
  const { frictionPlates, steelPlates } = clutch;
  if (!frictionPlates?.value || !steelPlates?.value) return needs.fact(undefined, wanted('faces'));
  return clutchFaces({
    driving: renamed(frictionPlates.value, 'friction plates', 'n_1'),
    driven: renamed(steelPlates.value, 'steel plates', 'n_2'),
  });
}

/** The clamp force as given, or that of the piston at the lowest oil pressure less its return springs. */
function clampOf(
  clutch: Clutch,
  leastOilPressure: () => Quantity<'pressure'> | undefined,
  wanted: (property: string) => Wanted,
  needs: Needs,
): Value<'force'> | undefined {
  if (isSaid(() => clutch.clampForce)) return needs.fact(clutch.clampForce, wanted('clamp force'));
  const outside = needs.fact(clutch.pistonOuterDiameter, wanted('piston outer diameter'));
  const inside = needs.fact(clutch.pistonInnerDiameter, wanted('piston inner diameter'));
  const own = clutch.oilPressure?.value ? clutch.oilPressure : leastOilPressure();
  const pressure = needs.fact(own, wanted('oil pressure'));
  const spring = needs.fact(clutch.springForce, wanted('spring force'));
  if (!outside || !inside || !pressure || !spring) return undefined;
  return hydraulicClamp({
    oilPressure: renamed(pressure, 'oil pressure', 'p'),
    outsideDiameter: renamed(outside, 'piston outer diameter', 'D_o'),
    insideDiameter: renamed(inside, 'piston inner diameter', 'D_i'),
    springForce: renamed(spring, 'return-spring force', 'F_s'),
  });
}

/** A radius as the half of a declared diameter. */
function half(diameter: Value<'length'>, label: string, symbol: string): Value<'length'> {
  return given(label, symbol, 'length', diameter.si / 2, {
    ...(diameter.written ? { written: `half of ${diameter.written}` } : {}),
    ...(diameter.origin ? { origin: diameter.origin } : {}),
  });
}
