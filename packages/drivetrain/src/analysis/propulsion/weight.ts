import {
  entrainedWaterInertia,
  outsideRange,
  pitchRatio,
  propellerMassEstimate,
  renamed,
  type Value,
  wetInertia,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Propeller } from '../../model/shafting.js';
import type { Vessel } from '../../model/vessel.js';
import { bladeGeometry } from './blades.js';
import { waterDensity } from './hull-forms.js';

/** A figure, and whether it is a rough estimate rather than a declared one. */
export interface Estimated<V extends Value> {
  readonly value: V;
  readonly estimate: boolean;
}

/** Mass of the propeller: as declared, or the handbook's for bronze, of low confidence. */
export function propellerMass(propeller: Propeller): Estimated<Value<'mass'>> | undefined {
  const declared = propeller.mass?.value;
  if (declared) return { value: renamed(declared, 'propeller mass', 'm'), estimate: false };
  const [diameter, blades] = [propeller.diameter?.value, propeller.blades?.value];
  if (!diameter || !blades) return undefined;
  const value = propellerMassEstimate({
    diameter: renamed(diameter, 'propeller diameter', 'D'),
    blades: renamed(blades, 'number of blades', 'Z'),
  });
  return outsideRange(value).length > 0 ? undefined : { value, estimate: true };
}

/** Inertia of the propeller with the water that swings with it: the water's part is always an estimate, from memory. */
export function propellerWetInertia(
  propeller: Propeller,
  vessel: Vessel,
): Estimated<Value<'moment of inertia'>> | undefined {
  const dry = propeller.inertia?.value;
  const geometry = bladeGeometry(propeller, new Needs());
  if (!dry || !geometry) return undefined;
  const { diameter, pitch, blades, areaRatio } = geometry;
  const entrained = entrainedWaterInertia({
    areaRatio,
    pitchRatio: pitchRatio({ pitch, diameter }),
    blades,
    density: waterDensity(vessel),
    diameter,
  });
  if (outsideRange(entrained).length > 0) return undefined;
  const dryInertia = renamed(dry, 'propeller inertia in air', 'I_dry');
  return { value: wetInertia({ dryInertia, entrainedInertia: entrained }), estimate: true };
}
