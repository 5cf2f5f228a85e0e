import {
  type AmbientEngine,
  ASSUMED_MECHANICAL_EFFICIENCY,
  ISO_REFERENCE,
  powerAtAmbient,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Engine } from '../model/engine.js';
import { home, nameOf } from '../model/part.js';
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
export function powerAtPlace(engine: Engine, power: Value<'power'>): Derived<Value<'power'>> {
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
    const efficiency = engine.mechanicalEfficiency?.value;
    return renamed(
      powerAtAmbient({
        power,
        engine: fuel === 'diesel' ? KIND[aspiration] : 'spark ignition',
        site: {
          pressure: engine.airPressure?.value ?? ISO_REFERENCE.pressure,
          air: engine.airTemperature?.value ?? ISO_REFERENCE.air,
          humidity: engine.airHumidity?.value ?? ISO_REFERENCE.humidity,
          coolant: engine.coolantTemperature?.value ?? ISO_REFERENCE.coolant,
        },
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
