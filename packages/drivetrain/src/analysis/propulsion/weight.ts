import { outsideRange, propellerMassEstimate, renamed, type Value } from '@tailshaft/mechanics';
import type { Propeller } from '../../model/shafting.js';
import { isPair } from '../pair.js';

/** A figure, and whether it is a rough estimate rather than a declared one. */
export interface Estimated<V extends Value> {
  readonly value: V;
  readonly estimate: boolean;
}

/** Mass of the propeller: as declared, or the handbook's for bronze, of low confidence. */
export function propellerMass(propeller: Propeller): Estimated<Value<'mass'>> | undefined {
  const declared = propeller.mass?.value;
  if (declared) return { value: renamed(declared, 'propeller mass', 'm'), estimate: false };
  if (isPair(propeller)) return undefined;
  const [diameter, blades] = [propeller.diameter?.value, propeller.blades?.value];
  if (!diameter || !blades) return undefined;
  const value = propellerMassEstimate({
    diameter: renamed(diameter, 'propeller diameter', 'D'),
    blades: renamed(blades, 'number of blades', 'Z'),
  });
  return outsideRange(value).length > 0 ? undefined : { value, estimate: true };
}
