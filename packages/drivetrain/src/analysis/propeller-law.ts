import {
  DEMAND_EXPONENT,
  given,
  powerDemandByLaw,
  powerDifference,
  renamed,
  speedDifference,
  speedForPowerByLaw,
  type Value,
} from '@tailshaft/mechanics';
import type { Vessel } from '../model/vessel.js';
import { assumedOf } from './efficiencies.js';

/** Exponent of propeller power against speed: assumed for the vessel, or that of the propeller law. */
function demandExponent(vessel: Vessel): Value<'ratio'> {
  const assumed = assumedOf(vessel, 'propeller exponent', 'ratio');
  if (assumed) return renamed(assumed, 'exponent of the propeller law', 'n');
  const { value, source } = DEMAND_EXPONENT['propeller law'];
  return given('exponent of the propeller law', 'n', 'ratio', value, {
    assumed: `${value}: ${source.title}`,
    replaceWith: 'assume propeller exponent',
  });
}

/** What the same propeller asks at another shaft speed. A scaling, never a prediction. */
export function scaledDemand(
  power: Value<'power'>,
  at: Value<'rotational speed'>,
  speed: Value<'rotational speed'>,
  vessel: Vessel,
): Value<'power'> {
  const exponent = demandExponent(vessel);
  return renamed(
    powerDemandByLaw({ referencePower: power, referenceSpeed: at, speed, exponent }),
    'power the propeller absorbs',
    'P',
  );
}

/** Shaft speed at which the same propeller asks this power. */
export function scaledSpeed(
  power: Value<'power'>,
  at: Value<'rotational speed'>,
  available: Value<'power'>,
  vessel: Vessel,
): Value<'rotational speed'> {
  const exponent = demandExponent(vessel);
  return speedForPowerByLaw({ referencePower: power, referenceSpeed: at, power: available, exponent });
}

/** What it means for shaft speed and propeller power at one engine speed that the ratio is not the assumed one. */
export function ratioConsequence(assumed: Value<'ratio'>, actual: Value<'ratio'>, vessel: Vessel) {
  return {
    speed: speedDifference({ assumed, actual }),
    power: powerDifference({ assumed, actual, exponent: demandExponent(vessel) }),
  };
}
