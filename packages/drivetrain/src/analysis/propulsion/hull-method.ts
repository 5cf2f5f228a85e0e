import type { SpeedMethod } from '../../model/hull.js';
import { aside } from '../../model/reads.js';
import type { Hull, Vessel } from '../../model/vessel.js';

/** The method that speed is worked out by, and whether the vessel's text chose it. */
export interface ChosenMethod {
  readonly method: SpeedMethod;
  readonly declared: boolean;
}

/** Handbook estimates give a speed for a power; they say nothing of what another speed would ask. */
export const ESTIMATES: readonly SpeedMethod[] = ['Crouch', 'handbook displacement'];

/** Whether the spec says enough of hull or method that its speed is a question. */
export function speedIsAsked(vessel: Vessel): boolean {
  return (
    vessel.criteria?.speedMethod !== undefined ||
    // That something is written proves nothing: what is worked out rests on what it then reads.
    (vessel.hull !== undefined && aside(() => isDescribed(vessel.hull!)))
  );
}

/** Facts that are written for the sake of speed; length and displacement alone are not. */
function isDescribed(hull: Hull): boolean {
  return (
    hasTable(hull) ||
    [
      hull.blockCoefficient,
      hull.prismaticCoefficient,
      hull.midshipCoefficient,
      hull.waterplaneCoefficient,
      hull.centreOfBuoyancy,
      hull.wettedSurface,
      hull.chineBeam,
      hull.deadrise,
      hull.gravityForward,
      hull.wakeFraction,
      hull.thrustDeduction,
      hull.speedAtRatedPower,
      hull.crouchConstant,
    ].some(fact => fact !== undefined)
  );
}

/** Whether resistance or power is given against speed. */
function hasTable(hull: Hull): boolean {
  return [hull.resistance, hull.effectivePower, hull.shaftPower].some(rows => (rows?.length ?? 0) > 0);
}

/** The declared method, or the one that the form of the hull and what is given of it point to. */
export function methodOf(vessel: Vessel): ChosenMethod | undefined {
  const chosen = vessel.criteria?.speedMethod;
  if (chosen) return chosen.value && { method: chosen.value, declared: true };
  const { hull } = vessel;
  const method = hull && usualMethod(hull);
  return method && { method, declared: false };
}

function usualMethod(hull: Hull): SpeedMethod | undefined {
  if (hasTable(hull)) return 'given resistance';
  if (hull.speedAtRatedPower) return 'given speed';
  if (hull.crouchConstant) return 'Crouch';
  switch (hull.form?.value) {
    case 'planing':
      return 'Savitsky';
    case 'displacement':
      return 'Holtrop 1984';
    default:
      return undefined;
  }
}
