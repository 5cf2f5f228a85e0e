import {
  citeSource,
  DIESEL_DENSITY,
  DIESEL_DENSITY_SOURCE,
  FUEL_TOLERANCE,
  fuelBetween,
  fuelBySpecific,
  fuelInProportion,
  given,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { Engine } from '../model/engine.js';
import { nameOf } from '../model/part.js';
import type { FullLoadPoint } from './engine-points.js';

/** Fuel of one engine at one power, what it rests on, and by how much it may be off. */
export interface FuelBurn {
  readonly flow: Value<'volume flow'>;
  /** `declared points`, `declared rate, in proportion`, `specific fuel, in proportion`. */
  readonly basis: string;
  /** Either way, as a share. */
  readonly uncertainty: number;
}

interface FuelPoint {
  readonly power: Value<'power'>;
  readonly flow: Value<'volume flow'>;
}

/** Beyond the tolerance of declared figures: how much more a part load may take than its share. Common practice, no source. */
const PART_LOAD = 0.1;

/** Fuel of an engine at a power, from what its sheet declares; undefined where it declares nothing of the kind. */
export function fuelBurn(engine: Engine, rated: FullLoadPoint, power: Value<'power'>): FuelBurn | undefined {
  const points = declaredPoints(engine, rated);
  if (points.length > 1) {
    const above = points.findIndex(one => one.power.si >= power.si);
    const upper = Math.max(1, above < 0 ? points.length - 1 : above);
    const [a, b] = [points[upper - 1]!, points[upper]!];
    const inside = power.si >= points[0]!.power.si && power.si <= points.at(-1)!.power.si;
    return {
      flow: fuelBetween({
        power,
        lowerPower: a.power,
        lowerFlow: a.flow,
        upperPower: b.power,
        upperFlow: b.flow,
      }),
      basis: inside ? 'declared points' : 'declared points, drawn on beyond them',
      uncertainty: inside ? FUEL_TOLERANCE : FUEL_TOLERANCE + PART_LOAD,
    };
  }
  const [only] = points;
  if (only)
    return {
      flow: fuelInProportion({ power, declaredFlow: only.flow, declaredPower: only.power }),
      basis: 'one declared rate, in proportion to power',
      uncertainty: FUEL_TOLERANCE + (power.si < 0.9 * only.power.si ? PART_LOAD : 0),
    };
  const specificFuel = engine.specificFuel?.value;
  if (!specificFuel) return undefined;
  return {
    flow: fuelBySpecific({
      power,
      specificFuel: renamed(specificFuel, 'specific fuel', 'b'),
      fuelDensity: given('fuel density', 'ρ', 'density', DIESEL_DENSITY, {
        assumed: `${citeSource(DIESEL_DENSITY_SOURCE)}`,
      }),
    }),
    basis: 'specific fuel at rated power, at every load',
    uncertainty: FUEL_TOLERANCE + (power.si < 0.9 * rated.power.si ? PART_LOAD : 0),
  };
}

/** Points of power and fuel: those of the propeller law through rated power, and the rate at rated power itself. */
function declaredPoints({ fuelCurve = [], fuelRate, ...engine }: Engine, rated: FullLoadPoint): FuelPoint[] {
  const found = fuelCurve.flatMap(({ value }): FuelPoint[] => {
    if (!value || !(value.x.si > 0)) return [];
    const share = (value.x.si / rated.speed.si) ** 3;
    const power = given('power on the propeller law', 'P', 'power', rated.power.si * share, {
      assumed: `cube of ${value.x.written ?? 'engine speed'} over rated speed, as the curve of ${nameOf(engine as Engine)} is drawn`,
    });
    return [{ power, flow: renamed(value.y, 'declared fuel', 'q') }];
  });
  if (fuelRate?.value)
    found.push({ power: rated.power, flow: renamed(fuelRate.value, 'declared fuel', 'q') });
  const sorted = found.sort((a, b) => a.power.si - b.power.si);
  return sorted.filter((one, at) => at === 0 || one.power.si > sorted[at - 1]!.power.si * 1.001);
}
