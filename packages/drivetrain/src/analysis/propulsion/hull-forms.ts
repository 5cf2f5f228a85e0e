import {
  blockCoefficient,
  type Dimension,
  displacedVolume,
  given,
  type HullForm,
  hullForm,
  midshipFromPrismatic,
  type PlaningHull,
  planingHull,
  renamed,
  seaWaterDensity,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../../judge/needs.js';
import type { Quantity } from '../../model/fact.js';
import type { Hull, Vessel } from '../../model/vessel.js';

/** Density of the water that the vessel runs in. */
export function waterDensity(vessel: Vessel): Value<'density'> {
  const own = vessel.hull?.waterDensity?.value;
  return own ? renamed(own, 'water density', 'ρ') : seaWaterDensity();
}

/** Reads facts of the hull by the words that they are written with; without a hull block that is the one gap. */
export function hullFacts(vessel: Vessel, needs: Needs) {
  const { hull } = vessel;
  return <D extends Dimension>(fact: Quantity<D> | undefined, property: string): Value<D> | undefined =>
    hull
      ? needs.fact(fact, { what: `${property} of the hull`, host: hull.origin, property })
      : needs.miss({ what: `the hull of vessel ${vessel.name}`, host: vessel.origin, property: 'hull' });
}

/** Volume displaced at the declared displacement. */
export function volumeOf(vessel: Vessel, needs: Needs): Value<'volume'> | undefined {
  const displacement = hullFacts(vessel, needs)(vessel.hull?.displacement, 'displacement');
  return (
    displacement &&
    displacedVolume({
      displacement: renamed(displacement, 'displacement', 'Δ'),
      density: waterDensity(vessel),
    })
  );
}

/** Block coefficient as declared, or from displacement, length, beam and draft. */
export function blockOf(vessel: Vessel, needs: Needs): Value<'ratio'> | undefined {
  const own = vessel.hull?.blockCoefficient?.value;
  if (own) return renamed(own, 'block coefficient', 'CB');
  const fact = hullFacts(vessel, needs);
  const volume = volumeOf(vessel, needs);
  const length = fact(vessel.hull?.waterlineLength, 'waterline length');
  const beam = fact(vessel.hull?.beam, 'beam');
  const draught = fact(vessel.hull?.draft, 'draft');
  if (!volume || !length || !beam || !draught) return undefined;
  return blockCoefficient({
    displacedVolume: volume,
    waterlineLength: renamed(length, 'waterline length', 'L'),
    beam: renamed(beam, 'beam', 'B'),
    draught: renamed(draught, 'draught', 'T'),
  });
}

/** The hull as the planing method takes it. */
export function planingForm(vessel: Vessel, needs: Needs): PlaningHull | undefined {
  const fact = hullFacts(vessel, needs);
  const hull: Partial<Hull> = vessel.hull ?? {};
  const displacement = fact(hull.displacement, 'displacement');
  const chineBeam = fact(hull.chineBeam, 'chine beam');
  const deadrise = fact(hull.deadrise, 'deadrise');
  const gravityForward = fact(hull.gravityForward, 'LCG');
  const gravityHeight = fact(hull.gravityHeight, 'VCG');
  if (!displacement || !chineBeam || !deadrise || !gravityForward || !gravityHeight) return undefined;
  return planingHull({
    displacement: renamed(displacement, 'displacement', 'Δ'),
    chineBeam: renamed(chineBeam, 'chine beam', 'b'),
    deadrise: renamed(deadrise, 'deadrise', 'β'),
    gravityForward: renamed(gravityForward, 'centre of gravity forward of the transom', 'LCG'),
    gravityHeight: renamed(gravityHeight, 'centre of gravity above the keel', 'VCG'),
    density: waterDensity(vessel),
  });
}

/** The hull as the displacement method takes it. */
export function displacementForm(vessel: Vessel, needs: Needs): HullForm | undefined {
  const fact = hullFacts(vessel, needs);
  const hull: Partial<Hull> = vessel.hull ?? {};
  const volume = volumeOf(vessel, needs);
  const length = fact(hull.waterlineLength, 'waterline length');
  const beam = fact(hull.beam, 'beam');
  const draught = fact(hull.draft, 'draft');
  const buoyancy = fact(hull.centreOfBuoyancy, 'LCB');
  const waterplane = fact(hull.waterplaneCoefficient, 'waterplane coefficient');
  const midship = midshipOf(vessel, needs);
  if (!volume || !length || !beam || !draught || !buoyancy || !waterplane || !midship) return undefined;
  const { transomArea, appendageArea, appendageFactor, wettedSurface } = hull;
  const percent = {
    ...(buoyancy.written ? { written: buoyancy.written } : {}),
    ...(buoyancy.origin ? { origin: buoyancy.origin } : {}),
  };
  return hullForm({
    displacedVolume: volume,
    waterlineLength: renamed(length, 'waterline length', 'L'),
    beam: renamed(beam, 'beam', 'B'),
    draughtForward: renamed(draught, 'draught forward', 'TF'),
    draughtAft: renamed(draught, 'draught aft', 'TA'),
    buoyancyForward: given('centre of buoyancy, % of L', 'lcb', 'number', buoyancy.si * 100, percent),
    waterplaneCoefficient: renamed(waterplane, 'waterplane coefficient', 'CWP'),
    midshipCoefficient: midship,
    density: waterDensity(vessel),
    ...(transomArea?.value ? { transomArea: renamed(transomArea.value, 'transom area', 'AT') } : {}),
    ...(appendageArea?.value
      ? { appendageArea: renamed(appendageArea.value, 'wetted area of appendages', 'SAPP') }
      : {}),
    ...(appendageFactor?.value
      ? { appendageFactor: renamed(appendageFactor.value, 'appendage factor', '1 + k2') }
      : {}),
    ...(wettedSurface?.value ? { wettedArea: renamed(wettedSurface.value, 'bare wetted area', 'S') } : {}),
  });
}

function midshipOf(vessel: Vessel, needs: Needs): Value<'ratio'> | undefined {
  const { hull } = vessel;
  if (hull?.midshipCoefficient || !hull?.prismaticCoefficient?.value) {
    const own = hullFacts(vessel, needs)(hull?.midshipCoefficient, 'midship coefficient');
    return own && renamed(own, 'midship coefficient', 'CM');
  }
  const block = blockOf(vessel, needs);
  return (
    block &&
    midshipFromPrismatic({
      blockCoefficient: block,
      prismaticCoefficient: renamed(hull.prismaticCoefficient.value, 'prismatic coefficient', 'CP'),
    })
  );
}
