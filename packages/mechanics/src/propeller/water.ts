import { given, type Value } from '../core/value.js';
import { NAUTICAL_MILE } from '../units/constants.js';

/** One international knot in m/s, exact. */
export const KNOT = NAUTICAL_MILE / 3600;

/** Density of sea water at 15 °C as used with the series here; a spec may state its own. */
export function seaWaterDensity(): Value<'density'> {
  return given('water density', 'ρ', 'density', 1025, {
    assumed: 'sea water at 15 °C, 1025 kg/m³',
    replaceWith: 'water density',
  });
}
