import {
  type AmbientEngine,
  ASSUMED_MECHANICAL_EFFICIENCY,
  ISO_REFERENCE,
  powerAtAmbient,
  renamed,
  UNRESTRICTED_SERVICE,
  type Value,
} from '@tailshaft/mechanics';
import type { Engine } from '../model/engine.js';
import { home, nameOf } from '../model/part.js';
import type { Vessel } from '../model/vessel.js';
import { type Derived, derive } from './derived.js';

/** Whether anything is written of the air or coolant that the engine will meet. */
function hasAmbient(engine: Engine): boolean {
  return [engine.airTemperature, engine.coolantTemperature, engine.airPressure, engine.airHumidity].some(
    fact => fact !== undefined,
  );
}

/**
 * Power the engine gives in the air and coolant that are written for its place; what is not written there stays at the
 * reference conditions. The power itself where nothing is written.
 */
export function powerAtPlace(engine: Engine, power: Value<'power'>, vessel: Vessel): Derived<Value<'power'>> {
  return derive(needs => {
    if (!hasAmbient(engine)) return power;
    const aspiration = needs.fact(engine.aspiration, {
      what: `aspiration of ${nameOf(engine)}: it decides how air and coolant count`,
      host: home(engine),
      property: 'aspiration',
    });
    const fuel = needs.fact(engine.fuel, {
      what: `fuel of ${nameOf(engine)}: with spark ignition air and coolant count otherwise`,
      host: home(engine),
      property: 'fuel',
    });
    if (!aspiration || !fuel) return undefined;
    const chosen = vessel.criteria?.ratingConditions;
    const conditions = chosen
      ? needs.fact(chosen, {
          what: 'conditions that the engines are rated in',
          host: vessel.criteria!.origin,
          property: 'rating conditions',
        })
      : 'ISO-3046-1';
    if (!conditions) return undefined;
    const reference = conditions === 'IACS-M28' ? UNRESTRICTED_SERVICE : ISO_REFERENCE;
    // The exponents of spark ignition are of brake power: friction does not count apart.
    const efficiency = fuel === 'diesel' ? engine.mechanicalEfficiency?.value : undefined;
    return renamed(
      powerAtAmbient({
        power,
        engine: fuel === 'diesel' ? KIND[aspiration] : 'spark ignition',
        site: {
          pressure: engine.airPressure?.value ?? reference.pressure,
          air: engine.airTemperature?.value ?? reference.air,
          humidity: engine.airHumidity?.value ?? reference.humidity,
          coolant: engine.coolantTemperature?.value ?? reference.coolant,
        },
        reference,
        mechanicalEfficiency: efficiency ?? ASSUMED_MECHANICAL_EFFICIENCY,
      }),
      'power at the ambient conditions of the spec',
    );
  });
}

const KIND: Readonly<Record<'natural' | 'turbocharged' | 'turbocharged charge-cooled', AmbientEngine>> = {
  natural: 'naturally aspirated, limited by excess air',
  turbocharged: 'turbocharged, not charge cooled',
  'turbocharged charge-cooled': 'turbocharged, charge cooled',
};
